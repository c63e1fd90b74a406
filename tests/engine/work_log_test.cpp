// The appointment log: taps, times, states, order of looking, text.
#include <catch2/catch.hpp>

#include "engine/work/join_logs.h"
#include "engine/work/log_text.h"
#include "engine/work/outcome.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::work;

namespace {

AppointmentLog withLastTakenBack(const AppointmentLog& log) {
  const auto last = lastStanding(log);
  return last ? withTakenBack(log, *last) : log;
}

/// Four slices at the back of formula-1: 10 minutes of life, at most 30 on the hair.
plan::Plan loggedPlan() {
  plan::Plan plan = plan::Plan::fresh(5);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan::Formula formula;
  formula.leaflet.workingLife_min = 10;
  formula.leaflet.longestTime_min = 30;
  plan.put("formula-1", formula);
  for (int i = 0; i < 4; ++i) {
    plan::Piece piece = backSlice(shape, 40 - 14 * i, 60, 5);
    piece.order = i + 1;
    piece.root.formula = i < 3 ? "formula-1" : "";
    piece.root.lifts = {8, 7, 9};
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  return plan;
}

/// Taps at minutes on a wall clock and a steady one.
class Taps {
 public:
  void at(double minute, Tap tap, std::vector<plan::ItemId> pieces, std::optional<double> level = {}) {
    LogEvent event;
    event.tap = tap;
    event.pieces = std::move(pieces);
    event.level = level;
    if (tap == Tap::BowlMixed) event.formula = "formula-1";
    log = appended(log, event, clock(minute));
  }
  TapClock clock(double minute) const {
    const auto ms = static_cast<std::int64_t>(minute * 60000);
    return {1'700'000'000'000 + wallShift_ms + ms, 5'000 + ms, run};
  }
  AppointmentLog log;
  std::int64_t wallShift_ms = 0;
  std::string run = "one";
};

std::vector<std::string> kindsOf(const std::vector<LogProblem>& problems) {
  std::vector<std::string> kinds;
  for (const LogProblem& problem : problems) kinds.push_back(codeName(problem.kind));
  return kinds;
}

}  // namespace

TEST_CASE("taps in any order give each piece its stage", "[work][log]") {
  Taps taps;
  taps.at(0, Tap::BowlMixed, {});
  taps.at(1, Tap::Placed, {"piece-3"});
  taps.at(2, Tap::Placed, {"piece-1", "piece-2"});
  taps.at(10, Tap::Looked, {"piece-1"}, 7);
  taps.at(12, Tap::TakenOut, {"piece-3"});
  taps.at(14, Tap::Rinsed, {"piece-3"});
  const auto early = stateAt(taps.log, 90);
  CHECK(early.size() == 1);
  CHECK(early.at("piece-3").stage == Stage::Placed);
  const auto late = stateAt(taps.log, 1e9);
  CHECK(late.at("piece-3").stage == Stage::Rinsed);
  CHECK(*late.at("piece-3").rinsed_s == Approx(14 * 60));
  CHECK(late.at("piece-1").level == 7);
  CHECK(late.at("piece-1").stage == Stage::Placed);
  CHECK(late.count("piece-4") == 0);
  CHECK(notPlacedYet(taps.log, {"piece-1", "piece-4"}) == std::vector<plan::ItemId>{"piece-4"});
  CHECK(problemsOf(loggedPlan(), taps.log).empty());
}

TEST_CASE("a tap taken back stays in the log and counts no more", "[work][log]") {
  Taps taps;
  taps.at(1, Tap::Placed, {"piece-1"});
  taps.at(2, Tap::Placed, {"piece-2"});
  taps.log = withLastTakenBack(taps.log);
  CHECK(taps.log.events.size() == 2);
  CHECK(stateAt(taps.log, 1e9).count("piece-2") == 0);
  taps.log = withLastTakenBack(taps.log);
  CHECK(stateAt(taps.log, 1e9).empty());
  const AppointmentLog same = withLastTakenBack(taps.log);
  CHECK(same == taps.log);
  taps.at(3, Tap::Placed, {"piece-1"});
  CHECK(taps.log.events.back().number == 3);
  CHECK(*stateAt(taps.log, 1e9).at("piece-1").placed_s == Approx(120));
}

TEST_CASE("timers come from typed limits only and say look before them", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-1"});
  taps.at(5, Tap::Placed, {"piece-2"});
  taps.at(6, Tap::Placed, {"piece-4"});  // names no formula
  const auto timers = timersAt(plan, taps.log, 29 * 60 + 59);
  REQUIRE(timers.size() == 2);
  CHECK(timers[0].piece == "piece-1");
  CHECK(timers[0].say == Say::Look);
  CHECK(timersAt(plan, taps.log, 30 * 60)[0].say == Say::LimitReached);
  CHECK(timersAt(plan, taps.log, 30 * 60)[1].say == Say::Look);
  taps.at(31, Tap::TakenOut, {"piece-1"});
  // Out of the foil is not off the hair: it counts on until it is rinsed.
  const auto out = timersAt(plan, taps.log, 32 * 60);
  REQUIRE(out.size() == 2);
  CHECK(out[0].piece == "piece-1");
  CHECK(out[0].stage == Stage::TakenOut);
  CHECK(out[0].say == Say::LimitReached);
  CHECK(out[0].onHair_s == Approx(32 * 60));
  taps.at(33, Tap::Placed, {"piece-1"});  // closed again after a look: no new beginning
  CHECK(timersAt(plan, taps.log, 34 * 60)[0].onHair_s == Approx(34 * 60));
  taps.at(35, Tap::Rinsed, {"piece-1"});
  CHECK(timersAt(plan, taps.log, 36 * 60).size() == 1);
  taps.at(40, Tap::Placed, {"piece-1"});  // a new application
  CHECK(stateAt(taps.log, 41 * 60).at("piece-1").placed_s == Approx(40 * 60));
  plan::Plan untyped = plan;
  for (const std::optional<double> none : {std::optional<double>(), std::optional<double>(0)}) {
    plan::Formula formula = *plan.find<plan::Formula>("formula-1");
    formula.leaflet.longestTime_min = none;
    formula.leaflet.workingLife_min = none;
    untyped.put("formula-1", formula);
    CHECK(timersAt(untyped, taps.log, 1e6).empty());
  }
}

TEST_CASE("a bowl's age is told and its life only where typed", "[work][log]") {
  plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::BowlMixed, {});
  taps.at(8, Tap::BowlMixed, {});
  const auto bowls = bowlsAt(plan, taps.log, 17 * 60);
  REQUIRE(bowls.size() == 1);
  CHECK(bowls[0].number == 2);
  CHECK(bowls[0].age_s == Approx(9 * 60));
  CHECK(bowls[0].say == Say::InUse);
  CHECK(bowlsAt(plan, taps.log, 18 * 60 + 1)[0].say == Say::LifeOver);
  plan.put("formula-1", plan::Formula{});
  CHECK_FALSE(bowlsAt(plan, taps.log, 1e6)[0].life_s);
  CHECK(bowlsAt(plan, taps.log, 1e6)[0].say == Say::InUse);
}

TEST_CASE("look at these first goes by limit then level then time", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-4"});   // no limit, longest on
  taps.at(1, Tap::Placed, {"piece-1"});   // over its limit below
  taps.at(20, Tap::Placed, {"piece-2"});
  taps.at(21, Tap::Placed, {"piece-3"});
  taps.at(30, Tap::Looked, {"piece-3"}, 8.5);
  const auto order = lookFirst(plan, taps.log, 32 * 60);
  std::vector<plan::ItemId> ids;
  for (const LookFirst& look : order) ids.push_back(look.piece);
  CHECK(ids == std::vector<plan::ItemId>{"piece-1", "piece-3", "piece-4", "piece-2"});
  CHECK(order[0].reason == LookReason::LimitReached);
  CHECK(order[1].reason == LookReason::LevelReached);
  CHECK(order[3].reason == LookReason::LongestOn);
  taps.at(33, Tap::TakenOut, {"piece-2"});
  const auto then = lookFirst(plan, taps.log, 34 * 60);
  REQUIRE(then.size() == 4);
  CHECK(then[0].piece == "piece-1");  // over its limit comes first
  CHECK(then[1].piece == "piece-2");
  CHECK(then[1].reason == LookReason::NotRinsed);
  taps.at(35, Tap::Rinsed, {"piece-2"});
  CHECK(lookFirst(plan, taps.log, 36 * 60).size() == 3);
}

TEST_CASE("two logs that went on from one are joined without a tap moving among its own", "[work][log]") {
  Taps taps;
  taps.at(0, Tap::BowlMixed, {});
  taps.at(10, Tap::Placed, {"piece-1"});
  const AppointmentLog file = taps.log;
  taps.wallShift_ms = -60 * 60000;  // the clock is set back by an hour
  taps.at(30, Tap::TakenOut, {"piece-1"});
  for (const AppointmentLog& both : {joined(file, taps.log), joined(taps.log, file)}) {
    CHECK(both == taps.log);
    const PieceNow piece = stateAt(both, secondsAt(both, taps.clock(30))).at("piece-1");
    CHECK(piece.stage == Stage::TakenOut);
    CHECK(*piece.placed_s == 600);
  }
  // Each went on by itself: by the time since the tap that both have, numbered anew.
  Taps here, there;
  here.log = there.log = file;
  there.run = "two";
  there.wallShift_ms = 4 * 60000;  // its clock is ahead
  here.at(20, Tap::Looked, {"piece-1"}, 7);
  there.log.events[1].run = "two";
  here.log.events[1].run = "two";
  there.at(15, Tap::Placed, {"piece-2"});
  there.at(25, Tap::Placed, {"piece-3"});
  here.log.events[0].takenBack = true;
  here.log.events[1].takenBack = true;
  const AppointmentLog both = joined(there.log, here.log);
  REQUIRE(both.events.size() == 5);
  std::vector<std::string> order;
  for (const LogEvent& event : both.events) order.push_back(event.pieces.empty() ? "bowl" : event.pieces.front());
  CHECK(order == std::vector<std::string>{"bowl", "piece-1", "piece-2", "piece-1", "piece-3"});
  for (int i = 0; i < 5; ++i) CHECK(both.events[static_cast<std::size_t>(i)].number == i + 1);
  CHECK(both.events[0].takenBack);        // a bowl is older rather than newer
  CHECK_FALSE(both.events[1].takenBack);  // product may be on it
  CHECK(joined(both, here.log) == both);
}

TEST_CASE("a wall clock set back shortens nothing while one clock runs through, and is told", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-1"});
  taps.wallShift_ms = -3'600'000;
  CHECK(secondsAt(taps.log, taps.clock(5)) == Approx(300));
  CHECK(unknownSince_s(taps.log, taps.clock(5)) == 0);
  taps.at(10, Tap::Placed, {"piece-2"});  // same run: the steady clock knows
  CHECK(*stateAt(taps.log, 1e9).at("piece-2").placed_s == Approx(600));
  CHECK(kindsOf(problemsOf(plan, taps.log)) == std::vector<std::string>{"clock-set-back"});
  taps.wallShift_ms = 0;
  taps.at(26, Tap::Looked, {"piece-2"});
  CHECK(taps.log.events.back().at_s == Approx(26 * 60));
  CHECK(kindsOf(problemsOf(plan, taps.log)).back() == "clock-jumped");
}

TEST_CASE("a clock set back between two runs leaves the time unknown, and that is told at once", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-1"});
  taps.run = "two";  // the computer was started anew, and its clock is an hour behind
  taps.wallShift_ms = -3'600'000;
  CHECK(secondsAt(taps.log, taps.clock(20)) == 0);  // not known, and so it is said:
  CHECK(unknownSince_s(taps.log, taps.clock(20)) == Approx(2400));
  taps.at(20, Tap::Placed, {"piece-3"});
  CHECK(unknownSince_s(taps.log, taps.clock(21)) == 0);
  CHECK(kindsOf(problemsOf(plan, taps.log)) == std::vector<std::string>{"time-unknown"});
  // Taps of another run between do not take this run's clock away.
  taps.run = "one";
  taps.wallShift_ms = 0;
  CHECK(secondsAt(taps.log, taps.clock(30)) == Approx(1800));
}

TEST_CASE("hair that only wall clocks counted is told until it is rinsed", "[work][log]") {
  Taps taps;
  CHECK_FALSE(wallClocksSince_utc_ms(taps.log, taps.clock(0)));
  taps.at(0, Tap::Placed, {"piece-1"});
  taps.at(2, Tap::Placed, {"piece-2"});
  CHECK_FALSE(wallClocksSince_utc_ms(taps.log, taps.clock(3)));  // one clock
  taps.run = "two";  // started anew; its wall clock goes on, or seems to
  const auto since = wallClocksSince_utc_ms(taps.log, taps.clock(9));
  REQUIRE(since);
  CHECK(*since == taps.log.events.back().utc_ms);
  taps.at(10, Tap::Placed, {"piece-3"});
  CHECK(wallClocksSince_utc_ms(taps.log, taps.clock(11)) == since);  // of those before, still
  taps.at(12, Tap::Rinsed, {"piece-1", "piece-2"});
  CHECK_FALSE(wallClocksSince_utc_ms(taps.log, taps.clock(13)));  // piece 3 is of this run
}

TEST_CASE("what is still under product is counted with the time it went on", "[work][log]") {
  Taps taps;
  CHECK_FALSE(onHair(taps.log));
  taps.at(1, Tap::Placed, {"piece-1"});
  const std::int64_t first = taps.log.events.back().utc_ms;
  taps.at(3, Tap::Placed, {"piece-2", "piece-3"});
  CHECK(onHair(taps.log) == OnHair{3, first});
  taps.at(5, Tap::Rinsed, {"piece-1"});
  CHECK(onHair(taps.log)->pieces == 2);
  CHECK(onHair(taps.log)->first_utc_ms > first);
  plan::Plan plan = loggedPlan();
  plan::PlanInfo info = plan.info();
  info.logJson = writeLog(taps.log);
  plan.put(plan::kPlanId, info);
  CHECK(onHair(plan)->pieces == 2);
  taps.at(6, Tap::TakenOut, {"piece-2"});
  CHECK(onHair(taps.log)->pieces == 2);  // out of the foil it may still have product on it
  taps.at(7, Tap::Rinsed, {"piece-2", "piece-3"});
  CHECK_FALSE(onHair(taps.log));
  info.logJson = "{";
  plan.put(plan::kPlanId, info);
  CHECK_FALSE(onHair(plan));
}

TEST_CASE("what is odd is told and nothing is lost of it", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(5, Tap::TakenOut, {"piece-2"});
  taps.at(6, Tap::Placed, {"piece-1"});
  taps.at(7, Tap::Placed, {"piece-1"});
  taps.at(8, Tap::Placed, {"piece-99"});
  taps.log.events[3].at_s = 1;  // changed by hand in the file
  CHECK(kindsOf(problemsOf(plan, taps.log)) ==
        std::vector<std::string>{"out-before-placed", "placed-twice", "time-out-of-order", "piece-unknown"});
  const auto state = stateAt(taps.log, 1e9);
  CHECK(state.size() == 3);
  CHECK(*state.at("piece-1").placed_s == Approx(60));  // the first tap counts
  CHECK(*state.at("piece-99").placed_s == Approx(120));  // not before what came before it
}

TEST_CASE("a new log begins after the taps of another visit", "[work][log]") {
  const plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::BowlMixed, {});
  taps.at(1, Tap::Placed, {"piece-1"});
  taps.at(40, Tap::Rinsed, {"piece-1"});
  taps.at(41, Tap::Looked, {"piece-1"}, 8);
  constexpr double kLater_min = 200.0 * 24 * 60;  // half a year on
  taps.run = "another run";
  taps.at(kLater_min, Tap::Begun, {});
  CHECK(stateAt(taps.log, 1e18).empty());
  CHECK(bowlsAt(plan, taps.log, 1e18).empty());
  CHECK(tapsOfVisit(taps.log).empty());
  taps.at(kLater_min + 2, Tap::Placed, {"piece-1"});
  taps.at(kLater_min + 3, Tap::TakenOut, {"piece-2"});
  CHECK(tapsOfVisit(taps.log).size() == 2);
  const auto state = stateAt(taps.log, 1e18);
  CHECK(state.at("piece-1").stage == Stage::Placed);
  CHECK_FALSE(state.at("piece-1").came);
  CHECK(timersAt(plan, taps.log, secondsAt(taps.log, taps.clock(kLater_min + 12))).at(0).onHair_s == Approx(600));
  CHECK(kindsOf(problemsOf(plan, taps.log)) == std::vector<std::string>{"out-before-placed"});  // not placed in this visit
  const auto read = readLog(writeLog(taps.log));
  REQUIRE(read);
  CHECK(*read == taps.log);
  // Taken back it brings the taps before it to count again.
  for (int i = 0; i < 3; ++i) taps.log = withLastTakenBack(taps.log);
  CHECK(stateAt(taps.log, 1e18).at("piece-1").came == 8);
}

