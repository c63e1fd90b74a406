#include "engine/visibility/region.h"

#include <cmath>

namespace combdraft::visibility {

std::string_view regionWord(Region region) {
  switch (region) {
    case Region::FaceFrameLeft: return "face frame left";
    case Region::FaceFrameRight: return "face frame right";
    case Region::FrontTop: return "front top";
    case Region::Top: return "top";
    case Region::Crown: return "crown";
    case Region::SideLeft: return "left side";
    case Region::SideRight: return "right side";
    case Region::BackUpper: return "upper back";
    case Region::BackMiddle: return "middle back";
    case Region::BackEnds: return "ends at the back";
    case Region::Nape: return "nape";
  }
  return "";
}

Region regionAt(const head::HeadShape& shape, const Vec3& place) {
  const double z = place.z() * 90 / shape.axes().c_mm;
  const double y = place.y() * 94.9 / shape.axes().b_mm;
  const double azimuth = degrees(std::atan2(place.x(), place.y()));
  const double turn = std::abs(azimuth);
  const bool right = place.x() >= 0;
  constexpr double kTop = 42;      // above: front top, top, crown
  constexpr double kFaceTurn = 62;  // ahead of it: the face frame
  constexpr double kBackTurn = 128;
  if (z >= kTop) {
    if (y > 32) return Region::FrontTop;
    return y > -28 ? Region::Top : Region::Crown;
  }
  if (turn < kFaceTurn || (z < -20 && y > 22 && turn < 90))
    return right ? Region::FaceFrameRight : Region::FaceFrameLeft;
  if (turn < kBackTurn) return right ? Region::SideRight : Region::SideLeft;
  if (z < -34 && z > -95) {
    const double close = (std::hypot(place.x(), place.y()) -
                          shape.pointAlong({place.x(), place.y(), place.z()}).head<2>().norm());
    if (close < 8) return Region::Nape;
  }
  if (z > 0) return Region::BackUpper;
  return z > -90 ? Region::BackMiddle : Region::BackEnds;
}

}  // namespace combdraft::visibility
