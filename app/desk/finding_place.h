#pragma once
// Where on the head a finding is.
#include "app/paint/head_art.h"
#include "engine/advise/advisor.h"

namespace combdraft::desk {

struct FindingPlace {
  std::vector<Point3f> places;  ///< on the hair's surface, mm; empty = no one place
  double cell_mm = 2;
  head::ViewName fallback = head::ViewName::Back;  ///< for a region or the whole

  head::ViewName view(const paint::HeadScene& head) const;
};
FindingPlace placeOf(const look::Openings& openings, const advise::Finding& finding);

}  // namespace combdraft::desk
