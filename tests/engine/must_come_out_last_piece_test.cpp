// Must come out, statement 4: a thin last piece beside the centre split makes a
// smaller block than a full one. Common practice, no source.
#include <catch2/catch.hpp>

#include "engine/look/opening_blocks.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Slices beside the part on both sides; the last of each, nearest to it, of its own thickness.
plan::Plan besideTheSplit(std::uint64_t number, double last_mm) {
  plan::Plan plan = plan::Plan::fresh(number);
  const head::HeadShape shape;
  for (const double side : {1.0, -1.0})
    for (const double x : {46.0, 30.0, 13.0}) addPiece(plan, topSlice(shape, side * x, 55, -35, x < 14 ? last_mm : 4));
  return plan;
}

/// Largest light block with the part where it lands beside the last pieces.
double largestBlock(const std::vector<std::unique_ptr<look::OpeningView>>& views, look::LockColours& colours,
                    const look::HeadGround& ground, const hair::Locks& grown, const plan::Plan& plan) {
  colours.update(plan, {}, {ground.shape(), ground.roots(), ground.grid(), grown, ground.seed()});
  const look::PlannedColours planned = look::plannedColours(colours, ground.roots(), grown);
  for (const auto& view : views) view->colour(colours, {});
  const look::Ground rest = look::groundOf(*views.front(), colours, planned, 1, ground.shape(), {});
  double worst = 0;
  for (const auto& view : views)
    worst = std::max(worst, look::blocksOf(*view, colours, planned, rest, 1, ground.shape(), {}).light.area_cm2);
  return worst;
}

void lastPiece(std::uint64_t seed, int locks) {
  const plan::Plan plan = plan::Plan::fresh(seed);
  const auto ground = look::HeadGround::build(plan, locks, 2).value();
  const hair::Locks grown = look::fallOf(plan, {}, *ground, {4}, {});
  std::vector<std::unique_ptr<look::OpeningView>> views;
  for (const double shift : {0.0, 10.0, 14.0, 18.0, 22.0, -10.0, -14.0, -18.0, -22.0})
    if (auto view = look::OpeningView::build(plan, *ground, look::OpeningWay::Part, shift, {})) views.push_back(std::move(view));
  REQUIRE(views.size() >= 8);
  look::LockColours colours;
  const double full = largestBlock(views, colours, *ground, grown, besideTheSplit(seed, 12));
  const double thin = largestBlock(views, colours, *ground, grown, besideTheSplit(seed, 3));
  CAPTURE(seed, locks, full, thin);
  CHECK(full > 4);
  CHECK(thin < 0.5 * full);
}

}  // namespace

TEST_CASE("a thin last piece beside the split makes a smaller block, five seeds (common practice, no source)",
          "[advise][must-come-out]") {
  for (const std::uint64_t seed : {31, 32, 33, 34, 35}) lastPiece(seed, 30000);
}

TEST_CASE("a thin last piece beside the split makes a smaller block at 100,000 locks (common practice, no source)",
          "[advise][must-come-out]") {
  lastPiece(36, 100000);
}
