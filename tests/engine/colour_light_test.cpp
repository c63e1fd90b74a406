// Lights and observer: words, linearity, order.
#include <catch2/catch.hpp>

#include "engine/base/random.h"
#include "engine/colour/light.h"

using namespace combdraft;
using namespace combdraft::colour;

TEST_CASE("each light has its own word", "[colour]") {
  for (const Light light : kAllLights) CHECK(lightFromWord(lightWord(light)) == light);
  CHECK(!lightFromWord(""));
  CHECK(!lightFromWord("Daylight"));
  CHECK(!lightFromWord("candle"));
}

TEST_CASE("what is seen is linear in what is sent back", "[colour]") {
  Spectrum p, q, mix;
  for (std::size_t i = 0; i < kSamples; ++i) {
    p[i] = randomUniform(3, i, 0);
    q[i] = randomUniform(3, i, 1);
    mix[i] = 0.3 * p[i] + 0.7 * q[i];
  }
  for (const Light light : kAllLights) {
    const Xyz sum = 0.3 * xyzOf(p, light) + 0.7 * xyzOf(q, light);
    const Xyz seen = xyzOf(mix, light);
    CHECK(seen.x == Approx(sum.x).epsilon(1e-12));
    CHECK(seen.y == Approx(sum.y).epsilon(1e-12));
    CHECK(seen.z == Approx(sum.z).epsilon(1e-12));
  }
}

TEST_CASE("lamps are yellower than daylight, an overcast sky bluer", "[colour]") {
  const auto blueShare = [](Light light) { return whitePoint(light).z; };
  CHECK(blueShare(Light::Overcast) > blueShare(Light::Daylight));
  CHECK(blueShare(Light::Office) < blueShare(Light::Daylight));
  CHECK(blueShare(Light::WarmLamp) < blueShare(Light::Office));
  CHECK(blueShare(Light::Incandescent) < blueShare(Light::Office));
}
