// Contrast sensitivity against Mannos and Sakrison 1974 [Mannos1974].
#include "engine/look/contrast_sensitivity.h"

#include <catch2/catch.hpp>

#include "tests/support/csv.h"

using namespace combdraft;
using look::contrastSensitivity;
using look::stripeFrequency_cpd;

TEST_CASE("contrast sensitivity gives the reference values", "[look][published]") {
  for (const auto& row : test::publishedTable("contrast_sensitivity_reference.csv"))
    CHECK(contrastSensitivity(row.number("f_cpd")) ==
          Approx(row.number("mannos_sakrison")).margin(1e-6));
}

TEST_CASE("contrast sensitivity peaks at 0.98088 and 7.891 cycles a degree",
          "[look][published]") {
  double peak = 0, at = 0;
  for (int i = 0; i < 20000; ++i)
    if (const double s = contrastSensitivity(i * 1e-3); s > peak) {
      peak = s;
      at = i * 1e-3;
    }
  CHECK(peak == Approx(0.98088).margin(1e-5));
  CHECK(at == Approx(7.891).margin(2e-3));
  CHECK(contrastSensitivity(0) == Approx(2.6 * 0.0192).epsilon(1e-12));
  CHECK(contrastSensitivity(200) < 1e-6);
}

TEST_CASE("stripe widths become cycles a degree by plane geometry", "[look]") {
  // One light and one dark stripe make a cycle: f = 1 / (2 * 2 atan(w / 2d)).
  CHECK(stripeFrequency_cpd(5, 1) == Approx(1.75).margin(0.01));
  CHECK(stripeFrequency_cpd(3, 3) == Approx(8.73).margin(0.01));
  // 1 arc minute is 0.291 mm at 1 m: 30 cycles a degree.
  CHECK(stripeFrequency_cpd(0.2909, 1) == Approx(30).margin(0.01));
}
