#include "engine/head/surface_distance.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"

namespace combdraft::head {
namespace {

constexpr double kProbe_mm = 0.05;  // for differences of the unit normal

Vec3 tangentPart(const Vec3& direction, const Vec3& normal) {
  return direction - direction.dot(normal) * normal;
}

/// Change of the unit normal per mm along the unit tangent `t`.
Vec3 normalTurn(const HeadShape& shape, const Vec3& at, const Vec3& t) {
  return (shape.normalAt(at + kProbe_mm * t) - shape.normalAt(at - kProbe_mm * t)) /
         (2 * kProbe_mm);
}

double gaussCurvature(const HeadShape& shape, const Vec3& at, const Vec3& normal, const Vec3& t) {
  const Vec3 b = normal.cross(t);
  const Vec3 alongTurn = normalTurn(shape, at, t), acrossTurn = normalTurn(shape, at, b);
  return alongTurn.dot(t) * acrossTurn.dot(b) - alongTurn.dot(b) * acrossTurn.dot(t);
}

/// Directions evenly spread on the arc from d0 to d1 (unit, not opposite).
void appendArc(std::vector<Vec3>& out, const Vec3& d0, const Vec3& d1, int parts) {
  const double angle = std::atan2(d0.cross(d1).norm(), d0.dot(d1));
  for (int i = 1; i <= parts; ++i) {
    const double t = double(i) / parts;
    if (angle < 1e-9)
      out.push_back(unitOr(d0 + t * (d1 - d0), d0));
    else
      out.push_back((std::sin((1 - t) * angle) * d0 + std::sin(t * angle) * d1) /
                    std::sin(angle));
  }
}


// Shortens a polyline on the surface by Newton steps square to itself: zero
// bend of neighbouring chords, tridiagonal second variation
// integral of (w'^2 - K w^2) with Gaussian curvature K.
void straighten(const HeadShape& shape, std::vector<Vec3>& p) {
  const std::size_t n = p.size() - 1;
  std::vector<Vec3> across(n + 1, Vec3::Zero());
  std::vector<double> curvature(n + 1, 0), bend(n + 1), diagonal(n + 1), upper(n + 1), move(n + 1);
  for (int round = 0; round < 60; ++round) {
    double worst = 0;
    for (std::size_t i = 1; i < n; ++i) {
      const Vec3 before = p[i] - p[i - 1], after = p[i + 1] - p[i];
      const double h0 = before.norm(), h1 = after.norm();
      const Vec3 normal = shape.normalAt(p[i]);
      const Vec3 t = unitOr(tangentPart(before / h0 + after / h1, normal), Vec3::UnitX());
      across[i] = normal.cross(t);
      if (round % 8 == 0) curvature[i] = gaussCurvature(shape, p[i], normal, t);
      bend[i] = across[i].dot(after / h1 - before / h0);
      diagonal[i] = 1 / h0 + 1 / h1 - 0.97 * std::max(curvature[i], 0.0) * (h0 + h1) / 2;
      upper[i] = -1 / h1;
    }
    // Thomas elimination; where curvature makes it indefinite, drop that term.
    for (std::size_t i = 1; i < n; ++i) {
      double pivot = diagonal[i], right = bend[i];
      if (i > 1) {
        const double factor = upper[i - 1] / diagonal[i - 1];
        pivot -= factor * upper[i - 1];
        right -= factor * bend[i - 1];
      }
      diagonal[i] = std::max(pivot, 1e-3);
      bend[i] = right;
    }
    for (std::size_t i = n; i-- > 1;) {
      move[i] = (bend[i] - (i + 1 < n ? upper[i] * move[i + 1] : 0.0)) / diagonal[i];
      worst = std::max(worst, std::abs(move[i]));
    }
    const double scale = worst > 8 ? 8 / worst : 1.0;
    for (std::size_t i = 1; i < n; ++i) p[i] = shape.project(p[i] + scale * move[i] * across[i]);
    if (worst < 1e-5) break;
  }
}

SurfacePath straightened(const HeadShape& shape, const std::vector<Vec3>& directions,
                         const Vec3& from, const Vec3& to) {
  SurfacePath path;
  path.points.push_back(from);
  for (std::size_t i = 0; i + 1 < directions.size(); ++i)
    path.points.push_back(shape.pointAlong(directions[i]));
  path.points.push_back(to);
  straighten(shape, path.points);
  path.length_mm = lineLength_mm(shape, path.points);
  return path;
}

}  // namespace

SurfacePath shortestPath(const HeadShape& shape, const Vec3& from, const Vec3& to) {
  const double chord_mm = (to - from).norm();
  if (chord_mm < 1e-9) return {{from, to}, 0.0};
  const Vec3 d0 = unitOr(from, Vec3::UnitZ()), d1 = unitOr(to, Vec3::UnitZ());
  const double angle = std::atan2(d0.cross(d1).norm(), d0.dot(d1));
  const int parts = std::clamp(int(std::ceil(1.3 * chord_mm / 4)), 4, 64);
  constexpr double kNearlyOpposite = 2.1;  // radians; beyond, more than one way may be shortest
  std::vector<Vec3> directions;
  if (angle < kNearlyOpposite) {
    appendArc(directions, d0, d1, parts);
    return straightened(shape, directions, from, to);
  }
  const Vec3 axis = unitOr(d0.cross(d1), d0.unitOrthogonal());
  const Vec3 side = axis.cross(d0);
  SurfacePath best;
  best.length_mm = 1e9;
  for (const Vec3& lean : {side, Vec3(-side), axis, Vec3(-axis)}) {
    const Vec3 middle = unitOr(d0 + d1 + lean, lean);
    if (middle.dot(d0) < -0.95 || middle.dot(d1) < -0.95) continue;
    directions.clear();
    appendArc(directions, d0, middle, parts / 2);
    appendArc(directions, middle, d1, parts - parts / 2);
    SurfacePath path = straightened(shape, directions, from, to);
    if (path.length_mm < best.length_mm) best = std::move(path);
  }
  COMBDRAFT_EXPECT(!best.points.empty(), chord_mm, angle);
  return best;
}

double surfaceDistance_mm(const HeadShape& shape, const Vec3& from, const Vec3& to) {
  return shortestPath(shape, from, to).length_mm;
}

SurfaceStep stepAlong(const HeadShape& shape, const Vec3& from, const Vec3& direction,
                      double distance_mm) {
  Vec3 normal = shape.normalAt(from);
  Vec3 x = from, t = unitOr(tangentPart(direction, normal), normal.unitOrthogonal());
  const bool backwards = distance_mm < 0;
  if (backwards) t = -t, distance_mm = -distance_mm;
  // x'' = -(t . dn/ds) n, by Runge and Kutta's fourth-order rule.
  const auto bend = [&](const Vec3& at, const Vec3& along) {
    const Vec3 unit = unitOr(along, t);
    return Vec3(-normalTurn(shape, at, unit).dot(unit) * shape.normalAt(at));
  };
  const int steps = std::max(1, int(std::ceil(distance_mm / 2.0)));
  const double h = distance_mm / steps;
  for (int i = 0; i < steps; ++i) {
    const Vec3 k1 = bend(x, t);
    const Vec3 t2 = t + h / 2 * k1, k2 = bend(x + h / 2 * t, t2);
    const Vec3 t3 = t + h / 2 * k2, k3 = bend(x + h / 2 * t2, t3);
    const Vec3 t4 = t + h * k3, k4 = bend(x + h * t3, t4);
    x = shape.project(x + h / 6 * (t + 2 * t2 + 2 * t3 + t4));
    normal = shape.normalAt(x);
    t = unitOr(tangentPart(t + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4), normal), t);
  }
  return {x, backwards ? Vec3(-t) : t};
}

