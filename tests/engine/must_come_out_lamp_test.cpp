// Must come out (8): a fixed list of cool and warm hair of one lightness lies
// closer together under warm lamps than in daylight, for an eye adapted to each. Common
// practice, no source; sign only. Adaptation CAT16 [Li2017], difference
// CIEDE2000 [Sharma2005], lights A and LED-B1 [CIE015].
#include <catch2/catch.hpp>
#include <Eigen/LU>
#include <optional>
#include <string>

#include "engine/colour/hair_colour.h"

using namespace combdraft;
using colour::Light;
using colour::Tone;

namespace {

/// XYZ under `light` as the corresponding colour in daylight, by full adaptation.
colour::Xyz inDaylight(const colour::Xyz& c, Light light) {
  Eigen::Matrix3d cat16;
  cat16 << 0.401288, 0.650173, -0.051461, -0.250268, 1.204414, 0.045854, -0.002079, 0.048952, 0.953127;
  const auto vec = [](const colour::Xyz& v) { return Eigen::Vector3d(v.x, v.y, v.z); };
  const Eigen::Vector3d from = cat16 * vec(colour::whitePoint(light));
  const Eigen::Vector3d to = cat16 * vec(colour::whitePoint(Light::Daylight));
  const Eigen::Vector3d cone = (cat16 * vec(c)).cwiseProduct(to.cwiseQuotient(from));
  const Eigen::Vector3d out = cat16.inverse() * cone;
  return {out.x(), out.y(), out.z()};
}

colour::Lab seenUnder(const colour::Spectrum& hair, Light light) {
  return colour::labFrom(inDaylight(colour::xyzOf(hair, light), light), colour::whitePoint(Light::Daylight));
}

/// Hair of a kind, by its level, whose daylight L* is `lightness`.
template <class Make>
colour::Spectrum hairOf(Make make, double lightness) {
  double low = 1, high = 11.9;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (colour::labOf(make(middle), Light::Daylight).L < lightness ? low : high) = middle;
  }
  return make(low);
}

struct Kind {
  Tone tone = Tone::Natural;
  std::optional<double> grownWarmth{};  ///< natural hair of that warmth instead
  colour::Spectrum operator()(double level) const {
    return grownWarmth ? colour::naturalHair(level, *grownWarmth) : colour::finishedHair(12, level, tone);
  }
  std::string word() const { return grownWarmth ? "grown" : std::string(colour::toneWord(tone)); }
};

}  // namespace

TEST_CASE("cool hair and coppery hair of one lightness come closer under warm lamps (common practice, no source)",
          "[colour][must-come-out]") {
  // A fixed list. Gold and pearl or beige are not on it: they stay as far apart
  // as they were, within 0.3, and no text may say otherwise.
  const std::pair<Kind, Kind> pairs[] = {{{Tone::Ash}, {Tone::Copper}},     {{Tone::Pearl}, {Tone::Copper}},
                                         {{Tone::Beige}, {Tone::Copper}},   {{Tone::Natural}, {Tone::Copper}},
                                         {{Tone::Ash}, {Tone::Red}},        {{Tone::Pearl}, {Tone::Red}},
                                         {{Tone::Ash}, {Tone::Beige}},      {{Tone::Natural, -1}, {Tone::Natural, 1}}};
  for (const auto& [cool, warm] : pairs)
    for (const double lightness : {40.0, 50.0, 60.0}) {
      INFO(cool.word() << " and " << warm.word() << " at L* " << lightness);
      const colour::Spectrum one = hairOf(cool, lightness), other = hairOf(warm, lightness);
      for (const colour::Spectrum& hair : {one, other})
        REQUIRE(seenUnder(hair, Light::Daylight).L == Approx(lightness).margin(0.01));
      const double day = colour::ciede2000(seenUnder(one, Light::Daylight), seenUnder(other, Light::Daylight));
      REQUIRE(day > 2);
      for (const Light lamp : {Light::Incandescent, Light::WarmLamp}) {
        CAPTURE(colour::lightWord(lamp));
        CHECK(colour::ciede2000(seenUnder(one, lamp), seenUnder(other, lamp)) < day);
      }
    }
}