TEST_CASE("a visit that was not begun in time begins after the longest rest", "[work][log]") {
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-1"});
  taps.at(40, Tap::Rinsed, {"piece-1"});
  constexpr double kNextDay_min = 20.0 * 60;
  constexpr double kRest_s = 6 * 3600;
  LogEvent begun;
  begun.tap = Tap::Begun;
  CHECK_FALSE(withVisitBegun(taps.log, begun, taps.clock(60), kRest_s));
  const auto atEnd = withVisitBegun(taps.log, begun, taps.clock(kNextDay_min), kRest_s);
  REQUIRE(atEnd);
  CHECK(tapsOfVisit(*atEnd).empty());
  taps.at(kNextDay_min, Tap::Placed, {"piece-2"});  // she went straight on
  taps.at(kNextDay_min + 2, Tap::Placed, {"piece-3"});
  const auto between = withVisitBegun(taps.log, begun, taps.clock(kNextDay_min + 3), kRest_s);
  REQUIRE(between);
  REQUIRE(tapsOfVisit(*between).size() == 2);
  CHECK(tapsOfVisit(*between)[0].pieces == std::vector<plan::ItemId>{"piece-2"});
  CHECK(stateAt(*between, 1e18).count("piece-1") == 0);
  CHECK(problemsOf(loggedPlan(), *between).empty());
  // Whether hair is light goes by all visits.
  const auto all = treatedInAll(*between);
  CHECK(all.at("piece-1").stage == Stage::Rinsed);
  CHECK(all.at("piece-3").stage == Stage::Placed);
  CHECK(wasPlaced(all, "piece-1"));
  CHECK_FALSE(wasPlaced(all, "piece-4"));
}

