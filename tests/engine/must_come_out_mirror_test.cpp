// Must come out (f): a mirrored plan on a mirrored head gives mirrored readings
// within the sampling error (symmetry of the model; no source needed).
#include <catch2/catch.hpp>

#include "engine/plan/twins.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using visibility::Region;

namespace {

plan::Plan mirroredPlan(const plan::Plan& source) {
  plan::Plan plan = source;
  plan::Head head = source.head();
  for (auto& p : head.part) p = head::mirrored(p);
  for (plan::Whorl& w : head.whorls) {
    w.at = head::mirrored(w.at);
    w.turn = w.turn == plan::Turn::Clockwise ? plan::Turn::Counterclockwise : plan::Turn::Clockwise;
  }
  plan.put(plan::kHeadId, head);
  for (const auto& [id, piece] : source.pieces()) {
    plan::Piece other = *piece;
    for (auto& p : other.line) p = head::mirrored(p);
    plan.put(id, other);
  }
  return plan;
}

Region mirrored(Region r) {
  switch (r) {
    case Region::FaceFrameLeft: return Region::FaceFrameRight;
    case Region::FaceFrameRight: return Region::FaceFrameLeft;
    case Region::SideLeft: return Region::SideRight;
    case Region::SideRight: return Region::SideLeft;
    default: return r;
  }
}

}  // namespace

TEST_CASE("a mirrored plan on a mirrored head gives mirrored readings", "[look][must-come-out]") {
  plan::Plan plan = mixedPlan(31);
  plan::Head worn = plan.head();
  for (auto& p : worn.part)  // a part off the middle, so that the head has a side
    p = head::HeadShape().scalpPointAt(head::HeadShape().pointAt(p) + Vec3(18, 0, 0));
  plan.put(plan::kHeadId, worn);
  for (const auto& [id, piece] : plan.pieces())  // and all that lightens the wearer's left gone
    if (piece->line.front().bearing_deg < -1 && piece->line.front().bearing_deg > -140) plan.put(id, plan::ItemPtr{});

  const ColouredHair one(plan, 10000, {}, 1.5), other(mirroredPlan(plan), 10000, {}, 1.5);
  const look::Readings a = one.readings(), b = other.readings();
  double least = 0;
  int compared = 0;
  for (std::size_t r = 0; r < a.regions.size(); ++r) {
    const auto m = static_cast<std::size_t>(mirrored(static_cast<Region>(r)));
    if (!isLarge(a.regions[r]) || !isLarge(b.regions[m])) continue;
    const look::Reading &here = *a.regions[r].whole, &there = *b.regions[m].whole;
    const double error = std::hypot(here.sampling_error, there.sampling_error);
    INFO(visibility::regionWord(a.regions[r].region)
         << ": " << here.lightness << " +- " << here.sampling_error << ", mirrored "
         << there.lightness << " +- " << there.sampling_error);
    CHECK(std::abs(here.lightness - there.lightness) < 3 * error + 0.1);
    CHECK(here.seen_mm2 == Approx(there.seen_mm2).epsilon(0.08));
    ++compared;
    if (b.regions[r].whole)  // what a swap of sides would show
      least = std::max(least, std::abs(here.lightness - b.regions[r].whole->lightness) / error);
  }
  CHECK(compared >= 8);
  CHECK(least > 4);  // beyond the 3 errors allowed above
}
