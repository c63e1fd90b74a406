#include "engine/look/stripes.h"

#include <algorithm>
#include <cmath>
#include <complex>

#include "engine/base/assumptions.h"
#include "engine/base/parallel.h"
#include "engine/base/vec.h"
#include "engine/look/blur.h"
#include "engine/look/contrast_sensitivity.h"
#include "engine/look/head_hair.h"
#include "engine/look/lock_colours.h"
#include "engine/look/region_sums.h"

namespace combdraft::look {
namespace {

using visibility::kSamples;
using visibility::LockBin;
using visibility::SeenHair;

constexpr double kPeakSensitivity = 0.980883;  // [Mannos1974], at 7.891 cycles a degree
constexpr double kAcuity_deg = 1.0 / 60;       // one minute of arc
// Own: widths looked for, and how far along the fall a ribbon must run.
constexpr double kNarrowest_mm = 0.4, kWidest_mm = 12, kWidthStep = 1.189207115002721;  // 2^(1/4)
constexpr double kSurely = 2;  // standard errors that ribbons must stand above the grain
constexpr double kRibbon_mm = 20, kRibbonStep_mm = 0.5;
// Own: the close-up of a region.
constexpr double kPixel_mm = 0.25, kPatch_mm = 80, kPlace_mm = 4, kAround_mm = 14;
constexpr double kLeastLocks = 2.5;    // own: locks across the narrowest ribbon
constexpr double kLeastCover = 0.15;   // of a half, to be measured at all
constexpr double kLeastFilled = 0.35;  // of the hair at the best place, against all hair
constexpr double kStep_mm = 4, kMeasuringPixel_mm = 2;

/// Mean Y across the fall, averaged along it; -1 where there is too little hair.
std::vector<double> profileAt(const HairPatch& patch, const HairPatch::Half& hair,
                              const HairPatch::Place& place, int half) {
  const double ux = std::cos(place.along_rad), uy = std::sin(place.along_rad);
  const double step = kRibbonStep_mm / patch.pixel_mm;
  const int reach = static_cast<int>(kRibbon_mm / 2 / kRibbonStep_mm);
  std::vector<double> profile(static_cast<std::size_t>(2 * half + 1), -1);
  for (int t = -half; t <= half; ++t) {
    double light = 0, cover = 0;
    for (int s = -reach; s <= reach; ++s) {
      const int x = static_cast<int>(std::floor(place.x + s * step * ux - t * uy + 0.5));
      const int y = static_cast<int>(std::floor(place.y + s * step * uy + t * ux + 0.5));
      if (x < 0 || y < 0 || x >= patch.width || y >= patch.height) continue;
      const std::size_t at = static_cast<std::size_t>(y) * patch.width + x;
      light += hair.light[at], cover += hair.cover[at];
    }
    if (cover > kLeastCover * (2 * reach + 1)) profile[static_cast<std::size_t>(t + half)] = light / cover;
  }
  return profile;
}

/// Amplitude over mean at period 2 w, over two periods under a Hann window: such
/// a window is blind to the mean and to the second harmonic. Nothing: not enough hair.
std::optional<std::complex<double>> contrastIn(const std::vector<double>& profile, double width_px) {
  const int half = static_cast<int>(profile.size()) / 2;
  const int reach = static_cast<int>(std::ceil(2 * width_px)) - 1;
  if (reach > half) return std::nullopt;
  double mean = 0;
  std::complex<double> wave = 0;
  for (int t = -reach; t <= reach; ++t) {
    const double value = profile[static_cast<std::size_t>(t + half)];
    if (value < 0) return std::nullopt;
    const double h = 0.5 + 0.5 * std::cos(kPi * t / (2 * width_px));
    mean += h * value;
    wave += std::polar(h * value, kPi * t / width_px);
  }
  if (mean <= 0) return std::nullopt;
  return 2.0 * wave / mean;
}

int halfOf(const HairPatch& patch, double width_mm) {
  return static_cast<int>(std::ceil(2 * width_mm / patch.pixel_mm));
}

std::vector<double> widthsFrom(double least_mm) {
  std::vector<double> widths;
  for (double w = std::max(least_mm, kNarrowest_mm); w <= kWidest_mm; w *= kWidthStep) widths.push_back(w);
  return widths;
}

/// Root mean square over the places, for each width, of what both halves share.
std::vector<double> contrastsOf(const HairPatch& patch, const std::vector<double>& widths) {
  std::vector<double> contrasts(widths.size(), 0);
  std::vector<std::vector<double>> shared(widths.size());  // by width: one square a place
  if (widths.empty()) return contrasts;
  for (const HairPatch::Place& place : patch.places) {
    const int half = halfOf(patch, widths.back());
    const std::vector<double> one = profileAt(patch, patch.halves[0], place, half),
                              other = profileAt(patch, patch.halves[1], place, half);
    for (std::size_t k = 0; k < widths.size(); ++k) {
      const auto c = contrastIn(one, widths[k] / patch.pixel_mm);
      const auto d = contrastIn(other, widths[k] / patch.pixel_mm);
      if (c && d) shared[k].push_back((*c * std::conj(*d)).real());
    }
  }
  for (std::size_t k = 0; k < widths.size(); ++k) {
    const auto n = static_cast<double>(shared[k].size());
    if (n < 2) continue;
    double mean = 0, variance = 0;
    for (const double square : shared[k]) mean += square / n;
    for (const double square : shared[k]) variance += (square - mean) * (square - mean) / (n - 1);
    // Places nearer to each other than a window are not independent.
    const double apart = std::min(1.0, kPlace_mm * kPlace_mm / (kRibbon_mm * widths[k]));
    if (mean > kSurely * std::sqrt(variance / std::max(1.0, n * apart))) contrasts[k] = std::sqrt(mean);
  }
  return contrasts;
}

std::size_t halfOfLock(std::uint32_t lock) { return static_cast<std::size_t>(groupOf(lock) & 1); }

}  // namespace

double ribbonContrast(const HairPatch& patch, double width_mm) {
  return contrastsOf(patch, {width_mm}).front();
}

double visibleContrast(double contrast, double width_mm, double distance_m) {
  const double frequency = stripeFrequency_cpd(width_mm, distance_m);
  if (1 / (2 * frequency) < kAcuity_deg) return 0;
  return std::min(1.0, contrast * contrastSensitivity(frequency) / kPeakSensitivity);
}

std::array<SeenStripe, kStripeDistances_m.size()> stripesOf(const HairPatch& patch, double least_mm,
                                                            double leastSeen) {
  const std::vector<double> widths = widthsFrom(least_mm), contrasts = contrastsOf(patch, widths);
  std::array<SeenStripe, kStripeDistances_m.size()> strongest;
  for (std::size_t d = 0; d < strongest.size(); ++d) {
    SeenStripe& best = strongest[d];
    best.distance_m = kStripeDistances_m[d];
    for (std::size_t k = 0; k < widths.size(); ++k) {
      const double c = visibleContrast(contrasts[k], widths[k], best.distance_m);
      if (c > best.contrast) best.contrast = c, best.width_mm = widths[k];
    }
    best.seen = best.contrast > leastSeen;
  }
  return strongest;
}

struct StripeSearch::State {
  int locks;
  std::uint64_t key = 0;
  std::shared_ptr<const HeadHair> hair;
  LockColours colours;
  struct Close {
    visibility::ViewSamples samples;  ///< empty: too little of the region is seen
    HairPatch patch;
  };
  std::array<Close, kRegions> regions;

