// Habits people expect: what needs a look, hints, history, rows to touch.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QTreeWidget>
#include <QUndoView>

#include "app/desk/card_column.h"
#include "app/desk/command_search.h"
#include "app/desk/findings_list.h"
#include "app/desk/hint_bar.h"
#include "app/desk/keys_page.h"
#include "app/desk/menu_corner.h"
#include "app/desk/preferences_page.h"
#include "app/desk/start_page.h"
#include "app/sheet/head_sheet.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using tests::actionOf;
using tests::Desk;

TEST_CASE("the corner says which file this is and whether it holds what is here", "[habits][keeping]") {
  Desk desk;
  desk.window->resize(1180, 820);
  CHECK(desk.window->corner().fileText().isEmpty());  // on the start page
  desk.window->openPath(desk.file("friday"));
  const auto isInside = [&] { return desk.window->menuBar()->rect().contains(desk.window->corner().geometry()); };
  CHECK(isInside());
  desk.window->corner().setFindings({}, QStringLiteral("1"), {});  // what is shorter now keeps its place
  QTest::qWait(50);
  CHECK(isInside());
  CHECK(desk.window->corner().fileText() == QStringLiteral("friday.json: saved"));
  desk.edit();
  CHECK(desk.window->corner().fileText() == QStringLiteral("friday.json: not saved"));
  actionOf(desk, "file.save")->trigger();
  CHECK(desk.window->corner().fileText() == QStringLiteral("friday.json: saved"));
  desk.window->resize(760, 620);
  CHECK(QTest::qWaitFor([&] { return desk.window->corner().fileText().isEmpty(); }, 2000));  // the menus go first
  desk.window->resize(1180, 820);
  CHECK(QTest::qWaitFor([&] { return !desk.window->corner().fileText().isEmpty(); }, 2000));
}

TEST_CASE("what needs a look is counted, listed, and leads to its pieces", "[habits][findings]") {
  Desk desk;
  const QString path = desk.file("look");
  CHECK_FALSE(desk.window->corner().findings()->isVisible());
  desk.window->openPath(path);
  REQUIRE(desk.window->corner().findings()->isVisible());
  plan::Plan plan = desk.window->controller().document();
  CHECK(plan::validate(plan).empty());
  // Nothing reads as an all-clear: before the check is through it says so, then what was looked at.
  const auto says = [&](const char* words) { return desk.window->corner().findings()->text().contains(QLatin1String(words)); };
  CHECK(says("is being checked"));
  CHECK(QTest::qWaitFor([&] { return says("Only the drawing was checked"); }, 3000));

  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.order = 4;
  for (head::ScalpPoint& point : piece.line) point.drop_deg -= 12;
  plan.put("piece-2", piece);
  for (head::ScalpPoint& point : piece.line) point.drop_deg += 24;
  plan.put("piece-3", piece);  // two with number 4, apart on the head
  desk.window->controller().edit(plan, QStringLiteral("Add"));
  const auto found = plan::validate(plan);
  REQUIRE(found.size() == 1);
  CHECK(desk.window->corner().findings()->text().contains(QStringLiteral("Needs a look: 1")));
  desk.window->corner().findings()->click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Findings);
  QListWidget* list = desk.window->cards().findings()->list();
  REQUIRE(list->isVisible());
  CHECK(list->item(0)->text().contains(QStringLiteral("Worth a look")));
  CHECK(list->item(0)->text().contains(QStringLiteral("Piece 4")));
  list->setFocus();
  list->setCurrentRow(0);
  QTest::keyClick(list, Qt::Key_Return);
  CHECK(desk.window->controller().selection().ids() == found.front().items);
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Findings);  // the list stays

  piece.section = "nobody";
  plan.put("piece-1", piece);
  desk.window->controller().edit(plan, QStringLiteral("Change"));
  CHECK(desk.window->corner().findings()->text().contains(QStringLiteral("Wrong: 1")));
  CHECK(list->item(0)->text().contains(QStringLiteral("Wrong")));
  CHECK(list->item(0)->text().contains(QStringLiteral("nobody")));
  desk.window->controller().undoStack().setIndex(0);
  CHECK(list->isHidden());
  CHECK(says("is being checked"));  // an edit's overlaps are not known at once
  desk.window->corner().findings()->click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Piece);
}

