#pragma once
// The hairline: a closed curve around the head, as height over bearing. The
// front centre is published [ANSUR1]; the rest is our own drawing, editable.
#include "engine/head/head_shape.h"

namespace combdraft::head {

/// Moves of the standard hairline, mm up (+) or down (-), by the user.
struct HairlineMoves {
  double front_mm = 0, temples_mm = 0, sides_mm = 0, nape_mm = 0;
  bool operator==(const HairlineMoves&) const = default;
};

class Hairline {
 public:
  explicit Hairline(const HeadShape& shape, const HairlineMoves& moves = {});

  /// Height of the hairline at `azimuth_deg` = atan2(x, y) (0 front, 180 back), mm.
  double height_mm(double azimuth_deg) const;
  /// Height of a surface point above the hairline (+ inside the hair), mm along z.
  double above_mm(const Vec3& surfacePoint) const;
  bool contains(const Vec3& surfacePoint) const { return above_mm(surfacePoint) >= 0; }
  bool contains(const ScalpPoint& point) const;
  /// Hairline point at an azimuth, on the surface.
  Vec3 pointAt(double azimuth_deg) const;
  /// Closed outline, `count` points evenly spread in azimuth.
  std::vector<Vec3> outline(int count = 360) const;

 private:
  HeadShape shape_;
  HairlineMoves moves_;
};

}  // namespace combdraft::head
