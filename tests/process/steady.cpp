// Memory stays flat while a plan is edited for a long time, and what a window takes it
// gives back:
//
//   steady [EDITS]     2000
//
// Opens an example in a window, moves the start of its first piece EDITS times with the
// look following, and compares memory after the first half with memory at the end: the
// look and what needs a look take and give back some 100 MB all the time.
// Then closes the window. Under the leak sanitizer what is left afterwards is a leak.
#include <QApplication>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <cstdlib>

#include "app/controls/theme.h"
#include "app/desk/main_window.h"
#include "app/store/plan_store.h"
#include "engine/plan/edits.h"
#include "tests/support/memory.h"

using namespace combdraft;

namespace {

/// What an undo entry of one piece may take, and what work under way may.
constexpr double kPerEdit_MB = 0.01, kSlack_MB = 160;

void editOnce(document::DocumentController& controller, int number) {
  const plan::Plan& plan = controller.document();
  const plan::ItemId id = plan.pieces().front().first;
  const auto moved = plan::changePieces(plan, {id}, [&](plan::Piece& piece) { piece.start_mm = 20 + number % 30; });
  controller.edit(plan::applied(plan, moved), QStringLiteral("Edit"));
}

}  // namespace

int main(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("combdraft-steady"));
  controls::applyTheme(app, controls::ThemeName::Light);
  const int edits = argc > 1 ? std::atoi(argv[1]) : 2000;
  QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("plan.json"));
  if (edits < 8 || !QFile::copy(store::examplePlans().value(0), copy)) {
    std::fputs("steady [EDITS]\n", stderr);
    return 2;
  }
  double early_MB = 0;
  {
    desk::MainWindow window({folder.filePath(QStringLiteral("settings.ini")), folder.filePath(QStringLiteral("recovery")),
                             folder.filePath(QStringLiteral("patterns")), folder.filePath(QStringLiteral("faults")), nullptr, {}});
    window.resize(1180, 820);
    window.show();
    if (!QTest::qWaitForWindowExposed(&window)) return 3;
    window.openPath(copy);
    for (int i = 0; i < edits; ++i) {
      editOnce(window.controller(), i);
      QTest::qWait(2);
      if (i == edits / 2) early_MB = test::residentMemory_MB();
    }
    QTest::qWait(500);
    window.recovery().close();
  }
  const double late_MB = test::residentMemory_MB(), most_MB = early_MB + kPerEdit_MB * edits + kSlack_MB;
  std::printf("%d edits: %.0f MB after half, %.0f MB at the end, at most %.0f\n", edits, early_MB, late_MB, most_MB);
  return late_MB <= most_MB ? 0 : 1;
}
