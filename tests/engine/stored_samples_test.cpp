// Eight stored samples a pixel stand for everything composited there, without
// bias: against full compositing worked out here for a small scene.
#include <catch2/catch.hpp>

#include "engine/base/random.h"
#include "engine/colour/xyz.h"
#include "tests/support/plain_fibres.h"

using namespace combdraft;
using namespace combdraft::test;

TEST_CASE("stored samples have no bias against full compositing", "[raster]") {
  constexpr int kWidth = 60, kHeight = 100;
  constexpr double kHairs = 6, kFibre_mm = 0.072;
  // Light in front of dark, dark in front of light, and both mixed; thin and thick.
  for (const int scene : {0, 1, 2})
    for (const std::size_t count : {std::size_t{90}, std::size_t{400}, std::size_t{1500}}) {
      std::vector<Fibre> fibres;
      std::vector<double> y;
      for (std::size_t i = 0; i < count; ++i) {
        const double depth = randomUniform(9, i, 2) * 20;
        const bool light = scene == 0 ? depth > 15 : scene == 1 ? depth < 15 : randomUniform(9, i, 3) < 0.3;
        fibres.push_back({(randomUniform(9, i, 1) - 0.5) * kWidth, depth});
        y.push_back(light ? 0.38 : 0.047);  // L* 68 and 26
      }
      const hair::Locks locks = plainLocks(fibres, kHairs, kFibre_mm);
      const visibility::RasterSpec spec = plainSpec(kWidth, kHeight, 1);
      const visibility::ViewSamples seen =
          visibility::rasterise(locks, spec, noBody(spec), visibility::Shading::None, 4);

      // Full compositing: every fibre of a column crosses 1 mm of every pixel.
      std::vector<std::vector<std::size_t>> columns(kWidth);
      for (std::size_t i = 0; i < count; ++i)
        columns[static_cast<std::size_t>(fibres[i].x_mm + kWidth / 2.0)].push_back(i);
      double exactCover = 0, exactY = 0, fullCover = 0, fullY = 0, storedCover = 0, storedY = 0, worst = 0;
      for (std::size_t x = 0; x < kWidth; ++x) {
        auto& column = columns[x];
        std::sort(column.begin(), column.end(),
                  [&](std::size_t a, std::size_t b) { return fibres[a].depth_mm > fibres[b].depth_mm; });
        double through = 1, sum = 0, throughAll = 1, sumAll = 0;
        for (const std::size_t i : column) {
          const double alpha = 1 - std::exp(-kHairs * kFibre_mm);
          sumAll += throughAll * alpha * y[i];
          throughAll *= 1 - alpha;
          if (through > 0.02) sum = sumAll, through = throughAll;  // the raster stops at 98 %
        }
        double stored = 0, cover = 0;
        for (std::size_t row = 0; row < kHeight; ++row) {
          const std::size_t pixel = row * kWidth + x;
          cover += static_cast<double>(seen.hairCover[pixel]) / kHeight;
          if (seen.hairCover[pixel] <= 0) continue;
          for (std::size_t k = 0; k < visibility::kSamples; ++k)
            stored += static_cast<double>(seen.hairCover[pixel]) * y[seen.sample[pixel * visibility::kSamples + k].lock()] /
                      visibility::kSamples / kHeight;
        }
        CHECK(std::abs(cover - (1 - through)) < 1e-5);
        fullCover += 1 - throughAll, fullY += sumAll;
        exactCover += 1 - through, exactY += sum, storedCover += cover, storedY += stored;
        if (through < 0.999)
          worst = std::max(worst, std::abs(colour::lightnessFromY(stored / cover) -
                                           colour::lightnessFromY(sum / (1 - through))));
      }
      const double bias = colour::lightnessFromY(storedY / storedCover) - colour::lightnessFromY(exactY / exactCover);
      const double full = colour::lightnessFromY(fullY / fullCover) - colour::lightnessFromY(exactY / exactCover);
      INFO("scene " << scene << ", " << count << " fibres: bias " << bias << ", worst column " << worst
           << ", left unseen by the stop at 98 % " << full);
      CHECK(std::abs(bias) < 0.15);
      // What the stop leaves out matters only where the last layer is all of one
      // kind (scenes 0 and 1); in mixed hair it does not.
      CHECK(std::abs(full) < (scene == 2 ? 0.1 : 0.8));
      CHECK(worst < 2.5);  // one column of 100 pixels, 800 samples
    }
}

TEST_CASE("samples are stratified: equal shares of the pixel, front to back", "[raster]") {
  // Two opaque-enough layers: the front one takes 1 - e^-1 of the pixel.
  const hair::Locks locks = plainLocks({{0.5, 10}, {0.5, 0}, {0.5, -5}}, 10, 0.1);
  const visibility::RasterSpec spec = plainSpec(2, 100, 1);
  const visibility::ViewSamples seen =
      visibility::rasterise(locks, spec, noBody(spec), visibility::Shading::None, 1);
  const double cover = 1 - std::exp(-3.0);
  double share[3] = {};
  for (std::size_t row = 0; row < 100; ++row) {
    const std::size_t pixel = row * 2 + 1;
    CHECK(static_cast<double>(seen.hairCover[pixel]) == Approx(cover).margin(1e-6));
    for (std::size_t k = 0; k < visibility::kSamples; ++k) {
      const std::size_t slot = pixel * visibility::kSamples + k;
      share[seen.sample[slot].lock()] += 1.0 / visibility::kSamples / 100;
      if (k) CHECK(seen.depth_mm[slot] <= seen.depth_mm[slot - 1]);
    }
    CHECK(seen.sample[(pixel - 1) * visibility::kSamples].none());
  }
  for (int k = 0; k < 3; ++k)
    CHECK(share[k] == Approx((std::exp(-k) - std::exp(-k - 1)) / cover).margin(0.02));
}
