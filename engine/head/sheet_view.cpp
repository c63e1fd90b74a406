#include "engine/head/sheet_view.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"

namespace combdraft::head {
namespace {
constexpr std::array<std::string_view, 6> kWords{"front", "back", "left", "right", "top", "crown"};
}

std::string_view viewWord(ViewName view) { return kWords[static_cast<std::size_t>(view)]; }

std::optional<ViewName> viewFromWord(std::string_view word) {
  for (std::size_t i = 0; i < kWords.size(); ++i)
    if (kWords[i] == word) return kAllViews[i];
  return std::nullopt;
}

SheetView::SheetView(ViewName view) : name_(view) {
  COMBDRAFT_EXPECT(view != ViewName::Crown, viewWord(view));
  down_ = -Vec3::UnitZ();
  switch (view) {
    case ViewName::Front: right_ = -Vec3::UnitX(), toward_ = Vec3::UnitY(); break;
    case ViewName::Back: right_ = Vec3::UnitX(), toward_ = -Vec3::UnitY(); break;
    case ViewName::Left: right_ = -Vec3::UnitY(), toward_ = -Vec3::UnitX(); break;
    case ViewName::Right: right_ = Vec3::UnitY(), toward_ = Vec3::UnitX(); break;
    case ViewName::Top:
    case ViewName::Crown:
      right_ = Vec3::UnitX(), down_ = -Vec3::UnitY(), toward_ = Vec3::UnitZ();
      break;
  }
}

SheetView SheetView::crown(const HeadShape& shape, const Vec3& centre) {
  SheetView view(ViewName::Top);
  view.name_ = ViewName::Crown;
  view.origin_ = centre;
  view.toward_ = shape.normalAt(centre);
  const Vec3 back = -Vec3::UnitY();
  view.down_ = unitOr(back - back.dot(view.toward_) * view.toward_, -Vec3::UnitZ());
  view.right_ = view.toward_.cross(view.down_);
  return view;
}

SheetView SheetView::facing(const HeadShape& shape, const Vec3& centre) {
  constexpr double kTop = 0.8;  // cosine to the vertical beyond which nothing hangs down
  SheetView view = crown(shape, centre);
  if (view.toward_.z() > kTop) return view;
  view.down_ = unitOr(view.toward_.z() * view.toward_ - Vec3::UnitZ(), view.down_);
  view.right_ = view.toward_.cross(view.down_);
  return view;
}

ViewFrame SheetView::frame() const {
  switch (name_) {
    case ViewName::Top: return {-140, -140, 280, 290};
    case ViewName::Crown: return {-70, -70, 140, 140};
    default: return {-140, -135, 280, 370};
  }
}

std::optional<Vec3> SheetView::castBack(const HeadShape& shape, double u_mm, double v_mm) const {
  // March from the viewer, then bisect. The surface is star-shaped and smooth. Far from it
  // the steps are longer: sqrt(implicit + 1) is a distance in half-widths, of which the
  // smallest, the neck's, is more than twice kSure_mm.
  constexpr double kReach_mm = 260, kStep_mm = 4, kSure_mm = 25;
  double outside = kReach_mm;
  bool found = false;
  double inside = 0;
  double best = 1e9, bestDepth = 0;
  for (double depth = kReach_mm; depth >= -kReach_mm;) {
    const double value = shape.implicit(place({u_mm, v_mm, depth}));
    if (value < best) best = value, bestDepth = depth;
    if (value <= 0) {
      inside = depth;
      found = true;
      break;
    }
    outside = depth;
    depth -= std::max(kStep_mm, kSure_mm * (std::sqrt(value + 1) - 1));
  }
  if (!found) {  // near the silhouette the chord may be shorter than a step
    double lo = bestDepth - kStep_mm, hi = bestDepth + kStep_mm;
    const double golden = 0.6180339887498949;
    for (int i = 0; i < 36; ++i) {  // to a millionth of a millimetre
      const double m1 = hi - golden * (hi - lo), m2 = lo + golden * (hi - lo);
      if (shape.implicit(place({u_mm, v_mm, m1})) < shape.implicit(place({u_mm, v_mm, m2})))
        hi = m2;
      else
        lo = m1;
    }
    inside = (lo + hi) / 2;
    if (shape.implicit(place({u_mm, v_mm, inside})) > 0) return std::nullopt;
    outside = bestDepth + kStep_mm;
  }
  for (int i = 0; i < 44; ++i) {
    const double mid = (inside + outside) / 2;
    (shape.implicit(place({u_mm, v_mm, mid})) <= 0 ? inside : outside) = mid;
  }
  return place({u_mm, v_mm, inside});
}

// The head's outline in the direction `w` from the drawing's middle: where the surface turns
// away from the viewer. None where the neck joins, whose outline has a step.
std::optional<Vec3> SheetView::outlineAlong(const HeadShape& shape, const Vec3& w) const {
  const auto at = [&](double turn) { return shape.pointAlong(w * std::cos(turn) + toward_ * std::sin(turn)); };
  double away = -kPi / 2, facing = kPi / 2;
  for (int i = 0; i < 40; ++i) {
    const double mid = (away + facing) / 2;
    (faces(shape, at(mid)) ? facing : away) = mid;
  }
  const Vec3 edge = at(facing);
  if (edge.z() <= shape.neckTop_mm()) return std::nullopt;
  const ViewPoint beyond = project(edge + 0.05 * w);  // the neck may reach farther
  return castBack(shape, beyond.u_mm, beyond.v_mm) ? std::nullopt : std::optional(edge);
}

Vec3 SheetView::castBackClamped(const HeadShape& shape, double u_mm, double v_mm) const {
  if (const auto hit = castBack(shape, u_mm, v_mm)) return *hit;
  const ViewPoint middle = project(Vec3::Zero());
  if (const auto edge = outlineAlong(shape, unitOr((u_mm - middle.u_mm) * right_ + (v_mm - middle.v_mm) * down_, right_)))
    return *edge;
  // Walk toward the drawing's centre until the head is met.
  Vec3 met = shape.pointAlong(toward_);
  double off = 0, on = 1;
  for (int i = 0; i < 24; ++i) {  // to less than a ten-thousandth of a millimetre
    const double mid = (off + on) / 2;
    const auto hit = castBack(shape, u_mm + mid * (middle.u_mm - u_mm),
                              v_mm + mid * (middle.v_mm - v_mm));
    (hit ? on : off) = mid;
    if (hit) met = *hit;
  }
  return met;
}

bool SheetView::faces(const HeadShape& shape, const Vec3& surfacePoint) const {
  return shape.normalAt(surfacePoint).dot(toward_) > 0;
}

}  // namespace combdraft::head
