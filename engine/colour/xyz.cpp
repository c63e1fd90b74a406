#include "engine/colour/xyz.h"

#include <cmath>

#include "engine/base/vec.h"

namespace combdraft::colour {
namespace {

// CIE constants as exact fractions [CIE015].
constexpr double kEpsilon = 216.0 / 24389.0;
constexpr double kKappa = 24389.0 / 27.0;

double compressed(double t) { return t > kEpsilon ? std::cbrt(t) : (kKappa * t + 16) / 116; }
double expanded(double f) {
  const double cube = f * f * f;
  return cube > kEpsilon ? cube : (116 * f - 16) / kKappa;
}

}  // namespace

double chroma(const Lab& lab) { return std::hypot(lab.a, lab.b); }

double hue_deg(const Lab& lab) {
  if (lab.a == 0 && lab.b == 0) return 0;
  const double h = degrees(std::atan2(lab.b, lab.a));
  return h < 0 ? h + 360 : h;
}

Lab labFrom(const Xyz& xyz, const Xyz& white) {
  const double fx = compressed(xyz.x / white.x);
  const double fy = compressed(xyz.y / white.y);
  const double fz = compressed(xyz.z / white.z);
  return {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
}

Xyz xyzFrom(const Lab& lab, const Xyz& white) {
  const double fy = (lab.L + 16) / 116;
  return {white.x * expanded(fy + lab.a / 500), white.y * expanded(fy),
          white.z * expanded(fy - lab.b / 200)};
}

double lightnessFromY(double Y) { return 116 * compressed(Y) - 16; }
double yFromLightness(double L) { return expanded((L + 16) / 116); }

}  // namespace combdraft::colour
