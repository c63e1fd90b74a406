#pragma once
// Dyes laid into hair: which amounts bring a given hair to a wanted colour.
#include <array>

#include "engine/colour/spectrum.h"
#include "engine/colour/xyz.h"

namespace combdraft::colour {

/// The dyes of the model, absorption 1 at the peak, per fibre radius. Gold takes
/// away blue light, red blue-green, violet green and yellow, blue orange.
enum class Dye { Gold, Red, Violet, Blue };
inline constexpr std::size_t kDyes = 4;

/// Amount of each dye, 0 or more. Absorptions add, so their order is nothing.
using DyeAmounts = std::array<double, kDyes>;
Spectrum withDyes(const Spectrum& sigma, const DyeAmounts& amounts);

/// Three dyes that a colour is mixed from.
using DyeBox = std::array<Dye, 3>;

/// The amounts that bring hair of absorption `sigma` (above 0 everywhere) as
/// near as the three dyes can to `aim`, CIELAB in daylight. Dyes only take light
/// away: an aim that is lighter than the hair, or too light for its colour, is
/// not reached, and the nearest colour is given.
DyeAmounts dyesToward(const Spectrum& sigma, const Lab& aim, const DyeBox& box);

}  // namespace combdraft::colour
