#include "engine/look/region_sums.h"

#include <algorithm>
#include <cmath>

#include "engine/base/random.h"
#include "engine/colour/hair_words.h"

namespace combdraft::look {
namespace {

constexpr double kLeastSeen_mm2 = 400;

colour::Lab labOfSum(const ColourSum& s, const colour::Xyz& white) {
  return colour::labFrom({s.x / s.area_mm2, s.y / s.area_mm2, s.z / s.area_mm2}, white);
}

/// Whether the light and the dark of this hair make a grey together. Their two
/// colours are those of the straight line through (light share, colour) of all
/// that is seen, at 0 and at 1: right for whole locks and for mixed ones.
bool isGreyMix(const std::array<ColourSum, kGroups>& groups, const colour::Xyz& white) {
  ColourSum s;
  for (const ColourSum& g : groups) s += g;
  if (s.area_mm2 < kLeastSeen_mm2) return false;
  const double share = s.light / s.area_mm2;
  const double variance = s.lightLight / s.area_mm2 - share * share;
  if (variance < 1e-3) return false;  // all alike: no line
  const colour::Xyz mean{s.x / s.area_mm2, s.y / s.area_mm2, s.z / s.area_mm2};
  const colour::Xyz slope{(s.lightX / s.area_mm2 - share * mean.x) / variance,
                          (s.lightY / s.area_mm2 - share * mean.y) / variance,
                          (s.lightZ / s.area_mm2 - share * mean.z) / variance};
  const auto at = [&](double t) {
    const colour::Xyz c = mean + (t - share) * slope;
    return colour::labFrom({std::max(c.x, 1e-6), std::max(c.y, 1e-6), std::max(c.z, 1e-6)}, white);
  };
  return colour::readsGreyOverBrown(at(1), at(0), share);
}

std::optional<Reading> readingOf(const std::array<ColourSum, kGroups>& groups, double scalp_mm2,
                                 const colour::Xyz& white, const colour::LevelScale& scale) {
  ColourSum total;
  for (const ColourSum& g : groups) total += g;
  if (total.area_mm2 < kLeastSeen_mm2) return std::nullopt;
  Reading r;
  const colour::Lab lab = labOfSum(total, white);
  r.seen_mm2 = total.area_mm2;
  r.skin_share = scalp_mm2 / (scalp_mm2 + total.area_mm2);
  r.lightness = lab.L, r.a = lab.a, r.b = lab.b;
  r.level = scale.levelOfLightness(lab.L);
  r.light_share = total.light / total.area_mm2;
  // Jackknife over groups of locks [Tukey1958].
  double mean = 0;
  std::array<double, kGroups> without{};
  int used = 0;
  for (const ColourSum& g : groups) {
    const ColourSum rest = total - g;
    if (rest.area_mm2 < 1e-9 || g.area_mm2 <= 0) continue;
    without[static_cast<std::size_t>(used++)] = labOfSum(rest, white).L;
  }
  for (int k = 0; k < used; ++k) mean += without[static_cast<std::size_t>(k)] / used;
  double variance = 0;
  for (int k = 0; k < used; ++k) {
    const double d = without[static_cast<std::size_t>(k)] - mean;
    variance += d * d * (used - 1) / used;
  }
  r.sampling_error = std::sqrt(variance);
  r.low = r.high = r.lightness;
  return r;
}

}  // namespace

int groupOf(std::uint32_t lock) { return static_cast<int>(mix64(lock) & (kGroups - 1)); }

ColourSum& ColourSum::operator+=(const ColourSum& o) {
  area_mm2 += o.area_mm2, x += o.x, y += o.y, z += o.z, light += o.light;
  lightLight += o.lightLight, lightX += o.lightX, lightY += o.lightY, lightZ += o.lightZ;
  return *this;
}
ColourSum ColourSum::operator-(const ColourSum& o) const {
  return {area_mm2 - o.area_mm2, x - o.x, y - o.y, z - o.z, light - o.light,
          lightLight - o.lightLight, lightX - o.lightX, lightY - o.lightY, lightZ - o.lightZ};
}

void RegionSums::clear() { sums_ = {}; }

void RegionSums::add(const visibility::SeenHair& seen, const hair::Locks& locks,
                     const LockColours& colours, std::span<const std::uint32_t> which,
                     double sign) {
  for (const std::uint32_t lock : which) {
    const auto group = static_cast<std::size_t>(groupOf(lock));
    const double length = locks.length_mm[lock] * locks.stretch;
    for (const visibility::SeenEntry& e : seen.entriesOf(lock)) {
      const double arc = (e.bin + 0.5) * visibility::kBin_mm;
      const auto part = static_cast<std::size_t>(visibility::strandPart(arc, length));
      const BinColour& c = colours.at(lock, e.bin);
      const double w = sign * e.shared_mm2;
      ColourSum& sum = sums_[e.region][part][group];
      sum.area_mm2 += w;
      sum.x += w * c.x, sum.y += w * c.y, sum.z += w * c.z, sum.light += w * c.light;
      const double wl = w * c.light;
      sum.lightLight += wl * c.light;
      sum.lightX += wl * c.x, sum.lightY += wl * c.y, sum.lightZ += wl * c.z;
    }
  }
}

Readings readingsFrom(const RegionSums& sums, const visibility::SeenHair& seen,
                      const hair::Locks& locks, colour::Light light,
                      const colour::LevelScale& scale) {
  const colour::Xyz white = colour::whitePoint(light);
  Readings readings;
  readings.locks = static_cast<int>(locks.size());
  readings.hairs = locks.hairsPerLock * static_cast<double>(locks.size());
  std::array<ColourSum, kGroups> everywhere{};
  double scalpEverywhere = 0;
  for (int r = 0; r < visibility::kRegions; ++r) {
    const auto region = static_cast<Region>(r);
    RegionReading reading;
    reading.region = region;
    std::array<ColourSum, kGroups> whole{};
    for (int p = 0; p < 3; ++p) {
      std::array<ColourSum, kGroups> part{};
      for (int g = 0; g < kGroups; ++g) {
        part[static_cast<std::size_t>(g)] = sums.at(region, static_cast<visibility::StrandPart>(p), g);
        whole[static_cast<std::size_t>(g)] += part[static_cast<std::size_t>(g)];
        everywhere[static_cast<std::size_t>(g)] += part[static_cast<std::size_t>(g)];
      }
      reading.rootMiddleEnd[static_cast<std::size_t>(p)] = readingOf(part, 0, white, scale);
    }
    const double scalp = seen.scalp_mm2(region);
    scalpEverywhere += scalp;
    reading.whole = readingOf(whole, scalp, white, scale);
    reading.grey_mix = isGreyMix(whole, white);
    if (reading.whole)
      reading.warmth = colour::warmthWord({reading.whole->lightness, reading.whole->a, reading.whole->b});
    readings.regions.push_back(std::move(reading));
  }
  if (const auto whole = readingOf(everywhere, scalpEverywhere, white, scale)) readings.whole = *whole;
  readings.grey_mix = isGreyMix(everywhere, white);
  return readings;
}

}  // namespace combdraft::look
