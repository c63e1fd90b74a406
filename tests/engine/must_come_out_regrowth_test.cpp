// Must come out (5), in time: the lower light starts, the later the regrowth
// shows. Common practice, no source. And the bounds of the measure: nothing grows
// out of a plan without pieces, light from the scalp shows early.
#include <catch2/catch.hpp>

#include "engine/look/regrowth.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Every piece of the usual mixture, or half of all hair, from `start_mm`.
plan::Plan startingAt(std::uint64_t number, double start_mm, plan::Backcomb backcomb = {}) {
  plan::Plan plan = mixedPlan(number);
  for (const auto& [id, listed] : plan.pieces("choice-1")) {
    plan::Piece piece = *listed;
    piece.start_mm = start_mm;
    piece.backcomb = backcomb;
    plan.put(id, piece);
  }
  return plan;
}
plan::Plan halfOfAll(std::uint64_t number, double start_mm) {
  plan::Plan plan = plan::Plan::fresh(number);
  plan::Piece kind = slice({}, 10);
  kind.start_mm = start_mm;
  kind.taken_frac = 0.5;
  for (const plan::Piece& ring : ringsOverAll(head::HeadShape(), kind)) addPiece(plan, ring);
  return plan;
}

constexpr double kNever = 1e9;
double weekOf(const look::Regrowth& r) { return r.week.value_or(kNever); }

void laterTheLower(std::uint64_t seed, int locks) {
  CAPTURE(locks);
  look::RegrowthSearch search(locks);
  const auto weeksOf = [&](const plan::Plan& plan) { return search.update(plan, {}, {}).value(); };
  for (const bool usual : {true, false}) {
    std::vector<look::Regrowth> before;
    for (const double start_mm : {6.0, 20.0, 45.0}) {
      const std::vector<look::Regrowth> now =
          weeksOf(usual ? startingAt(seed, start_mm) : halfOfAll(seed, start_mm));
      REQUIRE(now.size() == 2);
      CHECK(now[0].way == hair::WornWay::Down);
      CHECK(now[1].way == hair::WornWay::TiedBack);
      for (std::size_t k = 0; k < 2; ++k) {
        CAPTURE(seed, usual, start_mm, k, weekOf(now[k]));
        if (now[k].week) {
          CHECK(*now[k].week > 0);
          CHECK(*now[k].week <= 26);
          REQUIRE(now[k].earliest);
          CHECK(*now[k].earliest < *now[k].week);
          if (now[k].latest) CHECK(*now[k].latest > *now[k].week);
        }
        if (before.empty()) CHECK(now[k].week);
        else if (before[k].week) CHECK(weekOf(now[k]) > weekOf(before[k]) + 1);
        else CHECK(!now[k].week);
      }
      before = now;
    }
  }
  // Backcombing makes it later.
  const auto plain = weeksOf(startingAt(seed, 6)), combed = weeksOf(startingAt(seed, 6, {60, 0.5, 28}));
  for (std::size_t k = 0; k < 2; ++k) CHECK(weekOf(combed[k]) > weekOf(plain[k]));
}

}  // namespace

TEST_CASE("the lower light starts, the later the regrowth shows (common practice, no source)",
          "[look][regrowth][must-come-out]") {
  for (const std::uint64_t seed : {1, 2, 3, 4, 5}) laterTheLower(seed, 8000);
}

TEST_CASE("the lower the start, the later the regrowth, with 30,000 locks", "[look][regrowth][must-come-out]") {
  laterTheLower(6, 30000);
}

TEST_CASE("nothing grows out of a plan without light, and light from the scalp shows early",
          "[look][regrowth]") {
  look::RegrowthSearch search;
  const auto weeksOf = [&](const plan::Plan& plan) { return search.update(plan, {}, {}).value(); };
  const std::vector<look::Regrowth> none = weeksOf(plan::Plan::fresh(1)), early = weeksOf(halfOfAll(1, 0)),
                                    found = weeksOf(halfOfAll(1, 12));
  for (const look::Regrowth& r : none) {
    CHECK(!r.week);
    CHECK(!r.earliest);
    CHECK(!r.latest);
  }
  CHECK(search.seenChange(plan::Plan::fresh(1), {}, hair::WornWay::Down, 26, {}).value() < 1e-3);
  for (const look::Regrowth& r : early) {
    REQUIRE(r.week);
    CHECK(*r.week < 6);
  }
  // The week is where the seen change crosses the tolerance, and the range of the
  // week is at least that of the growth [Loussouarn2005].
  for (const look::Regrowth& r : found) {
    REQUIRE(r.week);
    CHECK(search.seenChange(halfOfAll(1, 12), {}, r.way, *r.week, {}).value() == Approx(5).margin(0.4));
    CHECK(*r.earliest <= *r.week * 2.58 / 3.0 + 1e-9);
    REQUIRE(r.latest);
    CHECK(*r.latest >= *r.week * 2.58 / 1.84 - 1e-9);
  }
  // Less patient clients see it sooner.
  plan::Plan strict = halfOfAll(1, 12);
  plan::PlanInfo info = strict.info();
  info.assumptions["regrowth.tolerance_L"] = 3;
  strict.put(plan::kPlanId, info);
  CHECK(*weeksOf(strict)[0].week < *found[0].week);
}

TEST_CASE("a search for regrowth can be stopped and goes on afterwards", "[look][regrowth]") {
  look::RegrowthSearch search(2000);
  std::stop_source stopped;
  stopped.request_stop();
  const auto none = search.update(halfOfAll(1, 6), {}, stopped.get_token());
  REQUIRE(!none);
  CHECK(none.error().code == ErrorCode::Cancelled);
  CHECK(search.update(halfOfAll(1, 6), {}, {}).value().size() == 2);
}
