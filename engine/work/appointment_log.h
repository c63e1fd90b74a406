#pragma once
// What happened at an appointment, tap by tap, and what follows from it at any
// moment. Pure values: the window appends and writes, nothing here waits or warns.
// A tap that was taken back stays, marked. The order need not be the planned one.
//
// Times: a tap knows the wall clock and, within one run of the program, a clock
// that cannot be set back. `at_s` counts from the first tap and never falls, so
// that a wall clock that was set back shortens nothing; problemsOf says so.
//
// One plan may see several visits: a Begun tap puts the taps before it behind it.
// They stay in the log and count no more; taken back, it brings them to count again.
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::work {

enum class Tap { Placed, BowlMixed, Looked, TakenOut, Rinsed, Begun };
inline constexpr std::size_t kMostTaps = 10'000;  ///< that one log holds

struct LogEvent {
  int number = 0;                    ///< 1, 2, 3 ... in the order of the taps
  Tap tap{};
  double at_s = 0;                   ///< since the first tap
  std::int64_t utc_ms = 0;           ///< wall clock, since 1970
  std::optional<std::int64_t> steady_ms;  ///< of the run `run`
  std::string run;                   ///< which run of the program tapped
  std::vector<plan::ItemId> pieces;  ///< all but BowlMixed and Begun
  /// Placed: what each piece was to lift to at that moment; finishes that are tried
  /// later change the plan, not this.
  std::map<plan::ItemId, plan::LiftsTo> planned;
  /// Placed: the longest time typed from the leaflet at that moment, for when the plan names
  /// none for the piece any more.
  std::map<plan::ItemId, double> limits_s;
  plan::ItemId formula;              ///< BowlMixed
  std::optional<double> level;       ///< Looked: the level seen
  std::string pigment;               ///< Looked: the remaining pigment, in the user's words
  std::string who, note;
  bool takenBack = false;
  plan::Extra extra{};
  bool operator==(const LogEvent&) const = default;
};

struct AppointmentLog {
  std::vector<LogEvent> events;
  plan::Extra extra;
  bool operator==(const AppointmentLog&) const = default;
};

struct TapClock {
  std::int64_t utc_ms = 0;
  std::optional<std::int64_t> steady_ms;
  std::string run;
};
/// Adds a tap at the end; its number and times are filled in here. The time is the steady
/// clock's since the last tap of this run, else the wall clock's since the last tap, and 0
/// where that was set back: `unknownSince_s` and `problemsOf` tell of that.
AppointmentLog appended(AppointmentLog log, LogEvent tap, const TapClock& clock);
/// Seconds since the first tap at a moment; 0 for an empty log. By the last tap of the same
/// run where there is one, else by the wall clock.
double secondsAt(const AppointmentLog& log, const TapClock& clock);
/// The taps since the last standing Begun, without it; all of them where there is none.
std::span<const LogEvent> tapsOfVisit(const AppointmentLog& log);
/// A log of each visit alone, without the Begun between them; the last one is the one that goes on.
std::vector<AppointmentLog> visitsOf(const AppointmentLog& log);
/// What these pieces of the plan are to lift to; those that are not lightened are not in it.
std::map<plan::ItemId, plan::LiftsTo> plannedLifts(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces);
/// The longest time typed from the leaflet for these pieces of the plan (of two formulas the
/// shorter one); those without one are not in it.
std::map<plan::ItemId, double> typedLimits(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces);
/// Where in the log the last tap stands that was not taken back, or the last such that names
/// `piece`. Numbers may come twice in a file.
std::optional<std::size_t> lastStanding(const AppointmentLog& log, const plan::ItemId& piece = {});
/// Marks the tap at a place as taken back, or lets it stand again.
AppointmentLog withTakenBack(AppointmentLog log, std::size_t at, bool isTakenBack = true);
/// A Begun where another visit begins: before the tap that followed the longest rest of at
/// least `rest_s` in this visit, the rest since its last tap included. Nothing where there is none.
std::optional<AppointmentLog> withVisitBegun(const AppointmentLog& log, LogEvent begun, const TapClock& clock, double rest_s);
/// The pieces of a foil or section that are not placed yet (of `pieces`, those).
std::vector<plan::ItemId> notPlacedYet(const AppointmentLog& log, const std::vector<plan::ItemId>& pieces);

// ---- at a moment ----------------------------------------------------------

enum class Stage { Planned, Placed, TakenOut, Rinsed };
struct PieceNow {
  Stage stage = Stage::Planned;
  std::optional<double> placed_s, looked_s, out_s, rinsed_s;
  std::int64_t placed_utc_ms = 0;  ///< wall clock of `placed_s`
  std::string placedRun;           ///< the run of the computer that counted then
  std::optional<double> level;   ///< as last seen
  std::optional<double> came;    ///< as last seen after its rinse: product makes hair look lighter
  std::string pigment;
  std::optional<plan::LiftsTo> planned;  ///< when it was placed; older logs did not write it down
  std::optional<double> limit_s;         ///< as typed then; the same
};
/// Of the visit that goes on: taps up to `at_s` that stand. Pieces that nobody touched are not in it.
std::map<plan::ItemId, PieceNow> stateAt(const AppointmentLog& log, double at_s);
/// Placed and not rinsed: out of its foil a piece may still have product on it.
bool isUnderProduct(const PieceNow& now);
/// Hair of the visit that goes on that was placed and not tapped as rinsed.
struct OnHair {
  int pieces = 0;
  std::int64_t first_utc_ms = 0;  ///< wall clock when the first of them went on
  bool operator==(const OnHair&) const = default;
};
std::optional<OnHair> onHair(const AppointmentLog& log);
/// Of all visits: each piece as the last visit left it in which it was placed or its level
/// came. What says whether hair is light; timers and bowls go by the visit alone.
std::map<plan::ItemId, PieceNow> treatedInAll(const AppointmentLog& log);
/// Whether hair was lightened there, as far as the log knows: where no piece at all was
/// tapped as placed, all of them count as placed.
bool wasPlaced(const std::map<plan::ItemId, PieceNow>& state, const plan::ItemId& piece);

/// What may be said of a piece or bowl; the window has the sentences.
enum class Say {
  Look,          ///< before the typed limit: nothing but this
  LimitReached,  ///< maker's longest time reached: product off
  LifeOver,      ///< bowl: older than its working life, mix a new one
  InUse,         ///< bowl: within its life
};
struct PieceTimer {
  plan::ItemId piece;
  double onHair_s = 0, limit_s = 0;
  Say say = Say::Look;
  Stage stage = Stage::Placed;  ///< or TakenOut: product works on until it is rinsed
};
/// Only pieces that are placed and not rinsed, also those that the plan does not hold any more,
/// and whose formula has a typed longest time above 0 (of two formulas the shorter one), or had
/// one when they were placed; longest over its limit first.
std::vector<PieceTimer> timersAt(const plan::Plan& plan, const AppointmentLog& log, double at_s);

struct BowlTimer {
  plan::ItemId formula;
  int number = 1;               ///< of this formula's bowls
  double age_s = 0;
  std::optional<double> life_s; ///< typed; nothing = no timer
  Say say = Say::InUse;
};
/// The newest bowl of each formula.
std::vector<BowlTimer> bowlsAt(const plan::Plan& plan, const AppointmentLog& log, double at_s);

enum class LookReason { LimitReached, NotRinsed, LevelReached, FineHair, LongestOn };
struct LookFirst {
  plan::ItemId piece;
  LookReason reason{};
  double onHair_s = 0;
};
/// Pieces placed and not rinsed, also those that the plan does not hold any more, in the order
/// of "look at these first": those over the typed limit, then taken out and not rinsed, then those seen at their planned level or above it, then fine hair at the
/// hairline [common practice], then by how long they have been on.
std::vector<LookFirst> lookFirst(const plan::Plan& plan, const AppointmentLog& log, double at_s);

// ---- what is odd ----------------------------------------------------------

enum class LogProblemKind {
  ClockSetBack,       ///< the wall clock stands before the last tap's; the steady one tells the time
  TimeUnknown,        ///< the same between two runs: nothing tells the time between
  ClockJumped,        ///< wall and steady clock differ by more than a minute
  TimeOutOfOrder,     ///< `at_s` falls: the file was changed by hand
  OutBeforePlaced,    ///< taken out or rinsed, and never placed
  PlacedTwice,
  PieceUnknown,       ///< a piece that the plan does not hold (any more)
  BowlNotMixed,       ///< placed while other bowls were tapped and none of its formula
};
struct LogProblem {
  LogProblemKind kind{};
  int event = 0;          ///< its number
  plan::ItemId piece;
  double seconds = 0;     ///< how far, for the clock
  bool operator==(const LogProblem&) const = default;
};
/// How far the wall clock stands before the last tap's although no clock of this run tells the
/// time between: times on the hair may be too short by that and more. 0 = it does not.
double unknownSince_s(const AppointmentLog& log, const TapClock& clock);
/// Wall clock of the last tap of another run, while hair is under product that was placed in
/// another: its time rests on wall clocks alone, and on how well they were set. Nothing where
/// one clock counted all the time.
std::optional<std::int64_t> wallClocksSince_utc_ms(const AppointmentLog& log, const TapClock& clock);

std::string codeName(LogProblemKind kind);
/// Nothing is left out of the state because of a problem.
std::vector<LogProblem> problemsOf(const plan::Plan& plan, const AppointmentLog& log);

}  // namespace combdraft::work
