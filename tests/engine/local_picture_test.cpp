// What the eye blurs is light, not L*: closed form.
#include <catch2/catch.hpp>

#include "engine/look/contrast.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Root mean square of the local picture when every lock is light with one chance.
double spreadWith(ColouredHair& head, double lightShare) {
  plan::Plan plan = plan::Plan::fresh(head.hair().seed());
  plan::Piece kind = slice({}, 10);
  kind.taken_frac = lightShare;
  kind.start_mm = kind.blend_mm = 0;
  for (const plan::Piece& ring : ringsOverAll(head.hair().shape(), kind)) addPiece(plan, ring);
  head.update(plan);
  std::vector<std::uint32_t> all(head.hair().locks().size());
  std::iota(all.begin(), all.end(), 0u);
  look::LocalPicture local(head.hair().seen());
  local.update(head.hair().seen(), head.colours(), all);
  double square = 0, count = 0;
  const look::LocalPicture::Values values = local.at(1);
  for (const auto& region : values.of)
    for (const double v : region) square += v * v, ++count;
  return std::sqrt(square / count);
}

}  // namespace

TEST_CASE("a few light strands in dark hair stand out more than a few dark ones in light hair",
          "[look][contrast]") {
  ColouredHair head(plan::Plan::fresh(5), 8000, {}, 2, 6);
  // The colours of wholly dark and wholly light hair, and the slope of L* over the
  // share of light hair, mixed in light [CIE015]: 116 Y^(1/3) - 16.
  const auto yOf = [&](double share) {
    spreadWith(head, share);
    return colour::yFromLightness(head.readings().whole.lightness);
  };
  const double dark = yOf(0), light = yOf(1);
  const auto slope = [&](double share) { return std::pow(dark + share * (light - dark), -2.0 / 3); };
  const double expected = slope(0.1) / slope(0.9);
  REQUIRE(expected > 1.8);
  const double found = spreadWith(head, 0.1) / spreadWith(head, 0.9);
  INFO("contrast of 10 % light over that of 10 % dark: " << found << ", closed form " << expected << ", blurred in L*: 1");
  // The slope is that of small differences; strands make large ones.
  CHECK(found == Approx(expected).epsilon(0.2));
}
