#include "engine/plan/hair_zone.h"

#include <cmath>

namespace combdraft::plan {

HairZone zoneAt(const head::HeadShape& shape, const Vec3& p) {
  const double z = p.z() * 90 / shape.axes().c_mm;
  const double y = p.y() * 94.9 / shape.axes().b_mm;
  const double ridge = 37 + 0.07 * y, occipital = -24 + 0.09 * y;
  const double azimuth = std::abs(degrees(std::atan2(p.x(), p.y())));
  if (z > ridge) {
    if (y > 30) return HairZone::Front;
    return y > -30 ? HairZone::Top : HairZone::Crown;
  }
  if (azimuth < 40) return HairZone::Front;
  if (azimuth < 122) return HairZone::Sides;
  return z < occipital ? HairZone::Nape : HairZone::Back;
}

}  // namespace combdraft::plan
