// A plan that is open can be saved: what would not fit is refused before it happens.
#include <catch2/catch.hpp>

#include "app/cards/formula_card.h"
#include "app/cards/hair_card.h"
#include "app/document/plan_room.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

TEST_CASE("an edit that would make the plan outgrow its file is refused, and what is there can be saved", "[room]") {
  Desk desk;
  desk.window->openPath(desk.file("full"));
  plan::Plan full = desk.window->controller().document();
  const plan::Piece piece = *full.find<plan::Piece>("piece-1");
  for (int i = 2; i <= 2000; ++i) full.put("piece-" + std::to_string(i), piece);
  CHECK(desk.window->controller().edit(full, QStringLiteral("Add many")) == document::DocumentController::Outcome::Made);
  CHECK_FALSE(desk.window->messages().isShowing());
  plan::Plan over = full;
  over.put("piece-2001", piece);
  CHECK(desk.window->controller().edit(over, QStringLiteral("Add one")) == document::DocumentController::Outcome::Refused);
  CHECK(desk.window->controller().document() == full);
  CHECK(desk.window->messages().text().contains(QStringLiteral("2001 pieces")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("at most 2000")));
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  CHECK_FALSE(desk.window->controller().isModified());

  using document::NoRoom;
  using document::roomMissing;
  CHECK_FALSE(roomMissing(full));
  plan::Plan named = plan::Plan::fresh(1);
  plan::PlanInfo info = named.info();
  info.title = std::string(201, 'x');
  named.put(plan::kPlanId, info);
  CHECK(roomMissing(named) == NoRoom{NoRoom::For::Name, 201, 200});
  info.title = "x", info.notes = std::string(20001, 'x');
  named.put(plan::kPlanId, info);
  CHECK(roomMissing(named) == NoRoom{NoRoom::For::Text, 20001, 20000});
}

TEST_CASE("room is counted as the reader counts it", "[room]") {
  using document::NoRoom;
  plan::Plan plan = plan::Plan::fresh(1);
  plan::Piece piece;
  piece.choice = plan.info().activeChoice;
  for (int i = 0; i < 64; ++i) piece.line.push_back({150 + i * 0.9, 80});
  for (int i = 0; i < 312; ++i) plan.put("piece-" + std::to_string(i), piece);  // 19,968 points
  CHECK_FALSE(document::roomMissing(plan));
  // Twins follow their source and take no room.
  for (int i = 0; i < 200; ++i) {
    const auto twins = plan::addTwins(plan, {"piece-" + std::to_string(i)});
    plan = plan::applied(plan, twins);
  }
  REQUIRE(plan.pieces().size() == 512);
  CHECK_FALSE(document::roomMissing(plan));
  piece.line.pop_back();
  plan.put("piece-900", piece);
  const auto missing = document::roomMissing(plan);
  REQUIRE(missing);
  CHECK(missing->what == NoRoom::For::Points);
}

TEST_CASE("a day typed with slashes and a pasted line separator are saved and read back", "[room]") {
  document::DocumentController controller(tests::demoPlan());
  cards::HairCard hair(controller);
  tests::typeInto(tests::textNamed(hair, QStringLiteral("Checked on"))->edit(), QStringLiteral("2026/03/14"));
  CHECK(controller.document().hair().conditionDate == "2026-03-14");
  cards::FormulaCard formula(controller);
  formula.showFormula("formula-1");
  tests::typeInto(tests::textNamed(formula, QStringLiteral("Leaflet"))->edit(), QStringLiteral("page\u2028two"));
  tests::typeInto(tests::textNamed(formula, QStringLiteral("Date"))->edit(), QStringLiteral("2026.02.03"));
  const plan::Leaflet leaflet = controller.document().find<plan::Formula>("formula-1")->leaflet;
  CHECK(leaflet.origin == "page two");
  CHECK(leaflet.read == "2026-02-03");
  const auto back = plan::readPlan(plan::writePlan(controller.document()));
  REQUIRE(back.ok());
  CHECK(*back == controller.document());
}

TEST_CASE("an edit with a value that no file could hold is refused and the value is named", "[room]") {
  using document::DocumentController;
  Desk desk;
  desk.window->openPath(desk.file("wrong"));
  DocumentController& controller = desk.window->controller();
  const plan::Plan before = controller.document();
  plan::Plan next = before;
  plan::Hair hair = next.hair();
  hair.conditionDate = "2026/03/14";
  next.put(plan::kHairId, hair);
  CHECK(controller.edit(next, QStringLiteral("Change the day")) == DocumentController::Outcome::Refused);
  CHECK(controller.document() == before);
  CHECK(controller.undoStack().count() == 0);
  CHECK(desk.window->messages().text().contains(QStringLiteral("hair.conditionDate")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("2026/03/14")));

  next = before;
  plan::Piece piece = *before.find<plan::Piece>("piece-1");
  piece.label = "a\xE2\x80\xA8" "b";
  next.put("piece-1", piece);
  controller.setTentative(next);
  controller.commitTentative(QStringLiteral("Name"));
  CHECK_FALSE(controller.isTentative());
  CHECK(controller.document() == before);
  CHECK(desk.window->messages().text().contains(QStringLiteral("piece.label")));
}

TEST_CASE("what was wrong before does not keep an item from being edited", "[room]") {
  plan::Plan before = plan::Plan::fresh(1);
  plan::Hair hair = before.hair();
  hair.conditionDate = "soon";
  before.put(plan::kHairId, hair);
  const auto changed = [&before](const plan::Hair& to) {
    plan::Plan after = before;
    after.put(plan::kHairId, to);
    return document::wrongValue(plan::difference(before, after, plan::EditKind::ChangeItem));
  };
  hair.white_frac = 0.5;
  CHECK_FALSE(changed(hair));
  hair.white_frac = 2;
  const auto wrong = changed(hair);
  REQUIRE(wrong);
  CHECK(wrong->field == "hair.white_frac");
}

TEST_CASE("a head on which a piece could not be read back is refused with its name", "[room]") {
  Desk desk;
  desk.window->openPath(desk.file("low"));
  document::DocumentController& controller = desk.window->controller();
  // The lowest end that a file holds on this head.
  plan::Plan low = controller.document();
  plan::Piece piece = *low.find<plan::Piece>("piece-1");
  const auto readable = [](const plan::Plan& plan) { return plan::readPlan(plan::writePlan(plan)).ok(); };
  for (double drop = 80; drop < 180; drop += 0.25) {
    piece.line = {{180, 60}, {180, drop}};
    plan::Plan next = low;
    next.put("piece-1", piece);
    if (!readable(next)) break;
    low = std::move(next);
  }
  REQUIRE(controller.edit(low, QStringLiteral("Draw low")) == document::DocumentController::Outcome::Made);
  int refused = 0;
  for (const double earToEar_mm : {300., 320., 340., 360., 380., 400., 420., 450.}) {
    CAPTURE(earToEar_mm);
    plan::Plan next = controller.document();
    plan::Head head = next.head();
    head.measures.earToEar_mm = earToEar_mm;
    if (!head::fitHead(head.measures)) continue;
    next.put(plan::kHeadId, head);
    const bool fits = readable(next);
    const auto outcome = controller.edit(next, QStringLiteral("Measure"));
    CHECK((outcome == document::DocumentController::Outcome::Made) == fits);
    CHECK(readable(controller.document()));
    if (fits) continue;
    ++refused;
    CHECK(desk.window->messages().text().contains(QStringLiteral("on a head like that piece 1 would lie off the hair")));
  }
  CHECK(refused > 0);
}
