// Choices A, B, C in one plan: copied, renamed, taken away, aimed for, and pieces
// taken from one into another. A copy must look the same as its model.
#include <catch2/catch.hpp>
#include <set>

#include "engine/look/look.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/twins.h"
#include "engine/plan/validate.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

Plan with(const Plan& plan, const ChangeSet& edit) {
  const Plan after = applied(plan, edit);
  CHECK(applied(after, inverse(edit)) == plan);  // one undo takes all of it back
  return after;
}
Plan with(const Plan& plan, const Result<ChangeSet>& edit) {
  INFO((edit ? std::string() : describe(edit.error())));
  REQUIRE(edit);
  return with(plan, *edit);
}

// A section laid out on both sides, a piece of it changed by hand, one taken away,
// a woven piece drawn free with its twin, a treatment and a note.
Plan worked() {
  Plan plan = Plan::fresh(11);
  Formula formula;
  formula.letter = "A";
  formula.kind = "lightener";
  plan.put("formula-1", formula);
  Formula same = formula;
  plan.put("formula-2", same);  // typed twice
  Section section;
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = Layout{};
  section.label = "back";
  plan = applied(plan, addSection(plan, section));
  plan = applied(plan, addTwins(plan, {"section-1"}));
  const auto run = plan.pieces();
  plan = applied(plan, changePieces(plan, {run[0].first, run[1].first}, [](Piece& p) {
                   p.start_mm = 61;
                   p.root.formula = p.end.formula = "formula-2";
                 }));
  plan = applied(plan, removeItems(plan, {run[2].first}));
  plan = applied(plan, changeSections(plan, {"section-1"},
                                      [](Section& s) { s.layout->leftOut_mm = {16, 16}; }));
  Piece piece;
  piece.line = {{30, 50}, {60, 52}};
  piece.taking = Taking::Weave;
  piece.tooth_mm = 3;
  piece.gap_mm = 4;
  piece.foil = "7";
  plan = applied(plan, addPiece(plan, piece));
  const ItemId drawn = plan.pieces().back().first;
  plan = applied(plan, addTwins(plan, {drawn}));
  std::vector<ItemId> reversed;
  for (const auto& entry : plan.pieces()) reversed.insert(reversed.begin(), entry.first);
  plan = applied(plan, renumber(plan, "choice-1", reversed));
  Treatment glaze;
  glaze.choice = "choice-1";
  glaze.formula = "formula-1";
  plan.put("treatment-1", glaze);
  Note note;
  note.choice = "choice-1";
  note.at = {170, 40};
  note.text = "swirl";
  plan.put("note-1", note);
  return applied(plan, setTarget(plan, "choice-1", "crown", {8, ContrastAim::Soft, 9, {}, {}}));
}

// A choice's items in order, without the names they have in this plan.
std::vector<Piece> anonymousPieces(const Plan& plan, const ItemId& choice) {
  const auto all = plan.pieces(choice);
  const auto placeOf = [&](const ItemId& id) {
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i].first == id) return "piece " + std::to_string(i);
    return id.empty() ? std::string() : "elsewhere";
  };
  std::vector<Piece> out;
  for (const auto& [id, piece] : all) {
    Piece plain = *piece;
    const Section* section = plan.find<Section>(piece->section);
    CHECK((!section || section->choice == choice));
    plain.section = section ? "section " + std::to_string(section->order) : "";
    plain.twinOf = placeOf(piece->twinOf);
    plain.choice.clear();
    out.push_back(plain);
  }
  return out;
}
std::vector<Section> anonymousSections(const Plan& plan, const ItemId& choice) {
  const auto all = plan.sections(choice);
  std::vector<Section> out;
  for (const auto& [id, section] : all) {
    Section plain = *section;
    plain.choice.clear();
    plain.twinOf = plain.twinOf.empty() ? "" : "section of " + plan.find<Section>(plain.twinOf)->choice;
    for (RetiredPiece& piece : plain.retired) {
      CHECK((piece.section.empty() || piece.section == id));
      piece.section.clear();
      piece.id.clear();
      piece.choice.clear();
    }
    out.push_back(plain);
  }
  for (Section& section : out)
    if (!section.twinOf.empty()) section.twinOf = section.twinOf == "section of " + choice ? "here" : "elsewhere";
  return out;
}

std::size_t countOf(const std::vector<Issue>& issues, IssueCode code) {
  std::size_t count = 0;
  for (const Issue& issue : issues) count += issue.code == code ? issue.items.size() : 0;
  return count;
}

}  // namespace

