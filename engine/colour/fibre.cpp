#include "engine/colour/fibre.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"
#include "engine/colour/light.h"

namespace combdraft::colour {
namespace {

constexpr double kDarkestInner = 1e-9;  // smallest inner reflectance that can be undone

Spectrum powerLaw(double at550, double exponent) {
  Spectrum s;
  for (std::size_t i = 0; i < kSamples; ++i)
    s[i] = at550 * std::pow(550 / wavelength_nm(i), exponent);
  return s;
}

}  // namespace

Spectrum reflectanceOf(const Spectrum& sigma) {
  Spectrum r;
  for (std::size_t i = 0; i < kSamples; ++i)
    r[i] =
        kSurfaceShare_frac + (1 - kSurfaceShare_frac) * std::exp(-kDepth * std::sqrt(sigma[i]));
  return r;
}

Spectrum absorptionOf(const Spectrum& reflectance) {
  Spectrum sigma;
  for (std::size_t i = 0; i < kSamples; ++i) {
    const double inner = (reflectance[i] - kSurfaceShare_frac) / (1 - kSurfaceShare_frac);
    const double root = -std::log(std::clamp(inner, kDarkestInner, 1.0)) / kDepth;
    sigma[i] = root * root;
  }
  return sigma;
}

Spectrum scaledToLightness(const Spectrum& shape, double lightness) {
  COMBDRAFT_EXPECT(std::isfinite(lightness), lightness);
  const double target = yFromLightness(std::clamp(lightness, 18.0, 98.0));
  Spectrum root;
  for (std::size_t i = 0; i < kSamples; ++i) {
    COMBDRAFT_EXPECT(shape[i] > 0, i, shape[i]);
    root[i] = std::sqrt(shape[i]);
  }
  // Y falls with k and is convex in it, so Newton from 0 never overshoots.
  double k = 0;
  for (int step = 0; step < 60; ++step) {
    Spectrum value, slope;
    for (std::size_t i = 0; i < kSamples; ++i) {
      const double inner = (1 - kSurfaceShare_frac) * std::exp(-kDepth * k * root[i]);
      value[i] = kSurfaceShare_frac + inner;
      slope[i] = kDepth * root[i] * inner;
    }
    const double move = (daylightY(value) - target) / daylightY(slope);
    k += move;
    if (std::abs(move) <= 1e-12 * k) break;
  }
  Spectrum scaled = shape;
  for (double& s : scaled) s *= k * k;
  return scaled;
}

const Spectrum& eumelanin() {
  static const Spectrum kShape = powerLaw(0.697, 3.33);
  return kShape;
}
const Spectrum& pheomelanin() {
  static const Spectrum kShape = powerLaw(0.40, 4.75);
  return kShape;
}

}  // namespace combdraft::colour
