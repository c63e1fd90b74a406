#pragma once
// Coordinates along and across a line on the scalp, for the strip of a piece.
#include <optional>
#include <vector>

#include "engine/head/head_shape.h"

namespace combdraft::head {

/// Where a point lies in a strip's own frame, mm.
struct StripPlace {
  double along_mm = 0;   ///< from the line's first point; below 0 or above its length beyond the ends
  double across_mm = 0;  ///< + to the left of travel, seen from outside
  bool onStrip = false;  ///< between the ends, which are cut square to the line
};

/// The frame of one polyline. Building it costs about 2 us per mm of line; a
/// look-up visits only the stretches near the point.
///
/// `across` is measured by the chord to the nearest point of the line, bent by
/// the mean curvature on that side: within 0.5 % of the true distance up to
/// 25 mm (tested). `along` is measured on the line, within 0.1 mm.
class StripFrame {
 public:
  /// `line`: at least two different points on the surface, in order; it is
  /// resampled to 3 mm or finer (surface_distance.h, resampledOnSurface).
  StripFrame(const HeadShape& shape, const std::vector<Vec3>& line);

  double length_mm() const { return along_.back(); }
  /// Points of the line, 3 mm or less apart.
  const std::vector<Vec3>& line() const { return line_; }

  /// The place of a surface point, or nothing when the line is more than
  /// `reach_mm` away (straight, in space).
  std::optional<StripPlace> placeOf(const Vec3& surfacePoint, double reach_mm) const;

  /// Point, unit tangent (travel) and unit left at a distance along the line,
  /// clamped to its ends. The point is on the surface.
  Vec3 pointAt(double along_mm) const;
  Vec3 headingAt(double along_mm) const;
  Vec3 leftAt(double along_mm) const;

  /// A ball around the line: no point farther from `centre` than
  /// `radius_mm + reach` can be within `reach` of the line.
  const Vec3& centre() const { return centre_; }
  double radius_mm() const { return radius_mm_; }

 private:
  struct Stretch {  // a few neighbouring segments and the ball around them
    std::size_t first, last;  // segments [first, last)
    Vec3 centre;
    double radius_mm;
  };
  std::pair<std::size_t, double> locate(double along_mm) const;

  HeadShape shape_;
  std::vector<Vec3> line_, left_;   // per point
  std::vector<double> along_;       // per point, mm
  std::vector<double> bendLeft_, bendRight_;  // per point: mean curvature across, 1/mm
  std::vector<Stretch> stretches_;
  Vec3 centre_ = Vec3::Zero();
  double radius_mm_ = 0;
};

}  // namespace combdraft::head
