// Bowls and minutes: by hand, by common practice, and on 1,000 random plans.
#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

#include "engine/work/work_list.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::work;
using plan::samples::Draws;

namespace {

Job job(const std::string& piece, double backcomb, std::vector<Portion> portions, bool top = false) {
  return {piece, {}, backcomb, backcomb > 0 ? 1.2 : 0, std::move(portions), top};
}

std::vector<const Step*> stepsOf(const Timeline& line, StepKind kind) {
  std::vector<const Step*> steps;
  for (const Step& step : line.steps)
    if (step.kind == kind) steps.push_back(&step);
  return steps;
}

bool isTold(const Timeline& line, const plan::ItemId& piece, const plan::ItemId& formula) {
  for (const TimelineNote& note : line.notes)
    if (note.kind == NoteKind::PieceLongerThanLife && note.piece == piece && note.formula == formula) return true;
  return false;
}

/// Everything that has to hold of any timeline.
void checkWhole(const Timeline& line, const std::vector<Job>& jobs, const std::vector<FormulaLimits>& limits, const HandSettings& hands) {
  const auto lifeOf = [&](const plan::ItemId& formula) {
    for (const FormulaLimits& limit : limits)
      if (limit.formula == formula && limit.life_min && *limit.life_min > 0) return limit.life_min;
    return std::optional<double>();
  };
  std::map<plan::ItemId, double> placed, backcombed;
  double busy[2] = {0, 0};
  for (const Step& step : line.steps) {
    CHECK(step.to_min >= step.from_min);
    CHECK(step.pair < hands.pairs);
    if (step.kind == StepKind::CombOut) continue;
    CHECK(step.from_min >= busy[step.pair] - 1e-9);  // one thing at a time
    busy[step.pair] = step.to_min;
    if (step.kind == StepKind::Backcomb) backcombed[step.piece] += step.to_min - step.from_min;
    if (step.kind != StepKind::Place) continue;
    placed[step.piece] += step.to_min - step.from_min;
    const Bowl& bowl = line.bowls[*step.bowl];
    CHECK(step.from_min >= bowl.from_min - 1e-9);  // it is mixed by then
    CHECK(step.productAge_min == Approx(step.to_min - bowl.mixFrom_min));
    const auto life = lifeOf(bowl.formula);
    if (!life) continue;
    if (step.productAge_min > *life + 1e-6) {
      CHECK(isTold(line, step.piece, bowl.formula));
      // It cannot be avoided: a bowl that is mixed for this piece alone is too old at its end.
      CHECK(step.productAge_min == Approx(hands.mix_min + step.to_min - step.from_min));
    }
  }
  for (const Job& one : jobs) {
    double minutes = 0;
    for (const Portion& portion : one.portions) minutes += portion.place_min;
    CHECK(placed[one.piece] == Approx(minutes));
    CHECK(backcombed[one.piece] == Approx(one.backcomb_min));
  }
  double product = 0, planned = 0;
  for (const Bowl& bowl : line.bowls) product += bowl.product_g;
  for (const Job& one : jobs)
    for (const Portion& portion : one.portions) planned += portion.product_g;
  CHECK(product == Approx(planned));
}

}  // namespace

