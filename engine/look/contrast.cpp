#include "engine/look/contrast.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::look {
namespace {

constexpr int kMostSteps = 40;  // of a histogram that fits on a card

/// Whole steps of 1, 2, 3 ... L*, so that charts of two regions can be compared.
Histogram countedIn(std::span<const double> values) {
  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  Histogram h;
  h.step = std::max(1.0, std::ceil((*most - *least) / (kMostSteps - 1)));
  h.from = std::floor(*least / h.step) * h.step;
  h.counts.assign(static_cast<std::size_t>((*most - h.from) / h.step) + 1, 0);
  for (const double v : values) ++h.counts[static_cast<std::size_t>((v - h.from) / h.step)];
  return h;
}

/// Values counted together.
struct Step {
  double value, count;
};

double density(double x, double mean, double width) {
  const double t = (x - mean) / width;
  return std::exp(-t * t / 2) / (width * 2.5066282746310002);
}

double normalShare(double z) { return 0.5 * std::erfc(-z / 1.4142135623730951); }

/// Normal noise of `width` plus an exponential tail of mean `tail` to the right.
double tailed(double z, double width, double tail) {
  return std::exp(width * width / (2 * tail * tail) - z / tail) / tail * normalShare(z / width - width / tail);
}

/// The best log likelihood that a single population of any plain shape reaches:
/// flat (a ramp), drawn out to one side, or peaked with long tails, each with
/// normal noise; mean and spread are the sample's own.
double oneHumpLikelihood(const std::vector<Step>& steps, double mean, double sd) {
  double best = -1e300;
  const auto tryShape = [&](auto at) {
    double sum = 0;
    for (const Step& s : steps) sum += s.count * std::log(std::max(at(s.value - mean), 1e-300));
    best = std::max(best, sum);
  };
  for (const double part : {0.35, 0.55, 0.66, 0.77, 0.88, 0.96, 0.99}) {  // of the variance that is not noise
    const double width = sd * std::sqrt(1 - part), tail = sd * std::sqrt(part);
    const double half = tail * std::sqrt(3.0), both = tail / std::sqrt(2.0);
    tryShape([&](double z) { return (normalShare((z + half) / width) - normalShare((z - half) / width)) / (2 * half); });
    tryShape([&](double z) { return tailed(z + tail, width, tail); });
    tryShape([&](double z) { return tailed(tail - z, width, tail); });
    tryShape([&](double z) { return (tailed(z, width, both) + tailed(-z, width, both)) / 2; });
  }
  return best;
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

  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  constexpr int kSteps = 128;
  const double pitch = std::max((*most - *least) / kSteps, 1e-9);
  std::vector<Step> steps(kSteps, Step{0, 0});
  for (const double v : values) {
    const auto k = std::min<std::size_t>(static_cast<std::size_t>((v - *least) / pitch), kSteps - 1);
    steps[k].value += v, steps[k].count += 1;
  }
  std::erase_if(steps, [](const Step& s) { return s.count == 0; });
  for (Step& s : steps) s.value /= s.count;

  // EM with one common width, from three starts: even, and few light or dark.
  std::vector<double> sorted(values.begin(), values.end());
  std::sort(sorted.begin(), sorted.end());
  const auto quantile = [&](double p) { return sorted[static_cast<std::size_t>(p * (n - 1))]; };
  double best = -1e300;
  for (const auto& [low, high] : {std::pair{0.25, 0.75}, std::pair{0.45, 0.97}, std::pair{0.03, 0.55}}) {
    double m0 = quantile(low), m1 = quantile(high);
    double w = sd / 2, share = 0.5, likelihood = -1e300;
    for (int round = 0; round < 200; ++round) {
      double r = 0, s0 = 0, s1 = 0, square0 = 0, square1 = 0, now = 0;
      for (const Step& s : steps) {
        const double v = s.value;
        const double d0 = (1 - share) * density(v, m0, w), d1 = share * density(v, m1, w);
        const double sum = std::max(d0 + d1, 1e-300), p = s.count * d1 / sum, q = s.count - p;
        now += s.count * std::log(sum);
        r += p, s1 += p * v, s0 += q * v;
        square1 += p * v * v, square0 += q * v * v;
      }
      const double n1 = std::max(r, 1e-9), n0 = std::max(n - r, 1e-9);
      m0 = s0 / n0, m1 = s1 / n1, share = n1 / n;
      w = std::max(std::sqrt(std::max(0.0, (square0 - n0 * m0 * m0 + square1 - n1 * m1 * m1) / n)), floor);
      const bool settled = now - likelihood < 1e-6 * n;
      likelihood = now;
      if (settled && round > 3) break;
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
  split.humpGain = (3 * std::log(n) - 2 * oneHumpLikelihood(steps, mean, sd)) - (4 * std::log(n) - 2 * best);
  const double gap = split.light - split.dark;
  std::size_t middle = 0;
  for (const double v : values)
    if (v > split.dark + gap / 3 && v < split.light - gap / 3) ++middle;
  split.middleShare = static_cast<double>(middle) / n;
  return split;
}

Contrast judge(std::span<const double> values, double plannedDifference, double distance_m,
               const Assumptions& assumptions) {
  Contrast c;
  c.distance_m = distance_m;
  if (values.empty()) return c;
  const auto n = static_cast<double>(values.size());
  double square = 0, mean = 0;
  for (const double v : values) mean += v / n;
  for (const double v : values) square += (v - mean) * (v - mean) / n;
  c.spread = std::sqrt(square);
  c.local = countedIn(values);
  if (n < assumptions["contrast.least_cells"]) return c;
  c.verdict = ContrastVerdict::OneTone;
  const auto line = [&](std::string_view share, std::string_view least_L) {
    return std::max(assumptions[least_L], assumptions[share] * plannedDifference);
  };
  // A spread that no eye would call a difference is one tone whatever its shape.
  if (c.spread < line("contrast.even", "contrast.even_L")) return c;
  const LevelSplit split = splitLevels(values);
  const double smaller = std::min(split.lightShare, 1 - split.lightShare);
  const double leastShare = assumptions["contrast.share"];
  if (split.bicGain <= 0 || split.light - split.dark < line("contrast.soft", "contrast.soft_L") ||
      smaller < leastShare / 2)
    return c;
  c.delta = split.light - split.dark;
  c.light_share = split.lightShare;
  c.dark_share = 1 - split.lightShare;
  const bool clear = c.delta > assumptions["contrast.widths"] * split.width &&
                     split.middleShare < assumptions["contrast.middle"] && split.humpGain > 0 &&
                     smaller >= leastShare && c.delta >= line("contrast.clear", "contrast.clear_L");
  c.verdict = clear ? ContrastVerdict::TwoClearLevels : ContrastVerdict::Soft;
  return c;
}

std::array<Contrast, visibility::kRegions + 1> contrastOf(LocalPicture& picture, double distance_m,
                                                          const Assumptions& assumptions) {
  const LocalPicture::Values values = picture.at(distance_m);
  std::vector<double> everywhere;
  for (const auto& region : values.of) everywhere.insert(everywhere.end(), region.begin(), region.end());
  std::array<Contrast, visibility::kRegions + 1> result;
  parallelFor(result.size(), [&](std::size_t r) {
    result[r] = judge(r < values.of.size() ? values.of[r] : everywhere, values.plannedDifference,
                      distance_m, assumptions);
  });
  return result;
}

}  // namespace combdraft::look
