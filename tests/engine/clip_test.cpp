// The clipboard: copy, paste and duplicate inside and between plans.
#include <catch2/catch.hpp>
#include <set>

#include "engine/base/random.h"
#include "engine/plan/clip.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/twins.h"
#include "engine/plan/validate.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

Section backRight() {
  Section section;
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = Layout{};
  return section;
}

Plan withSection() {
  const Plan empty = Plan::fresh(7);
  return applied(empty, addSection(empty, backRight()));
}

// Everything of a plan but names and places in the order, pieces of a section
// under it: what must come through a clip.
std::vector<ItemId> everything(const Plan& plan) {
  std::vector<ItemId> ids;
  for (const auto& [id, item] : plan.items())
    if (std::holds_alternative<Section>(*item) || std::holds_alternative<Piece>(*item) ||
        std::holds_alternative<Note>(*item))
      ids.push_back(id);
  return ids;
}

Piece drawn(std::vector<ScalpPoint> line) {
  Piece piece;
  piece.line = std::move(line);
  return piece;
}

Choice named(const std::string& name) {
  Choice choice;
  choice.name = name;
  return choice;
}

const Piece& onlyPiece(const Plan& plan, const ItemId& section, int row) {
  for (const auto& [id, piece] : plan.pieces())
    if (piece->section == section && piece->laidOut && piece->laidOut->row == row) return *piece;
  FAIL("no such piece");
  return *plan.pieces().front().second;
}

Plan pastedInto(const Plan& plan, const std::string& text, std::vector<ItemId>* made = nullptr) {
  const auto edit = pasted(plan, text);
  INFO((edit ? std::string() : describe(edit.error())));
  REQUIRE(edit);
  if (made) *made = edit->args;
  return applied(plan, *edit);
}

}  // namespace

TEST_CASE("a clip holds the selected section, its pieces and their formulas", "[plan][clip]") {
  Plan plan = withSection();
  Formula used, unused;
  used.letter = "A";
  used.kind = "lightener";
  unused.letter = "B";
  plan = applied(plan, setItem(plan, "formula-1", used));
  plan = applied(plan, setItem(plan, "formula-2", unused));
  const ItemId section = plan.sections().front().first;
  const ItemId first = plan.pieces().front().first;
  plan = applied(plan, changePieces(plan, {first}, [](Piece& p) { p.root.formula = "formula-1"; }));
  const std::size_t run = plan.pieces().size();
  REQUIRE(run > 1);
  plan = applied(plan, addPiece(plan, drawn({{170, 40}, {150, 40}})));

  const auto clip = readParts(copied(plan, {section}), kClipFormat);
  REQUIRE(clip);
  CHECK(clip->plan.sections().size() == 1);
  CHECK(clip->plan.pieces().size() == run);  // not the one drawn free
  CHECK(clip->plan.find<Formula>("formula-1"));
  CHECK_FALSE(clip->plan.find<Formula>("formula-2"));
  CHECK(clip->plan.info().title.empty());
  CHECK(copied(plan, {kHeadId, kHairId, "formula-1", "nobody"}).empty());
}

TEST_CASE("pasting into the same plan gives the same pieces under free ids", "[plan][clip]") {
  const Plan plan = withSection();
  const ItemId section = plan.sections().front().first;
  std::vector<ItemId> made;
  const Plan after = pastedInto(plan, copied(plan, {section}), &made);
  REQUIRE(made.size() == 1);
  CHECK(made.front() != section);
  const Section& copy = *after.find<Section>(made.front());
  const Section& model = *plan.find<Section>(section);
  CHECK(copy.outline == model.outline);
  CHECK(copy.layout == model.layout);
  CHECK(copy.order > model.order);
  const auto before = plan.pieces();
  const auto all = after.pieces();
  REQUIRE(all.size() == 2 * before.size());
  for (std::size_t i = 0; i < before.size(); ++i) {
    CHECK(all[i].first == before[i].first);  // what was there stays
    CHECK(*all[i].second == *before[i].second);
    Piece same = *all[before.size() + i].second;  // then the new ones in their order
    CHECK(same.section == made.front());
    same.section = before[i].second->section;
    same.order = before[i].second->order;
    CHECK(same == *before[i].second);
  }
  CHECK_FALSE(hasErrors(validate(after)));
  CHECK(applied(after, inverse(*pasted(plan, copied(plan, {section})))) == plan);
  // The copied run is a run: it flows by its own rule.
  const Plan thick = applied(after, changeSections(after, made, [](Section& s) {
    s.layout->thickness_mm = {9, 9};
  }));
  CHECK(onlyPiece(thick, made.front(), 1).thickness_mm == 9);
  CHECK(onlyPiece(thick, section, 1).thickness_mm == 5);
}

