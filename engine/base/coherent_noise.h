#pragma once
// Smooth random field in space (value noise on a unit lattice with smoothstep
// interpolation), so that neighbouring locks wander together.
#include "engine/base/random.h"
#include "engine/base/vec.h"

namespace combdraft {

/// In [-1, 1], continuous with its slope; `position` in lattice cells.
inline double coherentNoise(const Vec3& position, std::uint64_t seed) {
  const double fx = std::floor(position.x()), fy = std::floor(position.y()),
               fz = std::floor(position.z());
  const double tx = smoothstep(position.x() - fx), ty = smoothstep(position.y() - fy),
               tz = smoothstep(position.z() - fz);
  const auto corner = [&](int i, int j, int k) {
    const auto x = static_cast<std::uint64_t>(static_cast<std::int64_t>(fx) + i);
    const auto y = static_cast<std::uint64_t>(static_cast<std::int64_t>(fy) + j);
    const auto z = static_cast<std::uint64_t>(static_cast<std::int64_t>(fz) + k);
    return 2 * randomUniform(seed, (x * 0x8DA6B343u) ^ (y * 0xD8163841u) ^ (z * 0xCB1AB31Fu), 7) -
           1;
  };
  double layers[2];
  for (int k = 0; k < 2; ++k) {
    const double a = corner(0, 0, k) * (1 - tx) + corner(1, 0, k) * tx;
    const double b = corner(0, 1, k) * (1 - tx) + corner(1, 1, k) * tx;
    layers[k] = a * (1 - ty) + b * ty;
  }
  return layers[0] * (1 - tz) + layers[1] * tz;
}

}  // namespace combdraft
