// Choices in the window: the card, its commands, aims beside the readings, and two
// choices side by side.
#include <QLabel>
#include <QTableWidget>

#include "app/cards/choices_card.h"
#include "app/cards/reading_card.h"
#include "app/cards/target_words.h"
#include "app/desk/card_column.h"
#include "app/desk/compare_picture.h"
#include "app/desk/compare_view.h"
#include "app/desk/readings_strip.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/edits.h"
#include "engine/plan/plan_words.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using combdraft::tests::Desk;
using desk::CardColumn;
using desk::CompareView;

namespace {

// Today reads level 5; a choice one level more for each piece.
live::LookService::Passes countingPasses() {
  const auto pass = [](const plan::Plan& plan, const look::LookSettings& settings,
                       const std::vector<look::PictureRequest>&, std::stop_token) -> Result<look::LookFrame> {
    look::Readings readings;
    const bool today = settings.subject == look::Subject::Today;
    readings.whole.level = 5 + (today ? 0.0 : static_cast<double>(plan.pieces(settings.choice).size()));
    readings.whole.lightness = 6 * readings.whole.level;
    readings.whole.b = 20;
    readings.whole.seen_mm2 = 9000;
    for (int i = 0; i < look::kRegions; ++i) {
      look::RegionReading region;
      region.region = static_cast<look::Region>(i);
      if (region.region != look::Region::Nape) region.whole = readings.whole;
      region.contrast.verdict = look::ContrastVerdict::OneTone;
      readings.regions.push_back(region);
    }
    look::LookFrame frame;
    frame.readings = std::make_shared<const look::Readings>(readings);
    return frame;
  };
  return {pass, pass};
}

struct Chooser : Desk {
  Chooser() {
    window.reset();
    window = std::make_unique<desk::MainWindow>(
        desk::DeskPlaces{dir.filePath(QStringLiteral("settings.ini")), dir.filePath(QStringLiteral("recovery")),
                         patterns()},
        countingPasses);
    window->resize(1180, 820);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->openPath(file("Choices"));
    REQUIRE(isFresh());
  }
  document::DocumentController& controller() { return window->controller(); }
  const plan::Plan& plan() { return controller().document(); }
  cards::ChoicesCard& card() { return *window->cards().choicesCard(); }
  QAction* action(const char* id) { return window->actions().action(QLatin1String(id)); }
  CompareView& compare() { return window->compareView(); }
  QString cell(int row, int column) { return compare().table()->item(row, column)->text(); }
  bool settled(int side, const QString& level) {
    return QTest::qWaitFor([&] {
      return compare().stateText(side).isEmpty() && cell(0, side == 0 ? CompareView::Left : CompareView::Right).startsWith(level);
    }, 5000);
  }
};

}  // namespace

TEST_CASE("choices are copied, named, chosen and taken away on their card", "[desk][choice]") {
  Chooser desk;
  const plan::Plan before = desk.plan();
  CHECK_FALSE(desk.action("choice.remove")->isEnabled());
  CHECK(desk.window->actions().whyNot(QStringLiteral("choice.remove")).contains(QLatin1String("second choice")));
  CHECK_FALSE(desk.card().removeButton()->isEnabled());
  desk.action("choice.copy")->trigger();
  CHECK(desk.window->cards().current() == CardColumn::Card::Choices);
  REQUIRE(desk.card().list()->count() == 2);
  CHECK(desk.plan().info().activeChoice == "choice-2");
  CHECK(desk.card().list()->item(1)->text() == QStringLiteral("\u25CF Choice B, 1 piece"));
  CHECK(desk.card().list()->item(0)->text() == QStringLiteral("\u25CB Choice A, 1 piece"));
  CHECK(desk.action("view.choicesCard")->iconText() == QLatin1String("Choice B"));

  // The name: one that is taken is refused, and says why.
  controls::TextField* name = desk.card().name();
  const auto type = [&](const char* text) {
    name->edit()->setFocus();
    name->edit()->selectAll();
    QTest::keyClicks(name->edit(), QLatin1String(text));
    QTest::keyClick(name->edit(), Qt::Key_Return);
  };
  type("A");
  CHECK(name->problem().contains(QLatin1String("Another choice")));
  CHECK(desk.plan().find<plan::Choice>("choice-2")->name == "B");
  type("softer");
  CHECK(desk.plan().find<plan::Choice>("choice-2")->name == "softer");

  // Choosing a line works on it; several in a row are one undo step.
  const int steps = desk.controller().undoStack().count();
  desk.card().list()->setCurrentRow(0);
  CHECK(desk.plan().info().activeChoice == "choice-1");
  desk.action("choice.next")->trigger();
  desk.action("choice.next")->trigger();
  CHECK(desk.plan().info().activeChoice == "choice-1");
  CHECK(desk.controller().undoStack().count() <= steps + 1);

  desk.card().emptyButton()->click();
  CHECK(desk.plan().pieces().empty());
  CHECK(desk.plan().find<plan::Choice>("choice-3")->name == "B");
  desk.card().removeButton()->click();
  CHECK(desk.card().list()->count() == 2);
  while (desk.controller().undoStack().canUndo()) desk.controller().undoStack().undo();
  CHECK(desk.plan() == before);
  CHECK(desk.card().list()->count() == 1);
}

