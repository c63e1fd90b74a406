#include "engine/look/openings.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "engine/base/parallel.h"
#include "engine/look/head_hair.h"
#include "engine/look/opening_blocks.h"

namespace combdraft::look {
namespace {

constexpr double kFarthest_mm = 40, kCoarse_mm = 5, kFine_mm = 1;
constexpr double kGroundPixel_mm = 2, kStep_mm = 4;
/// Views kept: the coarse sweep, the other ways and two fine ones, with room to drag.
constexpr std::size_t kKept = 64;

struct Position {
  OpeningWay way{};
  int shift_mm = 0;
  auto operator<=>(const Position&) const = default;
};

std::vector<Position> coarsePositions() {
  std::vector<Position> all;
  for (double s = -kFarthest_mm; s <= kFarthest_mm; s += kCoarse_mm)
    all.push_back({OpeningWay::Part, static_cast<int>(s)});
  for (const OpeningWay way : {OpeningWay::CrownOpened, OpeningWay::Blown, OpeningWay::TiedBack}) all.push_back({way, 0});
  return all;
}

const Opening* largest(const std::vector<Opening>& all, Patch Opening::*patch) {
  const Opening* best = nullptr;
  for (const Opening& o : all)
    if ((o.*patch).area_cm2 > 0 && (!best || (o.*patch).area_cm2 > (best->*patch).area_cm2)) best = &o;
  return best;
}

}  // namespace

std::string_view openingWord(OpeningWay way) {
  switch (way) {
    case OpeningWay::Part: return "part";
    case OpeningWay::CrownOpened: return "crown-opened";
    case OpeningWay::Blown: return "blown";
    case OpeningWay::TiedBack: return "tied-back";
  }
  return "";
}

const Opening* Openings::worstLight() const { return largest(all, &Opening::light); }
const Opening* Openings::worstDark() const { return largest(all, &Opening::dark); }

struct OpeningSweep::State {
  struct Kept {
    std::unique_ptr<OpeningView> view;  // null: no such opening on this head
    std::uint64_t coloured = 0;         // colouring it shows; 0 = none
    std::uint64_t used = 0;
  };
  int locks;
  std::uint64_t key = 0, colouring = 0, turn = 0;
  std::shared_ptr<const HeadGround> ground;
  hair::Locks grown;  // lengths of the hair worn down, for its colours
  LockColours colours;
  std::vector<std::uint8_t> changed;  // by the last colouring
  Ground rest = Ground::Neither;
  std::map<Position, Kept> views;

  void colour(Kept& kept) const {
    if (kept.coloured == colouring) return;
    const bool only = kept.coloured > 0 && kept.coloured + 1 == colouring;
    kept.view->colour(colours, only ? std::span<const std::uint8_t>(changed) : std::span<const std::uint8_t>());
    kept.coloured = colouring;
  }

  /// From the part at its usual place; on a head without one, from the opened crown.
  Ground atRest(const plan::Plan& plan, const PlannedColours& planned, double distance_m) {
    for (const Position& p : {Position{OpeningWay::Part, 0}, Position{OpeningWay::CrownOpened, 0}})
      if (Kept& kept = views.at(p); kept.view) {
        colour(kept);
        return groundOf(*kept.view, colours, planned, distance_m, ground->shape(), Assumptions(plan.info().assumptions));
      }
    return Ground::Neither;
  }

  /// Traces what is missing of `wanted`; false when stopped.
  bool trace(const plan::Plan& plan, const std::vector<Position>& wanted, const std::stop_token& stop) {
    for (const Position& p : wanted) {
      if (stop.stop_requested()) return false;
      const auto found = views.find(p);
      if (found != views.end()) {
        found->second.used = turn;
        continue;
      }
      auto view = OpeningView::build(plan, *ground, p.way, p.shift_mm, stop);
      if (stop.stop_requested()) return false;
      views[p] = Kept{std::move(view), 0, turn};
    }
    return true;
  }

