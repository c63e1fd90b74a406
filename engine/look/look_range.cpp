#include "engine/look/look_range.h"

#include <algorithm>
#include <cmath>

#include "engine/look/head_hair.h"
#include "engine/look/region_sums.h"

namespace combdraft::look {
namespace {

/// L* of the whole and of every region (NaN where not seen).
using Lightness = std::array<double, kRegions + 1>;

Lightness lightnessOf(const plan::Plan& plan, const LookSettings& settings, const HeadHair& hair) {
  LockColours colours;
  colours.update(plan, settings, {hair.shape(), hair.roots(), hair.grid(), hair.locks(), hair.seed()});
  std::vector<std::uint32_t> all(hair.locks().size());
  for (std::uint32_t i = 0; i < all.size(); ++i) all[i] = i;
  RegionSums sums;
  sums.add(hair.seen(), hair.locks(), colours, all, 1);
  const Readings r = readingsFrom(sums, hair.seen(), hair.locks(), settings.light);
  Lightness lightness;
  lightness.fill(std::nan(""));
  lightness[kRegions] = r.whole.lightness;
  for (std::size_t k = 0; k < kRegions; ++k)
    if (r.regions[k].whole) lightness[k] = r.regions[k].whole->lightness;
  return lightness;
}

}  // namespace

plan::Plan withAssumption(const plan::Plan& plan, std::string_view name, double value) {
  plan::Plan changed = plan;
  plan::PlanInfo info = plan.info();
  info.assumptions[std::string(name)] = value;
  changed.put(plan::kPlanId, std::move(info));
  return changed;
}

LookRange::LookRange() = default;
LookRange::~LookRange() = default;

Result<Readings> LookRange::apply(const plan::Plan& plan, const LookSettings& settings,
                                  Readings readings, std::stop_token stop) {
  std::map<std::uint64_t, std::shared_ptr<const HeadHair>> used;
  std::shared_ptr<const HeadGround> ground =
      traced_.empty() ? nullptr : traced_.begin()->second->ground();
  // A hand that never rests cancels every range before its end: without this each head
  // and way that was passed through would stay.
  if (const std::uint64_t base = HeadHair::keyOf(plan, settings.worn, kLocks, kPixel_mm, kStep_mm); base != base_) {
    traced_.clear();
    base_ = base;
  }
  const auto measure = [&](const plan::Plan& variant) -> Result<Lightness> {
    const std::uint64_t key = HeadHair::keyOf(variant, settings.worn, kLocks, kPixel_mm, kStep_mm);
    std::shared_ptr<const HeadHair>& hair = used[key];
    if (!hair) {
      const auto kept = traced_.find(key);
      if (kept != traced_.end()) {
        hair = kept->second;
      } else {
        auto built = HeadHair::buildForReadings(variant, settings.worn, kLocks, kPixel_mm, kStep_mm, stop, ground);
        if (!built) return built.error();
        hair = std::move(built).value();
        traced_[key] = hair;  // kept even when the whole is cancelled later
        ground = hair->ground();
      }
    }
    if (stop.stop_requested()) return Error{ErrorCode::Cancelled, "", {}, ""};
    return lightnessOf(variant, settings, *hair);
  };

  const auto base = measure(plan);
  if (!base) return base.error();
  const Assumptions inForce(plan.info().assumptions);
  std::array<double, kRegions + 1> below{}, above{};  // sums of squares
  using Moved = std::vector<std::pair<double, std::string>>;
  Moved moves;                            // over all regions
  std::array<Moved, kRegions + 1> movesOf;  // of each reading
  for (const Assumption& a : assumptionTable()) {
    if (a.low == a.high || a.moves == Moves::Judgement) continue;
    double largest = 0;
    std::array<double, kRegions + 1> farthest{};
    for (const double end : {a.low, a.high}) {
      if (end == inForce[a.name]) continue;
      const auto there = measure(withAssumption(plan, a.name, end));
      if (!there) return there.error();
      for (std::size_t k = 0; k <= kRegions; ++k) {
        const double d = (*there)[k] - (*base)[k];
        if (!std::isfinite(d)) continue;
        (d < 0 ? below : above)[k] += d * d;
        farthest[k] = std::max(farthest[k], std::abs(d));
        if (k < kRegions) largest = std::max(largest, std::abs(d));
      }
    }
    moves.emplace_back(largest, a.name);
    for (std::size_t k = 0; k <= kRegions; ++k) movesOf[k].emplace_back(farthest[k], a.name);
  }
  const auto mostOf = [](Moved all) {
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<std::string> names;
    for (std::size_t k = 0; k < std::min<std::size_t>(2, all.size()); ++k)
      if (all[k].first > 0) names.push_back(all[k].second);
    return names;
  };
  readings.movesMost = mostOf(std::move(moves));

  const auto fill = [&](Reading& r, std::size_t k) {
    const double error = r.sampling_error * r.sampling_error;
    r.low = r.lightness - std::sqrt(below[k] + error);
    r.high = r.lightness + std::sqrt(above[k] + error);
    r.rangeKnown = true;
    r.movesMost = mostOf(movesOf[k]);
  };
  fill(readings.whole, kRegions);
  for (std::size_t k = 0; k < kRegions; ++k) {
    RegionReading& region = readings.regions[k];
    if (region.whole) fill(*region.whole, k);
    // Parts of a strand share their region's range in width.
    for (auto& part : region.rootMiddleEnd)
      if (part) fill(*part, k);
  }
  traced_ = std::move(used);  // what this head and way need; the rest is let go
  return readings;
}

Result<Readings> LookEngine::withRange(const plan::Plan& plan, const LookSettings& settings,
                                       Readings readings, std::stop_token stop) {
  return LookRange().apply(plan, settings, std::move(readings), stop);
}

}  // namespace combdraft::look
