#include "engine/head/head_shape.h"

#include <algorithm>
#include <cmath>

namespace combdraft::head {
namespace {

// Neck table for a = 73.9, b = 94.9, c = 90 [own: drawn with the line art].
struct NeckRow {
  double z, a, b;
};
constexpr std::array<NeckRow, 10> kNeck{{{-48, 62.5, 80.3},
                                         {-54, 60.2, 76.3},
                                         {-60, 58.4, 72.6},
                                         {-66, 57.0, 69.2},
                                         {-70, 56.3, 67.2},
                                         {-74, 55.6, 65.4},
                                         {-80, 54.9, 63.1},
                                         {-90, 54.0, 60.5},
                                         {-110, 53.6, 57.5},
                                         {-200, 53.6, 57.5}}};

// Monotone cubic (Fritsch and Carlson 1980) through the table's column.
double neckValue(double z, double NeckRow::*column) {
  if (z >= kNeck.front().z) return kNeck.front().*column;
  if (z <= kNeck.back().z) return kNeck.back().*column;
  std::size_t i = 0;
  while (kNeck[i + 1].z > z) ++i;
  const auto slope = [&](std::size_t k) {
    return (kNeck[k + 1].*column - kNeck[k].*column) / (kNeck[k + 1].z - kNeck[k].z);
  };
  const auto tangent = [&](std::size_t k) {
    // At the top the skull's own slope: d(h)/dz of h = sqrt(1 - (z/c)^2) at z = -48.
    if (k == 0) return (column == &NeckRow::a ? 73.9 : 94.9) * (48.0 / 8100.0) / 0.845905;
    if (k + 1 == kNeck.size()) return 0.0;
    const double s0 = slope(k - 1), s1 = slope(k);
    return s0 * s1 <= 0 ? 0.0 : 2 * s0 * s1 / (s0 + s1);
  };
  const double w = kNeck[i + 1].z - kNeck[i].z, t = (z - kNeck[i].z) / w;
  const double y0 = kNeck[i].*column, y1 = kNeck[i + 1].*column;
  const double m0 = tangent(i) * w, m1 = tangent(i + 1) * w;
  const double t2 = t * t, t3 = t2 * t;
  return (2 * t3 - 3 * t2 + 1) * y0 + (t3 - 2 * t2 + t) * m0 + (3 * t2 - 2 * t3) * y1 +
         (t3 - t2) * m1;
}

// The gradient holds S^(2/p - 1), infinite times zero at the vertex.
constexpr double kSmallestSum = 1e-9;

}  // namespace

HeadShape::HeadShape(const HeadAxes& axes) : axes_(axes) {}

double HeadShape::halfWidth_mm(double z) const {
  if (z < neckTop_mm())
    return neckValue(z * 90.0 / axes_.c_mm, &NeckRow::a) * axes_.a_mm / 73.9;
  const double r = z / axes_.c_mm;
  return r * r >= 1 ? 0.0 : axes_.a_mm * std::sqrt(1 - r * r);
}

double HeadShape::halfDepthBehind_mm(double z) const {
  if (z < neckTop_mm())
    return neckValue(z * 90.0 / axes_.c_mm, &NeckRow::b) * axes_.b_mm / 94.9;
  const double r = z / axes_.c_mm;
  return r * r >= 1 ? 0.0 : axes_.b_mm * std::sqrt(1 - r * r);
}

double HeadShape::sectionRadius_mm(const Vec3& out, double z) const {
  const bool neck = z < neckTop_mm() && out.y() < 0;
  const double a = neck ? halfWidth_mm(z) : axes_.a_mm, b = neck ? halfDepthBehind_mm(z) : axes_.b_mm;
  const double up = neck ? 0.0 : z / axes_.c_mm;
  const double sum = std::pow(std::abs(out.x()) / a, axes_.p) + std::pow(std::abs(out.y()) / b, axes_.p);
  return std::sqrt(std::max(1 - up * up, 0.0)) / std::pow(sum, 1 / axes_.p);
}

HeadShape::Level HeadShape::levelAt(const Vec3& q) const {
  const bool neck = q.z() < neckTop_mm() && q.y() < 0;
  const double a = neck ? halfWidth_mm(q.z()) : axes_.a_mm;
  const double b = neck ? halfDepthBehind_mm(q.z()) : axes_.b_mm;
  const double p = axes_.p;
  const double rx = std::abs(q.x()) / a, ry = std::abs(q.y()) / b;
  const double px = std::pow(rx, p), py = std::pow(ry, p);
  const double sum = std::max(px + py, kSmallestSum);
  const double outer = std::pow(sum, 2 / p - 1);
  const double up = neck ? 0.0 : q.z() / axes_.c_mm;
  const double section = px + py < kSmallestSum ? std::pow(px + py, 2 / p) : sum * outer;
  const double value = section + up * up - 1;
  // p is above 1: r^(p - 1) is 0 where r is.
  const double gx = rx > 0 ? 2 * outer * (px / rx) / a * (q.x() < 0 ? -1 : 1) : 0.0;
  const double gy = ry > 0 ? 2 * outer * (py / ry) / b * (q.y() < 0 ? -1 : 1) : 0.0;
  if (!neck) return {value, {gx, gy, 2 * q.z() / (axes_.c_mm * axes_.c_mm)}};
  constexpr double kStep_mm = 1e-3;
  const double da =
      (halfWidth_mm(q.z() + kStep_mm) - halfWidth_mm(q.z() - kStep_mm)) / (2 * kStep_mm);
  const double db = (halfDepthBehind_mm(q.z() + kStep_mm) - halfDepthBehind_mm(q.z() - kStep_mm)) /
                    (2 * kStep_mm);
  return {value, {gx, gy, 2 * outer * (-px / a * da - py / b * db)}};
}

Vec3 HeadShape::normalAt(const Vec3& q) const { return unitOr(gradient(q), Vec3::UnitZ()); }

Vec3 HeadShape::project(const Vec3& position) const {
  Vec3 q = position;
  for (int i = 0; i < 4; ++i) {
    const auto [value, slope] = levelAt(q);
    if (std::abs(value) < 1e-10) break;
    q -= value * slope / std::max(slope.squaredNorm(), 1e-12);
  }
  return q;
}

Vec3 HeadShape::pointAlong(const Vec3& direction) const {
  const Vec3 d = unitOr(direction, Vec3::UnitZ());
  // Plain form first: implicit is homogeneous of degree 2 up to the constant.
  const double radial =
      std::pow(std::pow(std::abs(d.x()) / axes_.a_mm, axes_.p) +
                   std::pow(std::abs(d.y()) / axes_.b_mm, axes_.p),
               2 / axes_.p) +
      d.z() * d.z() / (axes_.c_mm * axes_.c_mm);
  const double t = 1 / std::sqrt(radial);
  const Vec3 plain = d * t;
  if (plain.z() >= neckTop_mm() || d.y() >= 0) return plain;
  // The neck lies outside the plain form: Newton along the ray, kept between
  // bounds.
  double lo = t * 0.8, hi = t * 3, at = t;
  for (int i = 0; i < 60; ++i) {
    const Vec3 q = d * at;
    const auto [value, rising] = levelAt(q);
    (value < 0 ? lo : hi) = at;
    const double slope = rising.dot(d);
    double next = slope > 0 ? at - value / slope : (lo + hi) / 2;
    if (next <= lo || next >= hi) next = (lo + hi) / 2;
    const bool settled = std::abs(next - at) < 1e-11 * t;
    at = next;
    if (settled) break;
  }
  return d * at;
}

double HeadShape::circumference_mm() const {
  constexpr int kParts = 1440;
  double length = 0;
  Vec3 before = pointAlong({0, 1, 0});
  for (int i = 1; i <= kParts; ++i) {
    const double angle = 2 * kPi * i / kParts;
    const Vec3 here = pointAlong({std::sin(angle), std::cos(angle), 0});
    length += (here - before).norm();
    before = here;
  }
  return length;
}

}  // namespace combdraft::head
