#include "engine/work/appointment_log.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <tuple>

#include "engine/work/work_order.h"

namespace combdraft::work {
namespace {

constexpr double kJump_s = 60;

double wallSeconds(const LogEvent& from, std::int64_t utc_ms) { return static_cast<double>(utc_ms - from.utc_ms) / 1000; }

std::optional<double> steadySeconds(const LogEvent& from, const std::optional<std::int64_t>& steady_ms, const std::string& run) {
  if (!from.steady_ms || !steady_ms || from.run != run) return std::nullopt;
  return static_cast<double>(*steady_ms - *from.steady_ms) / 1000;
}

// Where a file was changed by hand times may fall; later taps then count from the
// latest time before them.
std::vector<double> risingTimes(std::span<const LogEvent> events) {
  std::vector<double> times;
  double latest = 0;
  for (const LogEvent& event : events) times.push_back(latest = std::max(latest, event.at_s));
  return times;
}

std::optional<double> limitOf(const plan::Plan& plan, const plan::Piece& piece) {
  std::optional<double> limit_s;
  const auto take = [&](const plan::ItemId& id) {
    const auto* formula = plan.find<plan::Formula>(id);
    if (!formula || !formula->leaflet.longestTime_min || !(*formula->leaflet.longestTime_min > 0)) return;
    const double typed_s = *formula->leaflet.longestTime_min * 60;
    limit_s = limit_s ? std::min(*limit_s, typed_s) : typed_s;
  };
  take(piece.root.formula);
  if (piece.handover_mm) take(piece.end.formula);
  return limit_s;
}

// What was typed when it was placed counts where the plan names nothing any more: a piece or
// formula that went while product is on the hair.
std::optional<double> limitNow(const plan::Plan& plan, const plan::ItemId& id, const PieceNow& now) {
  const auto* piece = plan.find<plan::Piece>(id);
  const auto limit = piece ? limitOf(plan, *piece) : std::nullopt;
  return limit ? limit : now.limit_s;
}

// Who taps no bowls at all is not told of them.
bool isMissingBowl(const plan::Plan& plan, const plan::ItemId& id, const std::set<plan::ItemId>& mixed) {
  const auto* piece = plan.find<plan::Piece>(id);
  if (!piece || mixed.empty()) return false;
  const auto isMissing = [&](const plan::ItemId& formula) { return plan.find<plan::Formula>(formula) && !mixed.count(formula); };
  return isMissing(piece->root.formula) || (piece->handover_mm && isMissing(piece->end.formula));
}

}  // namespace

bool isUnderProduct(const PieceNow& now) {
  return now.placed_s && (now.stage == Stage::Placed || now.stage == Stage::TakenOut);
}

std::optional<OnHair> onHair(const AppointmentLog& log) {
  std::optional<OnHair> on;
  for (const auto& [id, now] : stateAt(log, 1e18)) {
    if (!isUnderProduct(now)) continue;
    if (!on) on = OnHair{0, now.placed_utc_ms};
    ++on->pieces;
    on->first_utc_ms = std::min(on->first_utc_ms, now.placed_utc_ms);
  }
  return on;
}

bool wasPlaced(const std::map<plan::ItemId, PieceNow>& state, const plan::ItemId& piece) {
  const auto now = state.find(piece);
  if (now != state.end() && now->second.placed_s) return true;
  return std::none_of(state.begin(), state.end(), [](const auto& one) { return one.second.placed_s.has_value(); });
}

std::span<const LogEvent> tapsOfVisit(const AppointmentLog& log) {
  const std::span<const LogEvent> all(log.events);
  const auto begun = std::find_if(all.rbegin(), all.rend(), [](const LogEvent& e) { return e.tap == Tap::Begun && !e.takenBack; });
  return all.last(static_cast<std::size_t>(begun - all.rbegin()));
}

std::vector<AppointmentLog> visitsOf(const AppointmentLog& log) {
  std::vector<AppointmentLog> visits(1);
  for (const LogEvent& event : log.events)
    if (event.tap == Tap::Begun && !event.takenBack)
      visits.emplace_back();
    else
      visits.back().events.push_back(event);
  return visits;
}

std::map<plan::ItemId, PieceNow> treatedInAll(const AppointmentLog& log) {
  std::map<plan::ItemId, PieceNow> all;
  for (const AppointmentLog& visit : visitsOf(log))
    for (auto& [id, now] : stateAt(visit, 1e18))
      if (now.placed_s || now.came) all[id] = now;
  return all;
}

std::map<plan::ItemId, plan::LiftsTo> plannedLifts(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  std::map<plan::ItemId, plan::LiftsTo> planned;
  for (const plan::ItemId& id : pieces)
    if (const auto* piece = plan.find<plan::Piece>(id); piece && piece->action == plan::Action::Lighten) planned[id] = piece->root.lifts;
  return planned;
}

std::map<plan::ItemId, double> typedLimits(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  std::map<plan::ItemId, double> limits_s;
  for (const plan::ItemId& id : pieces)
    if (const auto* piece = plan.find<plan::Piece>(id))
      if (const auto limit = limitOf(plan, *piece)) limits_s[id] = *limit;
  return limits_s;
}

double secondsAt(const AppointmentLog& log, const TapClock& clock) {
  if (log.events.empty()) return 0;
  const std::vector<double> times = risingTimes(log.events);
  for (std::size_t i = log.events.size(); i-- > 0;)
    if (const auto since = steadySeconds(log.events[i], clock.steady_ms, clock.run)) return std::max(times.back(), times[i] + *since);
  return times.back() + std::max(0.0, wallSeconds(log.events.back(), clock.utc_ms));
}

double unknownSince_s(const AppointmentLog& log, const TapClock& clock) {
  for (const LogEvent& event : log.events)
    if (steadySeconds(event, clock.steady_ms, clock.run)) return 0;
  return log.events.empty() ? 0 : std::max(0.0, -wallSeconds(log.events.back(), clock.utc_ms));
}

std::optional<std::int64_t> wallClocksSince_utc_ms(const AppointmentLog& log, const TapClock& clock) {
  const auto state = stateAt(log, 1e18);
  if (std::none_of(state.begin(), state.end(), [&](const auto& one) { return isUnderProduct(one.second) && one.second.placedRun != clock.run; }))
    return std::nullopt;
  const auto taps = tapsOfVisit(log);
  const auto last = std::find_if(taps.rbegin(), taps.rend(), [&](const LogEvent& e) { return e.run != clock.run; });
  return last->utc_ms;  // there is one: it placed that hair
}

AppointmentLog appended(AppointmentLog log, LogEvent tap, const TapClock& clock) {
  tap.at_s = secondsAt(log, clock);
  tap.number = 1;
  for (const LogEvent& event : log.events) tap.number = std::max(tap.number, event.number + 1);
  tap.utc_ms = clock.utc_ms;
  tap.steady_ms = clock.steady_ms;
  tap.run = clock.run;
  tap.takenBack = false;
  log.events.push_back(std::move(tap));
  return log;
}

std::optional<std::size_t> lastStanding(const AppointmentLog& log, const plan::ItemId& piece) {
  const auto last = std::find_if(log.events.rbegin(), log.events.rend(), [&](const LogEvent& e) {
    return !e.takenBack && (piece.empty() || std::find(e.pieces.begin(), e.pieces.end(), piece) != e.pieces.end());
  });
  if (last == log.events.rend()) return std::nullopt;
  return static_cast<std::size_t>(log.events.rend() - last) - 1;
}

AppointmentLog withTakenBack(AppointmentLog log, std::size_t at, bool isTakenBack) {
  if (at < log.events.size()) log.events[at].takenBack = isTakenBack;
  return log;
}

std::optional<AppointmentLog> withVisitBegun(const AppointmentLog& log, LogEvent begun, const TapClock& clock, double rest_s) {
  const auto taps = tapsOfVisit(log);
  if (taps.empty()) return std::nullopt;
  const std::size_t first = log.events.size() - taps.size();
  AppointmentLog next = appended(log, std::move(begun), clock);
  std::size_t at = log.events.size();  // before the Begun itself: after all taps
  double longest = next.events.back().at_s - taps.back().at_s;
  for (std::size_t i = first + 1; i < log.events.size(); ++i)
    if (const double rest = log.events[i].at_s - log.events[i - 1].at_s; rest > longest) longest = rest, at = i;
  if (longest < rest_s) return std::nullopt;
  if (at == log.events.size()) return next;
  LogEvent moved = next.events.back();
  next.events.pop_back();
  // The taps after the rest are the new visit's; the clock's facts are those of its first tap.
  moved.at_s = log.events[at].at_s;
  moved.utc_ms = log.events[at].utc_ms;
  moved.steady_ms = log.events[at].steady_ms;
  moved.run = log.events[at].run;
  next.events.insert(next.events.begin() + static_cast<std::ptrdiff_t>(at), std::move(moved));
  return next;
}

std::map<plan::ItemId, PieceNow> stateAt(const AppointmentLog& log, double at_s) {
  std::map<plan::ItemId, PieceNow> state;
  const std::span<const LogEvent> taps = tapsOfVisit(log);
  const std::vector<double> times = risingTimes(taps);
  for (std::size_t i = 0; i < taps.size(); ++i) {
    const LogEvent& event = taps[i];
    if (event.takenBack || times[i] > at_s) continue;
    for (const plan::ItemId& id : event.pieces) {
      PieceNow& piece = state[id];
      switch (event.tap) {
        case Tap::Placed:
          // Only a rinse ends the time on the hair: put back after a look it counts on.
          if (!piece.placed_s || piece.stage == Stage::Rinsed) {
            piece.placed_s = times[i];
            piece.placed_utc_ms = event.utc_ms;
            piece.placedRun = event.run;
            piece.level.reset(), piece.pigment.clear(), piece.looked_s.reset(), piece.out_s.reset(), piece.planned.reset(), piece.limit_s.reset();
            if (const auto planned = event.planned.find(id); planned != event.planned.end()) piece.planned = planned->second;
            if (const auto limit = event.limits_s.find(id); limit != event.limits_s.end()) piece.limit_s = limit->second;
          }
          piece.came.reset();  // placed again: what came of it is not known yet
          piece.stage = Stage::Placed;
          break;
        case Tap::Looked:
          piece.looked_s = times[i];
          if (event.level) piece.level = event.level;
          if (event.level && piece.stage == Stage::Rinsed) piece.came = event.level;
          if (!event.pigment.empty()) piece.pigment = event.pigment;
          break;
        case Tap::TakenOut:
          piece.out_s = times[i];
          piece.stage = std::max(piece.stage, Stage::TakenOut);
          break;
        case Tap::Rinsed:
          piece.rinsed_s = times[i];
          piece.stage = Stage::Rinsed;
          break;
        case Tap::BowlMixed:
        case Tap::Begun: break;
      }
    }
  }
  return state;
}

std::vector<plan::ItemId> notPlacedYet(const AppointmentLog& log, const std::vector<plan::ItemId>& pieces) {
  const auto state = stateAt(log, 1e18);
  std::vector<plan::ItemId> left;
  for (const plan::ItemId& id : pieces)
    if (const auto it = state.find(id); it == state.end() || it->second.stage == Stage::Planned) left.push_back(id);
  return left;
}

std::vector<PieceTimer> timersAt(const plan::Plan& plan, const AppointmentLog& log, double at_s) {
  std::vector<PieceTimer> timers;
  for (const auto& [id, now] : stateAt(log, at_s)) {
    if (!isUnderProduct(now)) continue;
    const auto limit = limitNow(plan, id, now);
    if (!limit) continue;
    const double on = at_s - *now.placed_s;
    timers.push_back({id, on, *limit, on >= *limit ? Say::LimitReached : Say::Look, now.stage});
  }
  std::stable_sort(timers.begin(), timers.end(),
                   [](const PieceTimer& a, const PieceTimer& b) { return a.onHair_s - a.limit_s > b.onHair_s - b.limit_s; });
  return timers;
}

std::vector<BowlTimer> bowlsAt(const plan::Plan& plan, const AppointmentLog& log, double at_s) {
  std::vector<BowlTimer> bowls;
  const std::span<const LogEvent> taps = tapsOfVisit(log);
  const std::vector<double> times = risingTimes(taps);
  for (std::size_t i = 0; i < taps.size(); ++i) {
    const LogEvent& event = taps[i];
    if (event.takenBack || event.tap != Tap::BowlMixed || times[i] > at_s) continue;
    auto known = std::find_if(bowls.begin(), bowls.end(), [&](const BowlTimer& b) { return b.formula == event.formula; });
    if (known == bowls.end()) known = bowls.insert(bowls.end(), {event.formula, 0, 0, {}, Say::InUse});
    ++known->number;
    known->age_s = at_s - times[i];
  }
  for (BowlTimer& bowl : bowls) {
    const auto* formula = plan.find<plan::Formula>(bowl.formula);
    if (!formula || !formula->leaflet.workingLife_min || !(*formula->leaflet.workingLife_min > 0)) continue;
    bowl.life_s = *formula->leaflet.workingLife_min * 60;
    if (bowl.age_s > *bowl.life_s) bowl.say = Say::LifeOver;
  }
  return bowls;
}

std::vector<LookFirst> lookFirst(const plan::Plan& plan, const AppointmentLog& log, double at_s) {
  const PiecePlaces places(plan);
  std::vector<LookFirst> order;
  for (const auto& [id, now] : stateAt(log, at_s)) {
    if (!isUnderProduct(now)) continue;
    const auto* piece = plan.find<plan::Piece>(id);
    const double on = at_s - *now.placed_s;
    const auto limit = limitNow(plan, id, now);
    LookReason reason = LookReason::LongestOn;
    if (limit && on >= *limit)
      reason = LookReason::LimitReached;
    else if (now.stage == Stage::TakenOut)
      reason = LookReason::NotRinsed;
    else if (piece && now.level && *now.level >= piece->root.lifts.level)
      reason = LookReason::LevelReached;
    else if (piece && !piece->line.empty() && places.of(*piece).pace == Pace::Hairline)
      reason = LookReason::FineHair;
    order.push_back({id, reason, on});
  }
  std::stable_sort(order.begin(), order.end(), [](const LookFirst& a, const LookFirst& b) {
    return std::tuple(a.reason, -a.onHair_s) < std::tuple(b.reason, -b.onHair_s);
  });
  return order;
}

std::string codeName(LogProblemKind kind) {
  switch (kind) {
    case LogProblemKind::ClockSetBack: return "clock-set-back";
    case LogProblemKind::TimeUnknown: return "time-unknown";
    case LogProblemKind::ClockJumped: return "clock-jumped";
    case LogProblemKind::TimeOutOfOrder: return "time-out-of-order";
    case LogProblemKind::OutBeforePlaced: return "out-before-placed";
    case LogProblemKind::PlacedTwice: return "placed-twice";
    case LogProblemKind::PieceUnknown: return "piece-unknown";
    case LogProblemKind::BowlNotMixed: return "bowl-not-mixed";
  }
  return {};
}

std::vector<LogProblem> problemsOf(const plan::Plan& plan, const AppointmentLog& log) {
  std::vector<LogProblem> problems;
  std::map<plan::ItemId, Stage> stages;
  const LogEvent* before = nullptr;
  double latest = 0;
  std::set<plan::ItemId> mixed;
  for (const LogEvent& event : tapsOfVisit(log)) {
    if (before) {
      const double wall = wallSeconds(*before, event.utc_ms);
      const auto steady = steadySeconds(*before, event.steady_ms, event.run);
      if (wall < 0)
        problems.push_back({steady ? LogProblemKind::ClockSetBack : LogProblemKind::TimeUnknown, event.number, {}, -wall});
      else if (steady && std::abs(wall - *steady) > kJump_s)
        problems.push_back({LogProblemKind::ClockJumped, event.number, {}, wall - *steady});
    }
    if (event.at_s < latest) problems.push_back({LogProblemKind::TimeOutOfOrder, event.number, {}, latest - event.at_s});
    latest = std::max(latest, event.at_s);
    before = &event;
    if (event.takenBack) continue;
    if (event.tap == Tap::BowlMixed) mixed.insert(event.formula);
    for (const plan::ItemId& id : event.pieces) {
      if (event.tap == Tap::Placed && isMissingBowl(plan, id, mixed)) problems.push_back({LogProblemKind::BowlNotMixed, event.number, id, 0});
      if (!plan.find<plan::Piece>(id)) problems.push_back({LogProblemKind::PieceUnknown, event.number, id, 0});
      Stage& stage = stages[id];
      if (event.tap == Tap::Placed) {
        if (stage == Stage::Placed) problems.push_back({LogProblemKind::PlacedTwice, event.number, id, 0});
        stage = Stage::Placed;
      } else if (event.tap == Tap::TakenOut || event.tap == Tap::Rinsed) {
        if (stage == Stage::Planned) problems.push_back({LogProblemKind::OutBeforePlaced, event.number, id, 0});
        stage = event.tap == Tap::Rinsed ? Stage::Rinsed : Stage::TakenOut;
      }
    }
  }
  return problems;
}

}  // namespace combdraft::work