TEST_CASE("pairs stay pairs when both are copied, one alone stands alone", "[plan][clip]") {
  Plan plan = withSection();
  const ItemId source = plan.sections().front().first;
  plan = applied(plan, addTwins(plan, {source}));
  const ItemId twin = twinsOf(plan, source).front();
  const Plan other = Plan::fresh(9);

  std::vector<ItemId> made;
  const Plan both = pastedInto(other, copied(plan, {source, twin}), &made);
  REQUIRE(made.size() == 2);
  REQUIRE(both.pieces().size() == plan.pieces().size());
  std::size_t following = 0;
  for (const auto& [id, piece] : both.pieces()) following += followsSource(both, *piece);
  CHECK(following == both.pieces().size() / 2);
  CHECK(twinsOf(both, made[0]) == std::vector<ItemId>{made[1]});
  CHECK(followsSource(both, *both.find<Section>(made[1])));
  CHECK(validate(both).size() == validate(plan).size());

  const Plan one = pastedInto(other, copied(plan, {twin}), &made);
  REQUIRE(made.size() == 1);
  CHECK(one.find<Section>(made[0])->twinOf.empty());
  CHECK(one.find<Section>(made[0])->outline == plan.find<Section>(twin)->outline);
  REQUIRE(one.pieces().size() == plan.pieces().size() / 2);
  for (const auto& [id, piece] : one.pieces()) {
    CHECK(piece->twinOf.empty());
    CHECK(piece->section == made[0]);
  }
}

TEST_CASE("a piece without its section comes as one drawn free", "[plan][clip]") {
  const Plan plan = withSection();
  const ItemId first = plan.pieces().front().first;
  const Plan after = pastedInto(plan, copied(plan, {first}));
  const Piece& copy = *after.pieces().back().second;
  CHECK(copy.section.empty());
  CHECK_FALSE(copy.laidOut);
  CHECK(copy.line == plan.find<Piece>(first)->line);
  CHECK(runOf(head::HeadShape(), *after.sections().front().second).pieces.size() ==
        plan.pieces().size());
}

TEST_CASE("an equal formula is used again, another one gets a free letter", "[plan][clip]") {
  Plan plan = Plan::fresh(3);
  Formula formula;
  formula.letter = "A";
  formula.text = "as the leaflet says";
  plan = applied(plan, setItem(plan, "formula-1", formula));
  Piece piece;
  piece.line = {{170, 70}, {150, 70}};
  piece.root.formula = "formula-1";
  piece.foil = "7";
  const ChangeSet added = addPiece(plan, piece);
  plan = applied(plan, added);
  const std::string clip = copied(plan, added.args);

  const Plan same = pastedInto(plan, clip);
  CHECK(same.pieces().back().second->root.formula == "formula-1");
  CHECK_FALSE(same.find<Formula>("formula-2"));
  CHECK(same.pieces().back().second->foil != "7");  // its own foil

  Plan other = Plan::fresh(4);
  Formula else_;
  else_.letter = "A";
  else_.text = "something else";
  other = applied(other, setItem(other, "formula-1", else_));
  const Plan there = pastedInto(other, clip);
  const ItemId used = there.pieces().back().second->root.formula;
  REQUIRE(used == "formula-2");
  CHECK(there.find<Formula>(used)->text == "as the leaflet says");
  CHECK(there.find<Formula>(used)->letter == "B");
  CHECK(there.find<Formula>("formula-1")->text == "something else");
  CHECK(there.pieces().back().second->foil == "7");
}

