#pragma once
// Arcs a tape takes when it is laid flat through three places: the plane
// sections in which heads are measured and the 10-20 stations are set
// [Jasper1958].
#include <vector>

#include "engine/head/head_shape.h"

namespace combdraft::head {

/// The plane section of the surface from `from` over `over` to `to` (three
/// surface points, not on one line), `parts` + 1 points evenly spread in angle.
std::vector<Vec3> sectionArc(const HeadShape& shape, const Vec3& from, const Vec3& over,
                             const Vec3& to, int parts = 240);

/// The point at `share_frac` (0 to 1) of the length of a line of close points,
/// set onto the surface.
Vec3 pointAtShare(const HeadShape& shape, const std::vector<Vec3>& line, double share_frac);

}  // namespace combdraft::head
