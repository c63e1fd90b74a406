#include "engine/head/head_art.h"

#include <cmath>

#include "engine/base/expect.h"

namespace combdraft::head {

ArtScale artScale(const HeadAxes& axes, ViewName view) {
  COMBDRAFT_EXPECT(view != ViewName::Crown, viewWord(view));
  const double wide = axes.a_mm / 73.9, deep = axes.b_mm / 94.9, high = axes.c_mm / 90.0;
  switch (view) {
    case ViewName::Front:
    case ViewName::Back: return {wide, high};
    case ViewName::Left:
    case ViewName::Right: return {deep, high};
    case ViewName::Top:
    case ViewName::Crown: break;
  }
  return {wide, deep};
}

std::string artFile(ViewName view) {
  COMBDRAFT_EXPECT(view != ViewName::Crown, viewWord(view));
  return "head-" + std::string(viewWord(view)) + ".svg";
}

std::vector<Vec2> topOutline(const HeadShape& shape, int count) {
  COMBDRAFT_EXPECT(count >= 8, count);
  const SheetView top(ViewName::Top);
  std::vector<Vec2> outline;
  for (int i = 0; i < count; ++i) {
    // Even steps of the ellipse angle put more points where the outline bends.
    const double angle = 2 * kPi * i / count;
    const Vec3 at = shape.pointAlong(
        {shape.axes().a_mm * std::sin(angle), shape.axes().b_mm * std::cos(angle), 0});
    const ViewPoint p = top.project(at);
    outline.emplace_back(p.u_mm, p.v_mm);
  }
  return outline;
}

}  // namespace combdraft::head
