#pragma once
// How the line art in resources/outlines follows the measures of a head. The
// art is drawn for a = 73.9, b = 94.9, c = 90 mm, p = 2.4; one unit is 1 mm, the
// head centre is the origin of every view (docs/head.md).
#include <string>
#include <vector>

#include "engine/head/sheet_view.h"

namespace combdraft::head {

/// Factors for the drawing's horizontal and vertical axis; both keep the origin.
struct ArtScale {
  double su = 1, sv = 1;
  bool operator==(const ArtScale&) const = default;
};

/// Front and back: a/73.9 by c/90; left and right: b/94.9 by c/90; top: a/73.9 by
/// b/94.9. The crown close-up has no art: broken expectation.
ArtScale artScale(const HeadAxes& axes, ViewName view);

/// File name of a view's art under resources/outlines: "head-front.svg".
std::string artFile(ViewName view);

/// The top view's head outline redrawn for the head's p: closed (last point
/// joins the first), from the front round over the wearer's right, in view
/// coordinates (u right, v down the drawing), mm. Nose and ears stay art, scaled.
std::vector<Vec2> topOutline(const HeadShape& shape, int count = 180);

}  // namespace combdraft::head
