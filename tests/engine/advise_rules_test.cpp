// What no remedy and no suggestion may do, and that remedies do what they say.
#include <catch2/catch.hpp>

#include "engine/advise/remedies.h"
#include "engine/advise/rules.h"
#include "engine/plan/edits.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::advise;
using namespace combdraft::test;
using plan::Piece;
using plan::Plan;

namespace {

/// A thick slice beside the part on hair that was checked and is good.
Plan onePiece(double thickness_mm = 12) {
  Plan plan = Plan::fresh(7);
  plan::Hair hair = plan.hair();
  hair.condition.fill(plan::Condition::Good);
  plan.put(plan::kHairId, hair);
  Piece piece = topSlice(head::HeadShape(), 22, 50, -30, thickness_mm);
  piece.backcomb = {50, 0.3, 28};
  addPiece(plan, piece);
  return plan;
}
const Piece& first(const Plan& plan) { return *plan.find<Piece>("piece-1"); }
Plan with(Plan plan, const std::function<void(Piece&)>& change) {
  Piece piece = first(plan);
  change(piece);
  plan.put("piece-1", piece);
  return plan;
}
Plan withHair(Plan plan, const std::function<void(plan::Hair&)>& change) {
  plan::Hair hair = plan.hair();
  change(hair);
  plan.put(plan::kHairId, hair);
  return plan;
}
std::optional<Rule> ruleBroken(const Plan& before, const Plan& after) {
  const auto broken = brokenBy(before, after);
  return broken ? std::optional(broken->rule) : std::nullopt;
}
Plan after(const Plan& plan, RemedyKind kind, double amount, std::vector<plan::ScalpPoint> line = {}) {
  return plan::applied(plan, editOf(plan, {kind, {"piece-1"}, amount, std::move(line), {}}));
}
Finding blockBy(std::vector<plan::ItemId> pieces) {
  Finding finding;
  finding.kind = FindingKind::LightBlock;
  finding.pieces = std::move(pieces);
  return finding;
}

}  // namespace

TEST_CASE("the rules: never what is held", "[advise][rules]") {
  const Plan plan = with(onePiece(), [](Piece& p) { p.held = true; });
  CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.thickness_mm = 4; })) == Rule::HeldStays);
  Plan gone = plan;
  gone.put("piece-1", plan::ItemPtr{});
  CHECK(ruleBroken(plan, gone) == Rule::HeldStays);
  CHECK_FALSE(ruleBroken(plan, with(plan, [](Piece& p) { p.order = 9; })));
  // No left-out over its hair either.
  Plan covered = plan;
  Piece out = first(plan);
  out.held = false, out.action = plan::Action::LeaveOut, out.thickness_mm = 4, out.order = 2;
  covered.put("piece-2", out);
  CHECK(ruleBroken(plan, covered) == Rule::HeldStays);
  for (const RemedyKind kind : kRemedyKinds) {
    CAPTURE(codeName(kind));
    const Plan changed = after(plan, kind, kind == RemedyKind::StartLower ? 90 : 3, topSlice(head::HeadShape(), 22, 20, 0, 3).line);
    CHECK((changed.find<Piece>("piece-1") && first(changed).thickness_mm == first(plan).thickness_mm));
    CHECK((changed.find<Piece>("piece-1") && first(changed).start_mm == first(plan).start_mm));
  }
  CHECK(candidatesFor(plan, blockBy({"piece-1"})).empty());
}

TEST_CASE("the rules: a twin of a held piece stays as well", "[advise][rules]") {
  Plan plan = onePiece();
  plan = plan::applied(plan, plan::addTwins(plan, {"piece-1"}));
  plan = plan::applied(plan, plan::changePieces(plan, {"piece-1"}, [](Piece& p) { p.held = true; }));
  CHECK(editOf(plan, {RemedyKind::Thinner, {"piece-2"}, 3, {}, {}}).empty());
}

TEST_CASE("the rules: never nearer the scalp", "[advise][rules]") {
  const Plan plan = onePiece();
  CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.start_mm = 19; })) == Rule::NotNearerTheScalp);
  CHECK_FALSE(ruleBroken(plan, with(plan, [](Piece& p) { p.start_mm = 80; })));
  Plan added = plan;
  Piece fresh = topSlice(head::HeadShape(), -22, 50, -30, 3);
  fresh.start_mm = 10, fresh.order = 2;
  added.put("piece-2", fresh);
  CHECK(ruleBroken(plan, added) == Rule::NotNearerTheScalp);
  fresh.start_mm = 20;
  added.put("piece-2", fresh);
  CHECK_FALSE(ruleBroken(plan, added));
  CHECK(editOf(plan, {RemedyKind::StartLower, {"piece-1"}, 10, {}, {}}).empty());
}