TEST_CASE("the last tap that stands is taken back, of all or of one piece, and brought back", "[work][log]") {
  Taps taps;
  CHECK_FALSE(lastStanding(taps.log));
  taps.at(1, Tap::Placed, {"piece-1"});
  taps.at(2, Tap::Rinsed, {"piece-1"});  // by mistake
  taps.at(3, Tap::Placed, {"piece-2"});
  const AppointmentLog whole = taps.log;
  CHECK(lastStanding(whole) == 2U);
  CHECK(lastStanding(whole, "piece-1") == 1U);
  CHECK_FALSE(lastStanding(whole, "piece-9"));
  taps.log = withTakenBack(whole, 1);
  CHECK(stateAt(taps.log, 1e9).at("piece-1").stage == Stage::Placed);
  CHECK(*stateAt(taps.log, 1e9).at("piece-1").placed_s == 0);  // its time counts on
  CHECK(lastStanding(taps.log, "piece-1") == 0U);
  CHECK(withTakenBack(taps.log, 1, false) == whole);
}

TEST_CASE("a limit stays with hair under product whose piece or formula went", "[work][log]") {
  plan::Plan plan = loggedPlan();
  CHECK(typedLimits(plan, {"piece-1", "piece-4", "gone"}) == std::map<plan::ItemId, double>{{"piece-1", 1800}});
  LogEvent placed;
  placed.tap = Tap::Placed;
  placed.pieces = {"piece-1"};
  placed.limits_s = typedLimits(plan, placed.pieces);
  Taps taps;
  taps.log = appended(taps.log, placed, taps.clock(0));
  taps.at(5, Tap::TakenOut, {"piece-1"});
  REQUIRE(readLog(writeLog(taps.log)));
  CHECK(*readLog(writeLog(taps.log)) == taps.log);
  const auto says = [&](const plan::Plan& with) {
    const auto timers = timersAt(with, taps.log, 31 * 60);
    REQUIRE(timers.size() == 1);
    CHECK(timers[0].say == Say::LimitReached);
    const auto first = lookFirst(with, taps.log, 31 * 60);
    REQUIRE(first.size() == 1);
    CHECK(first[0].reason == LookReason::LimitReached);  // taken out, and product is still on it
  };
  says(plan);
  plan::Plan without = plan;
  without.put("formula-1", plan::ItemPtr());
  says(without);
  without.put("piece-1", plan::ItemPtr());
  says(without);
  // A longer time that is typed while the formula stands is a correction.
  plan::Formula longer = *plan.find<plan::Formula>("formula-1");
  longer.leaflet.longestTime_min = 45;
  plan.put("formula-1", longer);
  CHECK(timersAt(plan, taps.log, 31 * 60).at(0).say == Say::Look);
}

