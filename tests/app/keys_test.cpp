// Keys of commands: given, kept, reset, and never taken from another silently.
#include <catch2/catch.hpp>

#include <QKeySequenceEdit>
#include <QLineEdit>
#include <QListWidget>
#include <QSettings>
#include <QTreeWidget>

#include "app/desk/keys.h"
#include "app/desk/keys_page.h"
#include "app/sheet/head_sheet.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using tests::actionOf;
using tests::Desk;

TEST_CASE("a key is changed by pressing it, works, is kept, and can be reset", "[habits][keys]") {
  Desk desk;
  desk.window->openPath(desk.file("keys"));
  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& page = desk.window->keysPage();
  REQUIRE(page.isVisible());
  CHECK(page.list()->topLevelItemCount() == static_cast<int>(desk.window->actions().specs().size()));
  page.filter()->setText(QStringLiteral("measure"));
  CHECK(page.list()->topLevelItemCount() < 5);
  page.choose(QStringLiteral("tool.measure"));
  page.catcher()->setFocus();
  QTest::keyClick(page.catcher(), Qt::Key_J, Qt::ControlModifier);
  REQUIRE(QTest::qWaitFor([&] { return actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+J")); }, 3000));
  CHECK(page.note().contains(QStringLiteral("Ctrl+J")));
  CHECK(actionOf(desk, "tool.measure")->toolTip().contains(QStringLiteral("Ctrl+J")));
  QTest::keyClick(&page, Qt::Key_Escape);
  REQUIRE(desk.window->headSheet().isVisible());
  QTest::keyClick(desk.window.get(), Qt::Key_J, Qt::ControlModifier);
  CHECK(desk.window->viewState().tool() == document::Tool::Measure);
  desk.window->close();
  desk.open();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+J")));
  CHECK_FALSE(desk.window->messages().isShowing());

  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& again = desk.window->keysPage();
  again.choose(QStringLiteral("tool.measure"));
  for (auto* button : again.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Reset this one")) button->click();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  again.choose(QStringLiteral("edit.undo"));
  again.give({});
  again.choose(QStringLiteral("edit.redo"));
  again.give(QKeySequence(QStringLiteral("Ctrl+Shift+Y")));
  CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).keys().keys.size() == 2);
  for (auto* button : again.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Reset all")) button->click();
  CHECK(desk::changedKeys(desk.window->actions()).empty());
  CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).keys().keys.empty());
}

TEST_CASE("a key that another command has is never taken silently", "[habits][keys]") {
  Desk desk;
  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& page = desk.window->keysPage();
  page.choose(QStringLiteral("tool.measure"));
  page.give(QKeySequence(QStringLiteral("Ctrl+D")));
  CHECK(page.note().contains(QStringLiteral("Duplicate")));
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  CHECK(actionOf(desk, "piece.duplicate")->shortcut() == QKeySequence(QStringLiteral("Ctrl+D")));
  REQUIRE(page.takeOver()->isVisible());
  page.takeOver()->click();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+D")));
  CHECK(actionOf(desk, "piece.duplicate")->shortcut().isEmpty());
  // Keys that begin like those of another command would never get through.
  page.choose(QStringLiteral("tool.piece"));
  page.give(QKeySequence(QStringLiteral("Ctrl+D, Ctrl+P")));
  CHECK(page.note().contains(QStringLiteral("Measure")));
  CHECK(actionOf(desk, "tool.piece")->shortcut() == QKeySequence(Qt::Key_F3));
  // What the sheet and the fields need cannot be given away.
  for (const QKeySequence& keys : {QKeySequence(Qt::Key_Escape), QKeySequence(Qt::Key_Left), QKeySequence(Qt::Key_Tab),
                                   QKeySequence(Qt::Key_7), QKeySequence(Qt::Key_Return),
                                   QKeySequence(Qt::SHIFT | Qt::Key_Down), QKeySequence(Qt::ALT | Qt::Key_V)}) {
    INFO(keys.toString().toStdString());
    page.give(keys);
    CHECK_FALSE(page.note().isEmpty());
    CHECK(actionOf(desk, "tool.piece")->shortcut() == QKeySequence(Qt::Key_F3));
  }
}

TEST_CASE("no command comes with a key that may not be given", "[habits][keys]") {
  Desk desk;
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK(desk::keyTrouble(spec.shortcut).isEmpty());
    CHECK(desk::keyHolder(desk.window->actions(), spec.shortcut, spec.id) == nullptr);
  }
}

TEST_CASE("stored keys that are damaged are ignored and said", "[habits][keys]") {
  Desk desk;
  const QString ini = desk.dir.filePath(QStringLiteral("settings.ini"));
  desk.window->close();
  {
    QSettings settings(ini, QSettings::IniFormat);
    settings.setValue(QStringLiteral("keys/tool.measure"), QStringLiteral("Ctrl+Wobble"));
    settings.setValue(QStringLiteral("keys/no.such"), QStringLiteral("Ctrl+J"));
    settings.setValue(QStringLiteral("keys/edit.redo"), QStringLiteral("Ctrl+Z"));  // undo's
    settings.setValue(QStringLiteral("keys/view.look"), QStringLiteral("Ctrl+Shift+J"));  // sound
  }
  desk.open();
  REQUIRE(desk.window->messages().isShowing());
  const QString said = desk.window->messages().text();
  for (const char* word : {"Wobble", "no.such", "Undo"}) CHECK(said.contains(QLatin1String(word)));
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  CHECK(actionOf(desk, "edit.undo")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Z")));
  CHECK(actionOf(desk, "edit.redo")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+Z")));
  CHECK(actionOf(desk, "view.look")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+J")));
  desk.press("Forget them");
  desk.window->close();
  desk.open();
  CHECK_FALSE(desk.window->messages().isShowing());
  CHECK(actionOf(desk, "view.look")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+J")));
}