TEST_CASE("a clip goes into the active choice", "[plan][clip]") {
  Plan plan = withSection();
  const ItemId section = plan.sections().front().first;
  const std::string clip = copied(plan, {section});
  plan = applied(plan, setItem(plan, "choice-2", named("B")));
  plan = applied(plan, changePlan(plan, [](PlanInfo& info) { info.activeChoice = "choice-2"; }));
  const Plan after = pastedInto(plan, clip);
  CHECK(after.sections("choice-2").size() == 1);
  CHECK(after.pieces("choice-2").size() == plan.pieces("choice-1").size());
  CHECK(after.pieces("choice-1").size() == plan.pieces("choice-1").size());
  CHECK_FALSE(hasErrors(validate(after)));
}

TEST_CASE("on another head a run flows anew and stays inside the hairline", "[plan][clip]") {
  Plan plan = withSection();
  const ItemId section = plan.sections().front().first;
  Plan other = Plan::fresh(11);
  other = applied(other, changeHead(other, [](Head& head) {
    head.measures.set = head::HeadSet::Men;
    head.measures.size = head::HeadSize::Large;
    head.hairline.nape_mm = 25;
  }));
  std::vector<ItemId> made;
  const Plan after = pastedInto(other, copied(plan, {section}), &made);
  const Section& copy = *after.find<Section>(made.front());
  const auto shape = head::HeadShape(head::fitHead(other.head().measures)->axes);
  const Run run = runOf(shape, copy);
  REQUIRE(run.trouble == RunTrouble::None);
  REQUIRE(after.pieces().size() == run.pieces.size());
  for (std::size_t i = 0; i < run.pieces.size(); ++i)
    CHECK(after.pieces()[i].second->line == run.pieces[i].line);
  const head::Hairline here(shape, other.head().hairline);
  const head::HeadShape mean;
  const head::Hairline there(mean);
  for (std::size_t i = 0; i < copy.outline.size(); ++i) {
    const double old_mm = there.above_mm(mean.pointAt(plan.find<Section>(section)->outline[i]));
    const double now_mm = here.above_mm(shape.pointAt(copy.outline[i]));
    CHECK(now_mm >= std::min(0.0, old_mm) - 0.1);
    if (std::abs(old_mm) <= 10) CHECK(now_mm == Approx(old_mm).margin(0.1));
    CHECK(copy.outline[i].bearing_deg == plan.find<Section>(section)->outline[i].bearing_deg);
  }
  CHECK_FALSE(hasErrors(validate(after)));
}

TEST_CASE("everything of any plan comes through a clip", "[plan][clip]") {
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    const Plan plan = seed == 1 ? samples::fullPlan() : samples::randomPlan(seed);
    INFO("seed " << seed);
    const std::string text = copied(plan, everything(plan));
    if (everything(plan).empty()) {
      CHECK(text.empty());
      continue;
    }
    const auto clip = readParts(text, kClipFormat);
    INFO((clip ? std::string() : describe(clip.error())));
    REQUIRE(clip);
    CHECK(clip->plan == partsOf(plan, everything(plan)).plan);
    CHECK(writeParts(*clip, kClipFormat) == text);

    Plan target = Plan::fresh(seed);
    target = applied(target, changeHead(target, [&](Head& head) {
      head.measures = plan.head().measures;
      head.hairline = plan.head().hairline;
    }));
    const Plan after = pastedInto(target, text);
    const auto count = [](const Plan& p) {
      std::array<std::size_t, 3> n{};
      for (const auto& [id, item] : p.items()) {
        n[0] += std::holds_alternative<Section>(*item);
        n[1] += std::holds_alternative<Piece>(*item);
        n[2] += std::holds_alternative<Note>(*item);
      }
      return n;
    };
    CHECK(count(after) == count(clip->plan));
    const auto back = readPlan(writePlan(after));
    REQUIRE(back);
    CHECK(*back == after);
  }
}

