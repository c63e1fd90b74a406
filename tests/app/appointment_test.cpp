// The formula card's mixture, the work list and the log of an appointment.
#include <catch2/catch.hpp>

#include <QRegularExpression>
#include <QSignalSpy>

#include "app/appointment/appointment_page.h"
#include "app/cards/formula_card.h"
#include "app/cards/mix_rows.h"
#include "app/paint/work_words.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/work/log_text.h"
#include "engine/work/outcome.h"
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

/// Seconds of an appointment, as the test says.
struct TestClock {
  double minute = 0;
  std::int64_t back_ms = 0;
  LogView::Clock clock() {
    return [this] {
      const auto ms = static_cast<std::int64_t>(minute * 60'000);
      return work::TapClock{1'700'000'000'000 + ms - back_ms, ms, "test"};
    };
  }
};

plan::Plan typedPlan(std::optional<double> life, std::optional<double> longest) {
  plan::Plan plan = tests::demoPlan();
  plan::Formula formula = *plan.find<plan::Formula>("formula-1");
  formula.products = {{"powder", 1, {}}};
  formula.developers = {{"developer", 6, plan::StrengthUnit::Percent, 2, {}}};
  formula.leaflet.workingLife_min = life;
  formula.leaflet.longestTime_min = longest;
  plan.put("formula-1", formula);
  return plan;
}

work::AppointmentLog logOf(const DocumentController& controller) { return work::readLog(controller.document().info().logJson).value(); }

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
  CHECK(view.table()->rowCount() == static_cast<int>(view.list()->timeline.steps.size()));
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
  for (int row = 0; row < view.table()->rowCount(); ++row)
    if (view.list()->timeline.steps[static_cast<std::size_t>(row)].piece == "piece-3") view.table()->setCurrentCell(row, 0);
  CHECK(controller.selection() == document::Selection::one("piece-3"));
  view.strip()->setMoment(0);
  QTest::keyClick(view.strip(), Qt::Key_Right, Qt::ShiftModifier);
  CHECK(view.strip()->moment_min() == 5);
  CHECK(view.strip()->momentText().contains(QStringLiteral("oldest on the hair")));
  CHECK_FALSE(hasPromise(allText(page)));
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

TEST_CASE("at a typed limit the log says take it out and before it only look", "[appointment][log]") {
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
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("12:00 on the hair; look; maker's longest time in 18:00")));
  CHECK(view.firstText().endsWith(QStringLiteral(": look")));
  CHECK(allText(view).contains(QStringLiteral("longer than it may be used. Mix a new one.")));
  clock.minute = 30;
  view.fill();
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("maker's longest time reached: take it out")));
  CHECK(view.firstText().contains(QStringLiteral("maker's longest time reached: take it out")));
  view.pieces()->setCurrentRow(0);
  view.button(Tap::TakenOut)->click();
  CHECK(view.firstText().contains(QStringLiteral("taken out, not rinsed: product may still be on it")));
  CHECK(view.pieces()->item(0)->text().contains(QStringLiteral("30:00 on the hair; maker's longest time reached: not rinsed yet")));
  view.pieces()->setCurrentRow(0);
  view.button(Tap::Rinsed)->click();
  CHECK(view.firstText() == QStringLiteral("nothing is on the hair"));
  CHECK(view.safetyText().contains(QStringLiteral("Pain, burning, swelling: take the product off")));
  CHECK(view.safetyText().contains(QStringLiteral("makes it look lighter than it is")));
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
  CHECK(page.log().pieces()->item(2)->text() == QStringLiteral("piece 3"));
  CHECK(page.log().pieces()->item(3)->text() == QStringLiteral("piece 4"));
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
  CHECK(outcomes[1].planned == 9);
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
