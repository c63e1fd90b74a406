// Decides command line or window, nothing else.
int main() { return 0; }
