// Coarse truths of the look that need no model to know: which side is which,
// what the head hides, and that hair mixes in light.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/look/head_hair.h"
#include "engine/look/look.h"

using namespace combdraft;

namespace {

look::LookFrame lookAt(look::LookEngine& engine, const plan::Plan& plan,
                       const std::vector<look::PictureRequest>& pictures = {}) {
  auto frame = engine.update(plan, {}, pictures, {});
  REQUIRE(frame.ok());
  return std::move(frame).value();
}

double lightShare(const look::LookFrame& frame, look::Region region) {
  const auto& reading = frame.readings->regions[static_cast<std::size_t>(region)];
  REQUIRE(reading.whole);
  return reading.whole->light_share;
}

/// Mean brightness of a picture's hair, 0..255.
double brightness(const look::Picture& picture) {
  double sum = 0, weight = 0;
  for (std::size_t i = 0; i < picture.rgba.size(); i += 4) {
    sum += picture.rgba[i + 3] * (picture.rgba[i] + picture.rgba[i + 1] + picture.rgba[i + 2]) / 3.0;
    weight += picture.rgba[i + 3];
  }
  return sum / weight;
}

/// A wide light slice from front to back beside the part, from the scalp; it
/// lies on top of everything on its side. `side`: +1 the wearer's right.
plan::Plan lightOnOneSide(double side) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::Piece piece;
  piece.choice = plan.info().activeChoice;
  for (const auto& [bearing, drop] : {std::pair{25.0, 45.0}, {40.0, 30.0}, {90.0, 20.0}, {140.0, 30.0}})
    piece.line.push_back({side * bearing, drop});
  piece.thickness_mm = 36;
  piece.start_mm = 0;
  piece.order = 1;
  plan.put(plan.freeId("piece"), piece);
  return plan;
}

// CIE 1976 lightness, inverted [CIE015]; written here apart from the engine's.
double yOf(double lightness) { return std::pow((lightness + 16) / 116, 3); }
double lightnessOf(double y) { return 116 * std::cbrt(y) - 16; }

}  // namespace

TEST_CASE("a piece on the wearer's right lightens the right side, in readings and views",
          "[look][sides]") {
  // Bearings above 0 are the wearer's right (docs/words.md).
  look::LookEngine engine(8000, 2);
  const std::vector<look::PictureRequest> views{{head::ViewName::Right, 2}, {head::ViewName::Left, 2}};
  const look::LookFrame right = lookAt(engine, lightOnOneSide(1), views);
  CHECK(lightShare(right, look::Region::SideRight) > 0.25);
  CHECK(lightShare(right, look::Region::SideLeft) < 0.01);
  CHECK(brightness(*right.pictures[0]) > 1.2 * brightness(*right.pictures[1]));

  const look::LookFrame left = lookAt(engine, lightOnOneSide(-1), views);
  CHECK(lightShare(left, look::Region::SideLeft) > 0.25);
  CHECK(lightShare(left, look::Region::SideRight) < 0.01);
  CHECK(brightness(*left.pictures[1]) > 1.2 * brightness(*left.pictures[0]));
  CHECK_FALSE(left.shapeRecomputed);
}

TEST_CASE("half dark and half white hair is as light as their light's mean, not their L*'s",
          "[look][sides]") {
  look::LookEngine engine(8000, 2);
  const auto lightnessWith = [&](double white_frac) {
    plan::Plan plan = plan::Plan::fresh(12);
    plan::Hair hair = plan.hair();
    for (auto& level : hair.level) level = {2, 2, 2};
    hair.white_frac = white_frac;
    plan.put(plan::kHairId, hair);
    return lookAt(engine, plan).readings->whole.lightness;
  };
  const double dark = lightnessWith(0), white = lightnessWith(1), half = lightnessWith(0.5);
  const double inLight = lightnessOf((yOf(dark) + yOf(white)) / 2), inLightness = (dark + white) / 2;
  CAPTURE(dark, white, inLight, inLightness);
  REQUIRE(inLight - inLightness > 5);  // else this test could not tell
  CHECK(half == Approx(inLight).margin(1.5));
}

TEST_CASE("the head hides the hair behind it: the face is free", "[look][sides]") {
  const plan::Plan plan = plan::Plan::fresh(13);
  const auto hair = look::HeadHair::build(plan, {}, 8000, 2, 4, {});
  REQUIRE(hair.ok());
  const visibility::ViewSamples front = (*hair)->pictureRaster({head::ViewName::Front, 2}, {});
  double face = 0, anywhere = 0;
  for (std::size_t p = 0; p < front.pixels(); ++p) {
    const double u = front.spec.frame.left_mm + (static_cast<double>(p % static_cast<std::size_t>(front.width)) + 0.5) * 2;
    const double v = front.spec.frame.top_mm + (static_cast<double>(p / static_cast<std::size_t>(front.width)) + 0.5) * 2;
    anywhere += front.hairCover[p];
    // Nose, mouth and chin: 40 mm wide, 10 to 90 mm under the head centre (v runs down).
    if (std::abs(u) < 20 && v > 10 && v < 90) face += front.hairCover[p];
  }
  CHECK(anywhere > 1000);
  CHECK(face == 0);
}