TEST_CASE("what is selected is taken into another choice", "[desk][choice]") {
  Chooser desk;
  desk.action("choice.empty")->trigger();
  desk.card().activate("choice-1");
  CHECK_FALSE(desk.action("choice.take")->isEnabled());
  CHECK_FALSE(desk.card().takeButton()->isEnabled());
  desk.controller().select(document::Selection::one("piece-1"));
  REQUIRE(desk.action("choice.take")->isEnabled());
  desk.action("choice.take")->trigger();
  CHECK(desk.plan().pieces("choice-2").size() == 1);
  CHECK(desk.plan().pieces("choice-1").size() == 1);
  CHECK(desk.plan().info().activeChoice == "choice-1");
  CHECK(desk.window->messages().text().contains(QLatin1String("Choice B has 1 piece more")));
}

TEST_CASE("aims stand beside the readings and say in shape and words when missed", "[desk][choice][target]") {
  Chooser desk;
  const auto regions = plan::targetRegions();
  const auto at = [&](std::string_view region) {
    return static_cast<int>(std::find(regions.begin(), regions.end(), region) - regions.begin());
  };
  cards::TargetEditor& editor = *desk.card().targets();
  desk.action("choice.aim")->trigger();
  CHECK(desk.window->cards().current() == CardColumn::Card::Choices);
  CHECK(editor.which()->currentIndex() == 0);
  const auto type = [](controls::NumberField* field, const char* text) {
    field->edit()->setFocus();
    field->edit()->selectAll();
    QTest::keyClicks(field->edit(), QLatin1String(text));
    QTest::keyClick(field->edit(), Qt::Key_Return);
  };
  type(editor.level(), "8.5");  // it reads 6
  CHECK(desk.plan().find<plan::Choice>("choice-1")->targets.at("whole").level == 8.5);
  REQUIRE(desk.isFresh());
  const auto& tiles = desk.window->readings().tiles();
  CHECK(tiles[0]->aimText() == QStringLiteral("aim 8.5\n\u25BC 2.5 too dark"));
  CHECK(tiles[0]->sentence().contains(QStringLiteral("aim 8.5: \u25BC 2.5 too dark")));
  CHECK(tiles[1]->aimText().isEmpty());
  type(editor.level(), "6.2");
  REQUIRE(desk.isFresh());
  CHECK(tiles[0]->aimText() == QStringLiteral("aim 6.2\n\u2713 met"));

  const int crown = at("crown");
  editor.turnTo(crown);
  editor.contrast()->setCurrentIndex(1);
  Q_EMIT editor.contrast()->activated(1);
  REQUIRE(desk.isFresh());
  CHECK(tiles[static_cast<std::size_t>(crown)]->aimText() == QStringLiteral("aim two clear levels\n\u2260 another contrast"));
  // Not seen: the aim stands alone.
  editor.turnTo(at("nape"));
  type(editor.level(), "7");
  REQUIRE(desk.isFresh());
  CHECK(tiles[static_cast<std::size_t>(at("nape"))]->aimText() == QLatin1String("aim 7"));
  CHECK(editor.listText() == QLatin1String("Whole head: 6.2\nCrown: two clear levels\nNape: 7"));

  CHECK(editor.cautionText().isEmpty());
  type(editor.brightest(), "6");
  CHECK(editor.cautionText().contains(QLatin1String("contradicts itself")));
  type(editor.level(), "13");
  CHECK_FALSE(editor.level()->problem().isEmpty());
  CHECK(desk.plan().find<plan::Choice>("choice-1")->targets.at("nape").level == 7.0);
  editor.clear()->click();
  CHECK_FALSE(desk.plan().find<plan::Choice>("choice-1")->targets.count("nape"));
  CHECK_FALSE(editor.clear()->isEnabled());
  desk.controller().undoStack().undo();
  CHECK(desk.plan().find<plan::Choice>("choice-1")->targets.count("nape"));
}