  void lookCloser(std::size_t region, std::stop_token stop);
  float fallAt(const visibility::ViewSamples& samples, int x, int y) const;
};

/// Mean direction of the locks seen around a pixel, in the drawing; by doubled
/// angles, since a lock has no front.
float StripeSearch::State::fallAt(const visibility::ViewSamples& samples, int x, int y) const {
  const hair::Locks& all = hair->locks();
  const int reach = static_cast<int>(kPlace_mm / samples.spec.pixel_mm);
  double c = 0, s = 0;
  for (int j = std::max(0, y - reach); j <= std::min(samples.height - 1, y + reach); j += 4)
    for (int i = std::max(0, x - reach); i <= std::min(samples.width - 1, x + reach); i += 4) {
      const LockBin who = samples.sample[(static_cast<std::size_t>(j) * samples.width + i) * kSamples + kSamples / 2];
      if (who.none()) continue;
      const std::uint32_t first = all.first[who.lock()], last = all.first[who.lock() + 1];
      if (last < first + 2) continue;
      const double arc = (who.bin() + 0.5) * visibility::kBin_mm / all.stretch;
      const auto k = std::min(first + static_cast<std::uint32_t>(arc / all.step_mm), last - 2);
      const Vec3 along = toVec3(all.points[k + 1]) - toVec3(all.points[k]);
      const double dx = along.dot(samples.spec.view.right()), dy = along.dot(samples.spec.view.down());
      const double length2 = dx * dx + dy * dy;
      if (length2 < 1e-9) continue;
      c += (dx * dx - dy * dy) / std::sqrt(length2), s += 2 * dx * dy / std::sqrt(length2);
    }
  return static_cast<float>(std::atan2(s, c) / 2);
}

/// Rasters the place where most of a region's hair is seen.
void StripeSearch::State::lookCloser(std::size_t region, std::stop_token stop) {
  Close& close = regions[region];
  double most = 0;
  visibility::RasterSpec spec;
  for (int v = 0; v < SeenHair::kViews; ++v) {
    const visibility::ViewSamples& raster = hair->seen().view(v);
    const std::vector<std::uint8_t>& of = hair->seen().regionsOf(v);
    std::vector<float> here(raster.pixels(), 0);
    for (std::size_t p = 0; p < here.size(); ++p)
      if (of[p * kSamples + kSamples / 2] == region) here[p] = raster.hairCover[p];
    blur(here, raster.width, raster.height, kAround_mm / raster.spec.pixel_mm);
    const auto best = static_cast<std::size_t>(std::max_element(here.begin(), here.end()) - here.begin());
    if (here.empty() || here[best] <= most) continue;
    most = here[best];
    const auto width = static_cast<std::size_t>(raster.width);
    spec.view = raster.spec.view;
    spec.pixel_mm = kPixel_mm;
    spec.frame = {raster.spec.frame.left_mm + (static_cast<double>(best % width) + 0.5) * raster.spec.pixel_mm - kPatch_mm / 2,
                  raster.spec.frame.top_mm + (static_cast<double>(best / width) + 0.5) * raster.spec.pixel_mm - kPatch_mm / 2,
                  kPatch_mm, kPatch_mm};
  }
  if (most < kLeastFilled) return;
  close.samples = hair->closeUp(spec, stop);
  if (stop.stop_requested()) return;
  HairPatch& patch = close.patch;
  patch.width = close.samples.width, patch.height = close.samples.height;
  patch.pixel_mm = kPixel_mm;
  for (HairPatch::Half& half : patch.halves) {
    half.light.assign(close.samples.pixels(), 0);
    half.cover.assign(close.samples.pixels(), 0);
  }
  for (std::size_t slot = 0; slot < close.samples.sample.size(); ++slot)
    if (const LockBin who = close.samples.sample[slot]; !who.none())
      patch.halves[halfOfLock(who.lock())].cover[slot / kSamples] += close.samples.hairCover[slot / kSamples] / kSamples;
  const int every = static_cast<int>(kPlace_mm / kPixel_mm);
  for (int y = every / 2; y < patch.height; y += every)
    for (int x = every / 2; x < patch.width; x += every) {
      const std::size_t slot = (static_cast<std::size_t>(y) * patch.width + x) * kSamples + kSamples / 2;
      if (close.samples.sample[slot].none()) continue;
      const Vec3 place = spec.view.place({spec.frame.left_mm + (x + 0.5) * kPixel_mm,
                                          spec.frame.top_mm + (y + 0.5) * kPixel_mm,
                                          static_cast<double>(close.samples.depth_mm[slot])});
      if (visibility::regionAt(hair->shape(), place) != static_cast<Region>(region)) continue;
      patch.places.push_back({x, y, fallAt(close.samples, x, y)});
    }
  close.samples.depth_mm = {};
}

StripeSearch::StripeSearch(int locks) : state_(std::make_unique<State>()) {
  state_->locks = std::clamp(locks, 2000, 200000);
}
StripeSearch::~StripeSearch() = default;
StripeSearch::StripeSearch(StripeSearch&&) noexcept = default;
StripeSearch& StripeSearch::operator=(StripeSearch&&) noexcept = default;

Result<std::vector<Stripes>> StripeSearch::update(const plan::Plan& plan, const LookSettings& settings,
                                                  std::stop_token stop) {
  State& s = *state_;
  const Error cancelled{ErrorCode::Cancelled, "", {}, ""};
  const std::uint64_t key = HeadHair::keyOf(plan, settings.worn, s.locks, kMeasuringPixel_mm, kStep_mm);
  if (!s.hair || s.key != key) {
    auto built = HeadHair::build(plan, settings.worn, s.locks, kMeasuringPixel_mm, kStep_mm, stop,
                                 s.hair ? s.hair->ground() : nullptr);
    if (!built) return built.error();
    s.hair = std::move(built).value();
    s.colours.reset();
    s.regions = {};
    s.key = 0;
    for (std::size_t r = 0; r < s.regions.size(); ++r) {
      s.lookCloser(r, stop);
      if (stop.stop_requested()) return cancelled;
    }
    s.key = key;
  }
  const HeadHair& hair = *s.hair;
  s.colours.update(plan, settings, {hair.shape(), hair.roots(), hair.grid(), hair.locks(), hair.seed()});
  if (stop.stop_requested()) return cancelled;

  // Locks of a few hairs say nothing of ribbons hardly wider than themselves.
  const double least_mm = kLeastLocks * hair.locks().spacing_mm;
  const double leastSeen = Assumptions(plan.info().assumptions)["stripes.seen"];
  std::vector<Stripes> found(s.regions.size());
  parallelFor(found.size(), [&](std::size_t r) {
    State::Close& close = s.regions[r];
    found[r].region = static_cast<Region>(r);
    for (std::size_t d = 0; d < kStripeDistances_m.size(); ++d) found[r].at[d].distance_m = kStripeDistances_m[d];
    if (close.patch.places.empty()) return;
    for (HairPatch::Half& half : close.patch.halves) std::fill(half.light.begin(), half.light.end(), 0.0f);
    for (std::size_t slot = 0; slot < close.samples.sample.size(); ++slot) {
      const LockBin who = close.samples.sample[slot];
      if (who.none()) continue;
      close.patch.halves[halfOfLock(who.lock())].light[slot / kSamples] +=
          close.samples.hairCover[slot / kSamples] * s.colours.at(who.lock(), who.bin()).y / kSamples;
    }
    found[r].judged = true;
    found[r].at = stripesOf(close.patch, least_mm, leastSeen);
  });
  return found;
}

}  // namespace combdraft::look
