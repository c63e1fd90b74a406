#include "engine/head/section_arc.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"

namespace combdraft::head {

std::vector<Vec3> sectionArc(const HeadShape& shape, const Vec3& from, const Vec3& over,
                             const Vec3& to, int parts) {
  const Vec3 cross = (over - from).cross(to - from);
  COMBDRAFT_EXPECT(cross.norm() > 1e-6 && parts > 0, cross.norm(), parts);
  const Vec3 normal = cross.normalized();
  const Vec3 middle = normal.dot(from) * normal;  // foot of the head centre in the plane
  const Vec3 e1 = unitOr(from - middle, normal.unitOrthogonal()), e2 = normal.cross(e1);
  const auto angleOf = [&](const Vec3& p) {
    const double angle = std::atan2((p - middle).dot(e2), (p - middle).dot(e1));
    return angle < 0 ? angle + 2 * kPi : angle;
  };
  // Counted from `from`, round the side on which `over` lies.
  const bool forward = angleOf(over) < angleOf(to);
  const double end = forward ? angleOf(to) : angleOf(to) - 2 * kPi;
  std::vector<Vec3> arc{from};
  for (int i = 1; i < parts; ++i) {
    const double angle = end * i / parts;
    const Vec3 ray = std::cos(angle) * e1 + std::sin(angle) * e2;
    double inside = 0, outside = 400;
    for (int k = 0; k < 50; ++k) {
      const double mid = (inside + outside) / 2;
      (shape.implicit(middle + mid * ray) < 0 ? inside : outside) = mid;
    }
    arc.push_back(middle + inside * ray);
  }
  arc.push_back(to);
  return arc;
}

Vec3 pointAtShare(const HeadShape& shape, const std::vector<Vec3>& line, double share_frac) {
  COMBDRAFT_EXPECT(line.size() >= 2, line.size());
  double whole = 0;
  for (std::size_t i = 1; i < line.size(); ++i) whole += (line[i] - line[i - 1]).norm();
  double left = std::clamp(share_frac, 0.0, 1.0) * whole;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const double step = (line[i] - line[i - 1]).norm();
    if (left <= step || i + 1 == line.size())
      return shape.project(line[i - 1] + std::min(1.0, step > 0 ? left / step : 0.0) *
                                             (line[i] - line[i - 1]));
    left -= step;
  }
  return line.back();
}

}  // namespace combdraft::head