TEST_CASE("the rules: no more light on hair marked light or in poor condition", "[advise][rules]") {
  const Plan good = onePiece();
  const auto marks = {
      withHair(good, [](plan::Hair& h) { h.condition.fill(plan::Condition::Poor); }),
      withHair(good, [](plan::Hair& h) { h.bands.push_back({std::nullopt, 100, 300, 9}); }),
      withHair(good, [](plan::Hair& h) { h.scattered.push_back({std::nullopt, 0.2, 40, 400, 9}); })};
  for (const Plan& plan : marks) {
    CHECK_FALSE(mayTakeMoreLight(plan, first(plan)));
    CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.thickness_mm = 14; })) == Rule::NotOnMarkedHair);
    CHECK(ruleBroken(with(plan, [](Piece& p) { p.taken_frac = 0.5; }), plan) == Rule::NotOnMarkedHair);
    CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.backcomb = {}; })) == Rule::NotOnMarkedHair);
    CHECK(ruleBroken(with(plan, [](Piece& p) { p.dropOuts = {{20, 50}}; }), plan) == Rule::NotOnMarkedHair);
    CHECK_FALSE(ruleBroken(plan, with(plan, [](Piece& p) { p.thickness_mm = 4; })));
    CHECK(editOf(plan, {RemedyKind::AddLightPiece, {"piece-1"}, 3, topSlice(head::HeadShape(), -22, 50, -30, 3).line, {}}).empty());
    CHECK(editOf(plan, {RemedyKind::MorePieces, {"piece-1"}, 1, {}, {}}).empty());
    // Thinner, and split, is less light: allowed.
    CHECK_FALSE(editOf(plan, {RemedyKind::SplitWidth, {"piece-1"}, 2, {}, {}}).empty());
  }
  CHECK(mayTakeMoreLight(good, first(good)));
  CHECK_FALSE(ruleBroken(good, with(good, [](Piece& p) { p.thickness_mm = 14; })));
  // A band that ends before the start is not met.
  CHECK(mayTakeMoreLight(withHair(good, [](plan::Hair& h) { h.bands.push_back({std::nullopt, 0, 15, 9}); }), first(good)));
}

TEST_CASE("the rules: no more backcomb where condition is poor or not checked", "[advise][rules]") {
  for (const auto condition : {plan::Condition::Poor, plan::Condition::NotChecked}) {
    const Plan plan = withHair(onePiece(), [&](plan::Hair& h) { h.condition.fill(condition); });
    CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.backcomb.depth_mm = 60; })) == Rule::NoMoreBackcomb);
    CHECK(ruleBroken(plan, with(plan, [](Piece& p) { p.backcomb.pushed_frac = 0.4; })) == Rule::NoMoreBackcomb);
    CHECK(editOf(plan, {RemedyKind::MoreBackcomb, {"piece-1"}, 100, {}, {}}).empty());
    for (const Remedy& remedy : candidatesFor(plan, blockBy({"piece-1"})))
      CHECK(remedy.kind != RemedyKind::MoreBackcomb);
  }
  for (const auto condition : {plan::Condition::Good, plan::Condition::Fair})
    CHECK_FALSE(editOf(withHair(onePiece(), [&](plan::Hair& h) { h.condition.fill(condition); }),
                       {RemedyKind::MoreBackcomb, {"piece-1"}, 100, {}, {}}).empty());
}

TEST_CASE("the rules: placement only", "[advise][rules]") {
  const Plan plan = onePiece();
  const auto isRefused = [&](const std::function<void(Piece&)>& change) {
    return ruleBroken(plan, with(plan, change)) == Rule::PlacementOnly;
  };
  CHECK(isRefused([](Piece& p) { p.root.lifts.level = 10; }));
  CHECK(isRefused([](Piece& p) { p.root.formula = "formula-1"; }));
  CHECK(isRefused([](Piece& p) { p.root.finish->level = 10; }));
  CHECK(isRefused([](Piece& p) { p.stop_mm = 200; }));
  CHECK(ruleBroken(plan, withHair(plan, [](plan::Hair& h) { h.condition.fill(plan::Condition::Fair); })) == Rule::PlacementOnly);
  Plan other = plan;
  Piece stronger = topSlice(head::HeadShape(), -22, 50, -30, 3);
  stronger.root.lifts.level = 10, stronger.order = 2;
  other.put("piece-2", stronger);
  CHECK(ruleBroken(plan, other) == Rule::PlacementOnly);
}

