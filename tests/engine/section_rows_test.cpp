// Rows of a section: equal distances, order, mirror, and what happens at corners.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/head/section_rows.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/plan.h"

using namespace combdraft;
using namespace combdraft::head;

namespace {

const HeadShape kHead;

std::vector<Vec3> corners(const std::vector<ScalpPoint>& points) {
  std::vector<Vec3> out;
  for (const ScalpPoint& p : points) out.push_back(kHead.pointAt(p));
  return out;
}

// Back of the head on the wearer's right, from near the centre to behind the ear.
std::vector<Vec3> backRight() {
  return corners({{178, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {178, 60}});
}
std::vector<Vec3> mirroredSides(std::vector<Vec3> points) {
  for (Vec3& p : points) p.x() = -p.x();
  return points;
}

double nearest_mm(const Vec3& p, const std::vector<Vec3>& line) {
  double best = 1e9;
  for (const Vec3& q : line)
    if ((p - q).norm() < best + 5) best = std::min(best, surfaceDistance_mm(kHead, p, q));
  return best;
}

}  // namespace

TEST_CASE("rows stand at their distance from the first edge", "[head][rows]") {
  const std::vector<Vec3> section = backRight();
  const SectionRows rows(kHead, section, RowRun::Horizontal);
  // The lower edge, close points.
  const std::vector<Vec3> edge = resampledOnSurface(kHead, {section[0], section[1], section[2]}, 1);
  CHECK(rows.depth_mm() > 55);
  for (const double at : {2.5, 8.0, 19.0, 33.0, 47.5}) {
    const auto row = rows.rowAt(at);
    REQUIRE(row.size() == 1);
    CHECK(lineLength_mm(kHead, row[0]) > 45);
    for (std::size_t i = 0; i < row[0].size(); i += 3) {
      const double far = nearest_mm(row[0][i], edge);
      // Near the ends the nearest point may lie on the edge's own extension.
      if ((row[0][i] - edge.front()).norm() < at + 4 || (row[0][i] - edge.back()).norm() < at + 4)
        CHECK(far > at - 0.3);
      else
        CHECK(far == Approx(at).margin(0.3));
    }
  }
  CHECK(rows.rowAt(rows.depth_mm() + 1).empty());
}

TEST_CASE("on a sphere rows of equal distance are circles of latitude", "[head][rows]") {
  // Closed form: from a circle of latitude, d mm up the meridian is d / R radians.
  const HeadShape sphere({90, 90, 90, 2});
  std::vector<Vec3> outline;
  for (double bearing = 178; bearing >= 122; bearing -= 1) outline.push_back(sphere.pointAt({bearing, 100}));
  for (double bearing = 122; bearing <= 178; bearing += 1) outline.push_back(sphere.pointAt({bearing, 60}));
  const SectionRows rows(sphere, outline, RowRun::Horizontal);
  CHECK(rows.depth_mm() == Approx(radians(40) * 90).margin(0.3));
  for (const double at : {5.0, 21.0, 44.0, 58.0}) {
    const auto row = rows.rowAt(at);
    REQUIRE(row.size() == 1);
    const auto& line = row.front();
    for (std::size_t i = line.size() / 4; i < 3 * line.size() / 4; ++i)
      CHECK(radians(100 - sphere.scalpPointAt(line[i]).drop_deg) * 90 == Approx(at).margin(0.15));
  }
}

TEST_CASE("rows travel away from the centre, downward, away from the pivot", "[head][rows]") {
  const auto whole = [](RowRun run) { return SectionRows(kHead, backRight(), run); };
  const auto level = whole(RowRun::Horizontal).rowAt(10).front();
  CHECK(std::abs(level.front().x()) < std::abs(level.back().x()));
  CHECK(std::abs(level.front().z() - level.back().z()) < 12);
  const auto upright = whole(RowRun::Vertical).rowAt(10).front();
  CHECK(upright.front().z() > upright.back().z() + 30);
  // The first vertical row stands nearest the centre line.
  CHECK(std::abs(upright.front().x()) < 25);
  const auto forward = whole(RowRun::DiagonalForward).rowAt(30).front();
  CHECK(forward.front().z() > forward.back().z());
  CHECK(forward.front().y() < forward.back().y());  // falls toward the face
  const auto back = whole(RowRun::DiagonalBack).rowAt(30).front();
  CHECK(back.front().z() > back.back().z());
  CHECK(back.front().y() > back.back().y());
  const Vec3 pivot = kHead.pointAt({178, 60});
  const SectionRows fan(kHead, backRight(), RowRun::Pivoting, pivot);
  const auto ray = fan.rowAt(fan.depth_mm() / 2).front();
  CHECK((ray.front() - pivot).norm() < (ray.back() - pivot).norm());
}

TEST_CASE("a mirrored section has mirrored rows", "[head][rows]") {
  for (const RowRun run : {RowRun::Horizontal, RowRun::Vertical, RowRun::DiagonalForward,
                           RowRun::DiagonalBack, RowRun::Pivoting}) {
    const SectionRows right(kHead, backRight(), run), left(kHead, mirroredSides(backRight()), run);
    CAPTURE(static_cast<int>(run));
    CHECK(right.depth_mm() == Approx(left.depth_mm()).margin(0.3));
    // Pivoting rows are counted round the pivot, so the mirror counts from the other end.
    const auto a = right.rowAt(25, 0.2);
    const auto b = left.rowAt(run == RowRun::Pivoting ? left.depth_mm() - 25 : 25, 0.2);
    REQUIRE(a.size() == 1);
    REQUIRE(b.size() == 1);
    CHECK(lineLength_mm(kHead, a[0]) == Approx(lineLength_mm(kHead, b[0])).margin(1));
    Vec3 end = b[0].back();
    end.x() = -end.x();
    CHECK((a[0].back() - end).norm() < 1.0);
    Vec3 start = b[0].front();
    start.x() = -start.x();
    CHECK((a[0].front() - start).norm() < 1.0);
  }
}

TEST_CASE("pivoting rows stand at equal angles", "[head][rows]") {
  const Vec3 pivot = kHead.pointAt({178, 60});
  const SectionRows fan(kHead, backRight(), RowRun::Pivoting, pivot);
  const Vec3 normal = kHead.normalAt(pivot);
  std::vector<double> angles;
  for (int i = 1; i <= 4; ++i) {
    const auto row = fan.rowAt(fan.depth_mm() * i / 5, 0.2).front();
    const Vec3 way = row.front() - pivot;
    const Vec3 flat = way - way.dot(normal) * normal;
    angles.push_back(std::atan2(flat.dot(normal.cross(Vec3::UnitX())), flat.dot(Vec3::UnitX())));
  }
  const auto step = [&](std::size_t i) { return std::remainder(angles[i + 1] - angles[i], 2 * kPi); };
  CHECK(step(1) == Approx(step(0)).epsilon(0.06));
  CHECK(step(2) == Approx(step(0)).epsilon(0.06));
}

TEST_CASE("a diamond has rows from its lowest corner on", "[head][rows]") {
  const SectionRows rows(kHead, corners({{150, 110}, {165, 88}, {150, 66}, {135, 88}}),
                         RowRun::Horizontal);
  CHECK(rows.depth_mm() > 55);
  const auto low = rows.rowAt(6).front(), middle = rows.rowAt(rows.depth_mm() / 2).front();
  CHECK(lineLength_mm(kHead, low) < lineLength_mm(kHead, middle));
  CHECK(std::abs(middle.front().z() - middle.back().z()) < 8);
}

TEST_CASE("sections on top run across or along the head", "[head][rows]") {
  const auto strip = corners({{-20, 20}, {20, 20}, {60, 14}, {120, 14}, {160, 25}, {-160, 25}, {-120, 14}, {-60, 14}});
  const SectionRows across(kHead, strip, RowRun::Horizontal);
  const auto row = across.rowAt(20).front();
  CHECK(std::abs(row.front().x() - row.back().x()) > 15);
  CHECK(std::abs(row.front().y() - row.back().y()) < 6);
  const SectionRows along(kHead, strip, RowRun::Vertical);
  const auto line = along.rowAt(along.depth_mm() / 2).front();
  CHECK(std::abs(line.front().y() - line.back().y()) > 40);
}

TEST_CASE("an outline knows its inside, its crossing and its halves", "[head][rows]") {
  const ScalpOutline sound(kHead, backRight());
  CHECK(sound.contains(kHead.pointAt({150, 85})));
  CHECK_FALSE(sound.contains(kHead.pointAt({150, 55})));
  CHECK_FALSE(sound.contains(kHead.pointAt({-150, 85})));
  CHECK_FALSE(sound.crossing());
  const ScalpOutline crossed(kHead, corners({{178, 105}, {120, 70}, {120, 103}, {178, 60}}));
  REQUIRE(crossed.crossing());
  CHECK((*crossed.crossing() - kHead.pointAt({145, 86})).norm() < 12);

  // A parting that stops just short of both edges still splits.
  const auto parting = corners({{176, 84}, {150, 85}, {123, 84}});
  const auto halves = sound.split(parting);
  REQUIRE(halves);
  const ScalpOutline left(kHead, halves->first), right(kHead, halves->second);
  const Vec3 above = kHead.pointAt({150, 72}), below = kHead.pointAt({150, 98});
  CHECK(left.contains(above) != left.contains(below));
  CHECK(right.contains(above) != right.contains(below));
  CHECK(left.contains(above) != right.contains(above));
  // Left of a walk from the centre to the wearer's right across the back.
  CHECK(left.contains(below) == (kHead.normalAt(kHead.pointAt({150, 85})).cross(
      kHead.pointAt({123, 84}) - kHead.pointAt({176, 84})).z() < 0));
  CHECK_FALSE(sound.split(corners({{150, 90}, {150, 80}}), 2));  // ends inside
}