TEST_CASE("a copied choice holds the same work in the same order", "[plan][choice]") {
  const Plan plan = worked();
  REQUIRE_FALSE(plan.sections()[0].second->retired.empty());
  const auto edit = addChoice(plan, "B", "choice-1");
  const Plan after = with(plan, edit);
  CHECK(edit->args == std::vector<std::string>{"choice-2"});
  CHECK(after.info().activeChoice == "choice-2");
  CHECK(after.find<Choice>("choice-2")->name == "B");
  CHECK(after.find<Choice>("choice-2")->targets == plan.find<Choice>("choice-1")->targets);
  CHECK(anonymousPieces(after, "choice-2") == anonymousPieces(plan, "choice-1"));
  CHECK(anonymousSections(after, "choice-2") == anonymousSections(plan, "choice-1"));
  CHECK(after.treatments("choice-2").size() == 1);
  // The model is untouched, ids are new, formulas are shared.
  for (const auto& [id, item] : plan.items())
    if (id != kPlanId) CHECK(after.item(id) == item);
  std::size_t notes = 0, formulas = 0;
  for (const auto& [id, item] : after.items()) {
    if (const Note* note = std::get_if<Note>(item.get())) notes += note->choice == "choice-2";
    formulas += std::holds_alternative<Formula>(*item);
  }
  CHECK(notes == 1);
  CHECK(formulas == 2);
  std::set<ItemId> retired;
  for (const auto& [id, item] : after.items())
    if (const Section* section = std::get_if<Section>(item.get()))
      for (const RetiredPiece& piece : section->retired) {
        CHECK(retired.insert(piece.id).second);
        CHECK_FALSE(after.item(piece.id));
      }
  CHECK_FALSE(hasErrors(validate(after)));
  CHECK(countOf(validate(after), IssueCode::TwinDiffers) == 0);
  const auto back = readPlan(writePlan(after));
  REQUIRE(back);
  CHECK(*back == after);
}

TEST_CASE("the copy is worked on by itself", "[plan][choice]") {
  const Plan plan = worked();
  Plan after = with(plan, addChoice(plan, "B", "choice-1"));
  const ItemId section = after.sections()[0].first;
  after = with(after, changeSections(after, {section}, [](Section& s) {
                 s.layout->thickness_mm = {9, 9};
               }));
  CHECK(anonymousPieces(after, "choice-2") != anonymousPieces(plan, "choice-1"));
  CHECK(anonymousPieces(after, "choice-1") == anonymousPieces(plan, "choice-1"));
  CHECK(countOf(validate(after), IssueCode::TwinDiffers) == 0);
  // Taking the copy away gives the plan back, with its own choice active.
  CHECK(with(after, removeChoice(after, "choice-2")) == plan);
}

TEST_CASE("a copy looks like its model, to the bit", "[plan][choice][look]") {
  const Plan plan = worked();
  const Plan after = with(plan, addChoice(plan, "B", "choice-1"));
  const auto readings = [](const Plan& p, const ItemId& choice) {
    look::LookEngine engine(2000, 2.0);
    look::LookSettings settings;
    settings.choice = choice;
    const auto frame = engine.update(p, settings, {}, {});
    REQUIRE(frame);
    return *frame->readings;
  };
  const look::Readings model = readings(plan, "choice-1"), copy = readings(after, "");
  CHECK(model.whole.lightness == copy.whole.lightness);
  CHECK(model.whole.light_share == copy.whole.light_share);
  CHECK(model.whole.light_share > 0.01);
  const Plan empty = with(plan, addChoice(plan, "C", {}));
  CHECK(readings(empty, "").whole.light_share == 0);
}

TEST_CASE("random plans: a copy comes and goes without a trace", "[plan][choice]") {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    CAPTURE(seed);
    const Plan plan = samples::randomPlan(seed);
    const Plan after = with(plan, addChoice(plan, "B", "choice-1"));
    CHECK(after.pieces().size() == plan.pieces().size());
    const auto copy = anonymousPieces(after, "choice-2"), model = anonymousPieces(plan, "choice-1");
    for (std::size_t i = 0; i < copy.size(); ++i) {
      CHECK(copy[i].line == model[i].line);
      CHECK(copy[i].twinOf == model[i].twinOf);
      CHECK(copy[i].order == static_cast<int>(i) + 1);
    }
    CHECK(with(after, removeChoice(after, "choice-2")) == plan);
  }
}

TEST_CASE("choices: names, the active one, the last one", "[plan][choice]") {
  Plan plan = worked();
  CHECK(freeChoiceName(plan) == "B");
  plan = with(plan, addChoice(plan, "B", {}));
  CHECK(plan.pieces().empty());
  CHECK(plan.find<Choice>("choice-2")->targets.empty());
  CHECK(freeChoiceName(plan) == "C");
  CHECK(renameChoice(plan, "choice-2", "A").empty());  // taken
  CHECK(renameChoice(plan, "choice-9", "Z").empty());
  CHECK(renameChoice(plan, "choice-2", "").empty());
  CHECK(renameChoice(plan, "choice-2", "B").empty());  // as it is
  plan = with(plan, renameChoice(plan, "choice-2", "softer"));
  CHECK(choiceNamed(plan, "softer") == "choice-2");
  CHECK(choiceNamed(plan, "B").empty());
  plan = with(plan, activateChoice(plan, "choice-1"));
  CHECK(plan.info().activeChoice == "choice-1");
  CHECK(activateChoice(plan, "choice-9").empty());
  CHECK(activateChoice(plan, "piece-2").empty());
  CHECK(removeChoice(plan, "piece-2").empty());  // no choice
  plan = with(plan, removeChoice(plan, "choice-1"));
  CHECK(plan.info().activeChoice == "choice-2");
  CHECK(plan.pieces().empty());
  CHECK(removeChoice(plan, "choice-2").empty());
  CHECK_FALSE(hasErrors(validate(plan)));
}

