#pragma once
// The shape of one head: a superellipsoid skull, filled in behind and below by
// the neck. Millimetres, head frame (engine/base/vec.h).
//
//   ((|x|/a)^p + (|y|/b)^p)^(2/p) + (z/c)^2 = 1
//
// Below kNeckTop * c/90 and behind the ears the section keeps this form but its
// half width and depth follow a table that is registered to the line art
// (docs/engine-notes.md, "Head"). The skull base in front is the plain form:
// the face is not hair-bearing and lives in hair/body.h.
#include <array>
#include <vector>

#include "engine/head/scalp_point.h"

namespace combdraft::head {

/// Half axes in mm and the exponent of the outline.
struct HeadAxes {
  double a_mm = 73.9;  ///< half breadth [ANSUR2]
  double b_mm = 94.9;  ///< half length [ANSUR2]
  double c_mm = 90.0;  ///< head centre to vertex, from the ear-to-ear arc [ANSUR1]
  double p = 2.4;      ///< outline exponent, 2.0 to 3.2
  bool operator==(const HeadAxes&) const = default;
};

class HeadShape {
 public:
  explicit HeadShape(const HeadAxes& axes = {});

  const HeadAxes& axes() const { return axes_; }

  /// The surface point straight out from the head centre along `direction`
  /// (any length > 0). Accurate to 1e-9 mm along the ray.
  Vec3 pointAlong(const Vec3& direction) const;
  Vec3 pointAt(const ScalpPoint& point) const { return pointAlong(directionOf(point)); }
  ScalpPoint scalpPointAt(const Vec3& position) const { return scalpPointAlong(position); }

  /// Implicit value: negative inside, 0 on the surface, positive outside; no unit.
  double implicit(const Vec3& position) const { return levelAt(position).value; }
  /// Gradient of `implicit`, never zero on or near the surface.
  Vec3 gradient(const Vec3& position) const { return levelAt(position).gradient; }
  /// Outward unit normal of the level set through `position`.
  Vec3 normalAt(const Vec3& position) const;
  /// Moves a point near the surface onto it along the gradient (Newton); for
  /// points within about 15 mm the result is on the surface to 1e-6 mm.
  Vec3 project(const Vec3& position) const;

  /// Half width (x) and half depth behind (y) of the section at height z_mm.
  double halfWidth_mm(double z_mm) const;
  double halfDepthBehind_mm(double z_mm) const;

  /// Distance of the surface from the upright axis at height z_mm, along the horizontal unit
  /// vector `out`; 0 above the vertex.
  double sectionRadius_mm(const Vec3& out, double z_mm) const;

  /// Heights below this follow the neck table (behind the ears).
  double neckTop_mm() const { return -48.0 * axes_.c_mm / 90.0; }

  /// Horizontal outline length at z = 0 (the model's head circumference), mm.
  double circumference_mm() const;

 private:
  /// Both at once: they share their powers, which are what a head costs.
  struct Level {
    double value;
    Vec3 gradient;
  };
  Level levelAt(const Vec3& position) const;

  HeadAxes axes_;
};

}  // namespace combdraft::head
