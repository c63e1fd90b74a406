// Places by name, and their distances by hand.
#include <catch2/catch.hpp>

#include "engine/head/place_name.h"
#include "engine/head/section_arc.h"
#include "engine/head/surface_distance.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("a place says its name and its distances", "[head]") {
  const HeadShape shape;
  const Hairline hairline(shape);
  const Landmarks m = landmarksOf(shape, hairline);
  const PlaceNamer names(shape, hairline);

  const PlaceName apex = names.at(m.apex);
  CHECK(apex.place == Place::Top);
  CHECK(apex.reference == PlaceReference::FrontHairline);
  CHECK(apex.fromReference_mm ==
        Approx(surfaceDistance_mm(shape, m.frontCentre, m.apex)).margin(0.3));
  CHECK(apex.fromCentre_mm == Approx(0).margin(1e-6));

  const PlaceName crown = names.at(m.crown);
  CHECK(crown.place == Place::Crown);
  CHECK(crown.fromReference_mm == Approx(0).margin(0.3));
  CHECK(crown.fromCentre_mm == Approx(-6).margin(0.05));

  // 40 mm down the back, then 25 mm square to the centre line.
  const Vec3 crownOnCentre = shape.project(m.crown.cwiseProduct(Vec3(0, 1, 1)));
  const Vec3 down = stepAlong(shape, crownOnCentre, Vec3(0, -0.5, -1), 40).at;
  CHECK(std::abs(down.x()) < 1e-6);
  const Vec3 at = surfaceOffset(shape, down, -Vec3::UnitX(), 25);
  const PlaceName back = names.at(at);
  CHECK(back.place == Place::Back);
  CHECK(back.reference == PlaceReference::Crown);
  CHECK(back.fromReference_mm == Approx(40).margin(0.7));
  CHECK(back.fromCentre_mm == Approx(-25).margin(0.1));
  CHECK(names.at(at.cwiseProduct(Vec3(-1, 1, 1))).fromCentre_mm == Approx(25).margin(0.1));

  CHECK(names.at(hairline.pointAt(180) + Vec3(0, 0, 0)).fromHairline_mm == Approx(0).margin(0.1));
  CHECK(names.at(shape.pointAt({180, 118})).place == Place::Nape);
  CHECK(names.at(shape.pointAt({90, 65})).place == Place::Side);
  CHECK(names.at(shape.pointAt({90, 65})).fromReference_mm > 40);
  CHECK(names.at(shape.pointAt({0, 65})).place == Place::OffHair);
  CHECK(names.at(shape.pointAt({0, 65})).fromHairline_mm < 0);
  CHECK(names.at(shape.pointAt({-52, 68})).place == Place::Temple);
  CHECK(names.at(shape.pointAt({10, 50})).place == Place::Front);
}

TEST_CASE("distance to the hairline is the least over the whole hairline", "[head]") {
  for (const double p : {2.0, 2.4, 3.2}) {
    const HeadShape shape({73.9, 94.9, 90, p});
    const Hairline hairline(shape);
    const PlaceNamer names(shape, hairline);
    for (const ScalpPoint s : {ScalpPoint{0, 5}, {30, 40}, {90, 60}, {140, 80}, {175, 100},
                               {-60, 55}, {-160, 60}}) {
      const Vec3 at = shape.pointAt(s);
      double least = 1e9;
      for (double azimuth = -180; azimuth < 180; azimuth += 1)
        least = std::min(least, surfaceDistance_mm(shape, at, hairline.pointAt(azimuth)));
      INFO("p " << p << " bearing " << s.bearing_deg << " drop " << s.drop_deg);
      CHECK(names.at(at).fromHairline_mm == Approx(least).margin(1.0));
      CHECK(names.at(at).fromHairline_mm > least - 0.1);
    }
  }
}

TEST_CASE("places in words", "[head]") {
  CHECK(describe(PlaceName{Place::Back, PlaceReference::Crown, 38, -22, 61}) ==
        "back, 38 mm below the crown, 22 mm left of centre, 61 mm from the hairline");
  CHECK(describe(PlaceName{Place::Top, PlaceReference::FrontHairline, 52.4, 0.2, 52.4}) ==
        "top, 52 mm behind the front hairline, on the centre line, 52 mm from the hairline");
  CHECK(describe(PlaceName{Place::OffHair, PlaceReference::EarPoint, -12, 71, -9}) ==
        "off the hair, 12 mm below the ear point, 71 mm right of centre, 9 mm outside the "
        "hairline");
  const HeadShape shape;
  const Hairline hairline(shape);
  for (double bearing = -180; bearing < 180; bearing += 15)
    for (double drop = 0; drop < 125; drop += 12) {
      const PlaceName name = placeName(shape, hairline, {bearing, drop});
      CHECK(std::isfinite(name.fromReference_mm));
      CHECK(std::isfinite(name.fromCentre_mm));
      CHECK((name.place == Place::OffHair) == (name.fromHairline_mm < 0));
    }
}
