// A plan that is open can be saved: what would not fit is refused before it happens.
#include <catch2/catch.hpp>

#include "app/document/plan_room.h"
#include "engine/plan/edits.h"
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
