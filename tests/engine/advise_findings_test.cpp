// Each finding on readings and openings made for it, just over and just under
// its line.
#include <catch2/catch.hpp>

#include "engine/advise/effort.h"
#include "engine/advise/findings.h"
#include "engine/base/assumptions.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::advise;
using namespace combdraft::test;
using look::Region;

namespace {

/// Readings of a look that is half light and one lightness everywhere.
look::Readings evenLook(double light_share = 0.4, double lightness = 40) {
  look::Readings readings;
  look::Reading reading;
  reading.seen_mm2 = 5000, reading.light_share = light_share, reading.lightness = lightness, reading.level = 7;
  readings.whole = reading;
  for (int r = 0; r < look::kRegions; ++r) {
    look::RegionReading region;
    region.region = static_cast<Region>(r);
    region.whole = reading;
    region.contrast.verdict = look::ContrastVerdict::Soft;
    readings.regions.push_back(region);
  }
  return readings;
}
look::RegionReading& at(look::Readings& readings, Region region) {
  return readings.regions[static_cast<std::size_t>(region)];
}
plan::Plan planned() {
  plan::Plan plan = plan::Plan::fresh(5);
  addPiece(plan, topSlice(head::HeadShape(), 22, 30, -30, 6));
  return plan;
}
std::vector<FindingKind> kinds(const std::vector<Finding>& findings) {
  std::vector<FindingKind> all;
  for (const Finding& f : findings) all.push_back(f.kind);
  return all;
}
look::Opening opening(double shift_mm, double light_cm2, double dark_cm2, double run_mm = 0) {
  look::Opening o;
  o.shift_mm = shift_mm;
  o.light.area_cm2 = light_cm2, o.light.run_mm = run_mm, o.light.pieces = {"piece-1"};
  o.lightRun = {run_mm, {}, {"piece-1"}};
  o.dark.area_cm2 = dark_cm2, o.dark.pieces = {"piece-2"};
  o.run_mm = run_mm;
  return o;
}
using Kinds = std::vector<FindingKind>;

}  // namespace

TEST_CASE("an even, half light look gives no finding", "[advise][findings]") {
  const look::Readings look = evenLook();
  look::Openings quiet;
  quiet.all = {opening(-5, 3.9, 5.9, 14.9), opening(0, 0, 0)};
  CHECK(findingsOf(planned(), {"", &look, &look, &look, {hair::WornWay::LayerRaised}, &quiet}).empty());
}

TEST_CASE("a block is found once, at its worst", "[advise][findings]") {
  look::Openings openings;
  openings.all = {opening(-20, 8, 0), opening(10, 12, 0), opening(15, 5, 7)};
  openings.all.push_back(opening(0, 9, 0));
  openings.all.back().way = look::OpeningWay::Blown;
  openings.all.push_back(opening(0, 6, 0));
  openings.all.back().way = look::OpeningWay::TiedBack;
  openings.all.back().light.pieces = {"piece-7"};
  const auto found = findingsOf(planned(), {"", nullptr, nullptr, nullptr, {}, &openings});
  REQUIRE(kinds(found) == Kinds{FindingKind::LightBlock, FindingKind::LightBlock, FindingKind::DarkBlock});
  CHECK(found[0].size == 12);
  CHECK(found[0].times == Approx(3));
  CHECK(found[0].worn.partShift_mm == 10);
  CHECK(found[0].assumption == "block.light_cm2");
  CHECK(found[0].pieces == std::vector<plan::ItemId>{"piece-1"});
  CHECK(found[1].worn.way == hair::WornWay::TiedBack);  // another piece makes it
  CHECK(found[2].size == 7);
  // The line is the plan's own.
  plan::Plan strict = planned();
  plan::PlanInfo info = strict.info();
  info.assumptions["block.light_cm2"] = 20;
  strict.put(plan::kPlanId, info);
  CHECK(kinds(findingsOf(strict, {"", nullptr, nullptr, nullptr, {}, &openings})) == Kinds{FindingKind::DarkBlock});
}

