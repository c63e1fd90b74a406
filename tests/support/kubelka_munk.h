#pragma once
// Kubelka and Munk's infinitely thick layer, as an outside measure of the
// engine's own law for a mass of hair [Kubelka1948].
#include <cmath>

namespace combdraft::test {

/// Reflectance of an infinitely thick layer of absorption over scattering K/S.
inline double thickLayerReflectance(double kOverS) {
  return 1 + kOverS - std::sqrt(kOverS * kOverS + 2 * kOverS);
}

}  // namespace combdraft::test
