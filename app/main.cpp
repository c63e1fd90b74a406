// Decides command line or window, nothing else.
#include <QLocale>

#include "app/command/command.h"
#include "app/desk/run_window.h"

int main(int argc, char** argv) {
  if (combdraft::command::isCommand(argc, argv)) {
    QLocale::setDefault(QLocale::c());  // words, numbers and pictures do not depend on the system's language
    return combdraft::command::runCommand(argc, argv);
  }
  return combdraft::desk::runWindow(argc, argv);
}
