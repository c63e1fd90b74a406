#pragma once
// The body that hair lies on and that hides what is behind it: skull, face,
// neck, shoulders and upper back, and the ears. An approximate signed distance: exact
// sign, and within about 15 % of the true distance up to 30 mm away.
#include "engine/head/body_sections.h"

namespace combdraft::hair {

class Body {
 public:
  explicit Body(const head::HeadShape& shape);

  /// Distance to the surface without the ears, mm; negative inside. Hair lies
  /// over the ears, so they do not push it.
  double distance_mm(const Vec3& p) const;
  /// Distance to the nearer ear, drawn in a little: what hides hair behind it.
  double earDistance_mm(const Vec3& p) const;
  /// Distance to the head alone (skull, face, neck), for where hair touches it.
  double headDistance_mm(const Vec3& p) const;
  /// Outward unit gradient of `distance_mm`, by central differences.
  Vec3 outward(const Vec3& p) const;

  const head::HeadShape& shape() const { return shape_; }

 private:
  double sectionDistance_mm(const head::BodySection& section, const Vec3& p) const;
  double shoulderDistance_mm(const Vec3& p) const;
  head::HeadShape shape_;
  head::BodySections sections_;
  std::array<head::EarShape, 2> ears_;
  double sz_;  ///< head height against the drawn head
};

}  // namespace combdraft::hair
