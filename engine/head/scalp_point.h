#pragma once
// A place on the scalp that fits any head: a direction from the head centre.
#include "engine/base/vec.h"

namespace combdraft::head {

struct ScalpPoint {
  double bearing_deg = 0;  ///< 0 = front, 90 = wearer's right, 180 = back; any turn allowed
  double drop_deg = 0;     ///< 0 = straight up, 90 = level with the head centre, at most 180
  bool operator==(const ScalpPoint&) const = default;
};

/// Unit direction from the head centre, head frame.
Vec3 directionOf(const ScalpPoint& point);
/// Inverse of `directionOf`, bearing in (-180, 180]; straight up gives bearing 0.
ScalpPoint scalpPointAlong(const Vec3& direction);
/// The same place on the other side of the centre line.
ScalpPoint mirrored(const ScalpPoint& point);

}  // namespace combdraft::head