TEST_CASE("a long thin patch is a run", "[advise][findings]") {
  look::Openings openings;
  openings.all = {opening(0, 2, 0, 30), opening(5, 3, 0, 45)};
  const auto found = findingsOf(planned(), {"", nullptr, nullptr, nullptr, {}, &openings});
  REQUIRE(kinds(found) == Kinds{FindingKind::RunAtOpening});
  CHECK(found[0].size == 45);
  CHECK(found[0].detail == "light");
}

TEST_CASE("one middle tone is found where half and half reads as one", "[advise][findings]") {
  look::Readings look = evenLook();
  for (auto& r : look.regions) r.contrast.verdict = look::ContrastVerdict::OneTone;
  CHECK(kinds(findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr})) == Kinds{FindingKind::OneTone});
  for (auto& r : look.regions) r.whole->light_share = 0.1;  // mostly dark is one tone by plan
  CHECK(findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr}).empty());
}

TEST_CASE("too little left dark is found", "[advise][findings]") {
  look::Readings look = evenLook(0.9);
  CHECK(kinds(findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr})) == Kinds{FindingKind::TooLittleLeftOut});
  look = evenLook(0.84);
  CHECK(findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr}).empty());
}

TEST_CASE("bare underneath and nape are found where worn down looks light", "[advise][findings]") {
  const look::Readings down = evenLook();
  look::Readings raised = evenLook(), tied = evenLook();
  at(raised, Region::BackMiddle).whole->light_share = 0.02;
  at(tied, Region::Nape).whole->light_share = 0;
  const auto found = findingsOf(planned(), {"", &down, &tied, &raised, {hair::WornWay::LayerRaised}, nullptr});
  REQUIRE(found.size() == 2);
  CHECK(found[0].kind == FindingKind::NapeBare);
  CHECK(found[0].worn.way == hair::WornWay::TiedBack);
  CHECK(found[1].kind == FindingKind::BareUnderneath);
  CHECK(found[1].region == Region::BackMiddle);
  CHECK(found[1].worn.way == hair::WornWay::LayerRaised);
  // A look that is dark worn down has nothing to hide underneath.
  look::Readings dark = evenLook(0.03);
  CHECK(findingsOf(planned(), {"", &dark, &tied, &raised, {hair::WornWay::LayerRaised}, nullptr}).empty());
  at(raised, Region::BackMiddle).whole.reset();
  at(tied, Region::Nape).whole.reset();
  CHECK(findingsOf(planned(), {"", &down, &tied, &raised, {hair::WornWay::LayerRaised}, nullptr}).empty());
}

TEST_CASE("a hard edge underneath is one that does not show worn down", "[advise][findings]") {
  look::Readings down = evenLook(), raised = evenLook();
  at(raised, Region::BackMiddle).whole->lightness = at(raised, Region::BackEnds).whole->lightness = 60;
  const auto found = findingsOf(planned(), {"", &down, nullptr, &raised, {hair::WornWay::LayerRaised}, nullptr});
  REQUIRE(kinds(found) == Kinds{FindingKind::HardEdgeUnderneath});
  CHECK(found[0].size == Approx(20));
  at(down, Region::BackMiddle).whole->lightness = 58;
  at(down, Region::BackEnds).whole->lightness = 58;
  CHECK(findingsOf(planned(), {"", &down, nullptr, &raised, {hair::WornWay::LayerRaised}, nullptr}).empty());
}

