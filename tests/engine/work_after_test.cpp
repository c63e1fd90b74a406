// After the rinse: toning and corrections, planned against got, the next visit.
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/base/random.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/work/log_text.h"
#include "engine/work/next_visit.h"
#include "engine/work/outcome.h"
#include "engine/work/toning.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::work;

namespace {

plan::Plan rinsedPlan() {
  plan::Plan plan = plan::Plan::fresh(5);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  for (int i = 0; i < 4; ++i) {
    plan::Piece piece = i < 2 ? backSlice(shape, 20 - 14 * i, 60, 5) : topSlice(shape, 10.0 * i, 20, -20, 5);
    piece.order = i + 1;
    piece.root.lifts = piece.end.lifts = {9, 8, 9.5};
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  return plan;
}

AppointmentLog seen(const std::vector<std::pair<std::string, double>>& levels) {
  AppointmentLog log;
  for (const auto& [piece, level] : levels) {
    LogEvent event;
    event.pieces = {piece};
    event.tap = Tap::Rinsed;
    log = appended(log, event, {1'700'000'000'000, {}, {}});
    event.tap = Tap::Looked;
    event.level = level;
    log = appended(log, event, {1'700'000'000'000, {}, {}});
  }
  return log;
}

const plan::Piece& pieceOf(const plan::Plan& plan, const char* id) { return *plan.find<plan::Piece>(id); }

}  // namespace

TEST_CASE("a level seen with product on is no result", "[work][toning]") {
  const plan::Plan plan = rinsedPlan();
  AppointmentLog log;
  const auto tap = [&](Tap kind, std::optional<double> level) {
    LogEvent event;
    event.tap = kind;
    event.pieces = {"piece-1"};
    event.level = level;
    log = appended(log, event, {1'700'000'000'000, {}, {}});
  };
  tap(Tap::Placed, {});
  tap(Tap::Looked, 9.5);
  tap(Tap::Rinsed, {});
  CHECK(levelsByZone(plan, log).empty());
  CHECK(plannedAgainstGot(plan, log).empty());
  CHECK(stateAt(log, 1e9).at("piece-1").level == 9.5);  // it stays in the log
  tap(Tap::Looked, 8);
  REQUIRE(levelsByZone(plan, log).size() == 1);
  CHECK(levelsByZone(plan, log)[0].level == 8);
  CHECK(plannedAgainstGot(plan, log).at(0).got == 8);
  tap(Tap::Placed, {});  // again
  CHECK(levelsByZone(plan, log).empty());
}

TEST_CASE("levels after the rinse are gathered by zone", "[work][toning]") {
  const auto zones = levelsByZone(rinsedPlan(), seen({{"piece-1", 7}, {"piece-1", 8}, {"piece-2", 9}, {"piece-3", 7.5}}));
  REQUIRE(zones.size() == 2);
  CHECK(zones[0].zone == plan::HairZone::Top);
  CHECK(zones[0].level == 7.5);
  CHECK(zones[1].zone == plan::HairZone::Back);
  CHECK(zones[1].level == 8.5);  // the last look at a piece counts
  CHECK(zones[1].low == 8);
  CHECK(zones[1].high == 9);
  CHECK(zones[1].planned == 9);
}

TEST_CASE("remaining pigment goes from red to pale yellow", "[work][toning]") {
  // Common practice, no source: the order of the stages of lightening.
  CHECK(pigmentWord(3) == "red");
  CHECK(pigmentWord(5.2) == "orange");
  CHECK(pigmentWord(7) == "gold");
  CHECK(pigmentWord(9) == "yellow");
  CHECK(pigmentWord(12) == "pale yellow");
  CHECK(pigmentWord(-3) == "plum black");
}

TEST_CASE("a typed finish goes on the level that came and never lightens", "[work][toning]") {
  const plan::Plan plan = rinsedPlan();
  const AppointmentLog log = seen({{"piece-1", 8}, {"piece-3", 7}});
  const auto edit = toned(plan, log, {{std::nullopt, {7, plan::Tone::Beige}}, {plan::HairZone::Back, {7.5, plan::Tone::Ash}}});
  REQUIRE(edit);
  const plan::Plan after = plan::applied(plan, *edit);
  CHECK(pieceOf(after, "piece-1").root.lifts.level == 8);
  CHECK(pieceOf(after, "piece-1").root.finish->tone == plan::Tone::Ash);
  CHECK(pieceOf(after, "piece-2").root.lifts.level == 8);  // its zone's
  CHECK(pieceOf(after, "piece-3").end.finish->level == 7);
  CHECK(plan::applied(after, plan::inverse(*edit)) == plan);
  const auto lighter = toned(plan, log, {{plan::HairZone::Top, {7.5, plan::Tone::Beige}}});
  REQUIRE_FALSE(lighter);
  CHECK(lighter.error().where == "top");
  CHECK(toned(plan, {}, {{std::nullopt, {12, plan::Tone::Ash}}})->empty());  // nothing was seen
}

TEST_CASE("no correction brings more light", "[work][toning]") {
  const plan::Plan plan = rinsedPlan();
  const auto deeper = deepened(plan, {"piece-1"}, {6, plan::Tone::Natural});
  REQUIRE(deeper);
  const plan::Plan dark = plan::applied(plan, *deeper);
  CHECK(pieceOf(dark, "piece-1").action == plan::Action::Deepen);
  CHECK_FALSE(bringsMoreLight(plan, dark));
  CHECK_FALSE(bringsMoreLight(plan, plan::applied(plan, leftOut(plan, {"piece-2"}))));
  plan::Treatment shadow;
  shadow.to_mm = 30;
  const plan::Plan shaded = plan::applied(plan, rootShadow(plan, shadow));
  CHECK(shaded.treatments().size() == 1);
  CHECK_FALSE(bringsMoreLight(plan, shaded));
  CHECK_FALSE(deepened(plan, {"piece-1"}, {9.5, plan::Tone::Natural}));  // lighter than it is
  CHECK_FALSE(deepened(plan, {"piece-77"}, {5, plan::Tone::Natural}));
  // The guard sees light that comes back.
  CHECK(bringsMoreLight(dark, plan) == plan::ItemId("piece-1"));
  for (const auto change : std::initializer_list<void (*)(plan::Piece&)>{
           [](plan::Piece& p) { p.start_mm -= 5; }, [](plan::Piece& p) { p.root.lifts.level += 0.5; },
           [](plan::Piece& p) { p.thickness_mm += 1; }, [](plan::Piece& p) { p.root.finish->level += 0.4; }}) {
    plan::Plan changed = plan;
    plan::Piece piece = pieceOf(plan, "piece-2");
    change(piece);
    changed.put("piece-2", piece);
    CHECK(bringsMoreLight(plan, changed) == plan::ItemId("piece-2"));
    CHECK_FALSE(bringsMoreLight(changed, plan));
  }
}

TEST_CASE("own factors say how many heads stand behind them and can be undone", "[work][outcome]") {
  OwnFactors factors;
  CHECK_FALSE(learned(factors, Factor::Speed));
  factors = withHead(factors, {"2026-01-02", {1.2, 8.0, {}, {}}}).value();
  factors = withHead(factors, {"2026-02-02", {0.8, {}, 0.2, {}}}).value();
  CHECK(learned(factors, Factor::Speed)->value == Approx(1.0));
  CHECK(learned(factors, Factor::Speed)->heads == 2);
  CHECK(learned(factors, Factor::ProductPerHair)->heads == 1);
  CHECK(*readFactors(writeFactors(factors)) == factors);
  const auto own = withFactors(withHead(factors, {"", {1.6, {}, {}, {}}}).value(), {{"work.weave_min", 3}});
  CHECK(own.at("work.slice_min") == Approx(1.2));
  CHECK(own.at("work.weave_min") == 3);  // what the plan has itself wins
  CHECK(own.at("amount.product_per_hair") == 8);
  factors = withoutLastHead(factors);
  CHECK(learned(factors, Factor::Speed)->value == Approx(1.2));
  CHECK(withoutLastHead({}).heads.empty());
  for (const double bad : {0.0, -1.0, 21.0, std::nan("")}) CHECK_FALSE(withHead(factors, {"", {bad, {}, {}, {}}}));
  CHECK_FALSE(readFactors(R"({"heads": [{"speed": "fast"}]})"));
  CHECK_FALSE(readFactors(R"({"heads": 3})"));
}

TEST_CASE("speed and product are learned from what was logged and weighed", "[work][outcome]") {
  const plan::Plan plan = rinsedPlan();  // four slices of 1 min each
  AppointmentLog log;
  const auto tap = [&](double minute, Tap kind, const char* piece, const char* who) {
    LogEvent event;
    event.tap = kind;
    event.pieces = {piece};
    event.who = who;
    log = appended(log, event, {static_cast<std::int64_t>(minute * 60000), {}, {}});
  };
  tap(0, Tap::Placed, "piece-1", "M");
  tap(2, Tap::Placed, "piece-2", "M");
  tap(4, Tap::Placed, "piece-3", "M");
  CHECK_FALSE(speedFrom(plan, log));  // two steps are too few
  tap(5, Tap::Looked, "piece-1", "M");
  tap(60, Tap::Placed, "piece-4", "M");  // after a look: no step of placing
  CHECK_FALSE(speedFrom(plan, log));
  tap(62, Tap::Placed, "piece-1", "M");
  CHECK(*speedFrom(plan, log) == Approx(2));
  CHECK(usedProduct(120, 20, 10)->perHair == Approx(10));
  CHECK(usedProduct(120, 20, 10)->waste_share == Approx(0.2));
  CHECK_FALSE(usedProduct(120, 120, 10));
  CHECK_FALSE(usedProduct(0, 0, 10));
  CHECK_FALSE(usedProduct(120, -1, 10));
  CHECK_FALSE(usedProduct(120, 20, 0));
}

TEST_CASE("planned against got is told piece by piece", "[work][outcome]") {
  const auto outcomes = plannedAgainstGot(rinsedPlan(), seen({{"piece-1", 8.5}, {"piece-2", 7}}));
  REQUIRE(outcomes.size() == 2);
  CHECK(outcomes[0].planned.level == 9);
  CHECK(outcomes[0].got == 8.5);
  CHECK(outcomes[0].inSpan);
  CHECK_FALSE(outcomes[1].inSpan);
}

TEST_CASE("the next visit begins with today's result grown out", "[work][next]") {
  const plan::Plan plan = rinsedPlan();
  const auto edit = grownOut(plan, {}, 10);
  REQUIRE(edit);
  const plan::Plan next = plan::applied(plan, *edit);
  const double grown = 10 * 2.58;  // [Loussouarn2005]: 11.2 mm a month
  CHECK(next.hair().length_mm[0] == Approx(plan.hair().length_mm[0] + grown));
  REQUIRE_FALSE(next.hair().scattered.empty());
  for (const plan::ScatteredLight& light : next.hair().scattered) {
    CHECK(light.from_mm == Approx(20 + grown));
    CHECK(light.level == Approx(9));
    CHECK(light.share_frac > 0);
    CHECK(light.share_frac < 0.2);
  }
  CHECK_FALSE(grownOut(plan, {}, -1));
  CHECK_FALSE(grownOut(plan, {}, std::nan("")));
  const auto repeat = piecesToRepeat(plan, {}, 10, 40);
  REQUIRE(repeat.size() == 4);
  CHECK(repeat[0].start_mm == Approx(20 + grown));
  CHECK(repeat[0].repeat);
  CHECK_FALSE(piecesToRepeat(plan, {}, 10, 50)[0].repeat);
}

TEST_CASE("a finish leaves pieces alone that were skipped", "[work][toning]") {
  const plan::Plan plan = rinsedPlan();
  AppointmentLog log = seen({{"piece-1", 8}});
  LogEvent placed;
  placed.tap = Tap::Placed;
  placed.pieces = {"piece-1"};
  log.events.insert(log.events.begin(), placed);
  const auto edit = toned(plan, log, {{std::nullopt, {7, plan::Tone::Beige}}});
  REQUIRE(edit);
  const plan::Plan after = plan::applied(plan, *edit);
  CHECK(pieceOf(after, "piece-1").root.finish->level == 7);
  CHECK(pieceOf(after, "piece-2") == pieceOf(plan, "piece-2"));  // the same zone
}

TEST_CASE("the next visit counts what was placed and came and not what was skipped", "[work][next]") {
  plan::Plan plan = rinsedPlan();
  AppointmentLog log = seen({{"piece-1", 7}});
  LogEvent placed;
  placed.tap = Tap::Placed;
  placed.number = 1;
  placed.pieces = {"piece-1", "piece-3"};
  log.events.insert(log.events.begin(), placed);
  plan::PlanInfo info = plan.info();
  info.logJson = writeLog(log);
  plan.put(plan::kPlanId, info);
  const auto edit = grownOut(plan, {}, 0);
  REQUIRE(edit);
  const plan::Plan next = plan::applied(plan, *edit);
  const auto& light = next.hair().scattered;
  plan::Plan bare = rinsedPlan();
  for (const char* skipped : {"piece-2", "piece-4"}) bare.put(skipped, plan::ItemPtr());
  const auto expected = amountsOf(bare, {{}, {}, 40'000});
  REQUIRE(expected);
  REQUIRE_FALSE(light.empty());
  for (const plan::ScatteredLight& one : light) {
    REQUIRE(one.zone);
    CHECK(one.share_frac == Approx(expected->zones[static_cast<std::size_t>(*one.zone)].share_frac()));
  }
  const auto back = std::find_if(light.begin(), light.end(), [](const plan::ScatteredLight& one) { return one.level < 8; });
  REQUIRE(back != light.end());
  CHECK(back->level == Approx(7));  // piece-1 came at 7; piece-3 was not looked at and stands as planned
  const auto repeat = piecesToRepeat(plan, {}, 10, 40);
  REQUIRE(repeat.size() == 4);
  CHECK(repeat[0].wasPlaced);
  CHECK_FALSE(repeat[1].wasPlaced);
}

TEST_CASE("hair that an earlier visit of the plan lightened is light at the next", "[work][next]") {
  plan::Plan plan = rinsedPlan();
  AppointmentLog log;
  const auto tap = [&](Tap kind, std::vector<plan::ItemId> pieces) {
    LogEvent event;
    event.tap = kind;
    event.pieces = std::move(pieces);
    log = appended(log, event, {1'700'000'000'000, {}, {}});
  };
  tap(Tap::Placed, {"piece-1"});
  tap(Tap::Begun, {});
  tap(Tap::Placed, {"piece-3"});
  plan::PlanInfo info = plan.info();
  info.logJson = writeLog(log);
  plan.put(plan::kPlanId, info);
  const auto repeat = piecesToRepeat(plan, {}, 10, 40);
  REQUIRE(repeat.size() == 4);
  CHECK(repeat[0].wasPlaced);
  CHECK_FALSE(repeat[1].wasPlaced);
  CHECK(repeat[2].wasPlaced);
  const auto edit = grownOut(plan, {}, 10);
  REQUIRE(edit);
  const plan::Plan next = plan::applied(plan, *edit);
  const auto isLit = [&](plan::HairZone zone) {
    return std::any_of(next.hair().scattered.begin(), next.hair().scattered.end(), [&](const plan::ScatteredLight& l) { return l.zone == zone; });
  };
  CHECK(isLit(plan::HairZone::Back));
  CHECK(isLit(plan::HairZone::Top));
}

TEST_CASE("a touch-up that ends at old light makes it longer and lightens no other hair", "[work][next]") {
  // Three visits: all, then the new growth only, then what shows.
  const plan::Plan first = rinsedPlan();
  const double grown = 10 * 2.58;  // [Loussouarn2005]
  plan::Plan second = plan::applied(first, *grownOut(first, {}, 10));
  const std::vector<plan::ItemId> pieces{"piece-1", "piece-2", "piece-3", "piece-4"};
  second = plan::applied(second, stoppedAtOldLight(first, second, pieces, 10));
  const auto edit = grownOut(second, {}, 10);
  REQUIRE(edit);
  const plan::Plan third = plan::applied(second, *edit);
  const auto shareOf = [](const plan::Plan& plan, plan::HairZone zone) {
    double share = 0;
    for (const plan::ScatteredLight& light : plan.hair().scattered)
      if (light.zone == zone) share += light.share_frac;
    return share;
  };
  for (const plan::HairZone zone : {plan::HairZone::Back, plan::HairZone::Top}) {
    REQUIRE(shareOf(second, zone) > 0);
    CHECK(shareOf(third, zone) == Approx(shareOf(second, zone)).margin(0.011));  // kSame_frac
  }
  for (const plan::ScatteredLight& light : third.hair().scattered) CHECK(light.from_mm == Approx(20 + grown).margin(0.1));
  // And a touch-up where no light was stays as short as it is.
  plan::Plan alone = second;
  plan::Hair bare = alone.hair();
  bare.scattered.clear();
  alone.put(plan::kHairId, bare);
  const plan::Plan after = plan::applied(alone, *grownOut(alone, {}, 10));
  REQUIRE_FALSE(after.hair().scattered.empty());
  for (const plan::ScatteredLight& light : after.hair().scattered) CHECK(light.to_mm == Approx(20 + grown + grown).margin(0.1));
}

TEST_CASE("old light in more places than the hair has room for is refused", "[work][next]") {
  plan::Plan plan = rinsedPlan();
  plan::Hair hair = plan.hair();
  hair.scattered.resize(plan::limits::kSmallList);
  plan.put(plan::kHairId, hair);
  const auto edit = grownOut(plan, {}, 10);
  REQUIRE_FALSE(edit);
  CHECK(edit.error().code == ErrorCode::TooManyItems);
}

TEST_CASE("repeated pieces stop where their old light begins", "[work][next]") {
  const plan::Plan today = rinsedPlan();
  plan::Plan next = today;
  plan::Piece own = pieceOf(next, "piece-2"), left = pieceOf(next, "piece-3");
  own.stop_mm = 90;
  left.action = plan::Action::LeaveOut;
  next.put("piece-2", own);
  next.put("piece-3", left);
  const plan::Plan stopped = plan::applied(next, stoppedAtOldLight(today, next, {"piece-1", "piece-2", "piece-3", "gone"}, 10));
  CHECK(*pieceOf(stopped, "piece-1").stop_mm == Approx(20 + 10 * 2.58));
  CHECK(*pieceOf(stopped, "piece-2").stop_mm == Approx(20 + 10 * 2.58));  // the stop of a visit before is renewed
  CHECK_FALSE(pieceOf(stopped, "piece-3").stop_mm);
  CHECK_FALSE(pieceOf(stopped, "piece-4").stop_mm);
  CHECK(plan::applied(next, stoppedAtOldLight(today, next, {"piece-1"}, 0)) == next);  // nothing grew
}

TEST_CASE("repeating everything uses up what is left out", "[work][next]") {
  CHECK(leftOutAfter(0.4, 3).samePieces_frac == Approx(0.6));
  CHECK(leftOutAfter(0.4, 3).anywhere_frac == Approx(0.216));
  CHECK(leftOutAfter(0.4, 0).anywhere_frac == 1);
  CHECK(leftOutAfter(1.7, 1).samePieces_frac == 0);
  // The same by drawing: hairs that are taken at random at each of three visits.
  int left = 0;
  constexpr int kHairs = 200'000;
  for (std::uint64_t hair = 0; hair < kHairs; ++hair) {
    bool dark = true;
    for (std::uint32_t visit = 0; visit < 3; ++visit) dark = dark && randomUniform(1, hair, visit) >= 0.4;
    left += dark;
  }
  CHECK(left / static_cast<double>(kHairs) == Approx(leftOutAfter(0.4, 3).anywhere_frac).margin(0.004));
}
