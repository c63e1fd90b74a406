// Two levels or one: the verdict on simulated populations, and its fit against
// the reference table of separation measures [Ashman1994].
#include <catch2/catch.hpp>
#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/base/random.h"
#include "engine/look/contrast.h"
#include "tests/support/csv.h"

using namespace combdraft;
using namespace combdraft::test;
using look::ContrastVerdict;

namespace {

constexpr int kCells = 1000;  // about a back of the head
constexpr double kWidth = 3;  // L*, noise of the same hair without pieces
constexpr double kPlanned = 30;  // L* between the plan's lightest and darkest colour

/// `make(i, seed)`: value of cell i.
template <class Make>
std::vector<double> population(std::uint64_t seed, int cells, Make make) {
  std::vector<double> values;
  for (int i = 0; i < cells; ++i) values.push_back(make(static_cast<std::uint64_t>(i), seed));
  return values;
}
double normal(std::uint64_t i, std::uint64_t seed) { return randomNormal(seed, i, 1); }
double uniform(std::uint64_t i, std::uint64_t seed) { return randomUniform(seed, i, 5); }

struct Verdicts {
  int two = 0, soft = 0, one = 0;
};
template <class Make>
Verdicts judged(int cells, Make make) {
  Verdicts v;
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    switch (look::judge(population(seed, cells, make), kPlanned, 1).verdict) {
      case ContrastVerdict::TwoClearLevels: ++v.two; break;
      case ContrastVerdict::Soft: ++v.soft; break;
      case ContrastVerdict::OneTone: ++v.one; break;
      case ContrastVerdict::TooLittleHair: FAIL("too little hair");
    }
  }
  return v;
}

}  // namespace

TEST_CASE("no single population is called two clear levels", "[look][contrast]") {
  const double sd = 6;  // well above what an eye calls even
  const auto check = [&](const char* what, auto make) {
    const Verdicts v = judged(kCells, make);
    INFO(what << ": two levels " << v.two << ", soft " << v.soft << ", one tone " << v.one << " of 40");
    CHECK(v.two == 0);
    return v;
  };
  const Verdicts one = check("one normal", [&](auto i, auto s) { return sd * normal(i, s); });
  CHECK(one.one >= 38);
  check("uniform", [&](auto i, auto s) { return sd * std::sqrt(12.0) * (uniform(i, s) - 0.5); });
  check("Laplace", [&](auto i, auto s) {
    const double u = uniform(i, s) - 0.5;
    return (u < 0 ? 1 : -1) * sd / std::sqrt(2.0) * std::log(1 - 2 * std::abs(u));
  });
  check("skewed (exponential)", [&](auto i, auto s) { return -sd * std::log(1 - uniform(i, s)); });
  check("peaked, long tails (t of 5)", [&](auto i, auto s) {
    double square = 0;
    for (std::uint32_t k = 0; k < 5; ++k) square += std::pow(randomNormal(s, i, 20 + 2 * k), 2);
    return 0.8 * sd * normal(i, s) / std::sqrt(square / 5);
  });
  check("skewed (log normal)", [&](auto i, auto s) { return 2 * sd * std::exp(0.6 * normal(i, s)); });
  check("triangle", [&](auto i, auto s) { return 2.4 * sd * (uniform(i, s) + randomUniform(s, i, 7)); });
  check("ramp with more noise", [&](auto i, auto s) {
    return sd * std::sqrt(8.0) * (static_cast<double>(i) / kCells - 0.5) + 0.55 * sd * normal(i, s);
  });
  check("ramp with noise", [&](auto i, auto s) {
    return sd * std::sqrt(12.0) * (static_cast<double>(i) / kCells - 0.5) + 0.3 * sd * normal(i, s);
  });
}

TEST_CASE("two populations three and four widths apart are called two clear levels", "[look][contrast]") {
  for (const double d : {3.0, 4.0})
    for (const double share : {0.15, 0.30, 0.50}) {
      const Verdicts v = judged(kCells, [&](auto i, auto s) {
        return kWidth * (normal(i, s) + (randomUniform(s, i, 9) < share ? d : 0));
      });
      INFO("D " << d << ", light " << share << ": two " << v.two << ", soft " << v.soft << ", one " << v.one);
      CHECK(v.two >= 35);
      CHECK(v.one == 0);
    }
  // One width apart is one tone or soft, never two.
  const Verdicts close = judged(kCells, [&](auto i, auto s) { return 4 * (normal(i, s) + (uniform(i, s) < 0.5 ? 1 : 0)); });
  CHECK(close.two == 0);
}

