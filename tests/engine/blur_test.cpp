// The fast blur is a Gaussian within 3 % of its peak, and keeps sums.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/look/blur.h"

using namespace combdraft;

TEST_CASE("three running means answer an edge as a Gaussian does, within 3 %", "[look][blur]") {
  for (const double sigma : {0.8, 1.5, 2.1, 3.3, 7.0, 19.1}) {
    const int half = static_cast<int>(6 * sigma) + 4, size = 2 * half + 1;
    std::vector<float> plane(static_cast<std::size_t>(size) * static_cast<std::size_t>(size), 0.0f);
    const auto at = [&](int x, int y) -> float& {
      return plane[static_cast<std::size_t>(y) * static_cast<std::size_t>(size) + static_cast<std::size_t>(x)];
    };
    at(half, half) = 1;
    look::blur(plane, size, size, sigma);
    double sum = 0, squares = 0, edge = 0, worst = 0;
    for (int x = 0; x < size; ++x) {
      for (int y = 0; y < size; ++y) {
        const double value = static_cast<double>(at(x, y));
        edge += value, sum += value, squares += value * (x - half) * (x - half);
      }
      worst = std::max(worst, std::abs(edge - 0.5 * std::erfc((half - x - 0.5) / sigma / std::sqrt(2.0))));
    }
    INFO("sigma " << sigma << ": an edge is off by " << worst);
    CHECK(worst < (sigma >= 1 ? 0.03 : 0.04));  // below a pixel the pixel itself shows
    CHECK(sum == Approx(1).margin(1e-4));
    CHECK(std::sqrt(squares) == Approx(sigma).epsilon(0.01));
    // Round as a Gaussian is: the same down the diagonal, 5 away, as along and across.
    CHECK(at(half + 4, half) == Approx(at(half, half - 4)).epsilon(1e-3));
    if (sigma > 3) CHECK(at(half + 3, half + 4) == Approx(at(half + 5, half)).epsilon(0.05));
  }
}

TEST_CASE("a blurred plane that is even stays even away from its edge, and widths are said as FWHM", "[look][blur]") {
  std::vector<float> plane(81 * 81, 0.25f);
  look::blur(plane, 81, 81, 4);
  CHECK(static_cast<double>(plane[40 * 81 + 40]) == Approx(0.25).margin(1e-6));
  // Half the peak lies half a width away: exp(-x^2 / 2 s^2) = 1/2.
  const double sigma = look::sigmaOfFwhm(10);
  CHECK(std::exp(-25 / (2 * sigma * sigma)) == Approx(0.5).margin(1e-12));
}
