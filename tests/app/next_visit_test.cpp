// The next visit: what to repeat, the plan for it, the client's words two weeks later.
#include <catch2/catch.hpp>

#include <QTemporaryDir>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_visits.h"
#include "app/store/client_keeper.h"
#include "engine/work/next_visit.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"
#include "tests/app/levels_that_came.h"

namespace combdraft::appointment {

using document::DocumentController;
using tests::typeInto;

TEST_CASE("the next visit needs typed weeks and says what to repeat", "[appointment][next]") {
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::NextVisit);
  NextVisitView& view = page.nextVisit();
  CHECK(view.weeks()->edit()->text().isEmpty());
  CHECK(view.showFrom()->edit()->text().isEmpty());
  CHECK_FALSE(view.begin()->isEnabled());
  CHECK_FALSE(view.pieces()->isVisible());
  typeInto(view.weeks()->edit(), QStringLiteral("10"));
  CHECK(view.begin()->isEnabled());
  CHECK_FALSE(view.pieces()->isVisible());
  typeInto(view.showFrom()->edit(), QStringLiteral("40"));
  const auto expected = work::piecesToRepeat(controller.document(), {}, 10, 40);
  REQUIRE(view.pieces()->rowCount() == static_cast<int>(expected.size()));
  int repeats = 0;
  for (int row = 0; row < view.pieces()->rowCount(); ++row) {
    CHECK((view.pieces()->item(row, 2)->text() == QStringLiteral("repeat")) == expected[static_cast<std::size_t>(row)].repeat);
    repeats += expected[static_cast<std::size_t>(row)].repeat;
  }
  CHECK(repeats > 0);
  CHECK(repeats < view.pieces()->rowCount());
  REQUIRE(waitForCount(page));
  CHECK(view.leftOut()->rowCount() == static_cast<int>(plan::kHairZones));
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("the next visit of a plan without light pieces says so", "[appointment][next]") {
  DocumentController controller(plan::Plan::fresh(3));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::NextVisit);
  typeInto(page.nextVisit().weeks()->edit(), QStringLiteral("10"));
  CHECK(page.nextVisit().stateText().contains(QStringLiteral("No piece is lightened")));
  CHECK_FALSE(page.nextVisit().begin()->isEnabled());
}

TEST_CASE("a next visit's plan has grown hair and neither log nor agreement nor checks", "[appointment][next]") {
  plan::Plan today = withLevels(tests::demoPlan(), {{"piece-1", 8}});
  plan::PlanInfo info = today.info();
  info.agreedJson = "{}";
  today.put(plan::kPlanId, info);
  plan::Hair hair = today.hair();
  hair.condition.fill(plan::Condition::Good);
  hair.porosity.fill(plan::Porosity::Usual);
  hair.conditionDate = "2026-03-14";
  today.put(plan::kHairId, hair);
  const auto next = nextVisitPlan(today, 10, QStringLiteral("later"), OldLight::AsTyped);
  REQUIRE(next.ok());
  CHECK(next->info().title == "later");
  CHECK(next->info().number == today.info().number);
  CHECK(next->info().logJson.empty());
  CHECK(next->info().agreedJson.empty());
  CHECK(next->hair().length_mm[0] > today.hair().length_mm[0]);
  CHECK_FALSE(next->hair().scattered.empty());
  CHECK(next->hair().conditionDate.empty());
  CHECK(next->hair().condition[0] == plan::Condition::NotChecked);
  CHECK(next->hair().porosity[0] == plan::Porosity::NotChecked);
  CHECK_FALSE(nextVisitPlan(today, 200, QStringLiteral("later"), OldLight::AsTyped).ok());
  // Pieces end where today's light begins by then, if that is wanted.
  CHECK_FALSE(next->find<plan::Piece>("piece-1")->stop_mm);
  const auto stopped = nextVisitPlan(today, 10, QStringLiteral("later"), OldLight::StopThere);
  REQUIRE(stopped.ok());
  REQUIRE(stopped->find<plan::Piece>("piece-1")->stop_mm);
  CHECK(*stopped->find<plan::Piece>("piece-1")->stop_mm == Approx(today.find<plan::Piece>("piece-1")->start_mm + 10 * 2.58));  // [Loussouarn2005]
}

TEST_CASE("in the window the next visit begins a new plan and today's file stays", "[appointment][next]") {
  tests::Desk desk;
  const QString path = desk.dir.filePath(QStringLiteral("today.json"));
  const plan::Plan today = tests::demoPlan();
  std::vector<Seen> all;  // what was not placed would stay
  for (const auto& [id, piece] : today.pieces()) all.push_back({id.c_str(), 8});
  REQUIRE(store::savePlan(withLevels(today, all), path).ok());
  const auto bytes = store::contentKeyOf(path);
  desk.window->openPath(path);
  QApplication::processEvents();
  desk.window->actions().action(QStringLiteral("appointment.nextVisit"))->trigger();
  NextVisitView& view = desk.window->appointmentPage().nextVisit();
  REQUIRE(view.isVisible());
  typeInto(view.weeks()->edit(), QStringLiteral("10"));
  typeInto(view.showFrom()->edit(), QStringLiteral("40"));
  const auto pieces = desk.window->controller().document().pieces().size();
  view.begin()->click();
  DocumentController& controller = desk.window->controller();
  CHECK(controller.file().path.isEmpty());
  CHECK(controller.isModified());
  CHECK(controller.document().info().title == "Soft root, bold ends, next visit");
  CHECK(controller.document().info().logJson.empty());
  CHECK(controller.document().pieces().size() < pieces);
  CHECK(controller.undoStack().count() == 1);
  controller.undoStack().undo();
  CHECK(controller.document().pieces().size() == pieces);
  CHECK(store::contentKeyOf(path) == bytes);
  CHECK_FALSE(view.weeks()->value());  // typed for the plan before
}

TEST_CASE("the client's words two weeks later are kept with the visit and not in the plan", "[appointment][next]") {
  QTemporaryDir dir;
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::NextVisit);
  NextVisitView& view = page.nextVisit();
  CHECK_FALSE(view.words()->isVisible());
  CHECK(view.openClient()->isVisible());
  const auto keeper = store::ClientKeeper::of(dir.path(), controller.document().info().number);
  view.setKeeper(keeper);
  CHECK_FALSE(view.words()->isVisible());  // no visit with this plan yet
  keeper->edit([&](store::ClientFile& file) { file.visits.push_back(cards::visitToday(controller)); });
  REQUIRE(view.words()->isVisible());
  CHECK_FALSE(view.openClient()->isVisible());
  const plan::Plan before = controller.document();
  view.words()->edit()->setPlainText(QStringLiteral("softer at the parting"));
  CHECK(keeper->file().visits.front().words == "softer at the parting");
  CHECK(controller.document() == before);
  CHECK(keeper->writeNow().ok());
  view.setKeeper(nullptr);
  CHECK(view.words()->edit()->toPlainText().isEmpty());
  CHECK(keeper->file().visits.front().words == "softer at the parting");
}

}  // namespace combdraft::appointment
