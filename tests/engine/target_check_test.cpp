// A target is met or missed by level, contrast, and the lightest and darkest part.
#include <catch2/catch.hpp>

#include "engine/look/target_check.h"
#include "engine/plan/plan_words.h"

using namespace combdraft;
using namespace combdraft::look;
using plan::ContrastAim;

namespace {

Reading at(double level) {
  Reading reading;
  reading.level = level;
  return reading;
}
RegionReading region(double root, double whole, double end, ContrastVerdict verdict) {
  RegionReading reading;
  reading.whole = at(whole);
  reading.rootMiddleEnd = {at(root), std::nullopt, at(end)};
  reading.contrast.verdict = verdict;
  return reading;
}

}  // namespace

TEST_CASE("a level within the tolerance is met, beyond it missed on its side", "[look][target]") {
  const RegionReading seen = region(6, 7.5, 9, ContrastVerdict::Soft);
  CHECK_FALSE(checkTarget({}, seen).missed());
  CHECK_FALSE(checkTarget({8.0, {}, {}, {}, {}}, seen).missed());
  CHECK_FALSE(checkTarget({7.0, {}, {}, {}, {}}, seen).missed());
  CHECK(checkTarget({8.25, {}, {}, {}, {}}, seen).level == Approx(-0.75));
  CHECK(checkTarget({6.5, {}, {}, {}, {}}, seen).level == Approx(1.0));
  CHECK(checkTarget({8.25, {}, {}, {}, {}}, seen, 1.0).level == std::nullopt);
  CHECK(checkTarget({8.25, {}, {}, {}, {}}, seen, targetTolerance_levels({{"finding.target_levels", 1.0}})).level == std::nullopt);
}

TEST_CASE("the lightest and the darkest part are held to what is allowed", "[look][target]") {
  const RegionReading seen = region(6, 7.5, 9, ContrastVerdict::Soft);
  CHECK_FALSE(checkTarget({{}, {}, 9.0, 6.0, {}}, seen).missed());
  CHECK(checkTarget({{}, {}, 8.0, {}, {}}, seen).brightest == Approx(1.0));
  CHECK(checkTarget({{}, {}, {}, 7.0, {}}, seen).darkest == Approx(-1.0));
  const TargetCheck whole = checkTarget({{}, {}, 7.0, 9.0, {}}, at(8), nullptr, nullptr);
  CHECK(whole.brightest == Approx(1.0));
  CHECK(whole.darkest == Approx(-1.0));
}

TEST_CASE("a contrast is met by its own class only, and by too little hair", "[look][target]") {
  const std::pair<ContrastAim, ContrastVerdict> same[] = {
      {ContrastAim::TwoClearLevels, ContrastVerdict::TwoClearLevels},
      {ContrastAim::Soft, ContrastVerdict::Soft},
      {ContrastAim::OneTone, ContrastVerdict::OneTone}};
  for (const auto& [aim, ownVerdict] : same)
    for (const auto& [other, verdict] : same) {
      const bool missed = checkTarget({{}, aim, {}, {}, {}}, region(7, 7, 7, verdict)).contrast;
      CHECK(missed == (aim != other));
    }
  CHECK_FALSE(checkTarget({{}, ContrastAim::Soft, {}, {}, {}},
                          region(7, 7, 7, ContrastVerdict::TooLittleHair)).missed());
}

TEST_CASE("targets go with the whole head and with each region", "[look][target]") {
  Readings readings;
  readings.whole = at(6);
  readings.whole.seen_mm2 = 5000;
  readings.contrast.verdict = ContrastVerdict::Soft;
  for (int i = 0; i < kRegions; ++i) {
    readings.regions.push_back(region(7, 7, 7, ContrastVerdict::OneTone));
    readings.regions.back().region = static_cast<Region>(i);
  }
  readings.regions[4].whole.reset();
  const plan::Target target{7.0, ContrastAim::OneTone, {}, {}, {}};
  const auto regions = plan::targetRegions();
  for (std::size_t i = 0; i < regions.size(); ++i) {
    CAPTURE(std::string(regions[i]));
    const auto check = checkTarget(target, readings, i);
    if (regions[i] == "crown") {
      CHECK_FALSE(check);
      continue;
    }
    REQUIRE(check);
    CHECK(check->missed() == (regions[i] == "whole"));
  }
  CHECK(checkTarget(target, readings, 0)->level == Approx(-1.0));
  CHECK(checkTarget(target, readings, 0)->contrast);
  CHECK_FALSE(checkTarget(target, readings, regions.size()));
  readings.whole.seen_mm2 = 0;
  CHECK_FALSE(checkTarget(target, readings, 0));
}

TEST_CASE("a region that is not seen misses nothing", "[look][target]") {
  CHECK_FALSE(checkTarget({9.0, ContrastAim::Soft, 9.0, 8.0, {}}, RegionReading{}).missed());
}