TEST_CASE("hints come once, take no focus, and can be put away for good", "[habits][hints]") {
  Desk desk;
  desk::HintBar& bar = desk.window->hints();
  CHECK_FALSE(bar.isVisible());
  desk.window->openPath(desk.file("hints"));
  REQUIRE(bar.isVisible());
  CHECK(desk.window->headSheet().hasFocus());
  CHECK(QApplication::activeModalWidget() == nullptr);
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(bar.shownId() == QStringLiteral("handles"));
  bar.gotIt()->click();
  CHECK_FALSE(bar.isVisible());
  desk.window->controller().select({});
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(bar.shownId() != QStringLiteral("handles"));
  desk.window->close();
  desk.open();
  desk.window->openPath(desk.file("hints"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(desk.window->hints().shownId() != QStringLiteral("handles"));
  REQUIRE(desk.window->hints().isVisible());
  desk.window->hints().noMore()->click();
  desk.edit();
  CHECK_FALSE(desk.window->hints().isVisible());

  actionOf(desk, "edit.preferences")->trigger();
  desk::PreferencesPage& page = desk.window->preferencesPage();
  CHECK_FALSE(page.hints()->isChecked());
  REQUIRE(page.hintsAgain()->isEnabled());
  page.hintsAgain()->click();
  CHECK(page.hints()->isChecked());
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(desk.window->hints().shownId() == QStringLiteral("handles"));
}

TEST_CASE("the history names what was done and goes back to a chosen line", "[habits][history]") {
  Desk desk;
  desk.window->openPath(desk.file("history"));
  desk.edit();
  actionOf(desk, "piece.add")->trigger();
  REQUIRE(desk.window->controller().document().pieces().size() == 2);
  actionOf(desk, "view.done")->trigger();
  auto* history = desk.window->cards().findChild<QUndoView*>();
  REQUIRE(history);
  REQUIRE(history->isVisible());
  REQUIRE(history->model()->rowCount() == 3);
  CHECK(history->model()->index(0, 0).data().toString() == QStringLiteral("As it was opened"));
  CHECK(history->model()->index(1, 0).data().toString() == QStringLiteral("Change white hair"));
  CHECK(history->model()->index(2, 0).data().toString() == QStringLiteral("Add a piece"));
  CHECK(history->visualRect(history->model()->index(1, 0)).height() >= 28);
  history->setFocus();
  QTest::keyClick(history, Qt::Key_Home);
  CHECK(desk.window->controller().document().pieces().size() == 1);
  CHECK(desk.window->controller().document().hair().white_frac == 0.1);
  QTest::keyClick(history, Qt::Key_End);
  CHECK(desk.window->controller().document().pieces().size() == 2);
}

TEST_CASE("rows of lists are large enough to touch", "[habits][access]") {
  Desk desk;
  desk.window->openPath(desk.file("rows"));
  actionOf(desk, "file.start")->trigger();
  for (QListWidget* list : {desk.window->startPage().recentList(), desk.window->startPage().exampleList()}) {
    REQUIRE(list->count() > 0);
    CHECK(list->visualItemRect(list->item(0)).height() >= 28);
  }
  desk.window->search().open();
  CHECK(desk.window->search().list()->visualItemRect(desk.window->search().list()->item(0)).height() >= 28);
  actionOf(desk, "edit.keys")->trigger();
  QTreeWidget* keys = desk.window->keysPage().list();
  CHECK(keys->visualItemRect(keys->topLevelItem(0)).height() >= 28);
}
