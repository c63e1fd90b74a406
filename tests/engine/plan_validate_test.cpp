// What validate finds: each issue on a plan that has just that trouble.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <set>

#include "engine/plan/plan_file.h"
#include "engine/plan/validate.h"
#include "tests/engine/plan_samples.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

// A plan that has nothing to say, with one lightening piece on the back.
Plan quietPlan() {
  Plan plan = Plan::fresh(1);
  Hair hair = plan.hair();
  hair.condition.fill(Condition::Good);
  plan.put(kHairId, hair);
  Formula formula;
  formula.leaflet.scalpContact = ScalpContact::No;
  plan.put("formula-1", formula);
  Piece piece;
  piece.choice = "choice-1";
  piece.order = 1;
  piece.line = {{150, 70}, {170, 70}};
  piece.root.formula = "formula-1";
  plan.put("piece-1", piece);
  return plan;
}

template <class T>
Plan with(Plan plan, const ItemId& id, const std::function<void(T&)>& change) {
  T value = *plan.find<T>(id);
  change(value);
  plan.put(id, value);
  return plan;
}
Plan withPiece(const std::function<void(Piece&)>& change) {
  return with<Piece>(quietPlan(), "piece-1", change);
}
Plan withHair(const std::function<void(Hair&)>& change) {
  return with<Hair>(quietPlan(), kHairId, change);
}

// The one issue of a plan.
Issue only(const Plan& plan) {
  const auto issues = validate(plan);
  std::string all;
  for (const Issue& issue : issues) all += describe(issue) + "\n";
  INFO(all);
  REQUIRE(issues.size() == 1);
  CHECK(describe(issues[0]).find('%') == std::string::npos);
  return issues[0];
}

}  // namespace

TEST_CASE("a plan without trouble has no issues", "[plan][validate]") {
  CHECK(validate(quietPlan()).empty());
  CHECK(validate(Plan::fresh(1)).empty());
}

TEST_CASE("errors name the item and what it refers to", "[plan][validate]") {
  const auto error = [](const Plan& plan, IssueCode code, const ItemId& id,
                        const std::vector<std::string>& args) {
    const Issue issue = only(plan);
    CHECK(codeName(issue.code) == codeName(code));
    CHECK(issue.severity == Severity::Error);
    CHECK(issue.items == std::vector<ItemId>{id});
    CHECK(issue.args == args);
  };
  error(withPiece([](Piece& p) { p.thickness_mm = -1; }), IssueCode::ValueOutOfRange, "piece-1",
        {"piece.thickness_mm", "-1", "0.2 to 40 mm"});
  error(withPiece([](Piece& p) { p.note.assign(20001, 'x'); }), IssueCode::ValueOutOfRange,
        "piece-1", {"piece.note", "20001 bytes", "at most 20000 bytes"});
  error(withPiece([](Piece& p) { p.label = "a\nb"; }), IssueCode::ValueOutOfRange, "piece-1",
        {"piece.label", "a line break", "one line of plain text"});
  error(withPiece([](Piece& p) { p.backcomb.pushed_frac = std::nan(""); }),
        IssueCode::ValueOutOfRange, "piece-1", {"backcomb.pushed_frac", "nan", "0 to 1"});
  error(withPiece([](Piece& p) { p.section = "gone"; }), IssueCode::SectionUnknown, "piece-1",
        {"gone"});
  error(withPiece([](Piece& p) { p.end.formula = "gone"; }), IssueCode::FormulaUnknown, "piece-1",
        {"gone"});
  error(withPiece([](Piece& p) { p.twinOf = "gone"; }), IssueCode::TwinUnknown, "piece-1",
        {"gone"});
  error(withPiece([](Piece& p) { p.twinOf = "piece-1"; }), IssueCode::TwinOfTwin, "piece-1",
        {"piece-1"});
  error(withPiece([](Piece& p) { p.choice = "gone"; }), IssueCode::ChoiceUnknown, "piece-1",
        {"gone"});
  error(withPiece([](Piece& p) { p.line = {{170, 70}, {170, 70}}; }),
        IssueCode::LineWithoutLength, "piece-1", {});
  error(with<PlanInfo>(quietPlan(), kPlanId, [](PlanInfo& i) { i.activeChoice = "gone"; }),
        IssueCode::ActiveChoiceUnknown, kPlanId, {"gone"});
  error(with<PlanInfo>(quietPlan(), kPlanId,
                       [](PlanInfo& i) { i.assumptions["fall.lean"] = 7; }),
        IssueCode::AssumptionOutOfRange, kPlanId, {"fall.lean", "7", "0.05 to 0.2"});
  const auto aimed = [](const char* region, double level) {
    return with<Choice>(quietPlan(), "choice-1",
                        [&](Choice& c) { c.targets[region].level = level; });
  };
  error(aimed("nape", 13), IssueCode::ValueOutOfRange, "choice-1",
        {"target.level", "13", "1 to 12 levels"});
  error(aimed("beard", 8), IssueCode::ValueOutOfRange, "choice-1",
        {"choice.targets", "beard", "one of its regions"});
  Plan circle = withPiece([](Piece& p) { p.twinOf = "piece-2"; });
  Piece second = *circle.find<Piece>("piece-1");
  second.twinOf = "piece-1";
  second.order = 2;
  circle.put("piece-2", second);
  CHECK(validate(circle).size() == 2);
  CHECK(hasErrors(validate(circle)));
}

