#pragma once
// What the entries of the tests with Qt share: no user's folders, a fixed locale,
// and parts of tests that run as another process (child_role.h).
#include <QLocale>
#include <QStandardPaths>

#include "tests/support/child_role.h"

namespace combdraft::tests {

/// `Application`: QCoreApplication or one with a screen. CATCH_CONFIG_RUNNER must be
/// defined before Catch is included.
template <class Application>
int runTests(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  Application app(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("combdraft-tests"));
  if (argc > 2 && QLatin1String(argv[1]) == QLatin1String("--role")) {
    const auto role = childRoles().find(QLatin1String(argv[2]));
    return role == childRoles().end() ? 2 : role->second(QCoreApplication::arguments().mid(3));
  }
  return Catch::Session().run(argc, argv);
}

}  // namespace combdraft::tests
