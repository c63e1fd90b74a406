// Commands: found by a word, run by keyboard alone, and what each says of itself.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QLineEdit>
#include <QListWidget>

#include "app/desk/command_search.h"
#include "app/sheet/head_sheet.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using tests::actionOf;
using tests::Desk;

namespace {

QString firstFound(Desk& desk, const char* words) {
  const auto ids = desk::findCommands(desk.window->actions(), QString::fromUtf8(words));
  return ids.empty() ? QString() : ids.front();
}

}  // namespace

TEST_CASE("commands are found by words of name and tip, in either case", "[habits][search]") {
  Desk desk;
  CHECK(firstFound(desk, "undo") == QStringLiteral("edit.undo"));
  CHECK(firstFound(desk, "OTHER side") == QStringLiteral("piece.twin"));
  CHECK(firstFound(desk, "crown") == QStringLiteral("view.large.crown"));
  CHECK(firstFound(desk, "salon floor") == QStringLiteral("view.dark"));  // only in its tip
  CHECK(firstFound(desk, "s\u00e1ve").startsWith(QStringLiteral("file.save")));
  CHECK(firstFound(desk, "ctrl+z") == QStringLiteral("edit.undo"));
  CHECK(desk::findCommands(desk.window->actions(), QStringLiteral("zebra")).empty());
  CHECK(desk::findCommands(desk.window->actions(), {}).size() == desk.window->actions().specs().size());
  // Every command is found by its own name.
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    const auto ids = desk::findCommands(desk.window->actions(), desk::plainText(spec.text));
    INFO(spec.id.toStdString());
    CHECK(std::find(ids.begin(), ids.end(), spec.id) != ids.end());
  }
}

TEST_CASE("the command search runs a command by keyboard alone and gives the focus back", "[habits][search]") {
  Desk desk;
  desk.window->openPath(desk.file("find"));
  desk.window->activateWindow();
  desk.window->headSheet().setFocus();
  QTest::keyClick(desk.window.get(), Qt::Key_F1);
  desk::CommandSearch& search = desk.window->search();
  REQUIRE(search.isVisible());
  CHECK(QApplication::activeModalWidget() == nullptr);
  CHECK(search.field()->hasFocus());
  QTest::keyClicks(search.field(), QStringLiteral("look"));
  REQUIRE(search.list()->count() > 1);
  const int before = search.list()->currentRow();
  QTest::keyClick(search.field(), Qt::Key_Down);
  CHECK(search.list()->currentRow() == before + 1);
  QTest::keyClick(search.field(), Qt::Key_Up);
  search.field()->setText(QStringLiteral("diagram placement only"));
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK_FALSE(search.isVisible());
  CHECK(desk.window->viewState().layer() == document::Layer::Diagram);
  CHECK(desk.window->headSheet().hasFocus());

  QTest::keyClick(desk.window.get(), Qt::Key_F1);
  CHECK(search.field()->text().isEmpty());
  QTest::keyClick(search.field(), Qt::Key_Escape);
  CHECK_FALSE(search.isVisible());
  CHECK(desk.window->headSheet().hasFocus());
}

TEST_CASE("the command search says when nothing matches, and why a command is off", "[habits][search]") {
  Desk desk;
  desk::CommandSearch& search = desk.window->search();
  search.open();
  search.field()->setText(QStringLiteral("zebra"));
  CHECK(search.note().contains(QStringLiteral("zebra")));
  CHECK(search.list()->isHidden());
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK(search.isVisible());
  search.field()->setText(QStringLiteral("duplicate"));
  CHECK(search.note().contains(QStringLiteral("Select a piece, a section or a note first")));
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK(search.isVisible());  // nothing ran
  CHECK(desk.window->controller().document().pieces().empty());
  CHECK(search.geometry().right() < desk.window->width());
}

TEST_CASE("every command teaches in its tip, and says why it is off", "[habits]") {
  Desk desk;
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK(spec.tip.split(u' ').size() >= 3);
    CHECK(spec.tip.compare(desk::plainText(spec.text), Qt::CaseInsensitive) != 0);
    const QAction* action = desk.window->actions().action(spec.id);
    CHECK(action->toolTip().startsWith(spec.tip));
    if (!action->isEnabled()) CHECK_FALSE(desk.window->actions().whyNot(spec.id).isEmpty());
    if (!spec.shortcut.isEmpty())
      CHECK(action->toolTip().contains(spec.shortcut.toString(QKeySequence::NativeText)));
  }
  CHECK(actionOf(desk, "piece.remove")->toolTip().contains(QStringLiteral("Select a piece, a section or a note first")));
  desk.window->openPath(desk.file("tip"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK_FALSE(actionOf(desk, "piece.remove")->toolTip().contains(QStringLiteral("first")));
}
