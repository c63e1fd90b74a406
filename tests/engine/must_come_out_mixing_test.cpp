// Must come out (a): half level n and half level n + 2 read between n + 1.0 and
// n + 1.3. Strands mix in light (physics); that two levels blended finely read
// as about the one between is common practice, no source.
#include <catch2/catch.hpp>

#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Natural hair of `level` all over, half of it dyed down two levels by `kind`.
plan::Plan halfAndHalf(double level, plan::Piece kind) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::Hair hair;
  for (auto& zone : hair.level) zone = {level + 2, level + 2, level + 2};
  plan.put(plan::kHairId, hair);
  kind.action = plan::Action::Deepen;
  kind.root.finish = plan::FinishesAt{level, plan::Tone::Natural};
  kind.start_mm = 0;
  kind.blend_mm = 0;
  for (const plan::Piece& ring : ringsOverAll(head::HeadShape(), kind)) addPiece(plan, ring);
  return plan;
}

}  // namespace

TEST_CASE("half level n and half n + 2 read between n + 1.0 and n + 1.3 (common practice, no source)",
          "[look][must-come-out]") {
  plan::Piece weave = slice({}, 1);
  weave.taking = plan::Taking::Weave;
  weave.tooth_mm = weave.gap_mm = 1;  // finer than locks: each carries exactly half
  plan::Piece half = slice({}, 1);
  half.taken_frac = 0.5;  // every second lock, by its own number
  ColouredHair head(halfAndHalf(4, weave), 6000, {}, 2);
  for (int level = 4; level <= 8; ++level) {
    CAPTURE(level);
    for (const bool whole : {false, true}) {
      CAPTURE(whole);
      head.update(halfAndHalf(level, whole ? half : weave));
      REQUIRE(head.taken() == Approx(whole ? 0.5 : 1.0).margin(0.02));
      const look::Readings readings = head.readings();
      CHECK(readings.whole.level >= level + 1.0);
      CHECK(readings.whole.level <= level + 1.3);
      // Region by region where the mixture is the same everywhere.
      if (!whole)
        for (const auto& region : readings.regions) {
          if (!isLarge(region)) continue;
          CAPTURE(visibility::regionWord(region.region));
          CHECK(region.whole->level >= level + 1.0);
          CHECK(region.whole->level <= level + 1.3);
        }
    }
  }
}
