// How many hairs the roots stand for, against published densities and ranges
// [Loussouarn2005] [Loussouarn2016] [Barman1965],
// and how they are spread.
#include <catch2/catch.hpp>

#include "engine/base/assumptions.h"
#include "engine/hair/roots.h"
#include "engine/head/area.h"
#include "engine/head/landmarks.h"
#include "engine/head/measures.h"
#include "tests/support/csv.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

struct Grown {
  head::HeadShape shape;
  head::Hairline hairline;
  hair::Roots roots;
  explicit Grown(const head::HeadMeasures& m, double density = 226, int count = 6000)
      : shape(head::fitHead(m).value().axes), hairline(shape),
        roots(hair::spreadRoots(shape, hairline, density, count, 7)) {}
};

double published(const std::string& key, const std::string& population) {
  for (const CsvRow& row : publishedTable("hair_and_whorl_facts.csv"))
    if (row.text("key") == key && row.text("population") == population) return row.number("value");
  FAIL("no row " << key << ", " << population);
  return 0;
}

/// Hairs per cm2 within a ball around a place.
double densityAround(const Grown& g, const Vec3& at, double radius_mm) {
  double count = 0;
  for (const hair::Root& r : g.roots.roots)
    if ((r.at - at).norm() < radius_mm) ++count;
  return count * g.roots.hairsPerLock / (kPi * radius_mm * radius_mm / 100);
}

}  // namespace

TEST_CASE("mean heads carry 100,000 to 150,000 hairs at the published density",
          "[published][hair]") {
  const double density = published("hair_density", "Caucasian");
  for (const head::HeadSet set : {head::HeadSet::Women, head::HeadSet::Men}) {
    const Grown g({set, head::HeadSize::Medium, {}, {}, {}, {}}, density);
    INFO(g.roots.totalHairs() << " hairs on " << g.roots.area_cm2 << " cm2");
    CHECK(g.roots.totalHairs() >= 100000);
    CHECK(g.roots.totalHairs() <= 150000);
    CHECK(g.roots.area_cm2 == Approx(head::hairArea_cm2(g.shape, g.hairline)).epsilon(0.005));
    // The whole scalp's mean stays within the individuals' range [Barman1965].
    const double mean = g.roots.totalHairs() / g.roots.area_cm2;
    CHECK(mean > 175);
    CHECK(mean < 300);
  }
}

TEST_CASE("5th and 95th percentile heads carry hair in proportion to their area, within 1 %",
          "[published][hair]") {
  for (const head::HeadSet set : {head::HeadSet::Women, head::HeadSet::Men}) {
    const Grown mean({set, head::HeadSize::Medium, {}, {}, {}, {}});
    for (const head::HeadSize size : {head::HeadSize::Small, head::HeadSize::Large}) {
      const Grown g({set, size, {}, {}, {}, {}});
      const double hairs = g.roots.totalHairs() / mean.roots.totalHairs();
      const double area = head::hairArea_cm2(g.shape, g.hairline) / head::hairArea_cm2(mean.shape, mean.hairline);
      INFO("hairs " << hairs << ", area " << area);
      CHECK(hairs == Approx(area).epsilon(0.01));
      CHECK((size == head::HeadSize::Small ? area < 0.97 : area > 1.03));
    }
  }
}

TEST_CASE("hair is densest at the vertex and thinnest at the temples", "[published][hair]") {
  const Grown g({}, 226, 60000);
  const head::Landmarks marks = head::landmarksOf(g.shape, g.hairline);
  const double vertex = densityAround(g, marks.apex, 18);
  const double occiput = densityAround(g, marks.occipital, 18);
  const Vec3 aboveTemple = g.shape.pointAlong({std::sin(radians(62)), std::cos(radians(62)), 0.3});
  const double temple = densityAround(g, aboveTemple, 12);
  INFO("vertex " << vertex << ", occiput " << occiput << ", temple " << temple);
  CHECK(vertex == Approx(226).epsilon(0.03));
  CHECK(vertex >= occiput);
  CHECK(occiput > 1.05 * temple);
  // All within the 24 groups' range of means, with room for one person's spread.
  CHECK(temple > 0.9 * published("hair_density_range_low", "24 groups worldwide"));
  CHECK(vertex < 1.1 * published("hair_density_range_high", "24 groups worldwide"));
}

TEST_CASE("roots keep their distance better than chance would", "[hair]") {
  // Mean distance to the nearest neighbour: half the spacing for random places
  // (Clark and Evans 1954), near one for even ones.
  const Grown g({}, 226, 8000);
  const hair::RootGrid grid(g.roots);
  double sum = 0, least = 1e9;
  for (std::size_t i = 0; i < g.roots.roots.size(); ++i) {
    double nearest = 1e9;
    const Vec3 at = g.roots.roots[i].at;
    grid.near(at, 6, [&](std::uint32_t k) {
      if (k != i) nearest = std::min(nearest, (g.roots.roots[k].at - at).norm());
    });
    sum += nearest, least = std::min(least, nearest);
  }
  const double ratio = sum / static_cast<double>(g.roots.roots.size()) / g.roots.spacing_mm();
  INFO("mean nearest distance over spacing " << ratio << ", least " << least << " mm");
  CHECK(ratio > 0.65);
  CHECK(g.roots.spacing_mm() == Approx(std::sqrt(g.roots.area_cm2 * 100 / 8000)));
  for (const hair::Root& r : g.roots.roots) {
    REQUIRE(std::abs(g.shape.implicit(r.at)) < 1e-6);
    REQUIRE(g.hairline.above_mm(r.at) > -1.5);
    REQUIRE(r.normal.norm() == Approx(1));
  }
}

TEST_CASE("the default growth is the published 11.2 mm a month", "[published][hair]") {
  const Assumptions assumptions;
  const double week_mm = assumptions["growth.mm_per_week"];
  CHECK(week_mm * 365.25 / 12 / 7 == Approx(published("growth_rate", "Caucasian") / 1000 * 365.25 / 12).epsilon(0.01));
  for (const Assumption& a : assumptionTable())
    if (a.name == "growth.mm_per_week") {  // the range of 24 groups [Loussouarn2016]
      CHECK(a.low * 365.25 / 12 / 7 == Approx(10 * published("growth_rate_range_low", "24 groups worldwide")).epsilon(0.02));
      CHECK(a.high * 365.25 / 12 / 7 == Approx(10 * published("growth_rate_range_high", "24 groups worldwide")).epsilon(0.02));
    }
}

TEST_CASE("the default fibre is the published mean cross-section", "[published][hair]") {
  const double area_um2 = published("fibre_cross_section_area", "Caucasian n=171");
  CHECK(plan::Hair{}.fibre_um == Approx(2 * std::sqrt(area_um2 / kPi)).margin(0.1));
}
