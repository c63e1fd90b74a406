#pragma once
// The part: a line of scalp points, front to back, and the same part worn to
// one side.
#include <vector>

#include "engine/head/hairline.h"

namespace combdraft::head {

/// The usual middle part: on the centre line from just inside the front
/// hairline (y = 78) to y = -42, in proportion to head length, points about
/// 8 mm apart. The reach is our own choice.
std::vector<ScalpPoint> defaultPart(const HeadShape& shape, const Hairline& hairline);

struct MovedPart {
  std::vector<ScalpPoint> line;  ///< what is left inside the hair; may be empty
  int skipped = 0;               ///< points of the part whose new place has no hair
};

/// The part with every point moved `shift_mm` along the surface, square to the
/// part, + toward the wearer's right. Points whose new place lies outside the
/// hairline are skipped; the line then starts or ends at the hairline itself.
/// A part of fewer than two points is returned as it is.
MovedPart partMoved(const HeadShape& shape, const Hairline& hairline,
                    const std::vector<ScalpPoint>& part, double shift_mm);

}  // namespace combdraft::head
