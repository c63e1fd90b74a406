// Level scales: order, inverse, extrapolation, refusal of bad scales.
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "engine/colour/levels.h"

using namespace combdraft;
using namespace combdraft::colour;

TEST_CASE("the default scales are in order", "[colour]") {
  const LevelScale scale;
  CHECK(checkLevelScale(scale).ok());
  for (double level = 1; level < 12; level += 0.125) {
    CHECK(scale.lightnessOfNatural(level + 0.125) > scale.lightnessOfNatural(level));
    CHECK(scale.lightnessOfLightened(level + 0.125) > scale.lightnessOfLightened(level));
    CHECK(scale.lightnessOfFinished(level + 0.125) > scale.lightnessOfFinished(level));
    CHECK(scale.lightnessOfFinished(level) >= scale.lightnessOfNatural(level));
    CHECK(scale.lightnessOfFinished(level) < scale.lightnessOfLightened(level));
  }
}

TEST_CASE("a natural level comes back from its lightness", "[colour]") {
  const LevelScale scale;
  for (double level = 1; level <= 12; level += 0.1)
    CHECK(scale.levelOfLightness(scale.lightnessOfNatural(level)) ==
          Approx(level).margin(1e-9));
}

TEST_CASE("beyond the scale the last slope goes on, below it level 1 holds", "[colour]") {
  const LevelScale scale;
  const double slope = scale.natural[9] - scale.natural[8];
  CHECK(scale.lightnessOfNatural(11) == Approx(scale.natural[9] + slope));
  CHECK(scale.levelOfLightness(scale.natural[9] + 3 * slope) == Approx(13));
  CHECK(scale.levelOfLightness(0) == 1);
  CHECK(scale.levelOfLightness(18) == 1);
  CHECK(scale.lightnessOfNatural(-5) == scale.natural[0]);
  CHECK(scale.lightnessOfNatural(99) == scale.lightnessOfNatural(12));
}

TEST_CASE("a scale that no hair can have is refused with its place", "[colour]") {
  const auto refused = [](LevelScale scale) {
    const auto result = checkLevelScale(scale, "/levels");
    REQUIRE(!result.ok());
    CHECK(result.error().code == ErrorCode::FieldOutOfRange);
    CHECK(result.error().args.size() == 2);
    return result.error().where;
  };
  LevelScale scale;
  scale.natural[3] = scale.natural[2];
  CHECK(refused(scale) == "/levels/natural/3");
  scale = {};
  scale.natural[0] = 18.0;
  CHECK(refused(scale) == "/levels/natural/0");
  scale = {};
  scale.natural[9] = 95;
  CHECK(refused(scale) == "/levels/natural/9");
  scale = {};
  scale.lightened[6] = scale.lightened[5] - 1;
  CHECK(refused(scale) == "/levels/lightened/6");
  scale = {};
  scale.lightened[4] = scale.natural[4];
  scale.lightened[3] = 25.9;
  scale.lightened[2] = 25;
  CHECK(refused(scale) == "/levels/lightened/4");
  scale = {};
  scale.natural[5] = std::numeric_limits<double>::quiet_NaN();
  CHECK(refused(scale) == "/levels/natural/5");
  scale = {};
  scale.lightened[9] = std::numeric_limits<double>::infinity();
  CHECK(refused(scale) == "/levels/lightened/9");
}
