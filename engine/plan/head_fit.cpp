#include "engine/plan/head_fit.h"

#include <algorithm>
#include <cmath>

#include "engine/head/measures.h"

namespace combdraft::plan {
namespace {

constexpr double kHeld_mm = 10, kFree_mm = 80;

head::HeadShape shapeOf(const Head& head) {
  const auto fitted = head::fitHead(head.measures);
  return head::HeadShape(fitted ? fitted->axes : head::HeadAxes{});
}

}  // namespace

HeadFit::Side::Side(const Head& head) : shape(shapeOf(head)), hairline(shape, head.hairline) {}

double HeadFit::Side::above_mm(const ScalpPoint& point) const {
  return hairline.above_mm(shape.pointAt(point));
}

HeadFit::HeadFit(const Head& from, const Head& to)
    : same_(from.measures == to.measures && from.hairline == to.hairline), from_(from), to_(to) {}

ScalpPoint HeadFit::operator()(const ScalpPoint& point) const {
  if (same_) return point;
  const double old_mm = from_.above_mm(point), straight_mm = to_.above_mm(point);
  const double freedom = std::clamp((old_mm - kHeld_mm) / (kFree_mm - kHeld_mm), 0.0, 1.0);
  const double wanted_mm = old_mm + (straight_mm - old_mm) * freedom;
  if (std::abs(wanted_mm - straight_mm) < 0.05) return point;
  // Height falls as the drop grows.
  double high_deg = 0, low_deg = 180;
  for (int i = 0; i < 40; ++i) {
    const double middle = (high_deg + low_deg) / 2;
    (to_.above_mm({point.bearing_deg, middle}) > wanted_mm ? high_deg : low_deg) = middle;
  }
  return {point.bearing_deg, std::round(low_deg * 1000) / 1000};
}

}  // namespace combdraft::plan
