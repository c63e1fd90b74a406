#include "engine/head/part_line.h"

#include <algorithm>
#include <cmath>

#include "engine/head/surface_distance.h"

namespace combdraft::head {
namespace {

/// The last point inside the hair on the way from `inside` to `outside`.
Vec3 atHairline(const HeadShape& shape, const Hairline& hairline, const Vec3& inside,
                const Vec3& outside) {
  double in = 0, out = 1;
  for (int i = 0; i < 40; ++i) {
    const double mid = (in + out) / 2;
    const Vec3 at = shape.pointAlong(inside + mid * (outside - inside));
    (hairline.contains(at) ? in : out) = mid;
  }
  return shape.pointAlong(inside + in * (outside - inside));
}

}  // namespace

std::vector<ScalpPoint> defaultPart(const HeadShape& shape, const Hairline& hairline) {
  constexpr double kFront_mm = 78, kBack_mm = -42, kInside_mm = 2;
  constexpr int kParts = 15;
  const double scale = shape.axes().b_mm / 94.9;
  const auto onCentreLine = [&](double y) {
    const double r = y / shape.axes().b_mm;
    return Vec3(0, y, shape.axes().c_mm * std::sqrt(std::max(0.0, 1 - r * r)));
  };
  double front = kFront_mm * scale;
  while (front > kBack_mm * scale && hairline.above_mm(onCentreLine(front)) < kInside_mm)
    front -= 0.25;
  std::vector<ScalpPoint> part;
  for (int i = 0; i <= kParts; ++i)
    part.push_back(shape.scalpPointAt(onCentreLine(front + (kBack_mm * scale - front) * i / kParts)));
  return part;
}

MovedPart partMoved(const HeadShape& shape, const Hairline& hairline,
                    const std::vector<ScalpPoint>& part, double shift_mm) {
  const std::size_t n = part.size();
  if (n < 2 || shift_mm == 0) return {part, 0};
  std::vector<Vec3> at, side(n);
  for (const ScalpPoint& p : part) at.push_back(shape.pointAt(p));
  double toRight = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Vec3 in = i > 0 ? unitOr(at[i] - at[i - 1], Vec3::Zero()) : Vec3::Zero();
    const Vec3 out = i + 1 < n ? unitOr(at[i + 1] - at[i], Vec3::Zero()) : Vec3::Zero();
    side[i] = leftOf(shape, at[i], in + out);
    toRight += side[i].x();
  }
  const double signedShift = toRight < 0 ? -shift_mm : shift_mm;
  std::vector<Vec3> moved;
  std::vector<char> kept;
  for (std::size_t i = 0; i < n; ++i) {
    moved.push_back(surfaceOffset(shape, at[i], side[i], signedShift));
    kept.push_back(hairline.contains(moved[i]));
  }
  MovedPart result;
  for (std::size_t i = 0; i < n; ++i) {
    if (!kept[i]) {
      ++result.skipped;
      continue;
    }
    if (i > 0 && !kept[i - 1])
      result.line.push_back(shape.scalpPointAt(atHairline(shape, hairline, moved[i], moved[i - 1])));
    result.line.push_back(shape.scalpPointAt(moved[i]));
    if (i + 1 < n && !kept[i + 1])
      result.line.push_back(shape.scalpPointAt(atHairline(shape, hairline, moved[i], moved[i + 1])));
  }
  if (result.line.size() < 2) result.line.clear();
  return result;
}

}  // namespace combdraft::head