TEST_CASE("a piece below the plan's own hairline is an error", "[plan][validate]") {
  // 20 mm below the standard hairline at the front centre, 5 mm below a lowered one.
  const Plan plan = withPiece([](Piece& p) { p.line = {{-5, 72}, {5, 72}}; });
  const Issue issue = only(plan);
  CHECK(issue.code == IssueCode::PointOffHair);
  CHECK(issue.items == std::vector<ItemId>{"piece-1"});
  const Plan lowered = with<Head>(plan, kHeadId, [](Head& h) { h.hairline.front_mm = -15; });
  CHECK(validate(lowered).empty());
}

TEST_CASE("cautions about hair, skin and product", "[plan][validate]") {
  const auto caution = [](const Plan& plan, IssueCode code, const std::vector<std::string>& args) {
    const Issue issue = only(plan);
    CHECK(codeName(issue.code) == codeName(code));
    CHECK(issue.severity == Severity::Caution);
    CHECK(issue.args == args);
    // Wording: check, look, test; never that something may be done.
    for (const char* word : {"safe", " ready", "done", "minutes", "%"})
      CHECK(describe(issue).find(word) == std::string::npos);
  };
  // Start at or near the scalp with "no" or "not stated".
  caution(withPiece([](Piece& p) { p.start_mm = 3; }), IssueCode::StartNearScalp,
          {"no", "formula-1"});
  caution(withPiece([](Piece& p) {
            p.start_mm = 0;
            p.root.formula.clear();
          }),
          IssueCode::StartNearScalp, {"not stated", ""});
  const auto allowed = [](Formula& f) { f.leaflet.scalpContact = ScalpContact::Yes; };
  CHECK(validate(with<Formula>(withPiece([](Piece& p) { p.start_mm = 3; }), "formula-1", allowed))
            .empty());
  Plan shadow = quietPlan();
  Treatment treatment;
  treatment.choice = "choice-1";
  treatment.formula = "formula-1";
  shadow.put("treatment-1", treatment);
  caution(shadow, IssueCode::TreatmentNearScalp, {"no", "formula-1"});
  CHECK(validate(with<Formula>(shadow, "formula-1", allowed)).empty());
  // Backcomb where condition is poor or not recorded.
  const auto combed = [](Condition condition) {
    return with<Hair>(withPiece([](Piece& p) {
                        p.backcomb = {60, 0.4, 30};
                        p.action = Action::Deepen;
                      }),
                      kHairId, [&](Hair& h) { h.condition[4] = condition; });  // back
  };
  caution(combed(Condition::NotChecked), IssueCode::BackcombCondition, {"not checked"});
  caution(combed(Condition::Poor), IssueCode::BackcombCondition, {"poor"});
  CHECK(validate(combed(Condition::Fair)).empty());
  // Light over hair marked already light or fragile.
  caution(withHair([](Hair& h) { h.condition[4] = Condition::Poor; }), IssueCode::LightOverPoor,
          {});
  const auto old = [](Hair& h) { h.scattered = {{HairZone::Back, 0.3, 90, 400, 8, {}}}; };
  caution(withHair(old), IssueCode::LightOverLight, {});
  caution(withHair([](Hair& h) { h.bands = {{std::nullopt, 100, 200, 8, {}}}; }),
          IssueCode::LightOverLight, {});
  // Not where it stops before, in another zone, or only deepens.
  const auto quiet = [&](const std::function<void(Piece&)>& change) {
    CHECK(validate(with<Hair>(withPiece(change), kHairId, old)).empty());
  };
  quiet([](Piece& p) { p.stop_mm = 80; });
  quiet([](Piece& p) { p.action = Action::Deepen; });
  quiet([](Piece& p) { p.line = {{20, 20}, {50, 20}}; });
}