TEST_CASE("a new piece does not take over what the log holds of one that went", "[work][log]") {
  plan::Plan plan = loggedPlan();
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-4"});
  plan::PlanInfo info = plan.info();
  info.logJson = writeLog(taps.log);
  plan.put(plan::kPlanId, info);
  plan.put("piece-4", plan::ItemPtr());
  CHECK(plan.freeId("piece") == "piece-5");
  info.logJson = R"({"note": "she said \"no\"", "pieces": ["piece-5", "piece-12"]})";
  plan.put(plan::kPlanId, info);
  CHECK(plan::recordedIds(info) == std::set<plan::ItemId>{"piece-5", "piece-12"});
  CHECK(plan.freeId("piece") == "piece-4");
}

TEST_CASE("what was planned when a piece was placed stays with the tap", "[work][log]") {
  plan::Plan plan = loggedPlan();
  CHECK(plannedLifts(plan, {"piece-1", "gone"}) == std::map<plan::ItemId, plan::LiftsTo>{{"piece-1", {8, 7, 9}}});
  LogEvent placed;
  placed.tap = Tap::Placed;
  placed.pieces = {"piece-1"};
  placed.planned = plannedLifts(plan, placed.pieces);
  Taps taps;
  taps.log = appended(taps.log, placed, taps.clock(0));
  taps.at(30, Tap::Rinsed, {"piece-1"});
  taps.at(31, Tap::Looked, {"piece-1"}, 6.5);
  // A finish that is tried writes the level that came into the plan.
  plan::Piece tried = *plan.find<plan::Piece>("piece-1");
  tried.root.lifts = {6.5, 6.5, 6.5};
  plan.put("piece-1", tried);
  const auto outcomes = plannedAgainstGot(plan, taps.log);
  REQUIRE(outcomes.size() == 1);
  CHECK(outcomes[0].planned == plan::LiftsTo{8, 7, 9});
  CHECK(outcomes[0].got == 6.5);
  CHECK_FALSE(outcomes[0].inSpan);
}

