// Undo as a property: random edits, all undone is the start, all redone the end, and
// the plan is sound and survives its file. 200 edits in each run of the tests; the long
// form, "[walk]", takes 100,000.
#include <catch2/catch.hpp>
#include <set>

#include "engine/base/number_text.h"
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

Section randomSection(samples::Draws& draw) {
  Section section;
  const double bearing = draw.uniform(-150, 150), drop = draw.uniform(24, 34);
  const double wide = draw.uniform(15, 45), tall = draw.uniform(8, 16);
  section.outline = {{bearing, drop}, {bearing + wide, drop}, {bearing + wide, drop + tall},
                     {bearing, drop + tall}};
  section.layout = Layout{};
  section.layout->run = draw.oneOf<LayoutRun>(5);
  section.layout->thickness_mm = {draw.uniform(1, 6), draw.uniform(1, 6)};
  section.layout->leftOut_mm = {draw.uniform(2, 15), draw.uniform(2, 15)};
  section.layout->foil_mm = draw.uniform(30, 120);
  return section;
}

template <class T>
std::vector<ItemId> idsOf(const Plan& plan) {
  std::vector<ItemId> ids;
  for (const auto& [id, item] : plan.items())
    if (std::holds_alternative<T>(*item)) ids.push_back(id);
  return ids;
}

ChangeSet randomEdit(const Plan& plan, samples::Draws& draw) {
  const auto pieces = idsOf<Piece>(plan), sections = idsOf<Section>(plan);
  const auto choices = idsOf<Choice>(plan);
  const auto some = [&](const std::vector<ItemId>& ids) {
    return ids[static_cast<std::size_t>(draw.whole(0, static_cast<int>(ids.size()) - 1))];
  };
  const int kind = draw.whole(0, 15);
  if (kind <= 4 && sections.empty()) return addSection(plan, randomSection(draw));
  if (kind >= 5 && kind <= 10 && pieces.empty())
    return addPiece(plan, samples::randomPiece(draw, {}, 0));
  switch (kind) {
    case 0: return sections.size() < 5 ? addSection(plan, randomSection(draw))
                                       : removeItems(plan, {some(sections)});
    case 1:
      return changeSections(plan, {some(sections)}, [&](Section& s) {
        if (!s.layout) s.layout = Layout{};
        s.layout->leftOut_mm = {draw.uniform(2, 20), draw.uniform(2, 20)};
        s.layout->zigzag_mm = draw.whole(0, 1) * draw.uniform(1, 5);
      });
    case 2:
      return changeSections(plan, {some(sections)}, [&](Section& s) {
        for (ScalpPoint& p : s.outline) p.drop_deg += draw.uniform(-1, 1);
      });
    case 3: {
      const ItemId id = some(sections);
      const auto& outline = plan.find<Section>(id)->outline;
      return splitSection(plan, id, {outline.front(), outline[outline.size() / 2]});
    }
    case 4: return takeBack(plan, {some(sections)});
    case 5: return addPiece(plan, samples::randomPiece(draw, {}, 0));
    case 6:
      return changePieces(plan, {some(pieces), some(pieces)}, [&](Piece& p) {
        p.thickness_mm = draw.uniform(1, 9);
        p.note = "n" + numberText(draw.uniform(0, 9), 0);
      });
    case 7: {
      const ItemId id = some(pieces);
      const ScalpPoint from = plan.find<Piece>(id)->line.front();
      return movePieces(plan, {id}, from, {from.bearing_deg + draw.uniform(-8, 8), from.drop_deg + draw.uniform(-4, 4)});
    }
    case 8: return removeItems(plan, {some(pieces), some(pieces)});
    case 9: return letGo(plan, {some(pieces)});
    case 10: return renumber(plan, plan.info().activeChoice, {some(pieces), some(pieces)});
    case 11: {
      std::vector<ItemId> any = sections;
      any.insert(any.end(), pieces.begin(), pieces.end());
      return any.empty() ? ChangeSet{} : addTwins(plan, {some(any)});
    }
    case 12: {
      std::vector<ItemId> any = sections;
      any.insert(any.end(), pieces.begin(), pieces.end());
      return any.empty() ? ChangeSet{} : standAlone(plan, {some(any)});
    }
    case 13: {
      Choice choice;
      choice.name = "B";
      if (choices.size() < 4 && draw.whole(0, 1)) return setItem(plan, plan.freeId("choice"), choice);
      const ItemId next = some(choices);
      return changePlan(plan, [&](PlanInfo& info) { info.activeChoice = next; });
    }
    case 14: return draw.whole(0, 3) ? changeHair(plan, [&](Hair& h) { h.white_frac = draw.uniform(0, 1); })
                                     : removeItems(plan, {some(choices)});
    default:
      return changeHead(plan, [&](Head& h) { h.measures.size = draw.oneOf<head::HeadSize>(3); });
  }
}

struct Walked {
  std::set<EditKind> kinds;
  std::size_t laidOut = 0;  ///< pieces of a section's rule, counted after each edit
};

/// `edits` random edits from `start`, all undone, all redone. Every `everyNth` plan is
/// held against the rules of a plan and read again from its own file.
Walked walk(const Plan& start, std::uint64_t seed, int edits, int everyNth) {
  samples::Draws draw(seed);
  Plan plan = start;
  std::vector<ChangeSet> done;
  Walked walked;
  for (int i = 0; i < edits; ++i) {
    const ChangeSet edit = randomEdit(plan, draw);
    CAPTURE(seed, i, static_cast<int>(edit.kind), edit.args);
    plan = applied(plan, edit);
    walked.kinds.insert(edit.kind);
    done.push_back(edit);
    if (i % everyNth != 0) continue;
    for (const auto& [id, piece] : plan.pieces()) walked.laidOut += piece->laidOut.has_value();
    for (const Issue& issue : validate(plan)) {
      INFO(describe(issue));
      CHECK(issue.severity != Severity::Error);
      CHECK(issue.code != IssueCode::TwinDiffers);
    }
    const auto reread = readPlan(writePlan(plan));
    if (!reread) FAIL(describe(reread.error()));
    CHECK(*reread == plan);
  }
  const Plan end = plan;
  for (auto edit = done.rbegin(); edit != done.rend(); ++edit) plan = applied(plan, inverse(*edit));
  CHECK(plan == start);
  for (const ChangeSet& edit : done) plan = applied(plan, edit);
  CHECK(plan == end);
  return walked;
}

}  // namespace

TEST_CASE("200 random edits can be undone and redone", "[plan][undo]") {
  for (const std::uint64_t seed : {1u, 2u, 3u, 4u}) {
    const Walked walked = walk(samples::randomPlan(seed), 900 + seed, 200, 1);
    CHECK(walked.kinds.size() >= 12);
    CHECK(walked.laidOut > 100);
  }
}

TEST_CASE("100 000 random edits can be undone and redone", "[.][walk]") {
  CHECK(walk(samples::randomPlan(5), 905, 100'000, 100).kinds.size() >= 12);
}
