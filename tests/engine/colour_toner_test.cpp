// Dyes: additive, order independent, and found back when they were put in.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/colour/fibre.h"
#include "engine/colour/hair_colour.h"
#include "engine/colour/toner.h"

using namespace combdraft;
using namespace combdraft::colour;

TEST_CASE("dyes add in any order", "[colour]") {
  const Spectrum base = absorptionOf(lightenedHair(9));
  const DyeAmounts p{0.01, 0, 0.03, 0}, q{0, 0.02, 0.01, 0.04}, sum{0.01, 0.02, 0.04, 0.04};
  const Spectrum pq = withDyes(withDyes(base, p), q);
  const Spectrum qp = withDyes(withDyes(base, q), p);
  const Spectrum once = withDyes(base, sum);
  for (std::size_t i = 0; i < kSamples; ++i) {
    CHECK(pq[i] == Approx(qp[i]).epsilon(1e-13));
    CHECK(pq[i] == Approx(once[i]).epsilon(1e-13));
  }
}

TEST_CASE("the amounts of dye that made a colour are found back", "[colour]") {
  const DyeBox box{Dye::Gold, Dye::Violet, Dye::Blue};
  for (double level = 6; level <= 11; ++level)
    for (const DyeAmounts& put : {DyeAmounts{0, 0, 0, 0}, DyeAmounts{0.02, 0, 0.01, 0.005},
                                  DyeAmounts{0, 0, 0.03, 0.01}, DyeAmounts{0.3, 0, 0.2, 0.1}}) {
      const Spectrum base = absorptionOf(lightenedHair(level));
      const Lab aim = labOf(reflectanceOf(withDyes(base, put)), Light::Daylight);
      const DyeAmounts found = dyesToward(base, aim, box);
      for (std::size_t d = 0; d < kDyes; ++d) CHECK(found[d] == Approx(put[d]).margin(1e-6));
    }
}

TEST_CASE("an aim lighter than the hair adds no dye", "[colour]") {
  const Spectrum base = absorptionOf(lightenedHair(7));
  Lab aim = labOf(lightenedHair(7), Light::Daylight);
  aim.L += 10;
  for (const double amount : dyesToward(base, aim, {Dye::Gold, Dye::Violet, Dye::Blue}))
    CHECK(amount < 1e-6);
}

TEST_CASE("no nearer colour lies beside the one found", "[colour]") {
  // Brute force: small steps in any one dye never come closer to the aim.
  const DyeBox box{Dye::Gold, Dye::Red, Dye::Blue};
  for (const Lab& aim : {Lab{40, 2, 5}, Lab{55, 25, 10}, Lab{30, -10, 20}, Lab{62, 12, 45}}) {
    const Spectrum base = absorptionOf(lightenedHair(9));
    const auto distance = [&](const DyeAmounts& amounts) {
      const Lab lab = labOf(reflectanceOf(withDyes(base, amounts)), Light::Daylight);
      return std::hypot(lab.L - aim.L, lab.a - aim.a, lab.b - aim.b);
    };
    const DyeAmounts found = dyesToward(base, aim, box);
    for (const Dye dye : box)
      for (const double step : {-1e-3, 1e-3}) {
        DyeAmounts beside = found;
        double& amount = beside[static_cast<std::size_t>(dye)];
        amount = std::max(0.0, amount + step);
        CHECK(distance(beside) >= distance(found) - 1e-9);
      }
  }
}