TEST_CASE("a plan has room for 26 choices", "[plan][choice]") {
  Plan plan = Plan::fresh(1);
  while (choicesOf(plan).size() < limits::kChoices)
    plan = applied(plan, *addChoice(plan, freeChoiceName(plan), {}));
  CHECK(choicesOf(plan)[9].first == "choice-10");
  CHECK(choicesOf(plan).back().second->name == "Z");
  const auto refused = addChoice(plan, "more", {});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == ErrorCode::TooManyItems);
}

TEST_CASE("a copy that would outgrow the file is refused whole", "[plan][choice]") {
  Plan plan = Plan::fresh(1);
  Treatment glaze;
  glaze.choice = "choice-1";
  for (std::size_t i = 0; i <= limits::kTreatments / 2; ++i)
    plan.put("treatment-" + std::to_string(i + 1), glaze);
  const auto treatments = addChoice(plan, "B", "choice-1");
  REQUIRE_FALSE(treatments);
  CHECK(treatments.error().args[0] == "202 treatments");
  plan = Plan::fresh(1);
  Piece piece;
  piece.choice = "choice-1";
  piece.line = {{30, 50}, {60, 52}};
  for (std::size_t i = 0; i <= limits::kPieces / 2; ++i)
    plan.put("piece-" + std::to_string(i + 1), piece);
  const auto pieces = addChoice(plan, "B", "choice-1");
  REQUIRE_FALSE(pieces);
  CHECK(pieces.error().args[0] == "2002 pieces");
}

TEST_CASE("targets are set and taken away", "[plan][choice]") {
  Plan plan = worked();
  Target target;
  target.level = 7.5;
  plan = with(plan, setTarget(plan, "choice-1", "whole", target));
  CHECK(plan.find<Choice>("choice-1")->targets.at("whole") == target);
  CHECK(setTarget(plan, "choice-1", "whole", target).empty());
  plan = with(plan, setTarget(plan, "choice-1", "whole", {}));
  CHECK_FALSE(plan.find<Choice>("choice-1")->targets.count("whole"));
  CHECK(plan.find<Choice>("choice-1")->targets.count("crown"));
  CHECK(setTarget(plan, "choice-9", "whole", target).empty());
}

TEST_CASE("pieces and sections are taken into another choice", "[plan][choice]") {
  Plan plan = worked();
  plan = applied(plan, *addChoice(plan, "B", {}));
  plan = applied(plan, activateChoice(plan, "choice-1"));
  const auto model = plan.pieces("choice-1");
  // A woven piece with its twin.
  std::vector<ItemId> pair;
  for (const auto& [id, piece] : model)
    if (piece->section.empty()) pair.push_back(id);
  REQUIRE(pair.size() == 2);
  Plan after = with(plan, takeInto(plan, pair, "choice-2"));
  CHECK(after.info().activeChoice == "choice-1");
  REQUIRE(after.pieces("choice-2").size() == 2);
  CHECK(after.pieces("choice-1") == model);  // they stay where they were as well
  CHECK(countOf(validate(after), IssueCode::TwinDiffers) == 0);
  std::size_t pairs = 0;
  for (const auto& [id, piece] : after.pieces("choice-2")) {
    CHECK(piece->taking == Taking::Weave);
    if (piece->twinOf.empty()) continue;
    ++pairs;
    CHECK(after.find<Piece>(piece->twinOf)->choice == "choice-2");
    CHECK(followsSource(after, *piece));
  }
  CHECK(pairs == 1);
  // A section brings its run; the order goes on after what is there.
  after = with(after, takeInto(after, {"section-1"}, "choice-2"));
  REQUIRE(after.sections("choice-2").size() == 1);
  std::size_t run = 0;
  for (const auto& [id, piece] : model) run += piece->section == "section-1";
  REQUIRE(run > 1);
  CHECK(after.pieces("choice-2").size() == 2 + run);
  CHECK(after.pieces("choice-2")[2].second->order == 3);
  CHECK(after.pieces("choice-2")[2].second->section == after.sections("choice-2")[0].first);
  CHECK_FALSE(hasErrors(validate(after)));
  // Half of a pair stands on its own.
  const ItemId twin = after.find<Piece>(pair[0])->twinOf.empty() ? pair[1] : pair[0];
  const auto half = takeInto(after, {twin}, "choice-2");
  REQUIRE(half);
  CHECK(with(after, half).find<Piece>(half->args[0])->twinOf.empty());
  // Nothing to take; no such choice.
  CHECK(takeInto(plan, pair, "choice-1")->empty());
  CHECK(takeInto(plan, {}, "choice-2")->empty());
  const auto unknown = takeInto(plan, pair, "choice-9");
  REQUIRE_FALSE(unknown);
  CHECK(describe(unknown.error()).find("choice-9") != std::string::npos);
}
