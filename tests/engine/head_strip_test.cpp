// Ways on the default head: walks against shortest ways, strips against walks.
#include <catch2/catch.hpp>
#include <chrono>
#include <random>

#include "engine/head/hairline.h"
#include "engine/head/strip_frame.h"
#include "engine/head/surface_distance.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("a straight walk is the shortest way to its end", "[head]") {
  const HeadShape shape;
  std::mt19937 random(3);
  std::uniform_real_distribution<double> unit(0, 1);
  for (int i = 0; i < 60; ++i) {
    const Vec3 from = shape.pointAt({-180 + 360 * unit(random), 5 + 70 * unit(random)});
    const Vec3 normal = shape.normalAt(from);
    const double turn = 2 * kPi * unit(random), length = 0.5 + 70 * unit(random);
    const Vec3 e = normal.unitOrthogonal();
    const Vec3 direction = std::cos(turn) * e + std::sin(turn) * normal.cross(e);
    const SurfaceStep end = stepAlong(shape, from, direction, length);
    INFO("from " << from.transpose() << " length " << length);
    CHECK(std::abs(shape.implicit(end.at)) < 1e-9);
    CHECK(surfaceDistance_mm(shape, from, end.at) == Approx(length).epsilon(2e-4));
    // Walking back ends at the start, still heading the same way.
    const SurfaceStep back = stepAlong(shape, end.at, end.heading, -length);
    CHECK((back.at - from).norm() < 0.01);
    CHECK(back.heading.dot(direction) == Approx(1).margin(1e-3));
  }
}

TEST_CASE("distance is symmetric, mirrored and obeys the triangle", "[head]") {
  const HeadShape shape;
  std::mt19937 random(5);
  std::uniform_real_distribution<double> unit(0, 1);
  const auto any = [&] {
    return shape.pointAt({-180 + 360 * unit(random), 5 + 80 * unit(random)});
  };
  for (int i = 0; i < 40; ++i) {
    const Vec3 a = any(), b = any(), c = any();
    const double ab = surfaceDistance_mm(shape, a, b);
    CHECK(surfaceDistance_mm(shape, b, a) == Approx(ab).epsilon(1e-4));
    const Vec3 flip(-1, 1, 1);
    CHECK(surfaceDistance_mm(shape, a.cwiseProduct(flip), b.cwiseProduct(flip)) ==
          Approx(ab).epsilon(1e-4));
    CHECK(ab >= (a - b).norm());
    CHECK(ab <= 1.0002 * (surfaceDistance_mm(shape, a, c) + surfaceDistance_mm(shape, c, b)));
  }
  CHECK(surfaceDistance_mm(shape, any(), any()) > 0);
  const Vec3 a = any();
  CHECK(surfaceDistance_mm(shape, a, a) == 0);
}

TEST_CASE("resampling keeps the given points and the step", "[head]") {
  const HeadShape shape;
  const std::vector<Vec3> given{shape.pointAt({0, 20}), shape.pointAt({60, 70}),
                                shape.pointAt({60, 70}), shape.pointAt({150, 100})};
  const std::vector<Vec3> line = resampledOnSurface(shape, given, 3);
  for (std::size_t i = 1; i < line.size(); ++i) {
    CHECK((line[i] - line[i - 1]).norm() <= 3);
    CHECK((line[i] - line[i - 1]).norm() > 0.2);
    CHECK(std::abs(shape.implicit(line[i])) < 1e-6);
  }
  for (const Vec3& g : given) {
    double nearest = 1e9;
    for (const Vec3& p : line) nearest = std::min(nearest, (p - g).norm());
    CHECK(nearest < 1e-9);
  }
  CHECK(resampledOnSurface(shape, {}, 3).empty());
}

TEST_CASE("strip places agree with walks square to the line", "[head]") {
  for (const double p : {2.0, 2.4, 3.2}) {
    const HeadShape shape({73.9, 94.9, 90, p});
    const Hairline hairline(shape);
    const std::vector<std::vector<ScalpPoint>> lines{
        {{20, 50}, {140, 70}},                      // level, round the right side
        {{10, 45}, {170, 60}},                      // over the top
        {{175, 90}, {150, 60}, {120, 40}},          // up the back
        {{-40, 60}, {-60, 70}, {-90, 75}, {-120, 85}}};
    for (const auto& scalp : lines) {
      std::vector<Vec3> points;
      for (const ScalpPoint& s : scalp) points.push_back(shape.pointAt(s));
      const StripFrame frame(shape, points);
      for (double along = 6; along < frame.length_mm() - 6; along += 9)
        for (const double across : {-25.0, -12.0, -3.0, 3.0, 12.0, 25.0}) {
          const Vec3 q = surfaceOffset(shape, frame.pointAt(along), frame.leftAt(along), across);
          const auto place = frame.placeOf(q, 40);
          REQUIRE(place);
          INFO("p " << p << " along " << along << " across " << across);
          // The true across is the shortest way to the line; a corner of a
          // bent line may be nearer than the foot walked from.
          double truth = 1e9;
          for (double s = -18; s <= 18; s += 0.75)
            truth = std::min(truth,
                             surfaceDistance_mm(shape, frame.pointAt(along + s), q));
          CHECK(std::abs(place->across_mm) == Approx(truth).epsilon(0.005).margin(0.02));
          CHECK((place->across_mm > 0) == (across > 0));
        }
    }
  }
}

TEST_CASE("a strip's look-up equals a plain scan and keeps to its reach", "[head]") {
  const HeadShape shape;
  const StripFrame frame(shape, {shape.pointAt({-30, 40}), shape.pointAt({-80, 60}),
                                 shape.pointAt({-130, 95})});
  std::mt19937 random(11);
  std::uniform_real_distribution<double> unit(0, 1);
  int inside = 0;
  for (int i = 0; i < 4000; ++i) {
    const Vec3 q = shape.pointAt({-180 + 360 * unit(random), 120 * unit(random)});
    double nearest = 1e9;
    for (std::size_t k = 1; k < frame.line().size(); ++k) {
      const Vec3 a = frame.line()[k - 1], step = frame.line()[k] - a;
      const double t = std::clamp((q - a).dot(step) / step.squaredNorm(), 0.0, 1.0);
      nearest = std::min(nearest, (q - a - t * step).norm());
    }
    const auto place = frame.placeOf(q, 20);
    CHECK(place.has_value() == (nearest <= 20));
    if (!place) continue;
    ++inside;
    CHECK((q - frame.centre()).norm() <= frame.radius_mm() + 20);
    if (place->onStrip) CHECK(std::abs(place->across_mm) >= nearest - 1e-6);
  }
  CHECK(inside > 300);
}

TEST_CASE("beyond its ends a strip says so", "[head]") {
  const HeadShape shape;
  const StripFrame frame(shape, {shape.pointAt({90, 40}), shape.pointAt({90, 80})});
  const Vec3 before = shape.pointAt({90, 30}), after = shape.pointAt({90, 90});
  const auto first = frame.placeOf(before, 30), last = frame.placeOf(after, 30);
  REQUIRE(first);
  REQUIRE(last);
  CHECK_FALSE(first->onStrip);
  CHECK(first->along_mm < 0);
  CHECK_FALSE(last->onStrip);
  CHECK(last->along_mm > frame.length_mm());
  CHECK(frame.placeOf(shape.pointAt({90, 60}), 1)->onStrip);
}
