#pragma once
// The optics of a mass of hair: reflectance from absorption.
//
//   R(l) = F + (1 - F) exp(-D sqrt(sigma(l)))
//
// sigma: absorption per fibre radius, one value a wavelength; pigments and dyes
// add in it. F: light thrown back at the surface before it meets any pigment.
// D: how deep light wanders in a mass of hair before it leaves [Chiang2016].
#include "engine/colour/spectrum.h"

namespace combdraft::colour {

/// Surface share F. Measured black hair has Y 2.5 to 2.6 % [Scanavez2000].
inline constexpr double kSurfaceShare_frac = 0.025;
/// D as a function of azimuthal roughness, 0..1 [Chiang2016].
constexpr double depthAtRoughness(double b) {
  return 5.969 + b * (-0.215 + b * (2.532 + b * (-10.73 + b * (5.574 + b * 0.245))));
}
/// D of hair, at the roughness 0.3 of the fibre model's tables.
inline constexpr double kDepth = depthAtRoughness(0.3);

Spectrum reflectanceOf(const Spectrum& sigma);
/// Inverse of reflectanceOf. A reflectance at or below F has no finite
/// absorption and counts as R = F + 1e-9, one at or above 1 as no absorption.
Spectrum absorptionOf(const Spectrum& reflectance);

/// `shape` times the one factor that makes its reflectance as light as L*
/// `lightness` in daylight (18 to 98; clamped). `shape` is above 0 everywhere.
/// Accurate to 1e-9 in L*.
Spectrum scaledToLightness(const Spectrum& shape, double lightness);

/// Absorption of unit concentration, per fibre radius: scale from the RGB fibre
/// model at its green, 550 nm [dEon2011]; exponents [Donner2006].
const Spectrum& eumelanin();
const Spectrum& pheomelanin();

}  // namespace combdraft::colour
