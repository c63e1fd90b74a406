#include "engine/plan/hair_marks.h"

#include <algorithm>

#include "engine/plan/hair_zone.h"

namespace combdraft::plan {

std::set<HairZone> zonesOf(const head::HeadShape& shape, const Piece& piece) {
  std::set<HairZone> zones;
  for (const ScalpPoint& point : piece.line) zones.insert(zoneAt(shape, shape.pointAt(point)));
  return zones;
}

bool anyIn(const Hair& hair, const std::set<HairZone>& zones, Condition condition) {
  return std::any_of(zones.begin(), zones.end(), [&](HairZone zone) {
    return hair.condition[static_cast<std::size_t>(zone)] == condition;
  });
}

bool meetsLightHair(const Hair& hair, const std::set<HairZone>& zones, const Piece& piece) {
  const double stop_mm = piece.stop_mm.value_or(1e9);
  const auto meets = [&](const std::optional<HairZone>& zone, double from_mm, double to_mm,
                         double level) {
    if (from_mm >= stop_mm || to_mm <= piece.start_mm) return false;
    return std::any_of(zones.begin(), zones.end(), [&](HairZone here) {
      const auto index = static_cast<std::size_t>(here);
      return (!zone || *zone == here) && from_mm < hair.length_mm[index] &&
             level > hair.level[index].root;
    });
  };
  return std::any_of(hair.scattered.begin(), hair.scattered.end(),
                     [&](const ScatteredLight& s) {
                       return s.share_frac > 0 && meets(s.zone, s.from_mm, s.to_mm, s.level);
                     }) ||
         std::any_of(hair.bands.begin(), hair.bands.end(), [&](const Band& b) {
           return meets(b.zone, b.from_mm, b.to_mm, b.level);
         });
}

}  // namespace combdraft::plan
