// The formula card's mixture, the work list and the log of an appointment.
#include <catch2/catch.hpp>

#include <QRegularExpression>
#include <QSignalSpy>

#include "app/appointment/appointment_page.h"
#include "app/cards/formula_card.h"
#include "app/cards/mix_rows.h"
#include "app/paint/amount_words.h"
#include "app/paint/work_words.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/work/log_text.h"
#include "engine/work/outcome.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::appointment {
using namespace paint;
namespace {

using document::DocumentController;
using tests::buttonNamed;
using tests::numberNamed;
using tests::typeInto;
using work::Tap;

bool hasPromise(const QString& text) {
  static const QRegularExpression words(QStringLiteral("\\b(ready|done|safe|safely|guarantee\\w*|promised?)\\b"), QRegularExpression::CaseInsensitiveOption);
  QString rest = text;
  rest.remove(QStringLiteral("which is no promise"));
  return words.match(rest).hasMatch();
}

QString allText(const QWidget& widget) {
  QStringList texts;
  for (const auto* label : widget.findChildren<QLabel*>()) texts << label->text();
  for (const auto* button : widget.findChildren<QAbstractButton*>()) texts << button->text() << button->toolTip();
  for (const auto* list : widget.findChildren<QListWidget*>())
    for (int i = 0; i < list->count(); ++i) texts << list->item(i)->text();
  for (const auto* table : widget.findChildren<QTableWidget*>())
    for (int row = 0; row < table->rowCount(); ++row) texts << table->item(row, 2)->text();
  return texts.join(u'\n');
}

}  // namespace