TEST_CASE("what is no clip is refused with its place", "[plan][clip]") {
  const Plan plan = withSection();
  const auto refused = [&](std::string_view text) {
    const auto edit = pasted(plan, text);
    REQUIRE_FALSE(edit);
    return describe(edit.error());
  };
  CHECK(refused("hello").find("line 1") != std::string::npos);
  CHECK(refused("{}") == "this JSON is not a clip: it needs \"format\": \"combdraft clip\"");
  CHECK(refused(writePlan(plan)) ==
        "/format: this JSON is not a clip: it needs \"format\": \"combdraft clip\"");
  CHECK(refused(R"({"format": "combdraft clip", "version": 9})").find("/version") == 0);
  std::string bad = copied(plan, {plan.sections().front().first});
  const std::string thick = "\"thickness_mm\": 5";
  bad.replace(bad.find(thick), thick.size(), "\"thickness_mm\": 500");
  CHECK(refused(bad) == "/pieces/0/thickness_mm: found 500, allowed is 0.2 to 40 mm");
  CHECK(pasted(plan, R"({"format": "combdraft clip", "version": 2})")->empty());
  // A name that leads nowhere is dropped; the rest comes.
  const Plan after = pastedInto(plan, R"({"format": "combdraft clip", "version": 2, "pieces": [
    {"id": "p", "choice": "gone", "section": "gone", "twinOf": "gone", "line": [[170, 60], [150, 60]],
     "root": {"formula": "gone"}}]})");
  CHECK(after.pieces().back().second->root.formula.empty());
  CHECK_FALSE(hasErrors(validate(after)));
}

TEST_CASE("a plan that would grow over the limits is left as it is", "[plan][clip]") {
  Plan plan = Plan::fresh(5);
  Piece piece;
  piece.choice = "choice-1";
  piece.line = {{170, 60}, {150, 60}};
  for (int i = 1; i <= 1001; ++i) {
    piece.order = i;
    plan.put("piece-" + std::to_string(i), piece);
  }
  std::vector<ItemId> ids;
  for (const auto& entry : plan.pieces()) ids.push_back(entry.first);
  const auto edit = pasted(plan, copied(plan, ids));
  REQUIRE_FALSE(edit);
  CHECK(describe(edit.error()) == "found 2002 pieces, at most 2000");
}

TEST_CASE("a duplicate stands 20 mm lower, a one-sided section across the head", "[plan][clip]") {
  const head::HeadShape shape;
  Plan plan = Plan::fresh(6);
  const ChangeSet added = addPiece(plan, drawn({{170, 60}, {150, 62}, {130, 60}}));
  plan = applied(plan, added);
  const auto copy = duplicated(plan, added.args);
  REQUIRE(copy);
  const Plan two = applied(plan, *copy);
  const Vec3 from = shape.pointAt({150, 62}), to = shape.pointAt(two.find<Piece>(copy->args[0])->line[1]);
  CHECK((from - to).norm() == Approx(kCopyBelow_mm).margin(0.3));
  CHECK(to.z() < from.z());
  CHECK(*two.find<Piece>(added.args[0]) == *plan.find<Piece>(added.args[0]));

  // At the nape there is no lower: it stands above.
  const ChangeSet low = addPiece(plan, drawn({{170, 134}, {150, 128}}));
  const Plan nape = applied(plan, low);
  const auto above = duplicated(nape, low.args);
  REQUIRE(above);
  CHECK(applied(nape, *above).find<Piece>(above->args[0])->line[1].drop_deg < 128);

  const Plan section = withSection();
  const ItemId id = section.sections().front().first;
  const auto across = duplicated(section, {id});
  REQUIRE(across);
  const Plan pair = applied(section, *across);
  const Section& other = *pair.find<Section>(across->args[0]);
  CHECK(other.twinOf.empty());  // its own from the start
  CHECK(other.outline.front() == head::mirrored(section.find<Section>(id)->outline.front()));
  CHECK(pair.pieces().size() == 2 * section.pieces().size());
  const Run run = runOf(shape, other);
  CHECK(run.pieces.size() == section.pieces().size());
  // Now that side is taken: the next copy of a pair goes lower.
  const Plan twins = applied(section, addTwins(section, {id}));
  const auto lower = duplicated(twins, {id});
  REQUIRE(lower);
  const Section& third = *applied(twins, *lower).find<Section>(lower->args[0]);
  CHECK(third.outline.front().bearing_deg > 0);
  CHECK_FALSE(third.outline == section.find<Section>(id)->outline);
}
