#include "engine/head/area.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace combdraft::head {
namespace {

constexpr int kNodes = 24;      // Gauss-Legendre in drop, per stretch
constexpr int kBearings = 360;  // midpoint rule round the head

struct GaussLegendre {
  std::array<double, kNodes> at, weight;  // on [-1, 1]
};

// Nodes by Newton's method on the Legendre polynomial (three-term recurrence).
GaussLegendre gaussLegendre() {
  GaussLegendre rule{};
  for (int i = 0; i < kNodes; ++i) {
    double x = std::cos(kPi * (i + 0.75) / (kNodes + 0.5)), slope = 0;
    for (int round = 0; round < 50; ++round) {
      double before = 1, here = x;
      for (int k = 2; k <= kNodes; ++k) {
        const double next = ((2 * k - 1) * x * here - (k - 1) * before) / k;
        before = here;
        here = next;
      }
      slope = kNodes * (x * here - before) / (x * x - 1);
      const double step = here / slope;
      x -= step;
      if (std::abs(step) < 1e-15) break;
    }
    rule.at[std::size_t(i)] = x;
    rule.weight[std::size_t(i)] = 2 / ((1 - x * x) * slope * slope);
  }
  return rule;
}

/// Drop at which the head crosses the height where the neck begins.
double neckDrop_deg(const HeadShape& shape, double bearing_deg) {
  const HeadAxes& axes = shape.axes();
  const double z = shape.neckTop_mm(), bearing = radians(bearing_deg);
  const double shrink = std::sqrt(1 - z * z / (axes.c_mm * axes.c_mm));
  const double sum = std::pow(std::abs(std::sin(bearing)) / axes.a_mm, axes.p) +
                     std::pow(std::abs(std::cos(bearing)) / axes.b_mm, axes.p);
  return degrees(std::atan2(shrink / std::pow(sum, 1 / axes.p), z));
}

}  // namespace

double areaPerSolidAngle_mm2(const HeadShape& shape, const Vec3& direction) {
  const Vec3 at = shape.pointAlong(direction);
  return at.squaredNorm() * at.norm() / shape.normalAt(at).dot(at);
}

double areaAbove_cm2(const HeadShape& shape, const std::function<double(double)>& lowestDrop_deg) {
  const GaussLegendre rule = gaussLegendre();
  double sum_mm2 = 0;
  for (int i = 0; i < kBearings; ++i) {
    const double bearing = -180 + (i + 0.5) * 360 / kBearings;
    const double lowest = lowestDrop_deg(bearing);
    const bool behind = std::abs(bearing) > 90;
    // The neck meets the skull with a bend: no stretch may straddle it.
    const double bend = behind ? std::min(lowest, neckDrop_deg(shape, bearing)) : lowest;
    const auto stretch = [&](double from, double to) {
      const double half = (to - from) / 2, middle = (to + from) / 2;
      if (half <= 0) return;
      for (std::size_t k = 0; k < kNodes; ++k) {
        const double drop = middle + half * rule.at[k];
        sum_mm2 += rule.weight[k] * radians(half) * std::sin(radians(drop)) *
                   areaPerSolidAngle_mm2(shape, directionOf({bearing, drop}));
      }
    };
    stretch(0, bend);
    stretch(bend, lowest);
  }
  return sum_mm2 * 2 * kPi / kBearings / 100;
}

double hairArea_cm2(const HeadShape& shape, const Hairline& hairline) {
  return areaAbove_cm2(shape, [&](double bearing_deg) {
    return shape.scalpPointAt(hairline.pointAt(bearing_deg)).drop_deg;
  });
}

}  // namespace combdraft::head
