// The bounded search and what it proposes.
#include <catch2/catch.hpp>

#include <set>

#include "engine/advise/bounded_search.h"
#include "engine/advise/rules.h"
#include "engine/advise/suggestion.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::advise;
using namespace combdraft::test;

TEST_CASE("the bounded search finds the corner and the dip", "[advise][suggestion]") {
  const auto dip = [](const std::vector<double>& x) {
    return (x[0] - 0.3) * (x[0] - 0.3) + 2 * (x[1] + 0.2) * (x[1] + 0.2) + 3 * x[2];
  };
  const std::vector<Bounds> bounds{{-1, 1}, {-1, 1}, {-0.5, 1}};
  const auto best = lowest(dip, {0, 0, 0}, bounds, 200, {});
  CHECK(best[0] == Approx(0.3).margin(0.02));
  CHECK(best[1] == Approx(-0.2).margin(0.02));
  CHECK(best[2] == Approx(-0.5).margin(0.02));
  // What may not move stays, and one number is searched too.
  const auto fixed = lowest(dip, {0.1, 0, 0}, {{0.1, 0.1}, {-1, 1}, {0, 0}}, 200, {});
  CHECK(fixed[0] == 0.1);
  CHECK(fixed[1] == Approx(-0.2).margin(0.05));
  CHECK(fixed[2] == 0);
  std::stop_source stop;
  stop.request_stop();
  CHECK(lowest(dip, {0.5, 0.5, 0.5}, bounds, 200, stop.get_token()) == std::vector<double>{0.5, 0.5, 0.5});
}

TEST_CASE("proposals come nearer, obey the rules, leave held pieces and are one undo", "[advise][suggestion]") {
  plan::Plan plan = mixedPlan(71);
  plan::Hair hair = plan.hair();
  hair.condition.fill(plan::Condition::Good);
  plan.put(plan::kHairId, hair);
  plan::Piece held = *plan.find<plan::Piece>("piece-8");
  held.held = true;
  plan.put("piece-8", held);
  look::LookEngine engine(4000, 2);
  const double level = engine.update(plan, {}, {}, {})->readings->whole.level;

  Suggester suggester(4000);
  suggester.prepare(plan, {}, {});
  Wish wish;
  wish.aims["whole"].level = level - 0.4;
  double done = 0;
  const auto proposals = suggester.search(plan, {}, wish, {}, [&](const Progress& p) {
    CHECK(p.done_frac >= done);
    done = p.done_frac;
  });
  REQUIRE(proposals);
  CHECK(done == 1);
  REQUIRE_FALSE(proposals->empty());
  CHECK(proposals->size() <= 3);
  std::set<Manner> manners;
  for (const Proposal& p : *proposals) {
    CAPTURE(codeName(p.manner), p.before.miss_levels, p.after.miss_levels);
    CHECK(manners.insert(p.manner).second);
    CHECK(p.after.size == Standing::Size::Full);
    CHECK((p.after.miss_levels < p.before.miss_levels || p.after.effort.pieces < p.before.effort.pieces ||
           p.after.lightBlock_cm2 < p.before.lightBlock_cm2));
    CHECK_FALSE(p.changed.empty());
    const plan::Plan after = plan::applied(plan, p.edit);
    CHECK_FALSE(brokenBy(plan, after));
    CHECK(*after.find<plan::Piece>("piece-8") == held);
    CHECK(plan::applied(after, plan::inverse(p.edit)) == plan);
    for (const auto& [id, piece] : after.pieces()) {
      const plan::Piece& was = *plan.find<plan::Piece>(id);
      CHECK(piece->start_mm >= was.start_mm);
      if (p.manner == Manner::Starts) CHECK((piece->thickness_mm == was.thickness_mm && piece->taken_frac == was.taken_frac));
    }
    if (p.manner != Manner::FewerPieces) CHECK(after.pieces().size() == plan.pieces().size());
  }
  CHECK(proposals->front().after.miss_levels < 0.5 * proposals->front().before.miss_levels);

  std::stop_source stop;
  stop.request_stop();
  const auto none = suggester.search(plan, {}, wish, stop.get_token());
  REQUIRE_FALSE(none);
  CHECK(none.error().code == ErrorCode::Cancelled);
}

TEST_CASE("on hair that is not checked or marked a suggestion takes no more", "[advise][suggestion]") {
  plan::Plan plan = mixedPlan(72);  // condition not checked
  plan::Hair hair = plan.hair();
  hair.scattered.push_back({std::nullopt, 0.2, 0, 400, 9});
  plan.put(plan::kHairId, hair);
  Suggester suggester(4000);
  for (const double level : {4.0, 11.0}) {
    Wish wish;
    wish.aims["whole"].level = level;
    const auto proposals = suggester.search(plan, {}, wish, {});
    REQUIRE(proposals);
    for (const Proposal& p : *proposals) {
      const plan::Plan after = plan::applied(plan, p.edit);
      for (const auto& [id, piece] : after.pieces()) {
        const plan::Piece& before = *plan.find<plan::Piece>(id);
        CHECK(piece->thickness_mm <= before.thickness_mm);
        CHECK(piece->taken_frac <= before.taken_frac);
        CHECK(piece->backcomb.depth_mm <= before.backcomb.depth_mm);
      }
    }
  }
}

TEST_CASE("nothing to change gives no proposal", "[advise][suggestion]") {
  Suggester suggester(3000);
  const auto none = suggester.search(plan::Plan::fresh(1), {}, {}, {});
  REQUIRE(none);
  CHECK(none->empty());
  plan::Plan held = plan::Plan::fresh(1);
  plan::Piece piece = topSlice(head::HeadShape(), 22, 30, -30, 8);
  piece.held = true;
  addPiece(held, piece);
  const auto still = suggester.search(held, {}, {}, {});
  REQUIRE(still);
  CHECK(still->empty());
}