TEST_CASE("notes: worth a look", "[plan][validate]") {
  const auto noted = [](const Plan& plan, IssueCode code) {
    const Issue issue = only(plan);
    CHECK(codeName(issue.code) == codeName(code));
    CHECK(issue.severity == Severity::Note);
  };
  noted(withPiece([](Piece& p) { p.backcomb = {15, 0.3, 10}; }), IssueCode::BackcombBeforeStart);
  noted(withPiece([](Piece& p) { p.handover_mm = 10; }), IssueCode::HandoverBeforeStart);
  noted(withPiece([](Piece& p) { p.stop_mm = 20; }), IssueCode::StopBeforeStart);
  noted(withPiece([](Piece& p) { p.start_mm = 390; }), IssueCode::HairShorterThanStart);
  noted(withPiece([](Piece& p) { p.backcomb = {400, 0.3, 30}; }),
        IssueCode::HairShorterThanBackcomb);
  noted(withPiece([](Piece& p) { p.dropOuts = {{100, 120}}; }), IssueCode::DropOutBeyondLine);
  noted(withPiece([](Piece& p) { p.gap_mm = 3; }), IssueCode::GapWithoutTeeth);
  noted(withPiece([](Piece& p) { p.taking = Taking::Weave; }), IssueCode::WeaveWithoutTeeth);
  noted(withPiece([](Piece& p) { p.root.lifts = {9, 10, 8}; }), IssueCode::SpanBackwards);
  noted(withHair([](Hair& h) { h.bands = {{HairZone::Nape, 50, 40, 8, {}}}; }),
        IssueCode::StretchBackwards);
  noted(with<PlanInfo>(quietPlan(), kPlanId, [](PlanInfo& i) { i.assumptions["x.y"] = 7; }),
        IssueCode::AssumptionUnknown);
  noted(with<Head>(quietPlan(), kHeadId, [](Head& h) { h.measures.circumference_mm = 600; }),
        IssueCode::MeasureUnusual);
  const auto aimed = [](Target target) {
    return with<Choice>(quietPlan(), "choice-1",
                        [&](Choice& c) { c.targets["crown"] = target; });
  };
  noted(aimed({{}, {}, 6, 8, {}}), IssueCode::TargetContradicts);
  CHECK(only(aimed({{}, {}, 6, 8, {}})).args == std::vector<std::string>{"crown"});
  noted(aimed({5, {}, 9, 8, {}}), IssueCode::TargetContradicts);
  noted(aimed({9.5, {}, 9, {}, {}}), IssueCode::TargetContradicts);
  CHECK(validate(aimed({8, ContrastAim::Soft, 8, 8, {}})).empty());
  CHECK(validate(aimed({})).empty());
  noted(with<Choice>(quietPlan(), "choice-1", [](Choice& c) { c.otherTargets["fringe"] = "1"; }),
        IssueCode::TargetUnknown);
  Plan twice = quietPlan();
  Piece second = *twice.find<Piece>("piece-1");
  second.line = {{150, 60}, {170, 60}};
  twice.put("piece-2", second);
  noted(twice, IssueCode::OrderTwice);
  CHECK(only(twice).items == std::vector<ItemId>{"piece-1", "piece-2"});
  Plan differs = quietPlan();
  Piece twin = *differs.find<Piece>("piece-1");
  twin.twinOf = "piece-1";
  twin.order = 2;
  differs.put("piece-2", twin);
  noted(differs, IssueCode::TwinDiffers);
}

TEST_CASE("examples have no errors, and cautions where they belong", "[plan][validate][examples]") {
  std::set<IssueCode> found;
  for (const auto& entry : std::filesystem::directory_iterator(test::sourceDir() + "/examples")) {
    const auto plan = loadPlan(entry.path());
    REQUIRE(plan.ok());
    for (const Issue& issue : validate(*plan)) {
      INFO(entry.path().filename() << ": " << describe(issue));
      CHECK(issue.severity == Severity::Caution);
      found.insert(issue.code);
    }
  }
  CHECK(found.count(IssueCode::StartNearScalp) == 1);
}
