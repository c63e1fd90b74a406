#pragma once
// From tristimulus values to the screen: adaptation to the screen's daylight
// white, linear sRGB, and the 8-bit sRGB code [IEC61966] [Li2017].
#include <array>
#include <cstdint>

#include "engine/colour/light.h"
#include "engine/colour/xyz.h"

namespace combdraft::colour {

/// Linear sRGB (1 = screen white) of a colour seen under `light` by an eye
/// fully adapted to it (CAT16). The light's white gives 1, 1, 1 within 1e-3.
/// May lie outside 0..1: the caller mixes first and clamps last.
std::array<double, 3> linearSrgb(const Xyz& xyz, Light light);

/// The 8-bit code of a linear value: clamped, curved, rounded. Not-a-number
/// gives 0.
std::uint8_t encodeSrgb(double linear);
/// The same within one code, and exact for every decoded 8-bit code, from a
/// table: for pictures.
std::uint8_t encodeSrgbFast(float linear);
/// Linear value of an 8-bit code.
double decodeSrgb(std::uint8_t code);

}  // namespace combdraft::colour