TEST_CASE("a piece placed from a formula that nobody mixed is odd where bowls are tapped", "[work][log]") {
  plan::Plan plan = loggedPlan();
  plan.put("formula-2", plan::Formula{});
  plan::Piece other = *plan.find<plan::Piece>("piece-2");
  other.root.formula = "formula-2";
  plan.put("piece-2", other);
  Taps taps;
  taps.at(0, Tap::Placed, {"piece-2"});
  CHECK(problemsOf(plan, taps.log).empty());  // no bowl was ever tapped
  taps.at(1, Tap::BowlMixed, {});
  taps.at(2, Tap::Placed, {"piece-1"});
  CHECK(problemsOf(plan, taps.log).empty());
  taps.at(3, Tap::Rinsed, {"piece-2"});
  taps.at(4, Tap::Placed, {"piece-2"});
  const auto problems = problemsOf(plan, taps.log);
  CHECK(kindsOf(problems) == std::vector<std::string>{"bowl-not-mixed"});
  CHECK(problems[0].piece == "piece-2");
  taps.at(5, Tap::Placed, {"piece-4"});  // names no formula
  CHECK(problemsOf(plan, taps.log).size() == 1);
}

TEST_CASE("a log read again is the same with what later programs add", "[work][log]") {
  Taps taps;
  taps.at(0, Tap::BowlMixed, {});
  taps.at(1.5, Tap::Placed, {"piece-1", "piece-2"});
  taps.at(9, Tap::Looked, {"piece-1"}, 7.5);
  taps.log.events[2].pigment = "gold \"warm\"";
  taps.log.events[2].who = "M";
  taps.log.events[1].planned = {{"piece-1", {8, 7, 9}}, {"piece-2", {6.5, 6, 7}}};
  taps.log = withLastTakenBack(taps.log);
  taps.log.events[1].extra["later"] = "{\"a\": [1, 2]}";
  taps.log.extra["screen"] = "\"kept awake\"";
  const std::string text = writeLog(taps.log);
  const auto read = readLog(text);
  REQUIRE(read);
  CHECK(*read == taps.log);
  CHECK(writeLog(*read) == text);
  CHECK(writeLog({}).empty());
  CHECK(readLog("")->events.empty());
}

