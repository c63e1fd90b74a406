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

// The superellipsoid's own formula (Barr 1981, in head_shape.h), and differences of it.
TEST_CASE("the head's value is its formula and the gradient its slope, at the vertex too", "[head]") {
  for (const double p : {2.0, 2.4, 2.8, 3.2}) {
    const HeadShape shape({73.9, 94.9, 90, p});
    const auto& axes = shape.axes();
    for (double bearing = -175; bearing < 180; bearing += 19)
      for (const double drop : {0.0005, 0.01, 0.05, 0.3, 5.0, 40.0, 85.0, 110.0, 135.0}) {
        const Vec3 on = shape.pointAt({bearing, drop});
        CHECK(std::abs(shape.implicit(on)) < 1e-9);
        const Vec3 at = 1.02 * on;
        const bool isNeck = at.z() < shape.neckTop_mm() && at.y() < 0;
        const double section = std::pow(std::abs(at.x()) / axes.a_mm, p) + std::pow(std::abs(at.y()) / axes.b_mm, p);
        if (!isNeck)
          CHECK(shape.implicit(at) == Approx(std::pow(section, 2 / p) + std::pow(at.z() / axes.c_mm, 2) - 1).margin(1e-12));
        if (drop < 0.1) continue;  // the gradient is held away from the vertex
        const Vec3 slope = shape.gradient(at);
        for (int axis = 0; axis < 3; ++axis) {
          const Vec3 step = 1e-5 * Vec3::Unit(axis);
          CHECK(slope[axis] == Approx((shape.implicit(at + step) - shape.implicit(at - step)) / 2e-5).margin(1e-6));
        }
      }
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

TEST_CASE("a line of sight meets the head just where some point of it lies inside", "[head]") {
  // Against small steps all along the line, for the usual head and for odd ones.
  for (const HeadAxes& axes : {HeadAxes{}, HeadAxes{60, 82, 74, 2.0}, HeadAxes{86, 108, 104, 3.0}}) {
    const HeadShape shape(axes);
    int met = 0, missed = 0;
    for (const SheetView& view : {SheetView(ViewName::Left), SheetView(ViewName::Back), SheetView(ViewName::Top),
                                  SheetView::crown(shape, shape.pointAt({-176, 40}))})
      for (double u = -130; u <= 130; u += 13)
        for (double v = -130; v <= 190; v += 17) {
          const auto at = [&](double depth) { return shape.implicit(view.place({u, v, depth})); };
          double first = 0, least = 1e9;
          bool isInside = false;
          for (double depth = 260; depth >= -260 && !isInside; depth -= 0.1) {
            const double value = at(depth);
            least = std::min(least, value);
            if (value <= 0) isInside = true, first = depth;
          }
          if (!isInside && least < 1e-4) continue;  // touches it between two steps, perhaps
          const auto hit = view.castBack(shape, u, v);
          INFO(viewWord(view.name()) << " at " << u << ", " << v << " of a head " << axes.a_mm);
          REQUIRE(hit.has_value() == isInside);
          (isInside ? met : missed)++;
          if (!isInside) continue;
          CHECK(view.project(*hit).depth_mm == Approx(first).margin(0.11));
          CHECK(std::abs(shape.implicit(*hit)) < 1e-9);
        }
    CHECK(met > 100);
    CHECK(missed > 100);
  }
}

TEST_CASE("a place beside the head is brought to the head's outline", "[head]") {
  const HeadShape shape;
  const SheetView view = SheetView::crown(shape, shape.pointAt({-176, 40}));
  const ViewPoint middle = view.project(Vec3::Zero());
  int edgeOn = 0;
  for (double turn = 0; turn < 360; turn += 15) {
    const double right = std::cos(radians(turn)), down = std::sin(radians(turn));
    const Vec3 at = view.castBackClamped(shape, middle.u_mm + 300 * right, middle.v_mm + 300 * down);
    const ViewPoint drawn = view.project(at);
    CHECK(std::abs(shape.implicit(at)) < 1e-9);
    if (at.z() > shape.neckTop_mm()) {  // where the neck begins there is a step
      CHECK(std::abs(shape.normalAt(at).dot(view.toward())) < 0.01);
      ++edgeOn;
    }
    CHECK((drawn.u_mm - middle.u_mm) * down == Approx((drawn.v_mm - middle.v_mm) * right).margin(1e-6));
  }
  CHECK(edgeOn > 16);
}