TEST_CASE("a face frame is weak only where one is planned", "[advise][findings]") {
  const look::Readings look = evenLook();
  CHECK(findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr}).empty());
  plan::Plan framed = planned();
  const head::HeadShape shape;
  addPiece(framed, slice({placeAtHeight(shape, 4, 54), placeAtHeight(shape, 16, 52), placeAtHeight(shape, 30, 51)}, 6));
  const auto found = findingsOf(framed, {"", &look, nullptr, nullptr, {}, nullptr});
  REQUIRE(kinds(found) == Kinds{FindingKind::FaceFrameWeak});
  CHECK(found[0].region == Region::FaceFrameRight);
  CHECK(found[0].pieces == std::vector<plan::ItemId>{"piece-2"});
  look::Readings bright = look;
  at(bright, Region::FaceFrameRight).whole->lightness = 43;
  CHECK(findingsOf(framed, {"", &bright, nullptr, nullptr, {}, nullptr}).empty());
}

TEST_CASE("targets of the choice are held against the look", "[advise][findings]") {
  look::Readings look = evenLook();
  plan::Plan plan = planned();
  plan::Choice choice = *plan.find<plan::Choice>(plan.info().activeChoice);
  choice.targets["crown"].level = 8.2;
  choice.targets["whole"].level = 7.4;
  plan.put(plan.info().activeChoice, choice);
  const auto found = findingsOf(plan, {"", &look, nullptr, nullptr, {}, nullptr});
  REQUIRE(kinds(found) == Kinds{FindingKind::TargetMissed});
  CHECK(found[0].region == Region::Crown);
  CHECK(found[0].size == Approx(1.2));
  CHECK(sentenceOf(found[0]) == "Crown misses its aim: it looks 1.2 levels darker than wanted");
}

TEST_CASE("pale pieces that look grey are passed on from the readings", "[advise][findings]") {
  look::Readings look = evenLook();
  at(look, Region::Top).grey_mix = true;
  const auto found = findingsOf(planned(), {"", &look, nullptr, nullptr, {}, nullptr});
  REQUIRE(kinds(found) == Kinds{FindingKind::GreyMix});
  CHECK(found[0].region == Region::Top);
}

TEST_CASE("an order that lifts farthest last is found", "[advise][findings]") {
  const look::Readings look = evenLook();
  plan::Plan plan = plan::Plan::fresh(5);
  for (int i = 0; i < 9; ++i) {
    plan::Piece piece = topSlice(head::HeadShape(), 10.0 + 5 * i, 20, -30, 2);
    piece.root.lifts.level = i < 6 ? 7 : 9;
    addPiece(plan, piece);
  }
  const auto found = findingsOf(plan, {"", &look, nullptr, nullptr, {}, nullptr});
  REQUIRE(kinds(found) == Kinds{FindingKind::SlowHairLast});
  CHECK(found[0].size == Approx(2));
  CHECK(found[0].pieces.size() == 3);
}

TEST_CASE("without pieces nothing is found, whatever was seen", "[advise][findings]") {
  const look::Readings look = evenLook(0.95, 80);
  look::Openings openings;
  openings.all = {opening(0, 50, 50, 90)};
  CHECK(findingsOf(plan::Plan::fresh(1), {"", &look, &look, &look, {}, &openings}).empty());
}

TEST_CASE("pieces, foils and minutes are counted by the user's own numbers", "[advise]") {
  plan::Plan plan = plan::Plan::fresh(5);
  plan::Piece piece = topSlice(head::HeadShape(), 22, 30, -30, 6);
  piece.foil = "1";
  addPiece(plan, piece);
  addPiece(plan, piece);
  piece.foil.clear(), piece.backcomb = {50, 0.3, 28}, piece.taking = plan::Taking::Weave;
  addPiece(plan, piece);
  piece.action = plan::Action::LeaveOut;
  addPiece(plan, piece);
  plan::PlanInfo info = plan.info();
  info.assumptions["work.slice_min"] = 2;
  plan.put(plan::kPlanId, info);
  const Effort effort = effortOf(plan);
  CHECK(effort.pieces == 3);
  CHECK(effort.foils == 2);
  CHECK(effort.minutes == Approx(2 + 2 + 1.4 + 0.7));
}
