#include "app/desk/run_window.h"

#include <QApplication>
#include <QLocale>
#include <cstdio>

#include "app/controls/theme.h"
#include "app/desk/main_window.h"

namespace combdraft::desk {
namespace {

constexpr int kWrongUsage = 2, kNoDisplay = 3;

// Without a display the platform plugin would abort; say it plainly instead.
bool hasDisplay() {
  return !qEnvironmentVariableIsEmpty("DISPLAY") || !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
         !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

}  // namespace

int runWindow(int argc, char** argv) {
  if (!hasDisplay()) {
    std::fputs("combdraft: there is no display for the window. "
               "The commands look, check and draw work without one: combdraft --help\n",
               stderr);
    return kNoDisplay;
  }
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("combdraft"));
  QApplication::setApplicationVersion(QStringLiteral(COMBDRAFT_VERSION));
  const QStringList arguments = QApplication::arguments().mid(1);
  if (arguments.size() > 1 || (arguments.size() == 1 && arguments.front().startsWith(u'-'))) {
    std::fputs("combdraft: the window takes one plan file at most. combdraft --help lists the commands.\n", stderr);
    return kWrongUsage;
  }
  applyPreferences(store::Settings().preferences());
  MainWindow window;
  window.show();
  if (!arguments.isEmpty()) window.openPath(arguments.front());
  window.offerRecovery();
  return QApplication::exec();
}

}  // namespace combdraft::desk
