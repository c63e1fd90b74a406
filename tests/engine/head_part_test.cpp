// Landmarks, the default part and the part worn to one side.
#include <catch2/catch.hpp>

#include "engine/head/landmarks.h"
#include "engine/head/part_line.h"
#include "engine/head/surface_distance.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("landmarks mirror and lie on the surface", "[head]") {
  for (const double p : {2.0, 2.4, 3.0}) {
    const HeadShape shape({77.2, 99.8, 97, p});
    const Hairline hairline(shape);
    const Landmarks m = landmarksOf(shape, hairline);
    for (const Vec3& at : {m.apex, m.crown, m.frontCentre, m.nape, m.occipital, m.templeRight,
                           m.templeLeft, m.earRight, m.earLeft, m.nasion, m.inion})
      CHECK(std::abs(shape.implicit(at)) < 1e-9);
    const Vec3 flip(-1, 1, 1);
    CHECK((m.templeRight.cwiseProduct(flip) - m.templeLeft).norm() < 1e-9);
    CHECK((m.earRight.cwiseProduct(flip) - m.earLeft).norm() < 1e-9);
    CHECK(m.earRight.x() > 60);
    CHECK(m.apex.z() == Approx(97));
  }
}

TEST_CASE("named lines lie on the surface, inside the hair, on their planes", "[head]") {
  const HeadShape shape;
  const Hairline hairline(shape);
  const auto ridge = parietalRidge(shape, hairline);
  const auto occipital = occipitalLine(shape, hairline);
  REQUIRE(ridge.size() > 60);
  REQUIRE(occipital.size() > 15);
  for (const Vec3& p : ridge) {
    CHECK(p.z() == Approx(37 + 0.07 * p.y()).margin(1e-6));
    CHECK(hairline.contains(p));
    CHECK(std::abs(shape.implicit(p)) < 1e-9);
  }
  for (const Vec3& p : occipital) {
    CHECK(p.z() == Approx(-24 + 0.09 * p.y()).margin(1e-6));
    CHECK(p.y() < 0);
    CHECK(hairline.contains(p));
  }
  for (const Vec3& p : earToEarLine(shape)) {
    CHECK(p.y() == Approx(1).margin(1e-9));
    CHECK(std::abs(shape.implicit(p)) < 1e-9);
  }
  const auto centre = centreLine(shape, hairline);
  for (const Vec3& p : centre) CHECK(std::abs(p.x()) < 1e-9);
  CHECK(centre.front().y() > 75);
  CHECK(centre.back().z() < -70);
}

TEST_CASE("the default part lies on the centre line inside the hair", "[head]") {
  for (const double front_mm : {-6.0, 0.0, 15.0}) {
    const HeadShape shape;
    HairlineMoves moves;
    moves.front_mm = front_mm;
    const Hairline hairline(shape, moves);
    const auto part = defaultPart(shape, hairline);
    REQUIRE(part.size() >= 2);
    for (const ScalpPoint& s : part) {
      const Vec3 p = shape.pointAt(s);
      CHECK(std::abs(p.x()) < 1e-9);
      CHECK(hairline.above_mm(p) > 0);
    }
    CHECK(shape.pointAt(part.back()).y() == Approx(-42).margin(0.01));
    if (front_mm <= 0) CHECK(shape.pointAt(part.front()).y() == Approx(78).margin(0.3));
    if (front_mm > 0) CHECK(shape.pointAt(part.front()).y() < 75);
  }
}

TEST_CASE("a moved part lies at its distance, on its side, inside the hair", "[head]") {
  const HeadShape shape;
  const Hairline hairline(shape);
  const auto part = defaultPart(shape, hairline);
  for (const double shift : {-60.0, -40.0, -15.0, -1.0, 1.0, 15.0, 40.0, 60.0}) {
    const MovedPart moved = partMoved(shape, hairline, part, shift);
    INFO("shift " << shift << " skipped " << moved.skipped);
    REQUIRE(moved.line.size() >= 3);
    for (std::size_t i = 0; i < moved.line.size(); ++i) {
      const Vec3 p = shape.pointAt(moved.line[i]);
      CHECK(hairline.above_mm(p) > -1e-6);
      CHECK((p.x() > 0) == (shift > 0));
      // The mirror image is twice as far; its way crosses the centre line at
      // right angles. Exact but for the point set on the hairline.
      const bool added = moved.skipped > 0 && i == 0;
      const double twice = surfaceDistance_mm(shape, p, p.cwiseProduct(Vec3(-1, 1, 1)));
      CHECK(twice / 2 == Approx(std::abs(shift)).epsilon(added ? 0.02 : 0.001));
    }
    // Mirror symmetry.
    const MovedPart other = partMoved(shape, hairline, part, -shift);
    REQUIRE(other.line.size() == moved.line.size());
    CHECK(other.skipped == moved.skipped);
    for (std::size_t i = 0; i < moved.line.size(); ++i)
      CHECK((shape.pointAt(moved.line[i]).cwiseProduct(Vec3(-1, 1, 1)) -
             shape.pointAt(other.line[i])).norm() < 1e-6);
  }
}

TEST_CASE("a part moved far loses its front end, then everything", "[head]") {
  const HeadShape shape;
  const Hairline hairline(shape);
  const auto part = defaultPart(shape, hairline);
  CHECK(partMoved(shape, hairline, part, 5).skipped == 0);
  HairlineMoves receding;
  receding.temples_mm = 25;
  const Hairline high(shape, receding);
  const MovedPart far = partMoved(shape, high, part, 50);
  CHECK(far.skipped > 0);
  CHECK(far.skipped < int(part.size()));
  // The cut end stands on the hairline.
  CHECK(std::abs(high.above_mm(shape.pointAt(far.line.front()))) < 0.05);
  const MovedPart gone = partMoved(shape, hairline, part, 170);
  CHECK(gone.line.empty());
  CHECK(gone.skipped == int(part.size()));
  CHECK(partMoved(shape, hairline, part, 0).line == part);
  CHECK(partMoved(shape, hairline, {}, 12).line.empty());
  // Drawn from the back to the front, + is still the wearer's right.
  std::vector<ScalpPoint> reversed(part.rbegin(), part.rend());
  CHECK(shape.pointAt(partMoved(shape, hairline, reversed, 20).line.front()).x() > 0);
}