TEST_CASE("a mixture is typed row by row and each value is one undo", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  cards::FormulaCard card(controller);
  card.showFormula("formula-1");
  const auto formula = [&] { return *controller.document().find<plan::Formula>("formula-1"); };
  buttonNamed(card, QStringLiteral("Add product"))->click();
  buttonNamed(card, QStringLiteral("Add developer"))->click();
  REQUIRE(formula().developers.size() == 1);
  CHECK_FALSE(formula().developers[0].strength);
  CHECK_FALSE(formula().products[0].parts);
  CHECK(numberNamed(card, QStringLiteral("Strength of developer 1"))->edit()->text().isEmpty());
  typeInto(numberNamed(card, QStringLiteral("Strength of developer 1"))->edit(), QStringLiteral("6"));
  typeInto(numberNamed(card, QStringLiteral("Parts of developer 1"))->edit(), QStringLiteral("2"));
  typeInto(numberNamed(card, QStringLiteral("Parts of product 1"))->edit(), QStringLiteral("1"));
  CHECK(formula().developers[0].strength == 6);
  CHECK(formula().developers[0].parts == 2);
  CHECK(formula().products[0].parts == 1);
  auto* says = card.findChild<QLabel*>(QStringLiteral("strength"));
  REQUIRE(says);
  CHECK(says->text().contains(QStringLiteral("19.77 volumes exactly (label: 20 volumes)")));
  typeInto(numberNamed(card, QStringLiteral("Strength of developer 1"))->edit(), QStringLiteral("14"));
  CHECK(says->text().contains(QStringLiteral("Outside the EU limit")));
  CHECK(says->text().contains(QStringLiteral("no sign that it suits this hair")));
  typeInto(numberNamed(card, QStringLiteral("Strength of developer 1"))->edit(), QStringLiteral("60"));
  CHECK(says->text().contains(QStringLiteral("Look at the label again")));
  CHECK(controller.undoStack().count() == 7);
  typeInto(numberNamed(card, QStringLiteral("A bowl may be used for"))->edit(), QStringLiteral("0"));
  CHECK_FALSE(formula().leaflet.workingLife_min);  // refused and still in the field
  CHECK(numberNamed(card, QStringLiteral("A bowl may be used for"))->edit()->text() == QStringLiteral("0"));
  typeInto(numberNamed(card, QStringLiteral("A bowl may be used for"))->edit(), QStringLiteral("25"));
  CHECK(formula().leaflet.workingLife_min == 25);
  typeInto(numberNamed(card, QStringLiteral("Longest time on the hair"))->edit(), QStringLiteral("45"));
  CHECK(formula().leaflet.longestTime_min == 45);
  buttonNamed(card, QStringLiteral("Remove product 1"))->click();
  CHECK(formula().products.empty());
  const auto back = plan::readPlan(plan::writePlan(controller.document()));
  REQUIRE(back.ok());
  CHECK(*back == controller.document());
  while (controller.undoStack().canUndo()) controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("an empty field of a mixture shows no example figure", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  cards::FormulaCard card(controller);
  card.showFormula("formula-1");
  for (const char* add : {"Add product", "Add developer", "Add additive"}) buttonNamed(card, QString::fromLatin1(add))->click();
  for (const auto* edit : card.findChildren<QLineEdit*>()) {
    INFO(edit->accessibleName().toStdString() << ": " << edit->placeholderText().toStdString());
    CHECK_FALSE(edit->placeholderText().contains(QRegularExpression(QStringLiteral("[0-9]"))));
  }
}

TEST_CASE("the work list shows order bowls and what needs a look", "[appointment]") {
  DocumentController controller(typedPlan(6, {}));
  AppointmentPage page(controller);
  page.resize(1180, 800);
  page.show();
  page.turnTo(AppointmentPage::View::WorkList);
  WorkListView& view = page.workList();
  REQUIRE(view.list());
  CHECK(view.list()->order.size() == 7);  // eight pieces, one of them left out
  // Every step stands in the table; a piece's two formulas share a row.
  const auto lines = [&] { return work::linesOf(view.list()->timeline); };
  CHECK(view.table()->rowCount() == static_cast<int>(lines().size()));
  CHECK(lines().size() == view.list()->timeline.steps.size());  // no piece of this plan has two formulas
  REQUIRE(waitForCount(page));
  CHECK(view.sideText().contains(QStringLiteral("powder")));
  CHECK(view.sideText().contains(QStringLiteral("no bowl is planned anew")));       // formula B has no life typed
  CHECK(view.sideText().contains(QStringLiteral("no formula is named")));
  CHECK(view.list()->timeline.bowls.size() >= 3);
  typeInto(view.foils()->edit(), QStringLiteral("60, 120"));
  CHECK(view.sideText().contains(QStringLiteral("foils of")));
  typeInto(view.foils()->edit(), QStringLiteral("60, wide"));
  CHECK(view.foils()->problem().contains(QStringLiteral("Widths of")));
  const double alone = view.list()->timeline.lastIn_min;
  buttonNamed(page, QStringLiteral("Hands: Two"))->click();
  CHECK(view.list()->timeline.lastIn_min < alone);
  // A step chosen in the list chooses its piece; arrow keys move the moment.
  REQUIRE(view.table()->rowCount() == static_cast<int>(lines().size()));
  for (int row = 0; row < view.table()->rowCount(); ++row)
    if (view.list()->timeline.steps[lines()[static_cast<std::size_t>(row)].front()].piece == "piece-3") view.table()->setCurrentCell(row, 0);
  CHECK(controller.selection() == document::Selection::one("piece-3"));
  view.strip()->setMoment(0);
  QTest::keyClick(view.strip(), Qt::Key_Right, Qt::ShiftModifier);
  CHECK(view.strip()->moment_min() == 5);
  CHECK(view.strip()->momentText().contains(QStringLiteral("oldest on the hair")));
  CHECK_FALSE(hasPromise(allText(page)));
}

TEST_CASE("a piece with two formulas has one row and its place beside its number", "[appointment]") {
  plan::Plan plan = typedPlan({}, {});
  for (const char* id : {"piece-1", "piece-2", "piece-3", "piece-4"}) {
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.handover_mm = 120;
    piece.end.formula = "formula-2";
    plan.put(id, piece);
  }
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  REQUIRE(view.list());
  const auto lines = work::linesOf(view.list()->timeline);
  REQUIRE(view.table()->rowCount() == static_cast<int>(lines.size()));
  CHECK(lines.size() < view.list()->timeline.steps.size());
  QStringList placed;
  for (int row = 0; row < view.table()->rowCount(); ++row) {
    const QString what = view.table()->item(row, 2)->text();
    if (what.startsWith(QStringLiteral("place piece 2,"))) placed << what;
    // The moment is the end of the row's last step.
    CHECK(view.table()->item(row, 0)->data(Qt::UserRole + 1).toDouble() == view.list()->timeline.steps[lines[static_cast<std::size_t>(row)].back()].to_min);
  }
  REQUIRE(placed.size() == 1);
  INFO(placed.front().toStdString());
  CHECK(placed.front().startsWith(QStringLiteral("place piece 2, back left, from")));  // on the wearer's left
  CHECK(placed.front().contains(QStringLiteral("from A, lightener: bowl 1 up to the handover, then from B, deepening colour: bowl 1")));
  CHECK(placed.front().contains(QRegularExpression(QStringLiteral("product [0-9.]+ and [0-9.]+ min old$"))));
}

TEST_CASE("the places in the work list follow the pieces", "[appointment]") {
  const plan::Plan plan = tests::demoPlan();
  PlaceBook places;
  CHECK(places.of("piece-2").isEmpty());
  places.take(plan, {"piece-1", "piece-2"});
  const QString left = places.of("piece-2");
  CHECK(left.endsWith(QStringLiteral("left")));
  CHECK(places.of("piece-1").endsWith(QStringLiteral("right")));
  CHECK(places.of("piece-3").isEmpty());  // not taken
  plan::Plan moved = plan;
  plan::Piece piece = *moved.find<plan::Piece>("piece-2");
  piece.line = plan.find<plan::Piece>("piece-1")->line;
  moved.put("piece-2", piece);
  places.take(moved, {"piece-2"});
  CHECK(places.of("piece-2") != left);
  CHECK(places.of("piece-1").isEmpty());
}

TEST_CASE("the work list says from where to where its grams may be and what it does not know", "[appointment]") {
  plan::Plan plan = tests::demoPlan();
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  REQUIRE(view.list());
  REQUIRE(waitForCount(page));
  CHECK(view.summaryText().contains(QRegularExpression(QStringLiteral("From [0-9.]+ to [0-9.]+ g mixed by the assumption's range; bowls here go by [0-9.]+ g"))));
  CHECK(view.sideText().contains(QStringLiteral("Thin weaves take more product")));
  CHECK(allText(view).contains(QStringLiteral("Wear gloves and keep the air moving")));
  CHECK(allText(view).contains(QStringLiteral("Minutes and grams are estimates")));
  work::MeasuredHead head;
  head.got[static_cast<std::size_t>(work::Factor::ProductPerHair)] = 4;
  page.setFactors({{head}});
  view.byFactors()->setChecked(true);
  CHECK(view.summaryText().contains(QStringLiteral("weighed on 1 head:")));
  work::MeasuredHead other = head;
  other.got[static_cast<std::size_t>(work::Factor::ProductPerHair)] = 6;
  page.setFactors({{head, other}});
  CHECK(view.summaryText().contains(QStringLiteral("weighed on 2 heads")));
  plan::PlanInfo info = plan.info();
  info.assumptions["amount.product_per_hair"] = 3;
  plan.put(plan::kPlanId, info);
  controller.edit(plan, QStringLiteral("product"));
  view.fill();
  REQUIRE(waitForCount(page));
  CHECK(view.summaryText().contains(QStringLiteral("typed under Assumptions of this plan")));
}

TEST_CASE("bowls under the least that is mixed are told once it is typed", "[appointment]") {
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  REQUIRE(waitForCount(page));
  const QString told = QStringLiteral("g at least, so more is left over");
  CHECK_FALSE(view.smallestBowl()->value());
  CHECK_FALSE(view.smallestBowl()->edit()->placeholderText().contains(QRegularExpression(QStringLiteral("[0-9]"))));
  CHECK_FALSE(view.sideText().contains(told));
  typeInto(view.smallestBowl()->edit(), QStringLiteral("900"));
  CHECK(view.settings().smallestBowl_g == 900);
  CHECK(view.sideText().contains(told));
  CHECK(view.sideText().contains(QStringLiteral("You mix 900 g at least")));
  typeInto(view.smallestBowl()->edit(), QString());
  CHECK_FALSE(view.sideText().contains(told));
}

TEST_CASE("a work list that found nothing is no all-clear and says nothing before it is worked out", "[appointment]") {
  DocumentController empty(plan::Plan::fresh(3));
  AppointmentPage page(empty);
  page.show();
  CHECK(page.workList().sideText().simplified().isEmpty());
  CHECK_FALSE(allText(page.workList()).contains(nothingFound()));
  CHECK(nothingFound().contains(QStringLiteral("says nothing about this hair")));
  CHECK_FALSE(hasPromise(nothingFound() + estimatesOnly() + glovesAndAir() + thinWeavesText() + changesLook()));
}

TEST_CASE("what would save time names pieces in no section by their place", "[appointment]") {
  DocumentController controller(tests::sixtyPlan());
  AppointmentPage page(controller);
  page.show();
  const QString side = page.workList().sideText();
  CHECK_FALSE(side.contains(QStringLiteral("in no section")));
  CHECK(side.contains(QRegularExpression(QStringLiteral("[0-9.]+ min: [0-9]+ pieces, (back|sides|crown|top|nape|front), "))));
  CHECK(side.contains(changesLook()));
  plan::Plan plan = tests::demoPlan();
  work::Saving saving{work::Saving::Kind::LeaveOut, "section-1", {"piece-1"}, 2, {}};
  CHECK(sectionName(plan, saving) == QStringLiteral("back"));
  saving = {work::Saving::Kind::LeaveOut, {}, {"piece-1", "piece-2"}, 2, plan::HairZone::Nape};
  CHECK(sectionName(plan, saving) == QStringLiteral("2 pieces, nape"));
}

TEST_CASE("the order by rule becomes the pieces' numbers in one undo", "[appointment]") {
  plan::Plan plan = typedPlan({}, {});
  plan::Hair hair = plan.hair();
  hair.porosity[static_cast<std::size_t>(plan::HairZone::Back)] = plan::Porosity::Resistant;
  plan.put(plan::kHairId, hair);
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  CHECK_FALSE(view.useOrder()->isEnabled());
  buttonNamed(page, QStringLiteral("Order: By rule"))->click();
  const auto ruled = view.list()->order;
  REQUIRE(view.useOrder()->isEnabled());
  view.useOrder()->click();
  CHECK(controller.undoStack().count() == 1);
  CHECK(work::workOrder(controller.document(), {}, work::OrderUse::AsPlanned) == ruled);
  controller.undoStack().undo();
  CHECK(controller.document() == plan);
}

TEST_CASE("a plan without pieces has an empty work list that says so", "[appointment]") {
  DocumentController controller(plan::Plan::fresh(3));
  AppointmentPage page(controller);
  page.show();
  CHECK(allText(page.workList()).contains(QStringLiteral("No piece is lightened or deepened yet")));
  page.turnTo(AppointmentPage::View::Log);
  page.log().button(Tap::Placed)->click();  // nothing is chosen
  CHECK(controller.document().info().logJson.empty());
}

TEST_CASE("taps are in the plan at once and outside undo", "[appointment][log]") {
  TestClock clock;
  DocumentController controller(typedPlan(10, 30));
  AppointmentPage page(controller, nullptr, clock.clock());
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  LogView& view = page.log();
  const QSignalSpy tapped(&page, &AppointmentPage::tapped);
  typeInto(view.who(), QStringLiteral("M"));
  view.button(Tap::BowlMixed)->click();
  clock.minute = 3;
  CHECK(view.pieces()->currentRow() == 0);
  view.button(Tap::Placed)->click();
  CHECK(view.pieces()->currentRow() == 1);  // goes on by itself
  view.pieces()->setCurrentRow(3);          // the planned order is not followed
  clock.minute = 5;
  view.button(Tap::Placed)->click();
  CHECK(tapped.count() == 3);
  auto log = logOf(controller);
  REQUIRE(log.events.size() == 3);
  CHECK(log.events[0].formula == "formula-1");
  CHECK(log.events[1].pieces == std::vector<plan::ItemId>{"piece-1"});
  CHECK(log.events[2].pieces == std::vector<plan::ItemId>{"piece-4"});
  CHECK(log.events[2].who == "M");
  CHECK(log.events[2].at_s == Approx(300));
  CHECK(controller.isModified());
  CHECK(controller.undoStack().count() == 0);
  view.takeBack()->click();
  log = logOf(controller);
  CHECK(log.events.size() == 3);
  CHECK(log.events[2].takenBack);
  // An edit and its undo leave the log alone.
  plan::Plan next = controller.document();
  plan::Hair hair = next.hair();
  hair.white_frac = 0.5;
  next.put(plan::kHairId, hair);
  controller.edit(next, QStringLiteral("white"));
  controller.undoStack().undo();
  CHECK(logOf(controller) == log);
}

TEST_CASE("at a typed limit the log says product off and before it only look", "[appointment][log]") {
  TestClock clock;
  DocumentController controller(typedPlan(10, 30));
  AppointmentPage page(controller, nullptr, clock.clock());
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  LogView& view = page.log();
  view.button(Tap::BowlMixed)->click();
  view.button(Tap::Placed)->click();
  clock.minute = 12;
  view.fill();
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("12:00 on the hair; look; the typed limit, not a target, is in 18:00")));
  CHECK(view.firstText().endsWith(QStringLiteral(": look")));
  CHECK(allText(view).contains(QStringLiteral("longer than it may be used as typed from its leaflet. See the leaflet.")));
  clock.minute = 30;
  view.fill();
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("longest time typed from the leaflet reached: product off now")));
  CHECK(view.firstText().contains(QStringLiteral("longest time typed from the leaflet reached: product off now")));
  view.pieces()->setCurrentRow(0);
  view.button(Tap::TakenOut)->click();
  CHECK(view.firstText().contains(QStringLiteral("longest time typed from the leaflet reached: not rinsed yet")));
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("30:00 on the hair; longest time typed from the leaflet reached: not rinsed yet")));
  view.pieces()->setCurrentRow(0);
  view.button(Tap::Rinsed)->click();
  CHECK(view.firstText() == QStringLiteral("nothing is on the hair"));
  CHECK(view.safetyText().contains(QStringLiteral("Pain, burning, swelling: rinse the product off at once")));
  CHECK(allText(view).contains(QStringLiteral("makes it look lighter than it is")));
  CHECK_FALSE(hasPromise(allText(page)));
  // Without a typed limit there is no timer.
  DocumentController untyped(typedPlan({}, {}));
  AppointmentPage other(untyped, nullptr, clock.clock());
  other.show();
  other.turnTo(AppointmentPage::View::Log);
  other.log().button(Tap::Placed)->click();
  clock.minute = 500;
  other.log().fill();
  CHECK(other.log().pieces()->item(0)->text().contains(QRegularExpression(QStringLiteral(": placed at \\d\\d:\\d\\d; look$"))));
  CHECK(other.log().firstText().contains(QRegularExpression(QStringLiteral(": placed at \\d\\d:\\d\\d$"))));
}

