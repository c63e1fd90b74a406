#include "engine/look/contrast.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"
#include "engine/colour/xyz.h"
#include "engine/look/blur.h"

namespace combdraft::look {
namespace {

using visibility::kSamples;
using visibility::SeenHair;

constexpr double kCell_mm = 5;            // independent cells
constexpr std::size_t kLeastCells = 100;  // own: below it a verdict is noise
constexpr double kLocal_mm = 45;          // FWHM of "around here"
constexpr double kFinest_mm = 3;
// Own: shares of the plan's own lightest-to-darkest difference that must be left
// after mixing and blurring for a difference to be called clear, or at all.
constexpr double kClear = 0.28, kSoft = 0.16;

double density(double x, double mean, double width) {
  const double t = (x - mean) / width;
  return std::exp(-t * t / 2) / (width * 2.5066282746310002);
}

}  // namespace

LevelSplit splitLevels(std::span<const double> values) {
  LevelSplit split;
  const auto n = static_cast<double>(values.size());
  if (values.size() < 8) return split;
  double mean = 0, variance = 0;
  for (const double v : values) mean += v / n;
  for (const double v : values) variance += (v - mean) * (v - mean) / n;
  const double floor = 1e-3;
  const double sd = std::max(std::sqrt(variance), floor);

  // EM from the quartiles; one common width.
  std::vector<double> sorted(values.begin(), values.end());
  std::sort(sorted.begin(), sorted.end());
  double best = -1e300;
  for (const double at : {0.25, 0.5, 0.12}) {  // three starts: even, and few light or dark
    double m0 = sorted[static_cast<std::size_t>(at * (n - 1))];
    double m1 = sorted[static_cast<std::size_t>((1 - (at == 0.5 ? 0.05 : at)) * (n - 1))];
    double w = sd / 2, share = 0.5, likelihood = 0;
    for (int round = 0; round < 300; ++round) {
      double r = 0, s0 = 0, s1 = 0, spread = 0, now = 0;
      for (const double v : values) {
        const double d0 = (1 - share) * density(v, m0, w), d1 = share * density(v, m1, w);
        const double sum = std::max(d0 + d1, 1e-300), p = d1 / sum;
        now += std::log(sum);
        r += p, s1 += p * v, s0 += (1 - p) * v;
      }
      const double n1 = std::max(r, 1e-9), n0 = std::max(n - r, 1e-9);
      const double next0 = s0 / n0, next1 = s1 / n1;
      for (const double v : values) {
        const double d0 = (1 - share) * density(v, m0, w), d1 = share * density(v, m1, w);
        const double p = d1 / std::max(d0 + d1, 1e-300);
        spread += p * (v - next1) * (v - next1) + (1 - p) * (v - next0) * (v - next0);
      }
      m0 = next0, m1 = next1, share = n1 / n;
      w = std::max(std::sqrt(spread / n), floor);
      if (round > 5 && std::abs(now - likelihood) < 1e-7 * n) break;
      likelihood = now;
    }
    if (likelihood > best) {
      best = likelihood;
      split.dark = std::min(m0, m1), split.light = std::max(m0, m1);
      split.width = w;
      split.lightShare = m1 >= m0 ? share : 1 - share;
    }
  }
  double one = 0;
  for (const double v : values) one += std::log(std::max(density(v, mean, sd), 1e-300));
  // Free parameters: 2 against 4 [Schwarz1978].
  split.bicGain = (2 * std::log(n) - 2 * one) - (4 * std::log(n) - 2 * best);
  const double gap = split.light - split.dark;
  std::size_t middle = 0;
  for (const double v : values)
    if (v > split.dark + gap / 3 && v < split.light - gap / 3) ++middle;
  split.middleShare = static_cast<double>(middle) / n;
  return split;
}

Contrast judge(std::span<const double> values, double plannedDifference, double distance_m) {
  Contrast c;
  c.distance_m = distance_m;
  if (values.size() < kLeastCells) return c;
  double square = 0, mean = 0;
  for (const double v : values) mean += v / static_cast<double>(values.size());
  for (const double v : values) square += (v - mean) * (v - mean) / static_cast<double>(values.size());
  c.spread = std::sqrt(square);
  c.verdict = ContrastVerdict::OneTone;
  // A spread that no eye would call a difference is one tone whatever its shape.
  if (c.spread < std::max(0.5, 0.03 * plannedDifference)) return c;
  const LevelSplit split = splitLevels(values);
  c.delta = split.light - split.dark;
  if (split.bicGain <= 0 || c.delta < kSoft * plannedDifference) return c;
  const bool clear = c.delta > 2 * split.width && split.middleShare < 0.25 &&
                     c.delta >= kClear * plannedDifference;
  c.verdict = clear ? ContrastVerdict::TwoClearLevels : ContrastVerdict::Soft;
  return c;
}

std::array<Contrast, visibility::kRegions> contrastOfRegions(const SeenHair& seen,
                                                             const LockColours& colours,
                                                             double distance_m) {
  struct Values {
    std::array<std::vector<double>, visibility::kRegions> of;
    std::vector<float> hair;  // Y of single locks, where they are seen
  };
  std::array<Values, SeenHair::kViews> views;
  parallelFor(SeenHair::kViews, [&](std::size_t v) {
    const visibility::ViewSamples& view = seen.view(static_cast<int>(v));
    const std::vector<std::uint8_t>& regions = seen.regionsOf(static_cast<int>(v));
    const int step = std::max(1, static_cast<int>(2.0 / view.spec.pixel_mm + 0.5));
    const int width = (view.width + step - 1) / step, height = (view.height + step - 1) / step;
    const double cell = view.spec.pixel_mm * step;
    std::vector<float> weight(static_cast<std::size_t>(width) * height, 0), fine(weight);
    std::vector<std::uint8_t> region(weight.size(), SeenHair::kNoRegion);
    for (std::size_t p = 0; p < view.pixels(); ++p) {
      const float cover = view.hairCover[p];
      if (cover <= 0) continue;
      float y = 0;
      for (std::size_t k = 0; k < kSamples; ++k) {
        const visibility::LockBin who = view.sample[p * kSamples + k];
        y += colours.at(who.lock(), who.bin()).y / kSamples;
      }
      const std::size_t at = (p / static_cast<std::size_t>(view.width) / step) * width +
                             (p % static_cast<std::size_t>(view.width)) / step;
      weight[at] += cover, fine[at] += cover * y;
      region[at] = regions[p * kSamples + kSamples / 2];
      if (p % 7 == 0) {
        const visibility::LockBin who = view.sample[p * kSamples + kSamples / 2];
        views[v].hair.push_back(colours.at(who.lock(), who.bin()).y);
      }
    }
    std::vector<float> wideWeight = weight, wide = fine, cover = weight;
    const double fwhm = std::max(kFinest_mm, 5 * distance_m);
    // The cell itself already blurs like a box of its own width.
    const double own = cell * cell / 12;
    const double sigma = std::sqrt(std::max(0.0, sigmaOfFwhm(fwhm) * sigmaOfFwhm(fwhm) - own));
    blur(weight, width, height, sigma / cell), blur(fine, width, height, sigma / cell);
    blur(wideWeight, width, height, sigmaOfFwhm(kLocal_mm) / cell);
    blur(wide, width, height, sigmaOfFwhm(kLocal_mm) / cell);
    const int every = std::max(1, static_cast<int>(kCell_mm / cell + 0.5));
    const float full = static_cast<float>(step * step);
    for (int y = every / 2; y < height; y += every)
      for (int x = every / 2; x < width; x += every) {
        const std::size_t at = static_cast<std::size_t>(y) * width + x;
        if (region[at] == SeenHair::kNoRegion || cover[at] < 0.5f * full || wideWeight[at] <= 0) continue;
        const double here = colour::lightnessFromY(fine[at] / weight[at]);
        const double around = colour::lightnessFromY(wide[at] / wideWeight[at]);
        views[v].of[region[at]].push_back(here - around);
      }
  });
  // The plan's own difference: between the darkest and lightest fiftieth of single locks.
  std::vector<float> hair;
  for (const Values& v : views) hair.insert(hair.end(), v.hair.begin(), v.hair.end());
  double difference = 5;
  if (hair.size() > 40) {
    const auto at = [&](double frac) {
      const auto k = static_cast<std::ptrdiff_t>(frac * static_cast<double>(hair.size() - 1));
      std::nth_element(hair.begin(), hair.begin() + k, hair.end());
      return colour::lightnessFromY(hair[static_cast<std::size_t>(k)]);
    };
    difference = std::max(5.0, at(0.98) - at(0.02));
  }
  std::array<Contrast, visibility::kRegions> result;
  for (std::size_t r = 0; r < visibility::kRegions; ++r) {
    std::vector<double> values;
    for (const Values& v : views) values.insert(values.end(), v.of[r].begin(), v.of[r].end());
    result[r] = judge(values, difference, distance_m);
  }
  return result;
}

}  // namespace combdraft::look
