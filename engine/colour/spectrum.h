#pragma once
// A spectrum: one value every 5 nm from 380 to 780 nm, the range and step of
// the colorimetric tables [CIE015]. Reflectances run 0..1.
#include <array>
#include <cstddef>

namespace combdraft::colour {

inline constexpr std::size_t kSamples = 81;
using Spectrum = std::array<double, kSamples>;

constexpr double wavelength_nm(std::size_t sample) {
  return 380.0 + 5.0 * static_cast<double>(sample);
}

}  // namespace combdraft::colour