TEST_CASE("an appointment played with a kill a piece skipped and a tap taken back", "[appointment][log]") {
  // The clock runs as fast as the test; what a kill leaves is what was written.
  TestClock clock;
  std::string onDisk;
  const auto taps = [&](AppointmentPage& page, int from, int to, int skipped) {
    for (int row = from; row <= to; ++row) {
      clock.minute += 1.7;
      if (row == skipped) continue;
      page.log().pieces()->setCurrentRow(row);
      page.log().button(Tap::Placed)->click();
    }
  };
  {
    DocumentController controller(typedPlan(30, 60));
    AppointmentPage page(controller, nullptr, clock.clock());
    QObject::connect(&page, &AppointmentPage::tapped, &page, [&] { onDisk = plan::writePlan(controller.document()); });
    page.show();
    page.turnTo(AppointmentPage::View::Log);
    page.log().button(Tap::BowlMixed)->click();
    taps(page, 0, 3, 2);
    page.log().takeBack()->click();  // the fourth was a slip
  }
  clock.back_ms = 600'000;  // and the computer's clock was set back meanwhile
  auto read = plan::readPlan(onDisk);
  REQUIRE(read.ok());
  DocumentController controller(*read);
  const double began = clock.minute;
  LogView::Clock later = [&] {
    work::TapClock now = clock.clock()();
    now.run = "after the kill";
    now.utc_ms += 1'200'000;
    now.steady_ms = static_cast<std::int64_t>((clock.minute - began) * 60'000);
    return now;
  };
  AppointmentPage page(controller, nullptr, later);
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  CHECK(page.log().pieces()->item(0)->text().contains(QStringLiteral("on the hair")));
  CHECK(page.log().pieces()->item(2)->text().startsWith(QStringLiteral("piece 3, ")));
  CHECK_FALSE(page.log().pieces()->item(2)->text().contains(u':'));
  CHECK_FALSE(page.log().pieces()->item(3)->text().contains(u':'));  // taken back: no time stands there
  taps(page, 3, 6, -1);
  for (int row : {0, 1, 3}) {
    page.log().pieces()->setCurrentRow(row);
    page.log().button(Tap::TakenOut)->click();
    page.log().button(Tap::Rinsed)->click();
    typeInto(page.log().level()->edit(), row == 1 ? QStringLiteral("7") : QStringLiteral("9"));
    page.log().button(Tap::Looked)->click();
    CHECK_FALSE(page.log().level()->value());
  }
  const auto log = logOf(controller);
  CHECK(log.events.size() == 1 + 3 + 4 + 9);
  const auto state = work::stateAt(log, 1e9);
  CHECK(state.count("piece-3") == 0);  // skipped
  CHECK(state.at("piece-2").stage == work::Stage::Rinsed);
  for (std::size_t i = 1; i < log.events.size(); ++i) CHECK(log.events[i].at_s >= log.events[i - 1].at_s);
  const auto outcomes = work::plannedAgainstGot(controller.document(), log);
  REQUIRE(outcomes.size() == 3);
  CHECK(outcomes[1].got == 7);
  CHECK(outcomes[1].planned.level == 9);
}

TEST_CASE("a log that cannot be read is kept and no tap is added", "[appointment][log]") {
  plan::Plan plan = tests::demoPlan();
  plan::PlanInfo info = plan.info();
  info.logJson = R"({"events": "many"})";
  plan.put(plan::kPlanId, info);
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  CHECK(page.log().troubleText().contains(QStringLiteral("kept as it is")));
  CHECK_FALSE(page.log().button(Tap::Placed)->isEnabled());
  page.log().button(Tap::Placed)->click();
  CHECK(controller.document().info().logJson == info.logJson);
}

TEST_CASE("a tap for a foil or section counts for its pieces that it fits", "[appointment][log]") {
  TestClock clock;
  plan::Plan plan = typedPlan({}, {});
  for (const char* id : {"piece-1", "piece-2", "piece-3"}) {
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.section = "section-1";
    piece.foil = std::string(id) == "piece-3" ? "" : "f";
    plan.put(id, piece);
  }
  DocumentController controller(plan);
  AppointmentPage page(controller, nullptr, clock.clock());
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  LogView& view = page.log();
  view.pieces()->setCurrentRow(0);
  buttonNamed(view, QStringLiteral("A tap counts for: Its foil"))->click();
  view.button(Tap::Placed)->click();
  CHECK(logOf(controller).events[0].pieces == std::vector<plan::ItemId>{"piece-1", "piece-2"});
  clock.minute = 1;
  view.pieces()->setCurrentRow(0);
  buttonNamed(view, QStringLiteral("A tap counts for: Its section"))->click();
  view.button(Tap::Placed)->click();
  CHECK(logOf(controller).events[1].pieces == std::vector<plan::ItemId>{"piece-3"});
}

TEST_CASE("in the window each tap is in the recovery snapshot before the next", "[appointment][log]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("appointment"));
  QApplication::processEvents();
  desk.window->actions().action(QStringLiteral("appointment.log"))->trigger();
  AppointmentPage& page = desk.window->appointmentPage();
  REQUIRE(page.isVisible());
  page.log().button(Tap::Placed)->click();
  const QString snapshot = desk.window->recovery().folder();
  REQUIRE_FALSE(snapshot.isEmpty());
  bool found = false;
  QDir folder(snapshot);
  for (const QString& name : folder.entryList(QDir::Files)) {
    QFile file(folder.filePath(name));
    REQUIRE(file.open(QIODevice::ReadOnly));
    found = found || file.readAll().contains("\"placed\"");
  }
  CHECK(found);
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK_FALSE(page.isVisible());
  desk.window->actions().action(QStringLiteral("appointment.workList"))->trigger();
  CHECK(page.workList().isVisible());
}

}  // namespace combdraft::appointment