TEST_CASE("a damaged log is refused with its place", "[work][log]") {
  const auto place = [](const std::string& json) {
    const auto read = readLog(json);
    return read ? std::string("read") : read.error().where + " " + codeName(read.error().code);
  };
  const std::string ok = R"("number": 1, "tap": "placed", "at_s": 3, "utc_ms": 7)";
  CHECK(place("{\"events\": [{" + ok + "}]}") == "read");
  CHECK(place("{\"events\": 3}") == "/events field-wrong-type");
  CHECK(place("[1]") == " field-wrong-type");
  CHECK(place("{\"events\": [{" + ok + ", \"level\": 40}]}") == "/events/0/level field-out-of-range");
  CHECK(place("{\"events\": [{" + ok + ", \"planned\": {\"piece-1\": [8, 7, 9]}}]}") == "read");
  CHECK(place("{\"events\": [{" + ok + ", \"planned\": {\"piece-1\": [8, 7]}}]}") == "/events/0/planned field-wrong-type");
  CHECK(place("{\"events\": [{" + ok + ", \"planned\": {\"piece-1\": [8, 7, 13]}}]}") == "/events/0/planned field-wrong-type");
  CHECK(place("{\"events\": [{" + ok + ", \"pieces\": [3]}]}") == "/events/0/pieces field-wrong-type");
  CHECK(place(R"({"events": [{"number": 1, "tap": "placed", "utc_ms": 7}]})") == "/events/0 field-missing");
  CHECK(place(R"({"events": [{"number": 1, "tap": "thrown", "at_s": 3, "utc_ms": 7}]})") == "/events/0/tap field-unknown-word");
  CHECK(place(R"({"events": [{"number": 1, "tap": "placed", "at_s": -3, "utc_ms": 7}]})") == "/events/0/at_s field-out-of-range");
  CHECK(place(R"({"events": [{"number": 1, "tap": "placed", "at_s": 3, "utc_ms": 7.5}]})") == "/events/0/utc_ms field-wrong-type");
  CHECK(readLog("{\"events\": [").error().code == ErrorCode::JsonSyntax);
}
