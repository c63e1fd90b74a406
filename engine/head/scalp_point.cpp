#include "engine/head/scalp_point.h"

#include <cmath>

namespace combdraft::head {

Vec3 directionOf(const ScalpPoint& point) {
  const double bearing = radians(point.bearing_deg), drop = radians(point.drop_deg);
  return {std::sin(drop) * std::sin(bearing), std::sin(drop) * std::cos(bearing), std::cos(drop)};
}

ScalpPoint scalpPointAlong(const Vec3& direction) {
  const double level = std::hypot(direction.x(), direction.y());
  const double bearing = level > 0 ? degrees(std::atan2(direction.x(), direction.y())) : 0.0;
  return {bearing, degrees(std::atan2(level, direction.z()))};
}

ScalpPoint mirrored(const ScalpPoint& point) { return {-point.bearing_deg, point.drop_deg}; }

}  // namespace combdraft::head