TEST_CASE("a small appointment is planned as by hand", "[work][timeline]") {
  // docs/work-by-hand.md walks through the same minutes.
  const std::vector<Job> jobs{job("piece-1", 0.7, {{"A", 1, 9}}), job("piece-2", 0.7, {{"A", 1, 9}}), job("piece-3", 0.7, {{"A", 1, 9}}),
                              job("piece-4", 0, {{"A", 1.4, 12}}, true), job("piece-5", 0, {{"A", 0.5, 4}, {"B", 0.5, 6}}, true)};
  const std::vector<FormulaLimits> limits{{"A", 6, {}}, {"B", 10, {}}};
  const HandSettings hands;
  const Timeline line = planTimeline(jobs, limits, hands);
  checkWhole(line, jobs, limits, hands);
  REQUIRE(line.bowls.size() == 4);
  CHECK(line.bowls[0].mixFrom_min == Approx(0.7));
  CHECK(line.bowls[1].mixFrom_min == Approx(6.1));
  CHECK(line.bowls[2].mixFrom_min == Approx(9.1));
  CHECK(line.bowls[3].mixFrom_min == Approx(13.0));
  CHECK(line.bowls[2].pieces == std::vector<plan::ItemId>{"piece-4", "piece-5"});
  CHECK(line.bowls[0].product_g == 18);
  const auto placed = stepsOf(line, StepKind::Place);
  REQUIRE(placed.size() == 6);
  const double ages[] = {3.0, 4.7, 3.0, 3.4, 3.9, 2.5};
  for (std::size_t i = 0; i < 6; ++i) CHECK(placed[i]->productAge_min == Approx(ages[i]));
  CHECK(line.lastIn_min == Approx(15.5));
  CHECK(line.looked_min == Approx(16.5));
  CHECK(line.combOut_min == Approx(3.6));
  CHECK(line.total_min == Approx(20.1));
  CHECK(line.reserve_min == Approx(3.015));
  CHECK(line.notes.empty());
  const OldestNow oldest = oldestAt(line, 9.0);
  CHECK(oldest.piece == "piece-1");
  CHECK(*oldest.pieceAge_min == Approx(9.0 - 2.7));
  CHECK(*oldest.bowl == 1);
  CHECK(*oldest.productAge_min == Approx(9.0 - 6.1));
  CHECK_FALSE(oldestAt(line, 0.5).pieceAge_min);
}

TEST_CASE("common practice on a head of twenty five large backcombed pieces", "[work][timeline]") {
  // Common practice, no source: with quick speeds such a head comes to about 40
  // minutes of placing; with a typed life of 15 minutes its bowls are mixed three
  // times or more, and its top pieces come from the freshest.
  const double quickSlice = 0.9, quickBackcomb = 0.7;
  std::vector<Job> jobs;
  for (int i = 0; i < 25; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), quickBackcomb, {{"A", quickSlice, 8}}, i >= 17));
  const std::vector<FormulaLimits> limits{{"A", 15, {}}};
  const HandSettings hands;
  const Timeline line = planTimeline(jobs, limits, hands);
  checkWhole(line, jobs, limits, hands);
  double placing = 0;
  for (const Step& step : line.steps)
    if (step.kind == StepKind::Place || step.kind == StepKind::Backcomb) placing += step.to_min - step.from_min;
  CHECK(placing > 35);
  CHECK(placing < 45);
  CHECK(line.bowls.size() >= 3);
  // The first top piece is the first of its bowl.
  for (const Bowl& bowl : line.bowls)
    for (std::size_t i = 0; i < bowl.pieces.size(); ++i)
      if (bowl.pieces[i] == "piece-18") CHECK(i == 0);
  CHECK(line.notes.empty());
}

TEST_CASE("an order that goes from side to top and back mixes few bowls", "[work][timeline]") {
  // Every other piece of thirty is at the top. Bowls: one for the first piece, one for the first at the
  // top, and then at most one each time the newest is 15 of its 30 minutes old. Thirty minutes of placing
  // and two for each of n bowls: n <= 2 + (30 + 2 n) / 15, so n <= 4.6.
  std::vector<Job> jobs;
  for (int i = 0; i < 30; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), 0, {{"A", 1, 5}}, i % 2 == 1));
  const std::vector<FormulaLimits> limits{{"A", 30, {}}};
  const HandSettings hands;
  const Timeline line = planTimeline(jobs, limits, hands);
  checkWhole(line, jobs, limits, hands);
  CHECK(line.notes.empty());
  REQUIRE(line.bowls.size() >= 2);
  CHECK(line.bowls.size() <= 4);
  CHECK(line.bowls[1].pieces.front() == "piece-2");
  for (std::size_t i = 2; i < line.bowls.size(); ++i) CHECK(line.bowls[i].mixFrom_min - line.bowls[i - 1].mixFrom_min > 15);
  for (const Step& step : line.steps)
    if (step.kind == StepKind::Place) CHECK(step.productAge_min <= 30);
  HandSettings asItComes;
  asItComes.top = TopBowl::AsItComes;
  CHECK(planTimeline(jobs, limits, asItComes).bowls.size() == 2);  // the second where the first reaches its life
}

