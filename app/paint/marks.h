#pragma once
// Places on the hair's surface as an outline in a view: where a finding is.
#include <QPainterPath>
#include <vector>

#include "app/paint/head_art.h"
#include "engine/base/vec.h"

namespace combdraft::paint {

/// What a view sees of `places` (mm), each standing for `cell_mm` by `cell_mm`;
/// in view mm, empty when it sees none.
QPainterPath marksOutline(const HeadScene& head, head::ViewName view, const std::vector<Point3f>& places,
                          double cell_mm);

/// The view that looks at a place most squarely; for the surroundings of the
/// crown, the close-up.
head::ViewName viewFacing(const HeadScene& head, const Vec3& place);

}  // namespace combdraft::paint
