// Decides command line or window, nothing else.
#include "app/command/command.h"

int main(int argc, char** argv) {
  if (combdraft::command::isCommand(argc, argv)) return combdraft::command::runCommand(argc, argv);
  return 0;
}
