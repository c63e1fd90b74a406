// The range of the largest block: what it covers, and that it stays out of the way.
#include <catch2/catch.hpp>

#include "engine/base/assumptions.h"
#include "engine/look/look_range.h"
#include "engine/look/opening_range.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::look;

namespace {

/// A thick light piece that makes a block once the part lands beside it.
plan::Plan thickBesideThePart(std::uint64_t seed) {
  plan::Plan plan = plan::Plan::fresh(seed);
  const auto fitted = head::fitHead(plan.head().measures);
  plan::Piece piece = test::topSlice(head::HeadShape(fitted->axes), 22, 60, -30, 12);
  piece.start_mm = 0;
  test::addPiece(plan, piece);
  return plan;
}

double lightAt(const Openings& openings, const PatchRange& range) {
  for (const Opening& opening : openings.all)
    if (opening.way == range.way && opening.shift_mm == range.shift_mm) return opening.light.area_cm2;
  return -1;
}

}  // namespace

TEST_CASE("The range of a block covers other roots and the assumption that moves it most") {
  const plan::Plan plan = thickBesideThePart(21);
  OpeningSweep sweep(6000);
  OpeningRange ranges;
  const Openings found = sweep.update(plan, {}, {}).value();
  REQUIRE(found.worstLight());
  const Openings ranged = ranges.apply(plan, {}, found, {}).value();
  REQUIRE(ranged.lightRange);
  const PatchRange& range = *ranged.lightRange;
  const double size = found.worstLight()->light.area_cm2;
  CAPTURE(size, range.low_cm2, range.high_cm2, range.movesMost);
  CHECK(range.way == found.worstLight()->way);
  CHECK(range.shift_mm == found.worstLight()->shift_mm);
  CHECK(range.low_cm2 >= 0);
  CHECK(range.low_cm2 < 0.9 * size);
  CHECK(range.high_cm2 > 1.01 * size);
  CHECK(ranged.darkRange.has_value() == (found.worstDark() != nullptr));

  // Roots that the range did not draw.
  int covered = 0;
  for (const std::uint64_t seed : {31, 32, 33}) {
    const double there = lightAt(sweep.update(thickBesideThePart(seed), {}, {}).value(), range);
    if (there >= range.low_cm2 && there <= range.high_cm2) ++covered;
  }
  CHECK(covered >= 2);

  REQUIRE_FALSE(range.movesMost.empty());
  const auto table = assumptionTable();
  const auto mover = std::find_if(table.begin(), table.end(), [&](const Assumption& a) { return a.name == range.movesMost.front(); });
  REQUIRE(mover != table.end());
  CHECK(mover->moves != Moves::Judgement);
  double farthest = 0;
  for (const double end : {mover->low, mover->high}) {
    const double there = lightAt(sweep.update(withAssumption(plan, mover->name, end), {}, {}).value(), range);
    farthest = std::max(farthest, std::abs(there - size));
    CHECK(there >= range.low_cm2 - 0.1 * size);
    CHECK(there <= range.high_cm2 + 0.1 * size);
  }
  CHECK(farthest > 0.03 * size);

  // Asked again it says the same, and a stop is a stop.
  const Openings again = ranges.apply(plan, {}, found, {}).value();
  CHECK(again.lightRange->low_cm2 == range.low_cm2);
  CHECK(again.lightRange->high_cm2 == range.high_cm2);
  CHECK(again.lightRange->movesMost == range.movesMost);
  std::stop_source stop;
  stop.request_stop();
  const auto stopped = OpeningRange().apply(plan, {}, found, stop.get_token());
  REQUIRE_FALSE(stopped);
  CHECK(stopped.error().code == ErrorCode::Cancelled);
}

TEST_CASE("Where nothing stands out there is no range") {
  const plan::Plan plan = plan::Plan::fresh(21);
  const Openings found = OpeningSweep(4000).update(plan, {}, {}).value();
  const Openings ranged = OpeningRange().apply(plan, {}, found, {}).value();
  CHECK_FALSE(ranged.lightRange);
  CHECK_FALSE(ranged.darkRange);
}
