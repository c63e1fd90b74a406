#pragma once
// Counter-based random numbers: a pure function of (seed, index, stream), so
// that no edit reshuffles another lock's hair. SplitMix64 finaliser
// [Steele2014]; not for cryptography.
#include <cmath>
#include <cstdint>

namespace combdraft {

constexpr std::uint64_t mix64(std::uint64_t z) {
  z += 0x9E3779B97F4A7C15ull;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
  return z ^ (z >> 31);
}

constexpr std::uint64_t randomBits(std::uint64_t seed, std::uint64_t index, std::uint32_t stream) {
  return mix64(mix64(mix64(seed) ^ index) + stream);
}

/// Uniform in [0, 1).
constexpr double randomUniform(std::uint64_t seed, std::uint64_t index, std::uint32_t stream) {
  return static_cast<double>(randomBits(seed, index, stream) >> 11) * 0x1.0p-53;
}

/// Standard normal (Box and Muller 1958), streams `stream` and `stream + 1`.
inline double randomNormal(std::uint64_t seed, std::uint64_t index, std::uint32_t stream) {
  const double u = 1.0 - randomUniform(seed, index, stream);
  const double v = randomUniform(seed, index, stream + 1);
  return std::sqrt(-2.0 * std::log(u)) * std::cos(6.283185307179586 * v);
}

}  // namespace combdraft
