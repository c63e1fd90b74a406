// The head's surface and the body against the drawn contours themselves
// (resources/outlines), and how the art follows a head.
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "engine/base/number_text.h"
#include "engine/head/body_sections.h"
#include "engine/head/hairline.h"
#include "engine/head/head_art.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::head;

namespace {

std::string artText(ViewName view) {
  std::ifstream in(test::sourceDir() + "/resources/outlines/" + artFile(view));
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

/// Points of the first path after `group` whose tag holds `mark`; commands M, C,
/// L and Z with absolute coordinates, cubic curves cut in 60.
std::vector<Vec2> drawn(ViewName view, const std::string& group, const std::string& mark) {
  const std::string all = artText(view);
  std::size_t at = all.find("<g id=\"" + group + "\"");
  REQUIRE(at != std::string::npos);
  std::string path;
  for (;;) {
    at = all.find("<path", at + 1);
    REQUIRE(at != std::string::npos);
    const std::string tag = all.substr(at, all.find("/>", at) - at);
    if (tag.find(mark) == std::string::npos) continue;
    const std::size_t d = tag.find(" d=\"") + 4;
    path = tag.substr(d, tag.find('"', d) - d);
    break;
  }
  std::vector<Vec2> points, control;
  char command = 'M';
  std::stringstream words(path);
  for (std::string word; words >> word;) {
    if (!word.empty() && std::isalpha(static_cast<unsigned char>(word[0])))
      command = word[0], word.erase(0, 1);
    if (!word.empty() && word.back() == 'Z') word.pop_back();
    if (word.empty()) continue;
    const std::size_t comma = word.find(',');
    const auto x = parseNumber(word.substr(0, comma)), y = parseNumber(word.substr(comma + 1));
    REQUIRE(x);
    REQUIRE(y);
    if (command != 'C') {
      points.emplace_back(*x, *y);
      continue;
    }
    control.emplace_back(*x, *y);
    if (control.size() < 3) continue;
    const Vec2 start = points.back();
    for (int i = 1; i <= 60; ++i) {
      const double t = i / 60.0, s = 1 - t;
      points.push_back(s * s * s * start + 3 * s * s * t * control[0] + 3 * s * t * t * control[1] +
                       t * t * t * control[2]);
    }
    control.clear();
  }
  REQUIRE(points.size() > 20);
  return points;
}

}  // namespace

TEST_CASE("all five drawings are there", "[head]") {
  for (const ViewName view : kAllViews)
    if (view != ViewName::Crown) {
      CHECK(artText(view).find("<g id=\"hairline\"") != std::string::npos);
      CHECK(artScale(HeadAxes{}, view) == ArtScale{1, 1});
    }
}

TEST_CASE("the body follows the drawn front contour", "[head]") {
  const HeadShape shape;
  const BodySections body(shape);
  int compared = 0;
  // Skull and neck from the outline, cheeks from the front edge of the ear.
  for (const Vec2& p : drawn(ViewName::Front, "skin", "class=\"outline\"")) {
    const double z = -p.y();
    if (z < -198 || (z < -0.5 && z > -66)) continue;  // the ears stick out there
    const auto section = body.at(z);
    REQUIRE(section);
    INFO("z " << z);
    CHECK(section->halfWidth_mm == Approx(std::abs(p.x())).margin(z > 85 ? 3.0 : 0.8));
    ++compared;
  }
  for (const Vec2& p : drawn(ViewName::Front, "features", "id=\"ear-front\"")) {
    INFO("z " << -p.y());
    CHECK(body.at(-p.y())->halfWidth_mm == Approx(p.x()).margin(1.3));
    ++compared;
  }
  CHECK(compared > 500);
}

TEST_CASE("the body follows the drawn profile, the nose left out", "[head]") {
  const HeadShape shape;
  const BodySections body(shape);
  int front = 0, back = 0;
  for (const Vec2& p : drawn(ViewName::Right, "skin", "class=\"outline\"")) {
    const double y = p.x(), z = -p.y();
    if (z < -205 || z > 85) continue;
    INFO("y " << y << " z " << z);
    const auto trunk = body.at(z), jaw = body.at(BodyPart::Jaw, z);
    REQUIRE(trunk);
    if (y < 0) {
      CHECK(trunk->back_mm == Approx(y).margin(1.7));
      ++back;
    } else {
      const double foremost = std::max(trunk->front_mm, jaw ? jaw->front_mm : -1e9);
      if (z < -14 && z > -68) {
        CHECK(foremost < y + 1.2);  // the nose stands before it
      } else if (z < -127 && z > -145) {
        CHECK(foremost < y + 1.2);  // the floor of the mouth is cut straighter
      } else {
        CHECK(foremost == Approx(y).margin(1.7));
        ++front;
      }
    }
  }
  CHECK(front > 200);
  CHECK(back > 200);
}

TEST_CASE("the ear ellipsoid covers the drawn ear and little more", "[head]") {
  const BodySections body{HeadShape()};
  const EarShape ear = body.ears()[0];
  double inside = 0, all = 0;
  for (const Vec2& p : drawn(ViewName::Right, "features", "id=\"ear\"")) {
    // The drawn rim lies between 0.75 and 1.3 radii of the ellipse.
    const Vec3 nearer = ear.centre + 0.75 * (Vec3(0, p.x(), -p.y()) - Vec3(0, ear.centre.y(), ear.centre.z()));
    const Vec3 farther = ear.centre + 1.35 * (Vec3(0, p.x(), -p.y()) - Vec3(0, ear.centre.y(), ear.centre.z()));
    all += 1;
    inside += ear.contains(nearer) && !ear.contains(farther);
  }
  CHECK(inside / all > 0.9);
  CHECK(ear.centre.x() + ear.radii.x() == Approx(82.9).margin(1));  // drawn outermost point
  CHECK(body.ears()[1].centre.x() == -ear.centre.x());
}

TEST_CASE("the top outline is the drawn one at p 2.4 and follows p", "[head]") {
  const HeadShape shape;
  const auto outline = topOutline(shape, 720);
  for (const Vec2& p : drawn(ViewName::Top, "scalp", "class=\"outline\"")) {
    double nearest = 1e9;
    for (const Vec2& q : outline) nearest = std::min(nearest, (p - q).norm());
    CHECK(nearest < 0.7);  // half the spacing of the points
  }
  const auto square = topOutline(HeadShape({73.9, 94.9, 90, 3.2}), 720);
  for (std::size_t i = 0; i < outline.size(); ++i)
    CHECK(square[i].norm() >= outline[i].norm() - 1e-9);
  CHECK(outline[180].x() == Approx(73.9));  // a quarter round: the wearer's right
}

TEST_CASE("scaled art stays on another head's outline and hairline", "[head]") {
  const HeadAxes axes{78, 101, 95.8, 2.4};
  const HeadShape shape(axes);
  const Hairline hairline(shape);
  const ArtScale front = artScale(axes, ViewName::Front);
  for (const Vec2& p : drawn(ViewName::Front, "scalp", "class=\"outline\"")) {
    const double u = p.x() * front.su, z = -p.y() * front.sv;
    if (z > 0.9 * axes.c_mm) continue;
    CHECK(std::abs(u) == Approx(shape.halfWidth_mm(z)).margin(0.1));
  }
  const ArtScale side = artScale(axes, ViewName::Right);
  const SheetView right(ViewName::Right);
  for (double azimuth = 5; azimuth < 180; azimuth += 5) {
    const ViewPoint at = right.project(hairline.pointAt(azimuth));
    double nearest = 1e9;
    for (const Vec2& p : drawn(ViewName::Right, "hairline", "<path"))
      nearest = std::min(nearest, (Vec2(p.x() * side.su, p.y() * side.sv) - Vec2(at.u_mm, at.v_mm)).norm());
    INFO("azimuth " << azimuth);
    CHECK(nearest < 0.9);
  }
}
