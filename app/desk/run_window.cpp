#include "app/desk/run_window.h"

#include <QApplication>
#include <QIcon>
#include <QLocale>
#include <cstdio>

#include "app/controls/theme.h"
#include "app/desk/language.h"
#include "app/desk/main_window.h"

namespace combdraft::desk {
namespace {

constexpr int kWrongUsage = 2, kNoDisplay = 3;

// Without a display the platform plugin would abort; say it plainly instead.
bool hasDisplay() {
  return !qEnvironmentVariableIsEmpty("DISPLAY") || !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
         !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

// Messages of the window system may name files or quote texts: nobody hears them
// who did not ask.
void dropMessage(QtMsgType, const QMessageLogContext&, const QString& text) {
  if (!qEnvironmentVariableIsEmpty("COMBDRAFT_SHOW_QT_MESSAGES")) std::fputs((text + u'\n').toLocal8Bit().constData(), stderr);
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
  QApplication::setDesktopFileName(QStringLiteral("combdraft"));  // where the desktop finds name and icon
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/combdraft.svg")));
  QApplication::setApplicationVersion(QStringLiteral(COMBDRAFT_VERSION));
  const QStringList arguments = QApplication::arguments().mid(1);
  if (arguments.size() > 1 || (arguments.size() == 1 && arguments.front().startsWith(u'-'))) {
    std::fputs("combdraft: the window takes one plan file at most. combdraft --help lists the commands.\n", stderr);
    return kWrongUsage;
  }
  qInstallMessageHandler(dropMessage);
  store::installFaultHooks(store::faultFolder());
  const store::Preferences preferences = store::Settings().preferences();
  speak(app, preferences.language);
  applyPreferences(preferences);
  DeskPlaces places;
  places.session = std::make_shared<store::SessionFile>(store::sessionFile());
  MainWindow window(places);
  window.show();
  window.bringBack();
  if (!arguments.isEmpty()) window.openBeside(arguments.front());
  window.offerRecovery();
  window.offerRetention();
  window.offerFaults();  // said last, read first
  return QApplication::exec();
}

}  // namespace combdraft::desk
