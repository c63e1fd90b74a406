#include "engine/hair/body.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace combdraft::hair {
namespace {

double capsule(const Vec3& p, const Vec3& a, const Vec3& b, double radius) {
  const Vec3 pa = p - a, ba = b - a;
  const double t = std::clamp(pa.dot(ba) / ba.squaredNorm(), 0.0, 1.0);
  return (pa - ba * t).norm() - radius;
}

/// Polynomial smooth minimum with blend width k [Quilez].
double smoothMin(double a, double b, double k) {
  const double h = std::max(k - std::abs(a - b), 0.0) / k;
  return std::min(a, b) - h * h * k / 4;
}

}  // namespace

Body::Body(const head::HeadShape& shape)
    : shape_(shape), sections_(shape), ears_(sections_.ears()), sz_(shape.axes().c_mm / 90.0) {}

double Body::sectionDistance_mm(const head::BodySection& section, const Vec3& p) const {
  const bool before = p.y() >= section.middle_mm;
  // The drawn widths step at the ear; hair must not feel an edge there.
  const double forward = smoothstep(-25, 12, p.y() - section.middle_mm);
  const double half =
      section.halfWidthBehind_mm + forward * (section.halfWidth_mm - section.halfWidthBehind_mm);
  const double depth =
      std::max(before ? section.front_mm - section.middle_mm : section.middle_mm - section.back_mm, 1.0);
  const double power = shape_.axes().p;
  const double r = std::pow(std::pow(std::abs(p.x()) / half, power) +
                                std::pow(std::abs(p.y() - section.middle_mm) / depth, power),
                            1 / power);
  return (r - 1) * std::min(half, depth);
}

double Body::headDistance_mm(const Vec3& p) const {
  // implicit grows like the square of the distance: take the root first.
  const double f = std::sqrt(std::max(shape_.implicit(p) + 1, 0.0));
  const double skull = (f - 1) * 2 * f / std::max(shape_.gradient(p).norm(), 1e-9);
  const double z = p.z();
  if (z > 10 * sz_) return skull;
  // Below the shoulders' slope the neck goes on; shoulders are a part of their own.
  const auto trunk = sections_.at(std::max(z, -150.0 * sz_));
  double solid = trunk ? sectionDistance_mm(*trunk, p) : skull;
  if (const auto jaw = sections_.at(head::BodyPart::Jaw, z))
    solid = std::min(solid, sectionDistance_mm(*jaw, p));
  const double below = smoothstep(10, -14, z / sz_);
  return skull * (1 - below) + solid * below;
}

double Body::earDistance_mm(const Vec3& p) const {
  const head::EarShape& ear = ears_[p.x() >= 0 ? 0 : 1];
  const double lean = radians(ear.leanBack_deg);
  constexpr double kIn_mm = 5;  // hair a few mm under the rim still shows over it
  const Vec3 d = p - ear.centre + Vec3(p.x() >= 0 ? kIn_mm : -kIn_mm, 0, 0);
  const Vec3 q(d.x(), d.y() * std::cos(lean) + d.z() * std::sin(lean),
               d.z() * std::cos(lean) - d.y() * std::sin(lean));
  const double r = (q.array() / ear.radii.array()).matrix().norm();
  return (r - 1) * ear.radii.minCoeff() * (0.5 + 0.5 * std::min(1.0, r));
}

double Body::shoulderDistance_mm(const Vec3& p) const {
  // The body does not scale with the head: shoulders hang below the neck.
  const double down = (sz_ - 1) * 130;
  const Vec3 q(std::abs(p.x()), p.y(), p.z() + down);
  const double slope = capsule(q, {46, -26, -224}, {172, -26, -262}, 48);
  const double chest = [&] {
    const Vec3 d((q.x()) / 165.0, (q.y() + 22) / 92.0, (q.z() + 340) / 132.0);
    return (d.norm() - 1) * 92;
  }();
  return smoothMin(slope, chest, 30);
}

double Body::distance_mm(const Vec3& p) const {
  double d = headDistance_mm(p);
  if (p.z() < -90) d = smoothMin(d, shoulderDistance_mm(p), 40);
  return d;
}

Vec3 Body::outward(const Vec3& p) const {
  constexpr double h = 0.5;
  const Vec3 g(distance_mm(p + Vec3(h, 0, 0)) - distance_mm(p - Vec3(h, 0, 0)),
               distance_mm(p + Vec3(0, h, 0)) - distance_mm(p - Vec3(0, h, 0)),
               distance_mm(p + Vec3(0, 0, h)) - distance_mm(p - Vec3(0, 0, h)));
  return unitOr(g, Vec3(p.x(), p.y(), 0));
}

}  // namespace combdraft::hair
