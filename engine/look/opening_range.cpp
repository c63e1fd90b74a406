#include "engine/look/opening_range.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "engine/base/content_hash.h"
#include "engine/look/head_hair.h"
#include "engine/look/look_range.h"
#include "engine/look/opening_blocks.h"

namespace combdraft::look {
namespace {

constexpr double kGroundPixel_mm = 2, kStep_mm = 4;
/// A part that lies elsewhere is another opening of the sweep, not another size.
constexpr std::string_view kPartMoved = "fall.partSide_mm";
/// Two other draws of the roots show what chance does to a block's edge [own].
constexpr std::uint64_t kOtherRoots = 2;

/// The same hair with other roots.
plan::Plan withRoots(const plan::Plan& plan, std::uint64_t draw) {
  plan::Plan changed = plan;
  plan::PlanInfo info = plan.info();
  info.number = ContentHash().add(info.number).add(draw).key() >> 11;  // a whole number below 2^53
  changed.put(plan::kPlanId, std::move(info));
  return changed;
}

hair::Worn wornAt(const Opening& opening) {
  hair::Worn worn;
  if (opening.way == OpeningWay::CrownOpened) worn.way = hair::WornWay::CrownOpened;
  if (opening.way == OpeningWay::Blown) worn.way = hair::WornWay::Blown;
  if (opening.way == OpeningWay::TiedBack) worn.way = hair::WornWay::TiedBack;
  worn.partShift_mm = opening.shift_mm;
  return worn;
}

}  // namespace

struct OpeningRange::State {
  /// One head's roots, and its hair's lengths worn down.
  struct Rooted {
    std::shared_ptr<const HeadGround> ground;
    hair::Locks grown;
  };
  std::map<std::uint64_t, std::shared_ptr<const Rooted>> rooted;
  std::map<std::uint64_t, std::shared_ptr<OpeningView>> views;
  std::set<std::uint64_t> used;

  Result<std::shared_ptr<const Rooted>> rootsOf(const plan::Plan& plan, std::uint64_t lengths, const std::stop_token& stop) {
    const std::uint64_t key = ContentHash().add(HeadGround::keyOf(plan, kLocks, kGroundPixel_mm)).add(lengths).key();
    used.insert(key);
    auto& kept = rooted[key];
    if (kept) return kept;
    auto ground = HeadGround::build(plan, kLocks, kGroundPixel_mm);
    if (!ground) return ground.error();
    auto made = std::make_shared<Rooted>(Rooted{std::move(ground).value(), {}});
    made->grown = fallOf(plan, {}, *made->ground, {kStep_mm}, stop);
    if (made->grown.size() == 0) return Error{ErrorCode::Cancelled, "", {}, ""};
    made->grown.points = {}, made->grown.wave = {}, made->grown.first = {};
    kept = std::move(made);
    return kept;
  }

  /// Null when there is no such opening. Cancelled when stopped.
  Result<std::shared_ptr<OpeningView>> viewOf(const plan::Plan& plan, const Rooted& on, const Opening& opening,
                                              const std::stop_token& stop) {
    const std::uint64_t key = ContentHash().add(on.ground->key())
                                  .add(HeadHair::keyOf(plan, wornAt(opening), kLocks, kGroundPixel_mm, kStep_mm)).key();
    used.insert(key);
    auto& kept = views[key];
    if (!kept) {
      kept = OpeningView::build(plan, *on.ground, opening.way, opening.shift_mm, stop);
      if (stop.stop_requested()) {
        kept.reset();
        return Error{ErrorCode::Cancelled, "", {}, ""};
      }
    }
    return kept;
  }

