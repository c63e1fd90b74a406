#pragma once
// Gaussian blur of a plane by three running means in each direction: an edge
// comes out within 3 % of its height of what the Gaussian of the same variance
// makes of it (4 % below sigma 1), cost independent of width.
#include <vector>

namespace combdraft::look {

/// `plane`: width x height, row after row; `sigma` in pixels. Outside is 0.
void blur(std::vector<float>& plane, int width, int height, double sigma);

/// Standard deviation of a Gaussian by its full width at half maximum.
constexpr double sigmaOfFwhm(double fwhm) { return fwhm / 2.354820045030949; }

/// What the eye blurs together at a distance: FWHM of 5 mm at a metre, never
/// under 3 mm [own].
constexpr double eyeBlur_mm(double distance_m) { return distance_m > 0.6 ? 5 * distance_m : 3.0; }

}  // namespace combdraft::look
