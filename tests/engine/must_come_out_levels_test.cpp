// Must come out (1) and, of (5), what is seen on the first day: 9 mm pieces with
// 9 mm left-outs are two clear levels, 1.5 mm with 1.5 mm are one tone; the lower
// light starts, the darker and softer the root. Common practice, no source.
#include <catch2/catch.hpp>

#include "engine/base/number_text.h"
#include "engine/look/contrast.h"
#include "tests/support/fall_slices.h"

using namespace combdraft;
using namespace combdraft::test;
using look::ContrastVerdict;
using look::Region;

namespace {

constexpr Region kTested = Region::BackUpper;

/// The usual mixture with every start at `start_mm`.
plan::Plan startingAt(std::uint64_t number, double start_mm) {
  plan::Plan plan = mixedPlan(number);
  for (const auto& [id, listed] : plan.pieces("choice-1")) {
    plan::Piece piece = *listed;
    piece.start_mm = start_mm;
    piece.backcomb = {};
    plan.put(id, piece);
  }
  return plan;
}

struct Look {
  look::Readings readings;
  std::array<look::Contrast, look::kRegions + 1> contrast;
};

Look lookAt(ColouredHair& head, look::LocalPicture& local, const plan::Plan& plan) {
  head.update(plan);
  std::vector<std::uint32_t> all(head.hair().locks().size());
  std::iota(all.begin(), all.end(), 0u);
  local.update(head.hair().seen(), head.colours(), all);
  return {head.readings(), look::contrastOf(local, 1.0, {})};
}

void levelsAndRoots(std::uint64_t seed, int locks) {
  CAPTURE(seed, locks);
  const plan::Plan fresh = plan::Plan::fresh(seed);
  ColouredHair head(fresh, locks);
  look::LocalPicture local(head.hair().seen());
  const auto tested = static_cast<std::size_t>(kTested);

  // Pieces nearer the opening are more of what is seen: where each pattern begins
  // is set so that half of the seen hair is light in both.
  struct Pattern { double thickness_mm, inner_mm; ContrastVerdict verdict; };
  for (const Pattern& pattern : {Pattern{9, 12, ContrastVerdict::TwoClearLevels}, Pattern{1.5, 10, ContrastVerdict::OneTone}}) {
    const Look seen = lookAt(head, local, alternating(fresh, pattern.thickness_mm, pattern.inner_mm));
    const look::Contrast& contrast = seen.contrast[tested];
    const look::Reading& reading = *seen.readings.regions[tested].whole;
    INFO(pattern.thickness_mm << " mm: " << look::verdictWord(contrast.verdict) << ", " << contrast.delta
                              << " L* apart, spread " << contrast.spread << ", level " << reading.level
                              << ", light share " << reading.light_share);
    CHECK(reading.light_share >= 0.45);
    CHECK(reading.light_share <= 0.55);
    CHECK(contrast.verdict == pattern.verdict);
    if (pattern.verdict == ContrastVerdict::OneTone) {
      CHECK(reading.level >= 8.0);
      CHECK(reading.level <= 8.4);
    }
  }

  // (5) Roots, where the head opens. "Bold" is the contrast there: in the crown it
  // falls with every step; beside the part, where a start of 30 mm still shows its
  // edge, from the highest start to the lowest.
  std::optional<Look> before;
  double boldest = 0;
  std::string row;
  for (const double start_mm : {5.0, 30.0, 70.0}) {
    Look seen = lookAt(head, local, startingAt(seed, start_mm));
    const auto rootOf = [](const Look& look, Region region) {
      return look.readings.regions[static_cast<std::size_t>(region)].rootMiddleEnd[0]->lightness;
    };
    for (const Region region : {Region::Top, Region::Crown}) {
      const double root = rootOf(seen, region), spread = seen.contrast[static_cast<std::size_t>(region)].spread;
      row += " " + numberText(root, 1) + "/" + numberText(spread, 2);
      INFO("start " << start_mm << ", " << look::regionWord(region) << "; root L*/contrast so far:" << row);
      if (region == Region::Top && !before) boldest = spread;
      if (!before) continue;
      CHECK(root < rootOf(*before, region));
      if (region == Region::Crown) CHECK(spread < before->contrast[static_cast<std::size_t>(region)].spread);
      if (region == Region::Top && start_mm == 70) CHECK(spread < 0.8 * boldest);
    }
    before = std::move(seen);
  }
  WARN("seed " << seed << ", " << locks << " locks; top and crown, root L*/contrast at starts of 5, 30, 70 mm:" << row);
}

}  // namespace

TEST_CASE("9 mm pieces are two clear levels and 1.5 mm pieces one tone, and low starts make dark, soft roots "
          "(common practice, no source)", "[look][contrast][must-come-out]") {
  for (const std::uint64_t seed : {1, 2, 3, 4, 5}) levelsAndRoots(seed, 30000);
}

TEST_CASE("the same with 100,000 locks (common practice, no source)", "[look][contrast][must-come-out]") {
  levelsAndRoots(1, 100000);
}
