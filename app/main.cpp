// Decides command line or window, nothing else.
#include "app/command/command.h"
#include "app/desk/run_window.h"

int main(int argc, char** argv) {
  if (combdraft::command::isCommand(argc, argv)) return combdraft::command::runCommand(argc, argv);
  return combdraft::desk::runWindow(argc, argv);
}
