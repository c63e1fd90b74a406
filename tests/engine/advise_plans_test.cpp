// The advisor on whole plans: what it offers helps, and odd heads give sensible
// answers.
#include <catch2/catch.hpp>

#include "engine/advise/advisor.h"
#include "engine/advise/rules.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::advise;
using namespace combdraft::test;

namespace {

constexpr int kLocks = 3000;

Advice adviceOn(const plan::Plan& plan) {
  look::LookEngine engine(kLocks, 2);
  const auto frame = engine.update(plan, {}, {}, {});
  REQUIRE(frame);
  Advisor advisor(kLocks);
  const auto advice = advisor.update(plan, {}, *frame->readings, Remedies::Leave, {});
  REQUIRE(advice);
  for (const Finding& f : advice->findings) {
    CAPTURE(sentenceOf(f));
    CHECK(std::isfinite(f.size));
    CHECK(std::isfinite(f.times));
    CHECK(f.times >= 1);
    CHECK(sentenceOf(f).find("nan") == std::string::npos);
    if (f.at) CHECK(std::isfinite(f.at->bearing_deg + f.at->drop_deg));
  }
  CHECK(std::is_sorted(advice->findings.begin(), advice->findings.end(),
                       [](const Finding& a, const Finding& b) { return a.times > b.times; }));
  return *advice;
}
bool has(const Advice& advice, FindingKind kind) {
  return std::any_of(advice.findings.begin(), advice.findings.end(), [&](const Finding& f) { return f.kind == kind; });
}

plan::Plan thickBesidePart() {
  plan::Plan plan = plan::Plan::fresh(61);
  addPiece(plan, topSlice(head::HeadShape(), 22, 55, -35, 12));
  for (const double height : {50.0, 34.0, 18.0, 2.0}) addPiece(plan, backSlice(head::HeadShape(), height, 90, 3));
  return plan;
}

}  // namespace

TEST_CASE("scalp that shows counts as neither light nor dark", "[advise][plans]") {
  // A thin head of one level: wherever scalp shows, only the hair counts.
  plan::Plan plan = plan::Plan::fresh(3);
  plan::Hair hair = plan.hair();
  hair.density_per_cm2 = 110;
  plan.put(plan::kHairId, hair);
  const ColouredHair head(plan, kLocks, {}, 2, 6);
  const look::Readings readings = head.readings();
  CHECK(readings.whole.skin_share > 0.003);
  CHECK(readings.whole.light_share == 0);
  CHECK(readings.whole.level == Approx(5).margin(0.01));
  for (const look::RegionReading& r : readings.regions)
    if (r.whole) {
      CHECK(r.whole->light_share == 0);
      CHECK(r.whole->level == Approx(5).margin(0.01));
    }
}

TEST_CASE("a plan without pieces gives no finding", "[advise][plans]") {
  CHECK(adviceOn(plan::Plan::fresh(3)).findings.empty());
}

TEST_CASE("a head lightened all over has no block and too little left dark", "[advise][plans]") {
  plan::Plan plan = plan::Plan::fresh(3);
  plan::Piece kind = slice({}, 5);
  kind.start_mm = 1, kind.blend_mm = 2;
  for (plan::Piece& ring : ringsOverAll(head::HeadShape(), kind)) addPiece(plan, ring);
  const Advice advice = adviceOn(plan);
  CHECK(has(advice, FindingKind::TooLittleLeftOut));
  CHECK_FALSE(has(advice, FindingKind::LightBlock));
  CHECK_FALSE(has(advice, FindingKind::DarkBlock));
  CHECK_FALSE(has(advice, FindingKind::BareUnderneath));
}

TEST_CASE("odd heads of hair give sensible answers", "[advise][plans]") {
  plan::Plan whorl = mixedPlan(3);
  plan::Head head = whorl.head();
  head.whorls = {{placeAtHeight(head::HeadShape(), 20, 50)}};
  whorl.put(plan::kHeadId, head);
  adviceOn(whorl);

  plan::Plan tiny = mixedPlan(3);
  plan::Hair hair = tiny.hair();
  hair.length_mm.fill(10);
  tiny.put(plan::kHairId, hair);
  const Advice cropped = adviceOn(tiny);
  // Nothing of it reaches the start of most pieces.
  CHECK_FALSE(has(cropped, FindingKind::TooLittleLeftOut));

  plan::Plan bald = mixedPlan(3);
  head = bald.head();
  head.hairline = {25, 20, 0, 0};
  bald.put(plan::kHeadId, head);
  adviceOn(bald);

  plan::Plan back = mixedPlan(3);
  head = back.head();
  head.part.clear();
  back.put(plan::kHeadId, head);
  adviceOn(back);
}

TEST_CASE("remedies that are offered shrink the block, obey the rules and leave the plan alone",
          "[advise][plans]") {
  const plan::Plan plan = thickBesidePart(), copy = plan;
  look::LookEngine engine(kLocks, 2);
  const auto frame = engine.update(plan, {}, {}, {});
  Advisor advisor(kLocks);
  int shown = 0;
  const auto advice = advisor.update(plan, {}, *frame->readings, Remedies::Try, {},
                                     [&](const Advice& early) { ++shown; CHECK_FALSE(early.findings.empty()); });
  REQUIRE(advice);
  CHECK(shown >= 2);
  const auto block = std::find_if(advice->findings.begin(), advice->findings.end(),
                                  [](const Finding& f) { return f.kind == FindingKind::LightBlock; });
  REQUIRE(block != advice->findings.end());
  CHECK(block->pieces.front() == "piece-1");
  REQUIRE(block->remedies.size() >= 3);
  for (const Remedy& remedy : block->remedies) {
    CAPTURE(sentenceOf(remedy));
    REQUIRE(remedy.effect);
    CHECK(remedy.effect->after < remedy.effect->before);
    CHECK_FALSE(brokenBy(plan, plan::applied(plan, editOf(plan, remedy))));
  }
  CHECK(plan == copy);

  const auto trial = advisor.tried(plan, {}, block->remedies.front(), {});
  REQUIRE(trial);
  CHECK_FALSE(trial->edit.empty());
  REQUIRE(trial->before.openings.worstLight());
  const look::Opening* then = trial->after.openings.worstLight();
  CHECK((then ? then->light.area_cm2 : 0) < 0.85 * trial->before.openings.worstLight()->light.area_cm2);
  CHECK(trial->after.down.whole.light_share != trial->before.down.whole.light_share);
  CHECK(plan == copy);
}

TEST_CASE("a stopped advisor says so and works afterwards", "[advise][plans]") {
  const plan::Plan plan = thickBesidePart();
  look::LookEngine engine(kLocks, 2);
  const auto frame = engine.update(plan, {}, {}, {});
  Advisor advisor(kLocks);
  std::stop_source stop;
  stop.request_stop();
  const auto none = advisor.update(plan, {}, *frame->readings, Remedies::Try, stop.get_token());
  REQUIRE_FALSE(none);
  CHECK(none.error().code == ErrorCode::Cancelled);
  CHECK(advisor.update(plan, {}, *frame->readings, Remedies::Leave, {}).ok());
}
