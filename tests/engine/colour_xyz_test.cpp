// CIELAB and CIEDE2000: closed forms, round trips, symmetry.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/base/random.h"
#include "engine/colour/light.h"
#include "engine/colour/xyz.h"

using namespace combdraft;
using namespace combdraft::colour;

TEST_CASE("CIELAB and XYZ undo each other in every light", "[colour]") {
  for (const Light light : kAllLights)
    for (std::uint64_t i = 0; i < 500; ++i) {
      const Xyz white = whitePoint(light);
      const Xyz xyz{white.x * randomUniform(1, i, 0), white.y * randomUniform(1, i, 1),
                    white.z * randomUniform(1, i, 2)};
      const Xyz back = xyzFrom(labFrom(xyz, white), white);
      CHECK(back.x == Approx(xyz.x).margin(1e-12));
      CHECK(back.y == Approx(xyz.y).margin(1e-12));
      CHECK(back.z == Approx(xyz.z).margin(1e-12));
    }
}

TEST_CASE("the perfect diffuser is L* 100 and a grey has no colour", "[colour]") {
  for (const Light light : kAllLights)
    for (const double y : {0.0, 0.004, 0.025, 0.2, 1.0}) {
      const Xyz white = whitePoint(light);
      const Lab lab = labFrom(y * white, white);
      CHECK(lab.L == Approx(lightnessFromY(y)).margin(1e-12));
      CHECK(std::abs(lab.a) < 1e-12);
      CHECK(std::abs(lab.b) < 1e-12);
    }
  CHECK(lightnessFromY(1) == Approx(100).epsilon(1e-14));
  CHECK(lightnessFromY(0) == Approx(0).margin(1e-14));
}

TEST_CASE("L* and Y rise together and undo each other", "[colour]") {
  double before = -1;
  for (double L = 0; L <= 100; L += 0.5) {
    const double y = yFromLightness(L);
    CHECK(y > before);
    CHECK(lightnessFromY(y) == Approx(L).margin(1e-10));
    before = y;
  }
}

TEST_CASE("hue runs once around", "[colour]") {
  CHECK(hue_deg({50, 0, 0}) == 0);
  CHECK(hue_deg({50, 10, 0}) == Approx(0));
  CHECK(hue_deg({50, 0, 10}) == Approx(90));
  CHECK(hue_deg({50, -10, 0}) == Approx(180));
  CHECK(hue_deg({50, 0, -10}) == Approx(270));
  CHECK(chroma({50, 3, -4}) == Approx(5));
}

TEST_CASE("a colour differs from itself by nothing, and both ways the same", "[colour]") {
  for (std::uint64_t i = 0; i < 500; ++i) {
    const Lab p{100 * randomUniform(2, i, 0), 100 * randomUniform(2, i, 1) - 50,
                100 * randomUniform(2, i, 2) - 50};
    const Lab q{100 * randomUniform(2, i, 3), 100 * randomUniform(2, i, 4) - 50,
                100 * randomUniform(2, i, 5) - 50};
    CHECK(ciede2000(p, p) == 0);
    CHECK(ciede2000(p, q) == Approx(ciede2000(q, p)).epsilon(1e-12));
    CHECK(ciede2000(p, q) > 0);
  }
}

TEST_CASE("a pure difference in lightness near L* 50 counts as it is", "[colour]") {
  // S_L is 1 at a mean L* of 50, and nothing else differs.
  CHECK(ciede2000({49, 0, 0}, {51, 0, 0}) == Approx(2).epsilon(1e-12));
}
