#pragma once
// Vectors of the engine. Head frame: millimetres, +x wearer's right, +y front,
// +z up, origin at the head centre.
#include <Eigen/Core>
#include <Eigen/Geometry>

namespace combdraft {

using Vec2 = Eigen::Vector2d;
using Vec3 = Eigen::Vector3d;

/// Compact stored point (single precision is 0.03 um at 500 mm).
struct Point3f {
  float x = 0, y = 0, z = 0;
};
inline Point3f toPoint3f(const Vec3& v) {
  return {static_cast<float>(v.x()), static_cast<float>(v.y()), static_cast<float>(v.z())};
}
inline Vec3 toVec3(const Point3f& p) { return {p.x, p.y, p.z}; }

/// Unit vector along `v`, or `fallback` when `v` is shorter than 1e-12.
inline Vec3 unitOr(const Vec3& v, const Vec3& fallback) {
  const double n = v.norm();
  return n > 1e-12 ? Vec3(v / n) : fallback;
}

constexpr double kPi = 3.14159265358979323846;
constexpr double radians(double deg) { return deg * kPi / 180.0; }
constexpr double degrees(double rad) { return rad * 180.0 / kPi; }

/// Cubic step: 0 for t <= 0, 1 for t >= 1, slope 0 at both ends.
inline double smoothstep(double t) {
  t = t < 0 ? 0 : t > 1 ? 1 : t;
  return t * t * (3 - 2 * t);
}
inline double smoothstep(double edge0, double edge1, double x) {
  return smoothstep((x - edge0) / (edge1 - edge0));
}

}  // namespace combdraft