TEST_CASE("a reading leads to its aim and shows it", "[desk][choice][target]") {
  Chooser desk;
  const auto& tiles = desk.window->readings().tiles();
  QTest::mouseClick(tiles[4], Qt::LeftButton);
  cards::ReadingCard& reading = *desk.window->cards().readingCard();
  REQUIRE(desk.window->cards().current() == CardColumn::Card::Reading);
  CHECK(reading.aimButton()->text() == QStringLiteral("Set an aim\u2026"));
  reading.aimButton()->click();
  REQUIRE(desk.window->cards().current() == CardColumn::Card::Choices);
  cards::TargetEditor& editor = *desk.card().targets();
  CHECK(editor.which()->currentIndex() == 4);
  CHECK(editor.which()->currentText() == QLatin1String("Top"));
  QTest::keyClicks(editor.level()->edit(), QStringLiteral("8"));
  QTest::keyClick(editor.level()->edit(), Qt::Key_Return);
  REQUIRE(desk.isFresh());
  CHECK(desk.plan().find<plan::Choice>("choice-1")->targets.at("top").level == 8.0);
  CHECK(reading.aimButton()->text() == QStringLiteral("Aim 8: \u25BC 2 too dark"));
  CHECK(reading.text().contains(QStringLiteral("Aim 8: \u25BC 2 too dark")));
  reading.turnTo(1);
  CHECK(reading.aimButton()->text() == QStringLiteral("Set an aim\u2026"));
}

TEST_CASE("today and a choice stand side by side", "[desk][choice][compare]") {
  Chooser desk;
  desk.action("choice.compare")->trigger();
  REQUIRE(desk.compare().isVisible());
  CHECK_FALSE(desk.window->readings().isVisible());
  CHECK(desk.compare().side(0)->currentText() == QLatin1String("Today"));
  CHECK(desk.compare().side(1)->currentText() == QLatin1String("Choice A"));
  REQUIRE(desk.settled(0, QStringLiteral("Level 5")));
  REQUIRE(desk.settled(1, QStringLiteral("Level 6")));
  CHECK(desk.cell(0, CompareView::Difference) == QStringLiteral("\u25B2 1 lighter"));
  const int nape = desk.compare().table()->rowCount() - 1;
  CHECK(desk.cell(nape, CompareView::Left) == QLatin1String("not seen"));
  CHECK(desk.cell(nape, CompareView::Difference) == QStringLiteral("\u2013"));
  // Nothing more is asked for once both are known.
  const int asked = desk.window->lookService().requestsPosted();
  QTest::qWait(100);
  CHECK(desk.window->lookService().requestsPosted() == asked);

  // An edit shows at once, on its own side.
  plan::Piece piece;
  piece.line = {{30, 60}, {60, 60}};
  desk.controller().edit(plan::applied(desk.plan(), plan::addPiece(desk.plan(), piece)), QStringLiteral("Add"));
  REQUIRE(desk.settled(1, QStringLiteral("Level 7")));
  REQUIRE(desk.settled(0, QStringLiteral("Level 5")));
  CHECK(desk.cell(0, CompareView::Difference) == QStringLiteral("\u25B2 2 lighter"));

  // The aim stands beside it.
  plan::Target target;
  target.level = 5.0;
  desk.controller().edit(plan::applied(desk.plan(), plan::setTarget(desk.plan(), "choice-1", "whole", target)),
                         QStringLiteral("Aim"));
  CHECK(desk.cell(0, CompareView::Wanted) == QStringLiteral("5  \u25B2 2 too light"));

  QTest::keyClick(desk.compare().side(0), Qt::Key_Escape);
  CHECK_FALSE(desk.compare().isVisible());
  CHECK(desk.window->readings().isVisible());
  REQUIRE(desk.isFresh());
  CHECK(desk.window->readings().tiles()[0]->sentence().contains(QLatin1String("Level 7")));
}

