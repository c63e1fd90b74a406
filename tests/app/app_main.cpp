// Entry of the window's tests: no display, no user's folders, a fixed locale.
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>

#include "tests/app/child_role.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("combdraft-tests"));
  if (argc > 2 && QLatin1String(argv[1]) == QLatin1String("--role")) {
    const auto role = combdraft::tests::childRoles().find(QLatin1String(argv[2]));
    return role == combdraft::tests::childRoles().end() ? 2 : role->second(QApplication::arguments().mid(3));
  }
  return Catch::Session().run(argc, argv);
}
