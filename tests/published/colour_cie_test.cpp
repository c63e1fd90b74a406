// Colorimetry against the CIE's own tables [CIE015], read from the data folder.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/colour/light.h"
#include "tests/support/csv.h"

using namespace combdraft;
using namespace combdraft::colour;
using combdraft::test::publishedTable;

TEST_CASE("the observer is the CIE 1931 2 degree table", "[colour][published]") {
  const Observer& observer = standardObserver();
  const auto rows = publishedTable("cie_1931_2deg_cmf_5nm.csv");
  REQUIRE(rows.size() == kSamples);
  double x = 0, y = 0, z = 0;
  for (std::size_t i = 0; i < kSamples; ++i) {
    CHECK(rows[i].number("wavelength_nm") == wavelength_nm(i));
    CHECK(observer.x[i] == rows[i].number("x_bar"));
    CHECK(observer.y[i] == rows[i].number("y_bar"));
    CHECK(observer.z[i] == rows[i].number("z_bar"));
    x += observer.x[i];
    y += observer.y[i];
    z += observer.z[i];
  }
  // Column sums of CIE 015:2018 Table 1 at 5 nm.
  CHECK(x == Approx(21.371525).margin(2e-5));
  CHECK(y == Approx(21.371328).margin(2e-5));
  CHECK(z == Approx(21.371540).margin(2e-5));
}

TEST_CASE("the lights are the CIE tables", "[colour][published]") {
  const auto rows = publishedTable("cie_illuminants_5nm.csv");
  const auto d75 = publishedTable("cie_illuminant_d75_5nm.csv");
  REQUIRE(rows.size() == kSamples);
  REQUIRE(d75.size() == kSamples);
  for (std::size_t i = 0; i < kSamples; ++i) {
    CHECK(lightPower(Light::Daylight)[i] == rows[i].number("D65"));
    CHECK(lightPower(Light::WarmLamp)[i] == rows[i].number("LED-B1"));
    CHECK(lightPower(Light::Office)[i] == rows[i].number("FL11"));
    CHECK(lightPower(Light::Incandescent)[i] == rows[i].number("A"));
    CHECK(lightPower(Light::Overcast)[i] == d75[i].number("D75"));
  }
}

TEST_CASE("illuminant A is Planck's law at 2848 K with c2 1.435e-2", "[colour][published]") {
  // CIE 015:2018, definition of standard illuminant A; six figures are tabled.
  for (std::size_t i = 0; i < kSamples; ++i) {
    const double l = wavelength_nm(i);
    const double planck = 100 * std::pow(560 / l, 5) * std::expm1(1.435e7 / (2848 * 560.0)) /
                          std::expm1(1.435e7 / (2848 * l));
    CHECK(lightPower(Light::Incandescent)[i] == Approx(planck).epsilon(2e-5));
  }
}

TEST_CASE("white points agree with the published chromaticities", "[colour][published]") {
  struct Case {
    Light light;
    const char* name;
  };
  const auto rows = publishedTable("cie_white_points.csv");
  int found = 0;
  for (const Case c : {Case{Light::Daylight, "D65"}, Case{Light::WarmLamp, "LED-B1"},
                       Case{Light::Office, "FL11"}, Case{Light::Incandescent, "A"}})
    for (const auto& row : rows) {
      if (row.text("illuminant") != c.name) continue;
      const Xyz w = whitePoint(c.light);
      const double sum = w.x + w.y + w.z;
      INFO(c.name);
      CHECK(w.x / sum == Approx(row.number("x_pub")).margin(1e-4));
      CHECK(w.y / sum == Approx(row.number("y_pub")).margin(1e-4));
      CHECK(100 * w.x == Approx(row.number("X_5nm")).margin(6e-5));
      CHECK(w.y == Approx(1).margin(1e-12));
      CHECK(100 * w.z == Approx(row.number("Z_5nm")).margin(6e-5));
      ++found;
    }
  CHECK(found == 4);
  // D75: CIE 015:2018, x 0.29902, y 0.31485.
  const Xyz w = whitePoint(Light::Overcast);
  CHECK(w.x / (w.x + w.y + w.z) == Approx(0.29902).margin(1e-4));
  CHECK(w.y / (w.x + w.y + w.z) == Approx(0.31485).margin(1e-4));
}
