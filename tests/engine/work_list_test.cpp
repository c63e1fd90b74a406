// The work list: what it tells of what was typed, what would save time, and what it
// makes of hair that was counted before.
#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <stop_token>
#include <string>
#include <vector>

#include "engine/work/work_list.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::work;

namespace {

constexpr int kFew = 4000;  // locks

/// Three slices down the back that reach over each other, a left-out between them, a formula that is typed.
plan::Plan threeSlices() {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan::Formula formula;
  formula.leaflet.workingLife_min = 20;
  plan.put("formula-1", formula);
  plan.put("formula-2", plan::Formula{});
  for (int i = 0; i < 4; ++i) {
    plan::Piece piece = backSlice(shape, 30 - 8 * i, 80, i == 2 ? 12 : 10);
    piece.order = i + 1;
    piece.root.formula = "formula-1";
    if (i == 2) piece.action = plan::Action::LeaveOut;
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  return plan;
}

plan::Plan withPiece(plan::Plan plan, const plan::ItemId& id, const std::function<void(plan::Piece&)>& change) {
  plan::Piece piece = *plan.find<plan::Piece>(id);
  change(piece);
  plan.put(id, piece);
  return plan;
}

plan::Plan withHair(plan::Plan plan, const std::function<void(plan::Hair&)>& change) {
  plan::Hair hair = plan.hair();
  change(hair);
  plan.put(plan::kHairId, hair);
  return plan;
}

plan::Plan withAssumption(plan::Plan plan, const std::string& name, double value) {
  plan::PlanInfo info = plan.info();
  info.assumptions[name] = value;
  plan.put(plan::kPlanId, info);
  return plan;
}

/// Every number of a count, for comparing to the bit.
std::vector<double> numbersOf(const HairCount& count) {
  std::vector<double> numbers;
  for (const PieceAmount& piece : count.pieces) numbers.insert(numbers.end(), {piece.line_mm, piece.hairs, piece.hair_g, piece.root_g, piece.end_g});
  for (const ZoneHairs& zone : count.zones) numbers.insert(numbers.end(), {zone.hairs, zone.lightened});
  return numbers;
}

}  // namespace

TEST_CASE("the work list tells what was typed wrongly or not at all", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan::Formula formula;
  formula.developers = {{"", 14, plan::StrengthUnit::Percent, 2, {}}};
  formula.leaflet.workingLife_min = 0;
  formula.leaflet.longestTime_min = 0;
  plan.put("formula-1", formula);
  plan::Piece piece = backSlice(shape, 20, 100, 5);
  piece.order = 1;
  piece.root.formula = "formula-1";
  plan.put("piece-1", piece);
  const auto kindsOf = [&](const WorkSettings& settings) {
    std::set<std::string> kinds;
    const WorkList worked = workListOf(plan, settings).value();
    for (const WorkNote& note : worked.notes) {
      kinds.insert(codeName(note.kind));
      CHECK(sentenceOf(note).size() > 20);
    }
    return kinds;
  };
  WorkSettings settings;
  settings.locks = 4000;
  settings.foils_mm = {60};
  const auto kinds = kindsOf(settings);
  for (const char* kind : {"over-eu-limit", "life-not-above-zero", "longest-not-above-zero", "parts-not-typed", "foil-too-narrow"})
    CHECK(kinds.count(kind) == 1);
  formula.developers[0].strength = 60;
  plan.put("formula-1", formula);
  CHECK(kindsOf(settings).count("strength-refused") == 1);
  CHECK_FALSE(workListOf(plan, {{}, OrderUse::AsPlanned, TopBowl::Fresh, 3, {}, {}, 4000}));
  CHECK_FALSE(workListOf(plan, {{}, OrderUse::AsPlanned, TopBowl::Fresh, 1, {}, 0.0, 4000}));
}

TEST_CASE("how long the first piece waits for a look is told where nothing was typed", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan.put("formula-1", plan::Formula{});
  for (int i = 0; i < 6; ++i) {
    plan::Piece piece = backSlice(shape, 50 - 12 * i, 60, 5);
    piece.order = i + 1;
    piece.root.formula = "formula-1";
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  WorkSettings settings;
  settings.locks = 4000;
  const auto told = [&] {
    std::vector<WorkNote> late;
    const WorkList worked = workListOf(plan, settings).value();
    for (const WorkNote& note : worked.notes)
      if (note.kind == WorkNoteKind::FirstLookLate) late.push_back(note);
    return late;
  };
  REQUIRE(told().size() == 1);
  CHECK(told()[0].pieces == std::vector<plan::ItemId>{"piece-1"});
  CHECK(told()[0].found == Approx(6.0));  // six slices of a minute each, then the list looks
  CHECK(told()[0].formula == "formula-1");
  settings.lookEvery_min = 3;
  CHECK(told().empty());
  settings.lookEvery_min.reset();
  plan::Formula typed;
  typed.leaflet.longestTime_min = 40;
  plan.put("formula-1", typed);
  CHECK(told().empty());
  // The first piece is held against its limit; another waits without one.
  plan.put("formula-2", plan::Formula{});
  for (const char* id : {"piece-3", "piece-5"}) {
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.root.formula = "formula-2";
    plan.put(id, piece);
  }
  REQUIRE(told().size() == 1);
  CHECK(told()[0].pieces == std::vector<plan::ItemId>{"piece-3"});
  CHECK(told()[0].formula == "formula-2");
  CHECK(told()[0].found == Approx(4.0));
}

TEST_CASE("pieces that are all too long for a bowl are one note with the longest of them", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan::Formula formula;
  formula.leaflet.workingLife_min = 2.5;
  plan.put("formula-1", formula);
  formula.leaflet.workingLife_min = 3.2;
  plan.put("formula-2", formula);
  for (int i = 0; i < 8; ++i) {
    plan::Piece piece = backSlice(shape, 50 - 12 * i, 60, 5);
    piece.order = i + 1;
    if (i == 4 || i == 7) piece.taking = plan::Taking::Weave;
    piece.root.formula = i < 6 ? "formula-1" : "formula-2";
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  WorkSettings settings;
  settings.locks = 4000;
  const WorkList list = workListOf(plan, settings).value();
  std::vector<WorkNote> longer;
  for (const WorkNote& note : list.notes)
    if (note.kind == WorkNoteKind::PieceLongerThanLife) longer.push_back(note);
  // Mixing takes 2 min, a slice 1, a weave 1.4.
  REQUIRE(longer.size() == 2);
  CHECK(longer[0].formula == "formula-1");
  CHECK(longer[0].pieces.size() == 6);
  CHECK(longer[0].found == Approx(3.4));
  CHECK(longer[0].limit == 2.5);
  CHECK(sentenceOf(longer[0]).find("6 pieces: mixing and placing take up to 3.4 min") == 0);
  CHECK(longer[1].pieces == std::vector<plan::ItemId>{"piece-8"});
  CHECK(sentenceOf(longer[1]).find("up to") == std::string::npos);
}

TEST_CASE("a bowl that is smaller than what the user mixes is told only when that was typed", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  plan.put("formula-1", plan::Formula{});
  plan::Piece piece = backSlice(shape, 20, 60, 5);
  piece.order = 1;
  piece.root.formula = "formula-1";
  plan.put("piece-1", piece);
  WorkSettings settings;
  settings.locks = 4000;
  const auto tiny = [&] {
    std::vector<WorkNote> told;
    const WorkList worked = workListOf(plan, settings).value();
    for (const WorkNote& note : worked.notes)
      if (note.kind == WorkNoteKind::BowlTiny) told.push_back(note);
    return told;
  };
  CHECK(tiny().empty());
  const WorkList worked = workListOf(plan, settings).value();
  const double grams = worked.bowls.at(0).mixed_g;
  settings.smallestBowl_g = grams * 0.99;
  CHECK(tiny().empty());
  settings.smallestBowl_g = grams * 1.01;
  REQUIRE(tiny().size() == 1);
  const WorkNote note = tiny()[0];
  CHECK(note.formula == "formula-1");
  CHECK(note.pieces == std::vector<plan::ItemId>{"piece-1"});
  CHECK(note.text == "1");
  CHECK(note.found == Approx(grams));
  CHECK(note.limit == Approx(grams * 1.01));
  CHECK(codeName(note.kind) == "bowl-tiny");
  CHECK(sentenceOf(note).find("bowl 1: about ") == 0);
  for (const double wrong : {0.0, -3.0}) {
    settings.smallestBowl_g = wrong;
    CHECK_FALSE(workListOf(plan, settings));
  }
}

TEST_CASE("savings are what planning again saves and the largest comes first", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  for (int i = 0; i < 6; ++i) {
    plan::Piece piece = backSlice(shape, 50 - 12 * i, 60, 5);
    piece.order = i + 1;
    piece.backcomb = {60, 0.4, 28};
    piece.section = "section-1";
    if (i > 3) piece.taking = plan::Taking::Weave;
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  plan::Section section;
  section.choice = "choice-1";
  plan.put("section-1", section);
  WorkSettings settings;
  settings.locks = 4000;
  const WorkList list = workListOf(plan, settings).value();
  const auto savings = savingsOf(plan, settings, list);
  std::map<Saving::Kind, Saving> byKind;
  for (std::size_t i = 0; i < savings.size(); ++i) {
    byKind[savings[i].kind] = savings[i];
    if (i) CHECK(savings[i].saved_min <= savings[i - 1].saved_min);
  }
  // Six cushions of 0.7 min to make and 1.2 to open; two weaves of 0.4 more than a slice.
  CHECK(byKind.at(Saving::Kind::WithoutBackcomb).saved_min == Approx(6 * 1.9));
  CHECK(byKind.at(Saving::Kind::SliceForWeave).saved_min == Approx(2 * 0.4));
  CHECK(byKind.at(Saving::Kind::SliceForWeave).pieces.size() == 2);
  CHECK(byKind.at(Saving::Kind::SliceForWeave).section == "section-1");
  CHECK_FALSE(byKind.at(Saving::Kind::SliceForWeave).zone);
  CHECK(byKind.count(Saving::Kind::LeaveOut) == 0);  // there is one section, and it is all
  CHECK(byKind.count(Saving::Kind::SecondPair) == 1);
}

TEST_CASE("pieces in no section are tried zone by zone", "[work][list]") {
  plan::Plan plan = plan::Plan::fresh(3);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  const double heights[] = {10, 0, -10, -60, -70};  // three at the back, two at the nape
  for (int i = 0; i < 5; ++i) {
    const double height = heights[i];
    plan::Piece piece = slice({placeAtHeight(shape, 165, height), placeAtHeight(shape, 180, height), placeAtHeight(shape, -165, height)}, 5);
    piece.order = i + 1;
    piece.backcomb = {60, 0.4, 28};
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  WorkSettings settings;
  settings.locks = 4000;
  const WorkList list = workListOf(plan, settings).value();
  const auto savings = savingsOf(plan, settings, list);
  std::map<plan::HairZone, std::size_t> bare;
  for (const Saving& saving : savings) {
    if (saving.kind == Saving::Kind::SecondPair) continue;
    CHECK(saving.section.empty());
    REQUIRE(saving.zone);
    if (saving.kind == Saving::Kind::WithoutBackcomb) bare[*saving.zone] = saving.pieces.size();
  }
  CHECK(bare == std::map<plan::HairZone, std::size_t>{{plan::HairZone::Back, 3}, {plan::HairZone::Nape, 2}});
}

TEST_CASE("from hair that was counted before comes the same list", "[work][list][count]") {
  const plan::Plan plan = withPiece(threeSlices(), "piece-2", [](plan::Piece& piece) { piece.foil = "both"; });
  WorkSettings settings;
  settings.locks = kFew;
  settings.foils_mm = {60, 120};
  settings.smallestBowl_g = 500;
  const HairCount hair = countHair(plan, {}, kFew).value();
  const WorkList known = workListOf(plan, settings, hair).value(), whole = workListOf(plan, settings).value();
  CHECK(known.order == whole.order);
  CHECK(known.amounts.hairs == whole.amounts.hairs);
  CHECK(known.amounts.hair_g == whole.amounts.hair_g);
  CHECK(known.amounts.mixed_g().about == whole.amounts.mixed_g().about);
  CHECK(known.amounts.mixed_g().about > 0);
  REQUIRE(known.amounts.foils.size() == whole.amounts.foils.size());
  for (std::size_t i = 0; i < known.amounts.foils.size(); ++i) CHECK(known.amounts.foils[i].width_mm == whole.amounts.foils[i].width_mm);
  CHECK(known.notes == whole.notes);
  REQUIRE(known.bowls.size() == whole.bowls.size());
  for (std::size_t i = 0; i < known.bowls.size(); ++i) CHECK(known.bowls[i].mixed_g == whole.bowls[i].mixed_g);
  settings.foils_mm = {0};
  CHECK_FALSE(workListOf(plan, settings, hair));
}

TEST_CASE("before hair is counted order and minutes stand and nothing is told of grams", "[work][list][count]") {
  const plan::Plan plan = threeSlices();
  WorkSettings settings;
  settings.locks = kFew;
  settings.foils_mm = {60};
  settings.smallestBowl_g = 500;
  const WorkList early = workListOf(plan, settings, {}).value(), whole = workListOf(plan, settings).value();
  CHECK(early.order == whole.order);
  CHECK(early.timeline.total_min == whole.timeline.total_min);
  CHECK(early.timeline.bowls.size() == whole.timeline.bowls.size());
  CHECK(early.amounts.mixed_g().about == 0);
  CHECK(early.amounts.foils.empty());
  const auto tells = [](const WorkList& list, WorkNoteKind kind) {
    return std::any_of(list.notes.begin(), list.notes.end(), [&](const WorkNote& note) { return note.kind == kind; });
  };
  for (const WorkNoteKind kind : {WorkNoteKind::BowlTiny, WorkNoteKind::FoilTooNarrow}) {
    CHECK(tells(whole, kind));
    CHECK_FALSE(tells(early, kind));
  }
  plan::Plan nobody = plan;
  plan::Head head = nobody.head();
  head.measures.circumference_mm = 5000;
  nobody.put(plan::kHeadId, head);
  CHECK_FALSE(workListOf(nobody, settings, {}));
  CHECK_FALSE(countHair(nobody, {}, kFew));
}

TEST_CASE("plans that count alike have the same hair to the bit and others have not", "[work][count]") {
  const plan::Plan plan = threeSlices();
  const std::vector<double> numbers = numbersOf(countHair(plan, {}, kFew).value());
  const auto piece = [&](const std::function<void(plan::Piece&)>& change) { return withPiece(plan, "piece-2", change); };
  plan::Plan titled = plan;
  plan::PlanInfo info = titled.info();
  info.title = "other";
  info.logJson = "{}";
  titled.put(plan::kPlanId, info);
  const plan::Plan alike[] = {
      titled,
      piece([](plan::Piece& p) { p.label = "other", p.note = "other", p.section = "section-9", p.held = true; }),
      piece([](plan::Piece& p) { p.foil = "shared", p.keptIn = plan::KeptIn::OpenAir; }),
      piece([](plan::Piece& p) { p.root.formula = "formula-2", p.root.lifts.level = 7, p.end.formula = "formula-1"; }),
      piece([](plan::Piece& p) { p.blend_mm = 40, p.backcomb.blend_mm = 50; }),
      withPiece(plan, "piece-4", [](plan::Piece& p) { p.order = 40; }),  // the last still
      withAssumption(plan, "amount.product_per_hair", 3),
      withHair(plan, [](plan::Hair& h) { h.white_frac = 0.4, h.porosity[0] = plan::Porosity::Resistant; }),
  };
  for (const plan::Plan& other : alike) {
    INFO("plan " << (&other - alike));
    CHECK(countAlike(plan, other));
    CHECK(numbersOf(countHair(other, {}, kFew).value()) == numbers);
  }
  const plan::Plan unlike[] = {
      piece([](plan::Piece& p) { p.thickness_mm = 3; }),
      piece([](plan::Piece& p) { p.start_mm = 90; }),
      piece([](plan::Piece& p) { p.stop_mm = 100; }),
      piece([](plan::Piece& p) { p.handover_mm = 120; }),
      piece([](plan::Piece& p) { p.backcomb = {90, 0.5, 28}; }),
      piece([](plan::Piece& p) { p.taken_frac = 0.5; }),
      piece([](plan::Piece& p) { p.dropOuts = {{10, 30}}; }),
      piece([](plan::Piece& p) { p.action = plan::Action::LeaveOut; }),
      withPiece(plan, "piece-1", [](plan::Piece& p) { p.order = 9; }),  // the next has what both reach now
      withHair(plan, [](plan::Hair& h) { h.density_per_cm2 = 150; }),
      withHair(plan, [](plan::Hair& h) { h.fibre_um = 90; }),
      withHair(plan, [](plan::Hair& h) { h.length_mm.fill(200); }),
      withHair(plan, [](plan::Hair& h) { h.layering_frac = 0.8; }),
      withAssumption(plan, "amount.fibre_g_cm3", 1.3),
  };
  for (const plan::Plan& other : unlike) {
    INFO("plan " << (&other - unlike));
    CHECK_FALSE(countAlike(plan, other));
    CHECK(numbersOf(countHair(other, {}, kFew).value()) != numbers);
  }
}

TEST_CASE("counting hair stops when it is told to", "[work][count]") {
  std::stop_source stop;
  CHECK(countHair(threeSlices(), {}, kFew, stop.get_token()));
  stop.request_stop();
  const auto stopped = countHair(threeSlices(), {}, kFew, stop.get_token());
  REQUIRE_FALSE(stopped);
  CHECK(stopped.error().code == ErrorCode::Cancelled);
}
