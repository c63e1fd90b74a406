// Hydrogen peroxide against stoichiometry, pharmacopoeia labels, the EU limit
// [EU1223] and a measured bath [Edman1961].
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/work/strength.h"
#include "tests/support/csv.h"

using namespace combdraft;
using plan::StrengthUnit;

TEST_CASE("peroxide percent volumes moles and labels are the reference's", "[work][published]") {
  for (const auto& row : test::publishedTable("peroxide_strength_reference.csv")) {
    const double percent = row.number("percent_w_v");
    INFO(percent << " %");
    const auto strength = work::strengthOf(percent, StrengthUnit::Percent);
    REQUIRE(strength);
    CHECK(strength->volumes() == Approx(row.number("volumes_exact")).margin(1e-4));
    CHECK(strength->molPerLitre() == Approx(row.number("mol_per_litre")).margin(1e-5));
    const auto label = work::nominalLabel(*strength);
    const std::string& nominal = row.text("nominal_volume");
    CHECK(label.has_value() == !nominal.empty());
    if (label) CHECK(label->volumes == row.number("nominal_volume"));
    // And back: volumes that were typed.
    const auto back = work::strengthOf(row.number("volumes_exact"), StrengthUnit::Volume);
    REQUIRE(back);
    CHECK(back->percent == Approx(percent).margin(1e-4));
  }
}

TEST_CASE("the EU limit is twelve percent or forty volumes", "[work][published]") {
  const auto over = [](double value, StrengthUnit unit) { return work::strengthOf(value, unit)->isOverEuLimit(); };
  CHECK_FALSE(over(12, StrengthUnit::Percent));
  CHECK(over(12.1, StrengthUnit::Percent));
  CHECK_FALSE(over(40, StrengthUnit::Volume));  // 12.14 % exactly; the text says 40 volumes
  CHECK(over(40.5, StrengthUnit::Volume));
  CHECK_FALSE(over(6, StrengthUnit::Percent));
}

TEST_CASE("developers are mixed by parts as the trade's rule says", "[work][published]") {
  // Sum of parts times volume over the sum of parts (common practice): one part
  // of 20 and one of 40 volumes are 30; one of 10 and two of 40 are 30.
  const auto volumes = [](double v) { return *work::strengthOf(v, StrengthUnit::Volume); };
  const std::vector<work::StrengthPart> even{{volumes(20), 1}, {volumes(40), 1}}, uneven{{volumes(10), 1}, {volumes(40), 2}};
  CHECK(work::mixed(even)->volumes() == Approx(30));
  CHECK(work::mixed(uneven)->volumes() == Approx(30));
  CHECK(work::mixed(even)->typedIn == StrengthUnit::Volume);
}

TEST_CASE("a measured bath of peroxide grows weaker with time", "[work][published]") {
  // Why a bowl has a life at all: the table's own decay constants follow from its
  // strengths, and without a chelator more than a third is gone in four hours.
  const auto rows = test::publishedTable("peroxide_bleach_measured.csv");
  double plain = 0, kept = 0, lastPlain = 0;
  int checked = 0;
  for (const auto& row : rows) {
    const double minutes = row.number("minutes");
    for (const auto& [column, rate] : {std::pair("h2o2_percent_no_chelator", "k_no_chelator_per_min"),
                                       std::pair("h2o2_percent_with_chelator", "k_with_chelator_per_min")}) {
      if (row.text(column).empty()) continue;
      double& start = std::string(column) == "h2o2_percent_no_chelator" ? plain : kept;
      const double strength = work::strengthOf(row.number(column), StrengthUnit::Percent)->percent;
      if (minutes == 0) {
        start = strength;
        continue;
      }
      CHECK(strength < start);
      CHECK(std::log(start / strength) / minutes == Approx(row.number(rate)).margin(1e-5));
      if (&start == &plain) lastPlain = strength;
      ++checked;
    }
  }
  CHECK(checked == 9);
  CHECK(lastPlain < 0.64 * plain);
}
