// Distances on the surface against GeographicLib on spheroids: its published
// program's output kept as a table, and the library itself.
#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/GeodesicExact.hpp>
#include <GeographicLib/Geocentric.hpp>
#include <catch2/catch.hpp>
#include <random>

#include "engine/head/strip_frame.h"
#include "engine/head/surface_distance.h"
#include "tests/support/head_table.h"

using namespace combdraft;
using namespace combdraft::head;

namespace {

// A spheroid as a HeadShape: p = 2, a = b. Behind, below neckTop, the shape is a
// neck, so the tests turn every way to the front half (y > 0).
HeadShape spheroid(double a, double f) { return HeadShape({a, a, a * (1 - f), 2.0}); }

/// Surface point from latitude (of the normal) and longitude, 0 = front.
Vec3 pointOf(double a, double f, double lat_deg, double lon_deg) {
  const GeographicLib::Geocentric earth(a, f);
  double x = 0, y = 0, z = 0;
  earth.Forward(lat_deg, lon_deg, 0, x, y, z);
  return {y, x, z};  // its X (longitude 0) is our front, its Y our right
}

}  // namespace

// Source: GeographicLib 2.1.2, GeodSolve -E -i [GeographicLib], table kept in
// geodesic_spheroid_reference.csv.
TEST_CASE("geodesic table: distance within 0.01 %", "[published][head]") {
  const test::Table table("geodesic_spheroid_reference.csv");
  REQUIRE(table.size() == 45);
  for (std::size_t i = 0; i < table.size(); ++i) {
    const double f = table.number(i, "f");
    const double lon1 = table.number(i, "lon1"), lon2 = table.number(i, "lon2");
    const double middle = (lon1 + lon2) / 2;  // turned so that the way lies in front
    const HeadShape shape = spheroid(100, f);
    const Vec3 from = pointOf(100, f, table.number(i, "lat1"), lon1 - middle);
    const Vec3 to = pointOf(100, f, table.number(i, "lat2"), lon2 - middle);
    INFO("row " << i << " f " << f);
    CHECK(surfaceDistance_mm(shape, from, to) ==
          Approx(table.number(i, "distance")).epsilon(1e-4));
  }
}

// Source: GeographicLib 2.1.2 [GeographicLib], run here.
TEST_CASE("straight walks end where GeographicLib's direct problem ends", "[published][head]") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> unit(0, 1);
  for (const double f : {-0.15, 0.0, 0.052, 0.2}) {
    const double a = 90;
    const HeadShape shape = spheroid(a, f);
    const GeographicLib::GeodesicExact exact(a, f);
    for (int i = 0; i < 40; ++i) {
      const double lat = -20 + 80 * unit(random), lon = -30 + 60 * unit(random);
      const double azimuth = 360 * unit(random), length = 1 + 60 * unit(random);
      const Vec3 from = pointOf(a, f, lat, lon);
      // Tangents east and north at the start.
      const double la = radians(lat), lo = radians(lon);
      const Vec3 east(std::cos(lo), -std::sin(lo), 0);
      const Vec3 north(-std::sin(la) * std::sin(lo), -std::sin(la) * std::cos(lo), std::cos(la));
      const double az = radians(azimuth);
      const SurfaceStep end =
          stepAlong(shape, from, std::cos(az) * north + std::sin(az) * east, length);
      double lat2 = 0, lon2 = 0;
      exact.Direct(lat, lon, azimuth, length, lat2, lon2);
      const Vec3 expected = pointOf(a, f, lat2, lon2);
      if (expected.y() < 5) continue;  // would leave the front half
      INFO("f " << f << " lat " << lat << " azimuth " << azimuth << " length " << length);
      CHECK((end.at - expected).norm() < 1e-3);
    }
  }
}

// Source: GeographicLib 2.1.2 [GeographicLib], run here: how far a chord may
// stand for the distance across a strip of up to 25 mm.
TEST_CASE("across a strip: within 0.5 % of GeographicLib up to 25 mm", "[published][head]") {
  const double a = 85, f = 0.05;
  const HeadShape shape = spheroid(a, f);
  const GeographicLib::GeodesicExact exact(a, f);
  // A strip along the equator to the wearer's right: seen from outside, left of
  // travel is down.
  std::vector<Vec3> line;
  for (double lon = -40; lon <= 40; lon += 10) line.push_back(pointOf(a, f, 0, lon));
  const StripFrame frame(shape, line);
  double s80 = 0;
  exact.Inverse(0, -40, 0, 40, s80);
  CHECK(frame.length_mm() == Approx(s80).epsilon(1e-4));
  double worstChord = 0;
  for (const double lat : {-16.0, -8.0, -2.0, -0.5, 0.7, 3.0, 9.0, 16.5}) {
    for (const double lon : {-35.0, -3.3, 21.0}) {
      const Vec3 q = pointOf(a, f, lat, lon);
      double across = 0, along = 0;
      exact.Inverse(0, lon, lat, lon, across);
      exact.Inverse(0, -40, 0, lon, along);
      REQUIRE(across < 26);
      const auto place = frame.placeOf(q, 30);
      REQUIRE(place);
      CHECK(place->onStrip);
      CHECK(std::abs(place->across_mm) == Approx(across).epsilon(0.005));
      CHECK((place->across_mm > 0) == (lat < 0));
      CHECK(place->along_mm == Approx(along).margin(0.06));
      const double chord = (q - pointOf(a, f, 0, lon)).norm();
      worstChord = std::max(worstChord, 1 - chord / across);
    }
  }
  CHECK(worstChord < 0.005);  // a bare chord would do too, up to 25 mm
  CHECK(worstChord > 0.001);
}
