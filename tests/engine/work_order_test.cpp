// In which order pieces are worked, and what is told of an order.
#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/work/work_list.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::work;

TEST_CASE("resistant hair is ordered first and fine hairline hair last", "[work][order]") {
  // Common practice, no source.
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  const head::Hairline hairline(shape);
  plan::Hair hair = plan.hair();
  hair.porosity[static_cast<std::size_t>(plan::HairZone::Nape)] = plan::Porosity::Resistant;
  plan.put(plan::kHairId, hair);
  const auto put = [&](const std::string& id, int order, std::vector<plan::ScalpPoint> line) {
    plan::Piece piece = slice(std::move(line), 4);
    piece.order = order;
    plan.put(id, piece);
  };
  const auto inFront = [&](double azimuth) { return shape.scalpPointAt(hairline.pointAt(azimuth) + Vec3(0, -2, 6)); };
  put("piece-1", 1, {inFront(-8), inFront(0), inFront(8)});
  put("piece-2", 2, {placeAtHeight(shape, 170, 20), placeAtHeight(shape, 180, 20), placeAtHeight(shape, -170, 20)});
  put("piece-3", 3, {placeAtHeight(shape, 170, -50), placeAtHeight(shape, 180, -50), placeAtHeight(shape, -170, -50)});
  plan::Piece dark = *plan.find<plan::Piece>("piece-2");
  dark.action = plan::Action::LeaveOut;
  plan.put("piece-4", dark);
  CHECK(workOrder(plan, {}, OrderUse::AsPlanned) == std::vector<plan::ItemId>{"piece-1", "piece-2", "piece-3"});
  CHECK(workOrder(plan, {}, OrderUse::ByRule) == std::vector<plan::ItemId>{"piece-3", "piece-2", "piece-1"});
  const PiecePlaces places(plan);
  CHECK(places.of(*plan.find<plan::Piece>("piece-1")).pace == Pace::Hairline);
  CHECK(places.of(*plan.find<plan::Piece>("piece-3")).pace == Pace::Slow);
  CHECK(places.of(*plan.find<plan::Piece>("piece-3")).zone == plan::HairZone::Nape);
  // By hand in the other order it is told.
  const WorkList list = workListOf(plan, {{}, OrderUse::AsPlanned, TopBowl::Fresh, 1, {}, {}, 4000}).value();
  std::vector<std::string> kinds;
  for (const WorkNote& note : list.notes) kinds.push_back(codeName(note.kind));
  CHECK(std::count(kinds.begin(), kinds.end(), "slow-after-others") == 1);
  CHECK(std::count(kinds.begin(), kinds.end(), "hairline-before-others") == 1);
  CHECK(std::count(kinds.begin(), kinds.end(), "formula-not-named") == 1);
  const WorkList ruled = workListOf(plan, {{}, OrderUse::ByRule, TopBowl::Fresh, 1, {}, {}, 4000}).value();
  for (const WorkNote& note : ruled.notes) CHECK((note.kind == WorkNoteKind::FormulaNotNamed || note.kind == WorkNoteKind::FirstLookLate));
}
