#pragma once
// The six drawing views of one head: five orthographic projections and the
// crown close-up, each with an exact inverse onto the surface.
//
// View coordinates: mm, u to the right of the drawing, v down the drawing
// (as on paper), depth toward the viewer (larger = nearer).
#include <optional>
#include <string_view>

#include "engine/head/head_shape.h"

namespace combdraft::head {

enum class ViewName { Front, Back, Left, Right, Top, Crown };
inline constexpr std::array<ViewName, 6> kAllViews{ViewName::Front, ViewName::Back,
                                                   ViewName::Left,  ViewName::Right,
                                                   ViewName::Top,   ViewName::Crown};
/// "front", "back", "left", "right", "top", "crown". Left is the client's left.
std::string_view viewWord(ViewName view);
std::optional<ViewName> viewFromWord(std::string_view word);

struct ViewPoint {
  double u_mm = 0, v_mm = 0, depth_mm = 0;
};

/// What a drawing of the view shows, mm.
struct ViewFrame {
  double left_mm, top_mm, width_mm, height_mm;
};

class SheetView {
 public:
  /// One of the five fixed views. Not for Crown.
  explicit SheetView(ViewName view = ViewName::Front);
  /// The crown close-up: looking along the outward normal at `centre`, the
  /// back of the head down. The centre is at u = v = 0.
  static SheetView crown(const HeadShape& shape, const Vec3& centre);
  /// A close-up that looks at `centre` squarely, upright as the head stands: below
  /// is below on the head; on the top, where nothing is, the back of the head is down.
  /// Distances are true at the centre. Its name is Crown.
  static SheetView facing(const HeadShape& shape, const Vec3& centre);

  ViewName name() const { return name_; }
  bool operator==(const SheetView&) const = default;
  ViewFrame frame() const;
  ViewPoint project(const Vec3& p) const {
    const Vec3 q = p - origin_;
    return {q.dot(right_), q.dot(down_), q.dot(toward_)};
  }
  Vec3 place(const ViewPoint& p) const {
    return origin_ + right_ * p.u_mm + down_ * p.v_mm + toward_ * p.depth_mm;
  }
  /// Unit direction from the head to the viewer.
  const Vec3& toward() const { return toward_; }
  const Vec3& right() const { return right_; }
  const Vec3& down() const { return down_; }

  /// The nearest surface point under a drawing position, or nothing off the head.
  std::optional<Vec3> castBack(const HeadShape& shape, double u_mm, double v_mm) const;
  /// Like castBack, but a position off the head is moved to the nearest
  /// silhouette point of the surface.
  Vec3 castBackClamped(const HeadShape& shape, double u_mm, double v_mm) const;
  /// Whether a surface point faces the viewer.
  bool faces(const HeadShape& shape, const Vec3& surfacePoint) const;

 private:
  std::optional<Vec3> outlineAlong(const HeadShape& shape, const Vec3& w) const;

  ViewName name_ = ViewName::Front;
  Vec3 origin_ = Vec3::Zero(), right_ = Vec3::UnitX(), down_ = -Vec3::UnitZ(),
       toward_ = Vec3::UnitY();
};

}  // namespace combdraft::head