TEST_CASE("remedies do what they say, on both sides, and can be undone", "[advise]") {
  Plan plan = onePiece();
  plan = plan::applied(plan, plan::addTwins(plan, {"piece-1"}));
  const auto split = editOf(plan, {RemedyKind::SplitWidth, {"piece-1"}, 2, {}, {}});
  const Plan strips = plan::applied(plan, split);
  REQUIRE(strips.pieces().size() == 6);  // three strips a side
  double light = 0;
  for (const auto& [id, piece] : strips.pieces()) light += piece->thickness_mm;
  CHECK(light == Approx(12));
  for (std::size_t i = 0; i < 6; ++i) CHECK(strips.pieces()[i].second->order == static_cast<int>(i) + 1);
  CHECK(plan::applied(strips, plan::inverse(split)) == plan);

  const Plan width = after(plan, RemedyKind::DropMiddleOfWidth, 6);
  REQUIRE(width.pieces().size() == 4);
  for (const auto& [id, piece] : width.pieces()) CHECK(piece->thickness_mm == Approx(3));

  const Plan middle = after(plan, RemedyKind::DropMiddleOfLength, 30);
  for (const auto& [id, piece] : middle.pieces()) {
    REQUIRE(piece->dropOuts.size() == 1);
    CHECK(piece->dropOuts[0].to_mm - piece->dropOuts[0].from_mm == Approx(30));
  }
  CHECK(first(after(plan, RemedyKind::Thinner, 4)).thickness_mm == 4);
  CHECK(first(after(plan, RemedyKind::TakeLess, 0.4)).taken_frac == 0.4);
  CHECK(first(after(plan, RemedyKind::StartLower, 90)).start_mm == 90);
  CHECK(first(after(plan, RemedyKind::MoreBackcomb, 110)).backcomb.depth_mm == 110);
  CHECK(after(plan, RemedyKind::FewerPieces, 1).pieces().empty());
  CHECK(after(plan, RemedyKind::MorePieces, 1).pieces().size() == 4);
  const auto across = topSlice(head::HeadShape(), 22, 20, 0, 3).line;
  const Plan broken = after(plan, RemedyKind::BreakWithLeftOut, 8, across);
  REQUIRE(broken.pieces().size() == 4);
  CHECK(broken.pieces().back().second->action == plan::Action::LeaveOut);
  const Plan added = after(plan, RemedyKind::AddLightPiece, 3, topSlice(head::HeadShape(), 45, 50, -30, 3).line);
  REQUIRE(added.pieces().size() == 4);
  CHECK(added.pieces().back().second->root == first(plan).root);
  for (const RemedyKind kind : kRemedyKinds) {
    CAPTURE(codeName(kind));
    const Plan changed = after(plan, kind, kind == RemedyKind::StartLower ? 90 : kind == RemedyKind::TakeLess ? 0.5 : 3, across);
    CHECK_FALSE(brokenBy(plan, changed));
  }
}

TEST_CASE("remedies of what is no longer there change nothing", "[advise]") {
  const Plan plan = onePiece();
  for (const RemedyKind kind : kRemedyKinds) {
    CHECK(editOf(plan, {kind, {"piece-9"}, 3, {}, {}}).empty());
    CHECK(editOf(plan, {kind, {}, 3, {}, {}}).empty());
  }
  Plan dot = with(plan, [](Piece& p) { p.line.resize(1); });
  for (const RemedyKind kind : kRemedyKinds) CHECK_NOTHROW(editOf(dot, {kind, {"piece-1"}, 3, dot.find<Piece>("piece-1")->line, {}}));
  CHECK_NOTHROW(candidatesFor(dot, blockBy({"piece-1"})));
}

TEST_CASE("findings and remedies are said in words that promise nothing", "[advise]") {
  Finding finding = blockBy({"piece-1"});
  finding.size = 12.34, finding.unit = "cm2", finding.worn.partShift_mm = -20;
  CHECK(sentenceOf(finding) == "A light block of about 12 cm² shows with the part 20 mm to the client's left");
  Remedy remedy{RemedyKind::DropMiddleOfLength, {"piece-1"}, 30, {}, Effect{30, 7, "cm2", Effect::Leaves::Smaller}};
  CHECK(sentenceOf(remedy) == "Drop the middle of its length: leave 30 mm dark. It leaves smaller ones: the largest 7.0 cm² instead of 30 cm²");
  for (const FindingKind kind : kFindingKinds) {
    finding.kind = kind;
    const std::string text = sentenceOf(finding);
    CAPTURE(text);
    CHECK_FALSE(text.empty());
    CHECK(text.find('%') == (text.find(" %") == std::string::npos ? std::string::npos : text.find(" %") + 1));
    for (const char* promise : {"will", "safe", "ready", "done", "guarantee"}) CHECK(text.find(promise) == std::string::npos);
  }
}
