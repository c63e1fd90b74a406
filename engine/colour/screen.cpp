#include "engine/colour/screen.h"

#include <cmath>

#include "engine/base/vec.h"

namespace combdraft::colour {
namespace {

// White that the rounded sRGB matrix maps to 1, 1, 1 [IEC61966].
constexpr Xyz kScreenWhite{0.9505, 1.0, 1.0890};

Eigen::Matrix3d xyzToLinearSrgb() {
  Eigen::Matrix3d m;
  m << 3.2406, -1.5372, -0.4986, -0.9689, 1.8758, 0.0415, 0.0557, -0.2040,
      1.0570;  // [IEC61966]
  return m;
}

/// Full von Kries adaptation in the cone space of CAT16 [Li2017].
Eigen::Matrix3d adaptation(const Xyz& from, const Xyz& to) {
  Eigen::Matrix3d cones;
  cones << 0.401288, 0.650173, -0.051461, -0.250268, 1.204414, 0.045854, -0.002079, 0.048952,
      0.953127;
  const Vec3 source = cones * Vec3(from.x, from.y, from.z);
  const Vec3 target = cones * Vec3(to.x, to.y, to.z);
  const Vec3 gain = target.cwiseQuotient(source);
  return cones.inverse() * gain.asDiagonal() * cones;
}

using Matrices = std::array<Eigen::Matrix3d, kAllLights.size()>;
Matrices buildMatrices() {
  Matrices all;
  for (const Light light : kAllLights)
    all[static_cast<std::size_t>(light)] =
        xyzToLinearSrgb() * adaptation(whitePoint(light), kScreenWhite);
  return all;
}

double curved(double linear) {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

constexpr int kTableSteps = 8192;
std::array<std::uint8_t, kTableSteps + 1> buildTable() {
  std::array<std::uint8_t, kTableSteps + 1> table{};
  for (int i = 0; i <= kTableSteps; ++i)
    table[static_cast<std::size_t>(i)] = encodeSrgb(static_cast<double>(i) / kTableSteps);
  return table;
}

}  // namespace

std::array<double, 3> linearSrgb(const Xyz& xyz, Light light) {
  static const Matrices kMatrices = buildMatrices();
  const Vec3 rgb = kMatrices[static_cast<std::size_t>(light)] * Vec3(xyz.x, xyz.y, xyz.z);
  return {rgb.x(), rgb.y(), rgb.z()};
}

std::uint8_t encodeSrgb(double linear) {
  if (!(linear > 0)) return 0;
  if (linear >= 1) return 255;
  return static_cast<std::uint8_t>(std::lround(255 * curved(linear)));
}

std::uint8_t encodeSrgbFast(float linear) {
  static const auto kTable = buildTable();
  if (!(linear > 0)) return 0;
  if (linear >= 1) return 255;
  return kTable[static_cast<std::size_t>(linear * kTableSteps + 0.5f)];
}

double decodeSrgb(std::uint8_t code) {
  const double v = code / 255.0;
  return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
}

}  // namespace combdraft::colour
