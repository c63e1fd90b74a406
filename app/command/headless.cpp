#include "app/command/headless.h"

#include "app/command/outcome.h"
#include "app/controls/theme.h"

namespace combdraft::command {

std::unique_ptr<QGuiApplication> lettersWithoutDisplay(int& argc, char** argv) {
  if (QCoreApplication::instance()) return nullptr;
  // The platform is chosen before the application is made, so that no display is asked for.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  // What the toolkit remarks about the session is no message of ours.
  qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) complain(text.toStdString());
  });
  auto app = std::make_unique<QGuiApplication>(argc, argv);
  controls::loadBundledFont();
  return app;
}

}  // namespace combdraft::command