TEST_CASE("each formula with a typed life has a fresh bowl for its first piece at the top", "[work][timeline]") {
  const std::vector<Job> jobs{job("piece-1", 0, {{"A", 1, 5}}), job("piece-2", 0, {{"B", 1, 5}}), job("piece-3", 0, {{"A", 1, 5}}, true),
                              job("piece-4", 0, {{"B", 1, 5}}, true), job("piece-5", 0, {{"C", 1, 5}}), job("piece-6", 0, {{"C", 1, 5}}, true)};
  const Timeline line = planTimeline(jobs, {{"A", 60, {}}, {"B", 60, {}}}, {});
  std::map<plan::ItemId, int> bowls;
  for (const Bowl& bowl : line.bowls) ++bowls[bowl.formula];
  CHECK(bowls["A"] == 2);
  CHECK(bowls["B"] == 2);
  CHECK(bowls["C"] == 1);  // its life is not typed
  for (const Bowl& bowl : line.bowls)
    if (bowl.number == 2) CHECK(bowl.pieces.size() == 1);
}

TEST_CASE("both formulas of a piece are one line unless a bowl is mixed between", "[work][timeline]") {
  std::vector<Job> jobs;
  for (int i = 0; i < 12; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), i % 3 ? 0 : 0.7, {{"A", 0.5, 3}, {"B", 0.5, 3}}));
  for (const int pairs : {1, 2}) {
    HandSettings hands;
    hands.pairs = pairs;
    const Timeline line = planTimeline(jobs, {}, hands);
    const auto lines = linesOf(line);
    std::vector<int> seen(line.steps.size(), 0);
    std::map<plan::ItemId, int> rows;
    std::size_t together = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      REQUIRE_FALSE(lines[i].empty());
      if (i) CHECK(lines[i].front() > lines[i - 1].front());
      for (const std::size_t step : lines[i]) {
        ++seen[step];
        CHECK(line.steps[step].piece == line.steps[lines[i].front()].piece);
        CHECK(line.steps[step].pair == line.steps[lines[i].front()].pair);
      }
      const Step& first = line.steps[lines[i].front()];
      if (first.kind == StepKind::Place) ++rows[first.piece];
      together += lines[i].size() == 2;
    }
    CHECK(std::all_of(seen.begin(), seen.end(), [](int times) { return times == 1; }));
    CHECK(rows["piece-1"] == 2);  // B's first bowl is mixed between
    CHECK(rows["piece-12"] == 1);
    CHECK(together == 11);
  }
}

TEST_CASE("without a typed life no bowl is planned anew and it is told", "[work][timeline]") {
  std::vector<Job> jobs;
  for (int i = 0; i < 60; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), 0, {{"A", 1, 1}}, i > 30));
  for (const std::optional<double> life : {std::optional<double>(), std::optional<double>(0), std::optional<double>(-4)}) {
    const Timeline line = planTimeline(jobs, {{"A", life, {}}}, {});
    CHECK(line.bowls.size() == 1);
    REQUIRE(line.notes.size() == 1);
    CHECK(line.notes[0].kind == NoteKind::LifeNotTyped);
  }
}

TEST_CASE("a piece longer than a bowl lasts is told and nothing else is", "[work][timeline]") {
  const std::vector<Job> jobs{job("piece-1", 0, {{"A", 1, 1}}), job("piece-2", 0, {{"A", 7, 1}}), job("piece-3", 0, {{"A", 1, 1}})};
  const Timeline line = planTimeline(jobs, {{"A", 8, {}}}, {});
  REQUIRE(line.notes.size() == 1);
  CHECK(line.notes[0] == TimelineNote{NoteKind::PieceLongerThanLife, "A", "piece-2", 9, 8});
  CHECK(line.bowls.size() == 3);
}