  /// Also after a stop: what this plan needs is kept, and nothing else.
  void dropUnused() {
    std::erase_if(rooted, [this](const auto& entry) { return !used.contains(entry.first) || !entry.second; });
    std::erase_if(views, [this](const auto& entry) { return !used.contains(entry.first); });
    used.clear();
  }
};

OpeningRange::OpeningRange() : state_(std::make_unique<State>()) {}
OpeningRange::~OpeningRange() = default;
OpeningRange::OpeningRange(OpeningRange&&) noexcept = default;
OpeningRange& OpeningRange::operator=(OpeningRange&&) noexcept = default;

Result<Openings> OpeningRange::apply(const plan::Plan& plan, const LookSettings& settings, Openings openings,
                                     std::stop_token stop) {
  State& s = *state_;
  // The cut is the same cut whatever the fall: lengths are those of the plan as it is.
  const std::uint64_t lengths = HeadHair::keyOf(plan, {}, kLocks, kGroundPixel_mm, kStep_mm);
  const auto areas = [&](const plan::Plan& variant, const Opening& opening, Ground rest) -> Result<Opening> {
    auto on = s.rootsOf(variant, lengths, stop);
    if (!on) return on.error();
    const State::Rooted& r = **on;
    auto view = s.viewOf(variant, r, opening, stop);
    if (!view) return view.error();
    if (!*view) return Opening{opening.way, opening.shift_mm, {}, {}, {}, {}, 0};
    LockColours colours;
    colours.update(variant, settings, {r.ground->shape(), r.ground->roots(), r.ground->grid(), r.grown, r.ground->seed()});
    (*view)->colour(colours, {});
    const PlannedColours planned = plannedColours(colours, r.ground->roots(), r.grown);
    return blocksOf(**view, colours, planned, rest, settings.distance_m, r.ground->shape(), Assumptions(variant.info().assumptions));
  };
  const Assumptions inForce(plan.info().assumptions);
  const auto rangeOf = [&](const Opening& opening, Patch Opening::*patch) -> Result<PatchRange> {
    const Ground rest = openings.atRest;
    const auto base = areas(plan, opening, rest);
    if (!base) return base.error();
    const double here = ((*base).*patch).area_cm2;
    double below = 0, above = 0;  // sums of squares
    std::vector<std::pair<double, std::string>> moves;
    const auto deviation = [&](const plan::Plan& variant) -> Result<double> {
      auto there = areas(variant, opening, rest);
      if (!there) return there.error();
      return ((*there).*patch).area_cm2 - here;
    };
    for (const Assumption& a : assumptionTable()) {
      if (a.low == a.high || a.moves == Moves::Judgement || a.name == kPartMoved) continue;
      double farthest = 0;
      for (const double end : {a.low, a.high}) {
        if (end == inForce[a.name]) continue;
        const auto d = deviation(withAssumption(plan, a.name, end));
        if (!d) return d.error();
        (*d < 0 ? below : above) += *d * *d;
        farthest = std::max(farthest, std::abs(*d));
      }
      if (farthest > 0) moves.emplace_back(farthest, a.name);
    }
    double chance = 0;
    for (std::uint64_t draw = 1; draw <= kOtherRoots; ++draw) {
      const auto d = deviation(withRoots(plan, draw));
      if (!d) return d.error();
      chance += *d * *d / kOtherRoots;
    }
    std::stable_sort(moves.begin(), moves.end(), [](const auto& x, const auto& y) { return x.first > y.first; });
    const double size = (opening.*patch).area_cm2;
    PatchRange range{opening.way, opening.shift_mm, std::max(0.0, size - std::sqrt(below + chance)),
                     size + std::sqrt(above + chance), {}};
    for (std::size_t i = 0; i < std::min<std::size_t>(2, moves.size()); ++i) range.movesMost.push_back(moves[i].second);
    return range;
  };
  s.used.clear();
  for (const auto& [worst, patch, range] : {std::tuple{openings.worstLight(), &Opening::light, &openings.lightRange},
                                            std::tuple{openings.worstDark(), &Opening::dark, &openings.darkRange}}) {
    if (!worst) continue;
    auto found = rangeOf(*worst, patch);
    if (!found) {
      s.dropUnused();
      return found.error();
    }
    *range = std::move(found).value();
  }
  s.dropUnused();
  return openings;
}

}  // namespace combdraft::look
