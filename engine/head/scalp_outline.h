#pragma once
// A closed outline on the scalp: what lies inside, where it crosses itself, and
// how a parting splits it. Sides between corners follow the plane through both
// and the head centre, as everywhere (surface_distance.h, resampledOnSurface).
#include <optional>
#include <utility>
#include <vector>

#include "engine/head/head_shape.h"

namespace combdraft::head {

/// Works on a stereographic map of directions about the outline's middle, so an
/// outline may be larger than half a head. Not for one that nears the point
/// straight opposite its middle.
class ScalpOutline {
 public:
  /// `corners`: at least three surface points in order, the last not repeated.
  ScalpOutline(const HeadShape& shape, const std::vector<Vec3>& corners);

  /// Inside, by the even-odd rule.
  bool contains(const Vec3& surfacePoint) const;
  /// The middle of the outline's line, on the surface.
  const Vec3& middle() const { return middle_; }
  /// The outline itself, closed (first point repeated), 3 mm or less apart.
  const std::vector<Vec3>& line() const { return line_; }
  /// Largest straight distance from the middle to the outline, mm.
  double radius_mm() const { return radius_mm_; }
  /// A place where two sides cross; nothing for a sound outline.
  std::optional<Vec3> crossing() const;

  /// The pieces of a line (close points) that lie inside, ends set onto the
  /// outline to about 0.01 mm.
  std::vector<std::vector<Vec3>> inside(const std::vector<Vec3>& line) const;

  /// The two outlines on either side of a parting, left of its travel first.
  /// The line's ends may stop short of the outline by `reach_mm`; they are led
  /// straight on to it. Nothing when the line does not cross from side to side
  /// exactly once.
  std::optional<std::pair<std::vector<Vec3>, std::vector<Vec3>>> split(
      const std::vector<Vec3>& parting, double reach_mm = 12) const;

 private:
  Vec2 mapped(const Vec3& point) const;
  Vec3 unmapped(const Vec2& place) const;

  HeadShape shape_;
  std::vector<Vec3> corners_, line_;
  std::vector<std::size_t> side_;  ///< per line point: the corner its side starts at
  Vec3 middle_;
  Eigen::Matrix3d turn_;
  std::vector<Vec2> flat_;
  double radius_mm_ = 0;
};

}  // namespace combdraft::head