TEST_CASE("a head going two levels is judged as one going five", "[look][contrast]") {
  // The same populations in half the L*, on a plan of half the difference.
  const auto half = [&](auto make) {
    int two = 0;
    for (std::uint64_t seed = 0; seed < 40; ++seed)
      if (look::judge(population(seed, kCells, make), kPlanned / 2, 1).verdict == ContrastVerdict::TwoClearLevels) ++two;
    return two;
  };
  for (const double d : {3.0, 4.0})
    for (const double share : {0.15, 0.30, 0.50}) {
      CAPTURE(d, share);
      CHECK(half([&](auto i, auto s) { return kWidth / 2 * (normal(i, s) + (randomUniform(s, i, 9) < share ? d : 0)); }) >= 35);
    }
  const double sd = 3;
  CHECK(half([&](auto i, auto s) { return sd * normal(i, s); }) == 0);
  CHECK(half([&](auto i, auto s) { return sd * std::sqrt(12.0) * (uniform(i, s) - 0.5); }) == 0);
  CHECK(half([&](auto i, auto s) { return -sd * std::log(1 - uniform(i, s)); }) == 0);
  CHECK(half([&](auto i, auto s) { return sd * std::sqrt(12.0) * (static_cast<double>(i) / kCells - 0.5) + 0.3 * sd * normal(i, s); }) == 0);
}

TEST_CASE("two levels do not rest on a few places", "[look][contrast]") {
  const auto with = [&](double share) {
    return judged(kCells, [&, share](auto i, auto s) { return kWidth * (normal(i, s) + (randomUniform(s, i, 9) < share ? 8 : 0)); });
  };
  CHECK(with(0.01).two == 0);
  CHECK(with(0.01).one == 40);
  CHECK(with(0.035).two <= 2);  // soft
  CHECK(with(0.08).two == 40);
  // The least share is an assumption.
  const auto values = population(1, kCells, [](auto i, auto s) { return kWidth * (normal(i, s) + (randomUniform(s, i, 9) < 0.08 ? 8 : 0)); });
  const look::Contrast c = look::judge(values, kPlanned, 1);
  CHECK(c.light_share == Approx(0.08).margin(0.03));
  CHECK(c.light_share + c.dark_share == Approx(1));
  CHECK(look::judge(values, kPlanned, 1, Assumptions().with("contrast.share", 0.12)).verdict == ContrastVerdict::Soft);
}

TEST_CASE("the histogram holds every place once, in whole steps", "[look][contrast]") {
  for (const double sd : {0.2, 3.0, 40.0}) {
    const auto values = population(4, kCells, [sd](auto i, auto s) { return sd * normal(i, s); });
    const look::Histogram h = look::judge(values, kPlanned, 1).local;
    CAPTURE(sd, h.from, h.step, h.counts.size());
    CHECK(h.counts.size() <= 41);
    CHECK(h.step == std::floor(h.step));
    int all = 0;
    for (std::size_t k = 0; k < h.counts.size(); ++k) {
      all += h.counts[k];
      const double low = h.from + static_cast<double>(k) * h.step;
      CHECK(h.counts[k] == std::count_if(values.begin(), values.end(), [&](double v) { return v >= low && v < low + h.step; }));
    }
    CHECK(all == kCells);
  }
  CHECK(look::judge({}, kPlanned, 1).local.counts.empty());
}

TEST_CASE("too few cells and too little difference are not judged", "[look][contrast]") {
  CHECK(look::judge(population(1, 99, [](auto i, auto s) { return normal(i, s); }), kPlanned, 1).verdict ==
        ContrastVerdict::TooLittleHair);
  const look::Contrast faint = look::judge(
      population(1, kCells, [](auto i, auto s) { return 0.05 * normal(i, s) + (uniform(i, s) < 0.5 ? 0.3 : 0); }), kPlanned, 2);
  CHECK(faint.verdict == ContrastVerdict::OneTone);
  CHECK(faint.distance_m == 2);
}

TEST_CASE("the fit finds the separation of the reference mixtures",
          "[published][look][contrast]") {
  int checked = 0;
  for (const CsvRow& row : publishedTable("two_level_separation_reference.csv")) {
    if (row.text("population") != "equal normal mixture sigma 1") continue;
    const double d = row.number("ashman_D");
    const std::vector<double> values = population(3, 40000, [&](auto i, auto s) {
      return normal(i, s) + (uniform(i, s) < 0.5 ? d : 0);
    });
    const look::LevelSplit split = look::splitLevels(values);
    const double found = (split.light - split.dark) / split.width;  // equal widths: Ashman's D
    INFO("D " << d << ": found " << found << ", light share " << split.lightShare);
    CHECK(found == Approx(d).epsilon(0.05));
    CHECK(split.lightShare == Approx(0.5).margin(0.03));
    CHECK(split.bicGain > 0);
    CHECK(split.humpGain > 0);
    // The same sample has the table's other measures: the simulation is the table's population.
    double mean = 0, m2 = 0, m3 = 0, m4 = 0;
    for (const double v : values) mean += v / static_cast<double>(values.size());
    for (const double v : values) {
      const double e = v - mean;
      m2 += e * e, m3 += e * e * e, m4 += e * e * e * e;
    }
    const auto n = static_cast<double>(values.size());
    m2 /= n, m3 /= n, m4 /= n;
    CHECK((m3 * m3 / (m2 * m2 * m2) + 1) / (m4 / (m2 * m2)) ==
          Approx(row.number("bimodality_coefficient")).margin(0.01));
    ++checked;
  }
  CHECK(checked == 4);
}
