#pragma once
// The solid body behind the hair: skull, face, neck and shoulders as level
// sections, and the ears, read off the line art (docs/head.md). The nose is
// left out. Millimetres, head frame; widths scale by a/73.9, depths by b/94.9,
// heights by c/90.
#include <array>
#include <optional>

#include "engine/head/head_shape.h"

namespace combdraft::head {

/// One level section. Its outline is, with exponent p of the head,
///   (|x| / w)^p + (|y - middle| / d)^p = 1,
/// w = halfWidth_mm and d = front_mm - middle_mm before the middle,
/// w = halfWidthBehind_mm and d = middle_mm - back_mm behind it.
struct BodySection {
  double z_mm = 0;
  double halfWidth_mm = 0;        ///< drawn silhouette, without the ears
  double halfWidthBehind_mm = 0;  ///< the hair-bearing surface behind the ears
  double front_mm = 0;            ///< y of the front contour
  double back_mm = 0;             ///< y of the back contour
  double middle_mm = 0;           ///< y where the section is widest
};

/// The body is the union of both parts.
enum class BodyPart {
  Trunk,  ///< skull, upper face, neck, shoulders: vertex down to z = -260
  Jaw,    ///< lower face: z = -66 to -129
};

/// An ear as an ellipsoid, turned in the y-z plane.
struct EarShape {
  Vec3 centre, radii;      ///< radii along x, across and along the ear
  double leanBack_deg = 0;  ///< top of the ear toward the back
  bool contains(const Vec3& p) const;
};

class BodySections {
 public:
  explicit BodySections(const HeadShape& shape);

  /// The section at a height, or nothing above or below the part.
  std::optional<BodySection> at(BodyPart part, double z_mm) const;
  std::optional<BodySection> at(double z_mm) const { return at(BodyPart::Trunk, z_mm); }

  double top_mm(BodyPart part) const;
  double bottom_mm(BodyPart part) const;

  /// Right (+x) and left ear.
  std::array<EarShape, 2> ears() const;

  /// Half width of a section at depth y, 0 outside its front and back.
  double halfWidthAt_mm(const BodySection& section, double y_mm) const;
  /// Whether a point is inside trunk, jaw or an ear.
  bool contains(const Vec3& p) const;

 private:
  HeadShape shape_;
};

}  // namespace combdraft::head
