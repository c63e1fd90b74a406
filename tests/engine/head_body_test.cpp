// The solid body behind the hair: joins, monotone sections, nothing buried.
#include <catch2/catch.hpp>

#include "engine/head/body_sections.h"
#include "engine/head/hairline.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("the hair-bearing surface is not buried in the body", "[head]") {
  for (const HeadAxes& axes : {HeadAxes{}, HeadAxes{77.2, 99.8, 97, 2.4}, HeadAxes{70, 89, 84, 3.0}}) {
    const HeadShape shape(axes);
    const Hairline hairline(shape);
    const BodySections body(shape);
    int roots = 0, behindEar = 0;
    for (double bearing = -180; bearing < 180; bearing += 3)
      for (double drop = 1; drop < 135; drop += 2) {
        const Vec3 p = shape.pointAt({bearing, drop});
        if (!hairline.contains(p)) continue;
        ++roots;
        const Vec3 above = p + 1.0 * shape.normalAt(p), below = p - 1.0 * shape.normalAt(p);
        bool inEar = false;
        for (const EarShape& ear : body.ears()) inEar = inEar || ear.contains(above);
        if (inEar) {
          ++behindEar;
          continue;
        }
        INFO("at " << p.transpose());
        CHECK_FALSE(body.contains(above));
        CHECK(body.contains(below));
      }
    CHECK(roots > 3000);
    CHECK(behindEar < roots / 25);
  }
}

TEST_CASE("sections run without jumps and stay sane", "[head]") {
  const HeadShape shape;
  const BodySections body(shape);
  CHECK_FALSE(body.at(90.5));
  CHECK_FALSE(body.at(-261));
  CHECK(body.at(90)->halfWidth_mm == Approx(0).margin(1e-9));
  std::optional<BodySection> before;
  for (double z = 80; z >= -260; z -= 0.5) {
    const auto s = body.at(z);
    REQUIRE(s);
    CHECK(s->front_mm > s->middle_mm);
    CHECK(s->middle_mm > s->back_mm);
    CHECK(s->halfWidth_mm >= s->halfWidthBehind_mm - 1e-9);
    if (before) {
      INFO("z " << z);
      CHECK(std::abs(s->halfWidth_mm - before->halfWidth_mm) < 2);
      CHECK(std::abs(s->halfWidthBehind_mm - before->halfWidthBehind_mm) < 2);
      CHECK(std::abs(s->front_mm - before->front_mm) < 2);
      CHECK(std::abs(s->back_mm - before->back_mm) < 2);
      CHECK(std::abs(s->middle_mm - before->middle_mm) < 2);
    }
    before = s;
  }
  CHECK(body.at(-230)->halfWidth_mm == Approx(190));
}