TEST_CASE("two choices stand side by side, and one of them goes", "[desk][choice][compare]") {
  Chooser desk;
  desk.action("choice.empty")->trigger();
  desk.card().compareButton()->click();
  CHECK(desk.compare().side(0)->currentText() == QLatin1String("Choice A"));
  CHECK(desk.compare().side(1)->currentText() == QLatin1String("Choice B"));
  REQUIRE(desk.settled(0, QStringLiteral("Level 6")));
  REQUIRE(desk.settled(1, QStringLiteral("Level 5")));
  CHECK(desk.cell(0, CompareView::Difference) == QStringLiteral("\u25BC 1 darker"));
  // The same choice twice differs in nothing.
  desk.compare().side(0)->setCurrentIndex(2);
  REQUIRE(desk.settled(0, QStringLiteral("Level 5")));
  CHECK(desk.cell(0, CompareView::Difference) == QLatin1String("the same"));
  desk.card().removeButton()->click();
  REQUIRE(desk.settled(0, QStringLiteral("Level 6")));
  CHECK(desk.compare().side(0)->count() == 2);
  // Another view asks for its picture; a tool leads back to the sheet.
  desk.compare().viewChoice()->setCurrentIndex(0);
  REQUIRE(desk.settled(1, QStringLiteral("Level 6")));
  desk.action("tool.piece")->trigger();
  CHECK_FALSE(desk.compare().isVisible());
}

TEST_CASE("the comparison does not make the window taller while it is hidden", "[desk][choice][compare]") {
  Chooser desk;
  plan::Target target;
  target.level = 5.0;
  desk.controller().edit(plan::applied(desk.plan(), plan::setTarget(desk.plan(), "choice-1", "whole", target)),
                         QStringLiteral("Aim"));
  desk.window->resize(1366, 768);
  QApplication::processEvents();
  CHECK(desk.window->height() == 768);
  const QWidget& strip = desk.window->readings();
  CHECK(strip.mapTo(desk.window.get(), QPoint(0, strip.height())).y() <= 768);
  CHECK(strip.height() >= strip.minimumSizeHint().height());
}

TEST_CASE("every window works the look out by itself", "[desk][live]") {
  QTemporaryDir dir;
  int made = 0;
  const auto maker = [&made] {
    ++made;
    return countingPasses();
  };
  desk::MainWindow window({dir.filePath(QStringLiteral("settings.ini")), dir.filePath(QStringLiteral("recovery")),
                           dir.filePath(QStringLiteral("patterns"))},
                          maker);
  CHECK(made == 1);
  const std::unique_ptr<desk::MainWindow> second(window.newWindow());
  CHECK(made == 2);  // an engine is for one thread at a time
}

TEST_CASE("no difference is claimed below one L*", "[desk][choice][compare]") {
  look::Reading left, right;
  left.lightness = 40, left.level = 7.5;
  right = left;
  right.lightness = 40.9, right.level = 7.65;
  CHECK(desk::differenceText(left, right) == QLatin1String("the same"));
  right.lightness = 41.2, right.level = 7.7;
  CHECK(desk::differenceText(left, right) == QStringLiteral("\u25B2 0.2 lighter"));
  CHECK(desk::differenceText(right, left) == QStringLiteral("\u25BC 0.2 darker"));
}