  std::vector<Opening> lookAll(const plan::Plan& plan, const std::vector<Position>& wanted,
                               const PlannedColours& planned, double distance_m) {
    std::vector<Kept*> seen;
    for (const Position& p : wanted)
      if (Kept& kept = views.at(p); kept.view) seen.push_back(&kept);
    std::vector<Opening> all(seen.size());
    rest = atRest(plan, planned, distance_m);
    const Assumptions assumptions(plan.info().assumptions);
    parallelFor(seen.size(), [&](std::size_t i) {
      colour(*seen[i]);
      all[i] = blocksOf(*seen[i]->view, colours, planned, rest, distance_m, ground->shape(), assumptions);
    });
    return all;
  }
};

OpeningSweep::OpeningSweep(int locks) : state_(std::make_unique<State>()) {
  state_->locks = std::clamp(locks, 2000, 200000);
}
OpeningSweep::~OpeningSweep() = default;
OpeningSweep::OpeningSweep(OpeningSweep&&) noexcept = default;
OpeningSweep& OpeningSweep::operator=(OpeningSweep&&) noexcept = default;

bool OpeningSweep::isTraced(const plan::Plan& plan) const {
  const State& s = *state_;
  if (!s.ground || s.ground->key() != HeadGround::keyOf(plan, s.locks, kGroundPixel_mm)) return false;
  if (s.key != OpeningView::keyOf(plan, s.ground->key())) return false;
  const auto wanted = coarsePositions();
  return std::all_of(wanted.begin(), wanted.end(), [&](const Position& p) { return s.views.contains(p); });
}

Result<Openings> OpeningSweep::update(const plan::Plan& plan, const LookSettings& settings, std::stop_token stop,
                                      const std::function<void(const Openings&)>& first) {
  State& s = *state_;
  const Error cancelled{ErrorCode::Cancelled, "", {}, ""};
  if (!s.ground || s.ground->key() != HeadGround::keyOf(plan, s.locks, kGroundPixel_mm)) {
    auto built = HeadGround::build(plan, s.locks, kGroundPixel_mm);
    if (!built) return built.error();
    s.ground = std::move(built).value();
  }
  const std::uint64_t key = OpeningView::keyOf(plan, s.ground->key());
  if (key != s.key || s.grown.size() == 0) {
    s.key = key;
    s.views.clear();
    s.colours.reset();
    s.grown = fallOf(plan, {}, *s.ground, {kStep_mm}, stop);
    if (s.grown.size() == 0) return cancelled;
    s.grown.points = {}, s.grown.wave = {}, s.grown.first = {};
  }
  ++s.turn;
  const std::vector<std::uint32_t> changed = s.colours.update(
      plan, settings, {s.ground->shape(), s.ground->roots(), s.ground->grid(), s.grown, s.ground->seed()});
  if (!changed.empty()) {
    s.changed.assign(s.grown.size(), 0);
    for (const std::uint32_t lock : changed) s.changed[lock] = 1;
    ++s.colouring;
  }
  const PlannedColours planned = plannedColours(s.colours, s.ground->roots(), s.grown);

  Openings openings;
  openings.distance_m = settings.distance_m;
  openings.darkest = planned.darkest, openings.lightest = planned.lightest;
  std::vector<Position> wanted = coarsePositions();
  if (!s.trace(plan, wanted, stop)) return cancelled;
  for (const Position& p : wanted)
    if (!s.views.at(p).view && p.way == OpeningWay::Part && plan.head().part.size() >= 2) openings.offHair_mm.push_back(p.shift_mm);
  openings.all = s.lookAll(plan, wanted, planned, settings.distance_m);
  openings.atRest = s.rest;
  if (first) first(openings);

  // Finer around the worst: a block is largest with the part just beside a piece.
  std::vector<Position> fine;
  for (const auto patch : {&Opening::light, &Opening::dark}) {
    const Opening* worst = nullptr;
    for (const Opening& o : openings.all)
      if (o.way == OpeningWay::Part && (o.*patch).area_cm2 > 0 && (!worst || (o.*patch).area_cm2 > (worst->*patch).area_cm2)) worst = &o;
    if (!worst) continue;
    for (double d = -kCoarse_mm + kFine_mm; d < kCoarse_mm; d += kFine_mm) {
      const Position p{OpeningWay::Part, static_cast<int>(std::lround(worst->shift_mm + d))};
      if (d != 0 && std::abs(p.shift_mm) <= kFarthest_mm && std::find(fine.begin(), fine.end(), p) == fine.end() &&
          std::find(wanted.begin(), wanted.end(), p) == wanted.end())
        fine.push_back(p);
    }
  }
  if (!s.trace(plan, fine, stop)) return cancelled;
  const std::vector<Opening> finer = s.lookAll(plan, fine, planned, settings.distance_m);
  openings.all.insert(openings.all.end(), finer.begin(), finer.end());
  std::sort(openings.all.begin(), openings.all.end(), [](const Opening& a, const Opening& b) {
    return a.way != b.way ? a.way < b.way : a.shift_mm < b.shift_mm;
  });

  while (s.views.size() > kKept) {  // the fine positions used longest ago go first
    auto oldest = s.views.end();
    for (auto it = s.views.begin(); it != s.views.end(); ++it)
      if (it->second.used < s.turn && (oldest == s.views.end() || it->second.used < oldest->second.used)) oldest = it;
    if (oldest == s.views.end()) break;
    s.views.erase(oldest);
  }
  return openings;
}

}  // namespace combdraft::look
