#pragma once
// Areas on the head's surface.
#include <functional>

#include "engine/head/hairline.h"

namespace combdraft::head {

/// Area of the surface around the vertex down to `lowestDrop_deg(bearing_deg)`,
/// cm2. Relative error below 1e-8 for smooth forms (p = 2, level edge, no neck),
/// below 1e-4 for p to 3.2 with the neck and a hairline edge (tested).
double areaAbove_cm2(const HeadShape& shape, const std::function<double(double)>& lowestDrop_deg);

/// Hair-bearing area: the surface inside the hairline, cm2.
double hairArea_cm2(const HeadShape& shape, const Hairline& hairline);

/// Surface per unit of direction: |dS/dOmega| at a unit direction, mm2 per
/// steradian. A direction spread evenly over the sphere, taken with a chance
/// in proportion to this, gives a point spread evenly over the surface.
double areaPerSolidAngle_mm2(const HeadShape& shape, const Vec3& direction);

}  // namespace combdraft::head
