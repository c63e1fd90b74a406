// Areas. Sources: Legendre's ellipsoid area (DLMF 19.33), Thomsen 2004,
// Ramanujan 1914 in ellipsoid_reference.csv [DLMF]; GeographicLib [GeographicLib];
// hair counts, hair_and_whorl_facts.csv [Loussouarn2005].
#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/PolygonArea.hpp>
#include <catch2/catch.hpp>

#include "engine/head/area.h"
#include "engine/head/measures.h"
#include "tests/support/head_table.h"

using namespace combdraft;
using namespace combdraft::head;

TEST_CASE("ellipsoid areas and ellipse perimeters", "[published][head]") {
  const test::Table t("ellipsoid_reference.csv");
  for (std::size_t i = 0; i < t.size(); ++i) {
    const double a = t.number(i, "a"), b = t.number(i, "b"), c = t.number(i, "c");
    const double scale = a < 10 ? 50 : 1;  // the shape is meant for millimetres
    // The upper half: no neck there.
    const HeadShape shape({b * scale, a * scale, c * scale, 2.0});
    const double area = 2 * 100 * areaAbove_cm2(shape, [](double) { return 90.0; });
    INFO("row " << i);
    // One row prints an axis of 126.4753 as 126.475: 2e-6 of its area.
    const double rounding = t.text(i, "a") == "94.91" ? 3e-6 : 1e-8;
    CHECK(area == Approx(t.number(i, "area_exact") * scale * scale).epsilon(rounding));
    CHECK(area == Approx(t.number(i, "area_thomsen") * scale * scale).epsilon(0.0107));
    CHECK(shape.circumference_mm() ==
          Approx(t.number(i, "perimeter_ab_exact") * scale).epsilon(3e-6));
    CHECK(shape.circumference_mm() ==
          Approx(t.number(i, "perimeter_ab_ramanujan2") * scale).epsilon(3e-6));
  }
}

TEST_CASE("spheroid areas as GeographicLib gives them", "[published][head]") {
  for (const double f : {0.2, 0.05, 0.0, -0.2}) {
    const GeographicLib::Geodesic g(100, f);
    const HeadShape shape({100, 100, 100 * (1 - f), 2.0});
    CHECK(2 * 100 * areaAbove_cm2(shape, [](double) { return 90.0; }) ==
          Approx(g.EllipsoidArea()).epsilon(1e-8));
  }
}

TEST_CASE("a cap of a sphere, and any shape grown as a whole", "[head]") {
  const HeadShape ball({80, 80, 80, 2.0});
  for (const double drop : {10.0, 45.0, 89.0})
    CHECK(100 * areaAbove_cm2(ball, [&](double) { return drop; }) ==
          Approx(2 * kPi * 6400 * (1 - std::cos(radians(drop)))).epsilon(1e-8));
  const HeadShape one, grown({73.9 * 1.1, 94.9 * 1.1, 99, 2.4});
  CHECK(hairArea_cm2(grown, Hairline(grown)) ==
        Approx(1.21 * hairArea_cm2(one, Hairline(one))).epsilon(1e-6));
}

TEST_CASE("hair area against a plain sum of triangles", "[head]") {
  for (const double p : {2.0, 2.4, 3.2}) {
    const HeadShape shape({73.9, 94.9, 90, p});
    const Hairline hairline(shape);
    constexpr int kRound = 720, kDown = 400;
    double sum = 0;
    std::vector<Vec3> before, here;
    for (int i = 0; i <= kRound; ++i) {
      const double bearing = -180 + 360.0 * i / kRound;
      const double end = shape.scalpPointAt(hairline.pointAt(bearing)).drop_deg;
      here.clear();
      for (int k = 0; k <= kDown; ++k) here.push_back(shape.pointAt({bearing, end * k / kDown}));
      for (std::size_t k = 1; !before.empty() && k < here.size(); ++k)
        sum += ((here[k] - before[k - 1]).cross(before[k] - here[k - 1])).norm() / 2;
      before = here;
    }
    CHECK(100 * hairArea_cm2(shape, hairline) == Approx(sum).epsilon(3e-4));
  }
}

// Source: Loussouarn 2005, 226 hairs/cm2 [Loussouarn2005]; 100,000 to 150,000 is
// the general figure for a head of hair.
TEST_CASE("mean heads carry a usual number of hairs", "[published][head]") {
  const test::Table facts("hair_and_whorl_facts.csv");
  const double density = facts.find("key", "hair_density", "population", "Caucasian", "value");
  for (const HeadSet set : {HeadSet::Women, HeadSet::Men}) {
    double before = 0;
    for (const HeadSize size : {HeadSize::Small, HeadSize::Medium, HeadSize::Large}) {
      HeadMeasures m;
      m.set = set;
      m.size = size;
      const HeadShape shape(fitHead(m)->axes);
      const double area = hairArea_cm2(shape, Hairline(shape));
      CHECK(area > before);
      before = area;
      if (size != HeadSize::Medium) continue;
      CHECK(area > 450);
      CHECK(area < 700);
      CHECK(density * area > 100000);
      CHECK(density * area < 150000);
    }
  }
}

TEST_CASE("area per direction sums to the area", "[head]") {
  const HeadShape shape;
  const Hairline hairline(shape);
  // Golden spiral of directions: each stands for the same solid angle.
  constexpr int kCount = 200000;
  double sum = 0;
  for (int i = 0; i < kCount; ++i) {
    const double z = 1 - (2.0 * i + 1) / kCount, r = std::sqrt(1 - z * z);
    const double turn = 2.399963229728653 * i;
    const Vec3 d(r * std::cos(turn), r * std::sin(turn), z);
    const Vec3 at = shape.pointAlong(d);
    if (hairline.contains(at)) sum += areaPerSolidAngle_mm2(shape, d) * 4 * kPi / kCount;
  }
  CHECK(sum / 100 == Approx(hairArea_cm2(shape, hairline)).epsilon(1e-3));
}