Vec3 surfaceOffset(const HeadShape& shape, const Vec3& from, const Vec3& direction,
                   double distance_mm) {
  return stepAlong(shape, from, direction, distance_mm).at;
}

Vec3 leftOf(const HeadShape& shape, const Vec3& at, const Vec3& heading) {
  const Vec3 normal = shape.normalAt(at);
  return unitOr(normal.cross(heading), normal.unitOrthogonal());
}

std::vector<Vec3> resampledOnSurface(const HeadShape& shape, const std::vector<Vec3>& line,
                                     double step_mm) {
  COMBDRAFT_EXPECT(step_mm > 0, step_mm);
  std::vector<Vec3> out;
  std::vector<Vec3> directions;
  for (const Vec3& next : line) {
    if (out.empty()) {
      out.push_back(next);
      continue;
    }
    const Vec3 last = out.back();
    const double chord_mm = (next - last).norm();
    if (chord_mm < 1e-6) continue;
    const Vec3 d0 = unitOr(last, Vec3::UnitZ()), d1 = unitOr(next, Vec3::UnitZ());
    // The ray to a point on the arc changes length, so leave some room.
    const double angle = std::atan2(d0.cross(d1).norm(), d0.dot(d1));
    const double reach_mm = std::max(chord_mm, angle * std::max(last.norm(), next.norm()));
    int parts = std::max(1, int(std::ceil(1.05 * reach_mm / step_mm)));
    for (;; parts = parts * 3 / 2 + 1) {
      directions.clear();
      appendArc(directions, d0, d1, parts);
      std::vector<Vec3> points{last};
      for (std::size_t i = 0; i + 1 < directions.size(); ++i)
        points.push_back(shape.pointAlong(directions[i]));
      points.push_back(next);
      double longest = 0;
      for (std::size_t i = 1; i < points.size(); ++i)
        longest = std::max(longest, (points[i] - points[i - 1]).norm());
      if (longest > step_mm && parts < 2000) continue;
      out.insert(out.end(), points.begin() + 1, points.end());
      break;
    }
  }
  return out;
}

double lineLength_mm(const HeadShape& shape, const std::vector<Vec3>& line) {
  if (line.size() < 2) return 0;
  double sum = 0;
  Vec3 before = shape.normalAt(line.front());
  for (std::size_t i = 1; i < line.size(); ++i) {
    const Vec3 step = line[i] - line[i - 1];
    const double chord = step.norm();
    const Vec3 here = shape.normalAt(line[i]);
    if (chord > 0) {
      const double turn = (here - before).dot(step) / chord;
      sum += chord * (1 + turn * turn / 24);  // arc over chord to second order
    }
    before = here;
  }
  return sum;
}

}  // namespace combdraft::head
