#include "engine/hair/curl.h"

#include <cmath>

namespace combdraft::hair {

CurlShape curlShape(plan::CurlClass curl, double waveScale) {
  const auto sized = [&](CurlShape s) {
    s.radius_mm *= waveScale;
    return s;
  };
  switch (curl) {
    case plan::CurlClass::Straight: return sized({0.8, 110, 0, 0, 1.0, 0.7, 9});
    case plan::CurlClass::LooseWave: return sized({3.5, 95, 0, 0, 1.1, 1.0, 10});
    case plan::CurlClass::Wave: return sized({6.5, 72, 0.15, 0, 1.35, 1.4, 12});
    case plan::CurlClass::LooseCurl: return sized({7.5, 48, 0.7, 0.05, 1.9, 2.0, 13});
    case plan::CurlClass::Curl: return sized({6.5, 28, 1, 0.15, 2.4, 2.5, 12});
    case plan::CurlClass::TightCurl: return sized({4.6, 16, 1, 0.55, 2.8, 3.0, 9});
    case plan::CurlClass::Coil: return sized({3.0, 10, 1, 0.72, 3.0, 3.5, 6});
    case plan::CurlClass::TightCoil: return sized({1.9, 6, 1, 0.85, 3.0, 4.0, 4});
  }
  return {};
}

double CurlShape::shrinkage() const {
  const double k = 2 * kPi * radius_mm / turn_mm;
  // Coil: constant slope. Wave in a plane: mean of sqrt(1 + (k cos t)^2), by
  // Simpson over a quarter turn; exact enough at 1e-6 for k < 3.
  double wave = 0;
  constexpr int kParts = 64;
  for (int i = 0; i <= kParts; ++i) {
    const double t = kPi / 2 * i / kParts;
    const double weight = i == 0 || i == kParts ? 1 : i % 2 ? 4 : 2;
    wave += weight * std::sqrt(1 + k * k * std::cos(t) * std::cos(t));
  }
  wave /= 3.0 * kParts;
  const double coil = std::sqrt(1 + k * k);
  return 1 / ((1 - coil_frac) * wave + coil_frac * coil);
}

}  // namespace combdraft::hair
