// The grey-mix flag of a whole look: pale, hardly coloured pieces over brown, and
// nothing else (common practice, no source).
#include <catch2/catch.hpp>

#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

plan::Plan over(double natural, plan::FinishesAt finish, double share, plan::Taking taking = plan::Taking::Slice) {
  plan::Plan plan = plan::Plan::fresh(3);
  plan::Hair hair = plan.hair();
  for (auto& zone : hair.level) zone = {natural, natural, natural};
  plan.put(plan::kHairId, hair);
  plan::Piece kind = slice({}, 10);
  kind.root.lifts = {10, 9, 11};
  kind.root.finish = finish;
  kind.start_mm = 20;
  kind.taking = taking;
  if (taking == plan::Taking::Weave) kind.tooth_mm = kind.gap_mm = 1;  // finer than locks
  else kind.taken_frac = share;
  for (const plan::Piece& ring : ringsOverAll(head::HeadShape(), kind)) addPiece(plan, ring);
  return plan;
}

}  // namespace

TEST_CASE("pale ash over brown reads grey, and nothing warmer, darker or lighter does", "[look][grey]") {
  ColouredHair head(plan::Plan::fresh(3), 4000, {}, 2, 6);
  const plan::FinishesAt ash{10, plan::Tone::Ash}, beige{10, plan::Tone::Beige}, gold{10, plan::Tone::Gold};
  const auto reads = [&](const plan::Plan& plan) {
    head.update(plan);
    return head.readings();
  };
  for (const double share : {0.3, 0.6}) {
    const look::Readings r = reads(over(5, ash, share));
    CHECK(r.grey_mix);
    for (const auto& region : r.regions)
      if (isLarge(region)) CHECK(region.grey_mix);
  }
  CHECK(reads(over(5, ash, 0.5, plan::Taking::Weave)).grey_mix);  // mixed within a lock
  CHECK(!reads(over(5, beige, 0.5)).grey_mix);
  CHECK(!reads(over(5, gold, 0.5)).grey_mix);
  CHECK(!reads(over(9, ash, 0.5)).grey_mix);   // over blond
  CHECK(!reads(over(5, ash, 0.03)).grey_mix);  // a few strands
  CHECK(!reads(plan::Plan::fresh(3)).grey_mix);
}
