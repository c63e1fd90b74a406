// The way to the screen against IEC 61966-2-1, published adaptation matrices
// and CIELAB values of sRGB colours.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/base/vec.h"
#include "engine/colour/screen.h"
#include "tests/support/csv.h"

using namespace combdraft;
using namespace combdraft::colour;
using combdraft::test::publishedTable;

namespace {

Eigen::Matrix3d matrix(const std::string& name) {
  for (const auto& row : publishedTable("colour_matrices.csv"))
    if (row.text("name") == name) {
      Eigen::Matrix3d m;
      for (int r = 0; r < 3; ++r)
        for (int c = 0; c < 3; ++c)
          m(r, c) = row.number("m" + std::to_string(r + 1) + std::to_string(c + 1));
      return m;
    }
  throw std::runtime_error("no matrix " + name);
}

/// The engine's map to linear sRGB as a matrix: it is linear.
Eigen::Matrix3d engineMatrix(Light light) {
  Eigen::Matrix3d m;
  const std::array<Xyz, 3> unit{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  for (int c = 0; c < 3; ++c) {
    const auto rgb = linearSrgb(unit[static_cast<std::size_t>(c)], light);
    m.col(c) = Vec3(rgb[0], rgb[1], rgb[2]);
  }
  return m;
}

double worst(const Eigen::Matrix3d& difference) { return difference.cwiseAbs().maxCoeff(); }

}  // namespace

TEST_CASE("daylight goes to the screen by the sRGB matrix", "[colour][published]") {
  // IEC 61966-2-1:1999; four decimals, and the 5 nm white point differs in the fifth.
  CHECK(worst(engineMatrix(Light::Daylight) - matrix("xyz_to_srgb")) < 5e-4);
  CHECK(worst(engineMatrix(Light::Daylight) * matrix("srgb_to_xyz") -
              Eigen::Matrix3d::Identity()) < 5e-4);
}

TEST_CASE("incandescent light is adapted by the published CAT16 matrix",
          "[colour][published]") {
  // CAT16, Li et al. 2017: D65 to A, whites (0.95047, 1, 1.08883), (1.09850, 1, 0.35585).
  const Eigen::Matrix3d back = matrix("srgb_to_xyz") * engineMatrix(Light::Incandescent);
  CHECK(worst(back.inverse() - matrix("cat16_d65_to_a")) < 1.5e-4);
}

TEST_CASE("every light's white is white on the screen", "[colour]") {
  for (const Light light : kAllLights)
    for (const double v : linearSrgb(whitePoint(light), light))
      CHECK(v == Approx(1).margin(1e-3));
}

TEST_CASE("the sRGB curve is exact for all 256 codes", "[colour][published]") {
  // IEC 61966-2-1:1999: the codes' own definition, and their middle values.
  for (int code = 0; code < 256; ++code) {
    const auto byte = static_cast<std::uint8_t>(code);
    const double linear = decodeSrgb(byte);
    const double v = code / 255.0;
    CHECK(linear ==
          Approx(v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4)).margin(1e-12));
    CHECK(encodeSrgb(linear) == byte);
    CHECK(encodeSrgbFast(static_cast<float>(linear)) == byte);
  }
  CHECK(decodeSrgb(188) == Approx(0.5029).margin(1e-4));  // mid grey in light
}

TEST_CASE("the fast sRGB table is never off by more than one code", "[colour]") {
  for (int i = 0; i <= 100000; ++i) {
    const double linear = i / 100000.0;
    CHECK(std::abs(int(encodeSrgb(linear)) - int(encodeSrgbFast(static_cast<float>(linear)))) <=
          1);
  }
  CHECK(encodeSrgb(std::nan("")) == 0);
  CHECK(encodeSrgb(-3) == 0);
  CHECK(encodeSrgb(7) == 255);
  CHECK(encodeSrgbFast(std::nanf("")) == 0);
  CHECK(encodeSrgbFast(-3) == 0);
  CHECK(encodeSrgbFast(7) == 255);
}

TEST_CASE("sRGB colours have their published CIELAB values", "[colour][published]") {
  // Worked from IEC 61966-2-1 with white 0.9505, 1, 1.089; red, green and blue
  // are the values handbooks print (53.2, 80.1, 67.2 and so on).
  struct Case {
    int r, g, b;
    Lab lab;
  };
  const Eigen::Matrix3d toXyz = matrix("srgb_to_xyz");
  for (const Case& c :
       {Case{255, 0, 0, {53.233, 80.105, 67.223}}, Case{0, 255, 0, {87.737, -86.188, 83.186}},
        Case{0, 0, 255, {32.303, 79.194, -107.854}},
        Case{200, 170, 120, {71.136, 3.990, 29.833}},
        Case{90, 60, 40, {28.270, 10.617, 17.632}}}) {
    const Vec3 rgb(decodeSrgb(static_cast<std::uint8_t>(c.r)),
                   decodeSrgb(static_cast<std::uint8_t>(c.g)),
                   decodeSrgb(static_cast<std::uint8_t>(c.b)));
    const Vec3 xyz = toXyz * rgb;
    const Lab lab = labFrom({xyz[0], xyz[1], xyz[2]}, {0.9505, 1, 1.0890});
    CHECK(lab.L == Approx(c.lab.L).margin(0.002));
    CHECK(lab.a == Approx(c.lab.a).margin(0.002));
    CHECK(lab.b == Approx(c.lab.b).margin(0.002));
  }
}