TEST_CASE("the leaflet's longest time is told when pieces reach it before the last is in", "[work][timeline]") {
  std::vector<Job> jobs;
  for (int i = 0; i < 40; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), 0, {{"A", 1, 1}}));
  const auto line = planTimeline(jobs, {{"A", {}, 30}}, {});
  const auto late = std::count_if(line.notes.begin(), line.notes.end(), [](const TimelineNote& n) { return n.kind == NoteKind::LimitBeforeLastIn; });
  CHECK(late == 1);
  for (const TimelineNote& note : line.notes)
    if (note.kind == NoteKind::LimitBeforeLastIn) CHECK(note.piece == "piece-1");
  const auto quick = planTimeline(jobs, {{"A", {}, 41}}, {});
  for (const TimelineNote& note : quick.notes) CHECK(note.kind != NoteKind::LimitBeforeLastIn);
}

TEST_CASE("two pairs of hands are faster and a typed interval adds looking", "[work][timeline]") {
  std::vector<Job> jobs;
  for (int i = 0; i < 30; ++i) jobs.push_back(job("piece-" + std::to_string(i + 1), 0.7, {{"A", 1, 5}}, i > 20));
  const std::vector<FormulaLimits> limits{{"A", 20, {}}};
  HandSettings one, two, looking;
  two.pairs = 2;
  looking.lookEvery_min = 10;
  const Timeline slow = planTimeline(jobs, limits, one), fast = planTimeline(jobs, limits, two), often = planTimeline(jobs, limits, looking);
  checkWhole(fast, jobs, limits, two);
  checkWhole(often, jobs, limits, looking);
  CHECK(fast.lastIn_min < 0.65 * slow.lastIn_min);
  CHECK(fast.lastIn_min > 0.5 * slow.lastIn_min - 3);
  CHECK(stepsOf(often, StepKind::Look).size() > stepsOf(slow, StepKind::Look).size());
  CHECK(often.lastIn_min > slow.lastIn_min);
}

TEST_CASE("no product older than its life on 1000 random plans and lives", "[work][timeline]") {
  int remixed = 0, told = 0, fine = 0;
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    INFO("random plan " << seed);
    Draws draw(seed + 5000);
    plan::Plan plan = plan::samples::randomPlan(seed);
    std::vector<FormulaLimits> limits;
    for (const char* id : {"formula-1", "formula-2", "formula-3"}) {
      plan::Formula formula;
      if (draw.whole(0, 4)) formula.leaflet.workingLife_min = draw.whole(0, 9) == 0 ? 0 : draw.uniform(1, 40);
      plan.put(id, formula);
      limits.push_back({id, formula.leaflet.workingLife_min, {}});
    }
    for (const auto& [id, piece] : plan.pieces()) {
      plan::Piece changed = *piece;
      changed.root.formula = "formula-" + std::to_string(draw.whole(1, 3));
      changed.end.formula = "formula-" + std::to_string(draw.whole(1, 3));
      if (draw.whole(0, 2) == 0) changed.handover_mm = 120;
      plan.put(id, changed);
    }
    const OrderUse use = draw.whole(0, 1) ? OrderUse::ByRule : OrderUse::AsPlanned;
    const std::vector<Job> jobs = jobsOf(plan, workOrder(plan, {}, use), {});
    HandSettings hands{draw.whole(1, 2), draw.uniform(0.5, 10), 0.2, 0.15, draw.whole(0, 1) ? TopBowl::Fresh : TopBowl::AsItComes, {}};
    if (draw.whole(0, 2) == 0) hands.lookEvery_min = draw.uniform(2, 20);
    const Timeline line = planTimeline(jobs, limits, hands);
    checkWhole(line, jobs, limits, hands);
    remixed += line.bowls.size() > 3;
    const bool unavoidable = std::any_of(line.notes.begin(), line.notes.end(), [](const TimelineNote& n) { return n.kind == NoteKind::PieceLongerThanLife; });
    told += unavoidable;
    fine += !unavoidable && !jobs.empty();
  }
  // The draw holds all cases.
  CHECK(remixed > 100);
  CHECK(told > 50);
  CHECK(fine > 300);
}
