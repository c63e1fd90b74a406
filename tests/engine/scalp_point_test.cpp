// Scalp points and the head surface: round trips and symmetry.
#include <catch2/catch.hpp>

#include "engine/head/sheet_view.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("a scalp point comes back from its place on the surface", "[head]") {
  const HeadShape shape;
  for (double bearing = -175; bearing < 180; bearing += 11)
    for (double drop = 3; drop < 140; drop += 7) {
      const ScalpPoint before{bearing, drop};
      const Vec3 at = shape.pointAt(before);
      CHECK(std::abs(shape.implicit(at)) < 1e-9);
      const ScalpPoint after = shape.scalpPointAt(at);
      CHECK(after.bearing_deg == Approx(bearing).margin(1e-9));
      CHECK(after.drop_deg == Approx(drop).margin(1e-9));
    }
}

TEST_CASE("casting a drawn position back meets the surface where it was drawn", "[head]") {
  const HeadShape shape;
  const Vec3 whorl = shape.pointAt({-176, 40});
  for (const ViewName name : kAllViews) {
    const SheetView view =
        name == ViewName::Crown ? SheetView::crown(shape, whorl) : SheetView(name);
    int seen = 0;
    for (double bearing = -178; bearing < 180; bearing += 9)
      for (double drop = 2; drop < 128; drop += 6) {
        const Vec3 at = shape.pointAt({bearing, drop});
        if (shape.normalAt(at).dot(view.toward()) < 0.05) continue;
        const ViewPoint drawn = view.project(at);
        const auto back = view.castBack(shape, drawn.u_mm, drawn.v_mm);
        REQUIRE(back);
        if ((*back - at).norm() > 1) {
          // The neck is a waist: something nearer may hide the place.
          CHECK(view.project(*back).depth_mm > drawn.depth_mm);
        } else {
          CHECK((*back - at).norm() < 1e-6);
          ++seen;
        }
      }
    CHECK(seen > 50);
  }
}
