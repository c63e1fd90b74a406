#include "engine/work/timeline.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "engine/base/expect.h"

namespace combdraft::work {
namespace {

constexpr double kSame_min = 1e-9;  // rounding of sums, not a minute
// A return to the top begins another bowl where the newest is older than this share of its typed
// life [own assumption]: fresh enough for hair that shows, and an order that goes from side to top
// and back does not mix at every piece.
constexpr double kTopBowlAge_frac = 0.5;

class Planner {
 public:
  Planner(const std::vector<Job>& jobs, const std::vector<FormulaLimits>& limits, const HandSettings& hands)
      : jobs_(jobs), limits_(limits), hands_(hands) {
    COMBDRAFT_EXPECT(hands.pairs == 1 || hands.pairs == 2, hands.pairs);
  }

  Timeline plan() {
    for (const Job& job : jobs_) place(job);
    looks();
    sumUp();
    std::stable_sort(line_.steps.begin(), line_.steps.end(),
                     [](const Step& a, const Step& b) { return a.from_min < b.from_min; });
    return std::move(line_);
  }

 private:
  const FormulaLimits* limitsOf(const plan::ItemId& formula) const {
    const auto it = std::find_if(limits_.begin(), limits_.end(), [&](const FormulaLimits& l) { return l.formula == formula; });
    return it == limits_.end() ? nullptr : &*it;
  }
  std::optional<double> lifeOf(const plan::ItemId& formula) const {
    const FormulaLimits* found = limitsOf(formula);
    return found && found->life_min && *found->life_min > 0 ? found->life_min : std::nullopt;
  }

  void note(TimelineNote note) {
    if (std::find(line_.notes.begin(), line_.notes.end(), note) == line_.notes.end()) line_.notes.push_back(std::move(note));
  }

  int freePair() const { return hands_.pairs == 2 && clock_[1] < clock_[0] - kSame_min ? 1 : 0; }

  void place(const Job& job) {
    COMBDRAFT_EXPECT(!job.portions.empty(), job.piece);
    const int pair = freePair();
    lookOnTheWay(pair);
    double& now = clock_[static_cast<std::size_t>(pair)];
    // The cushion is made first: it needs no product, and the product is the fresher for it.
    if (job.backcomb_min > 0) {
      line_.steps.push_back({StepKind::Backcomb, now, now + job.backcomb_min, pair, job.piece, {}, 0});
      now += job.backcomb_min;
    }
    for (const Portion& portion : job.portions) {
      const std::size_t index = bowlFor(job, portion, pair);
      Bowl& bowl = line_.bowls[index];
      now = std::max(now, bowl.from_min);
      const double end = now + portion.place_min;
      line_.steps.push_back({StepKind::Place, now, end, pair, job.piece, index, end - bowl.mixFrom_min});
      bowl.lastUse_min = std::max(bowl.lastUse_min, end);
      bowl.product_g += portion.product_g;
      if (bowl.pieces.empty() || bowl.pieces.back() != job.piece) bowl.pieces.push_back(job.piece);
      now = end;
      if (job.top) atTop_.insert(portion.formula);
    }
    wasTop_ = job.top;
  }

  // The bowl that this portion can be placed from soonest; a new one where none
  // lasts, and where hair at the top is to have a fresh one.
  std::size_t bowlFor(const Job& job, const Portion& portion, int pair) {
    const double now = clock_[static_cast<std::size_t>(pair)];
    const auto life = lifeOf(portion.formula);
    if (!life) note({NoteKind::LifeNotTyped, portion.formula, {}, 0, 0});
    const bool fresh = life && hands_.top == TopBowl::Fresh && job.top && beginsTopBowl(portion.formula, *life, now);
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < line_.bowls.size() && !fresh; ++i) {
      const Bowl& bowl = line_.bowls[i];
      if (bowl.formula != portion.formula) continue;
      const double start = std::max(now, bowl.from_min);
      if (life && start + portion.place_min - bowl.mixFrom_min > *life + kSame_min) continue;
      if (!best || start <= std::max(now, line_.bowls[*best].from_min)) best = i;
    }
    if (best) return *best;
    mix(portion.formula, pair);
    if (const double needs = hands_.mix_min + portion.place_min; life && needs > *life + kSame_min)
      note({NoteKind::PieceLongerThanLife, portion.formula, job.piece, needs, *life});
    return line_.bowls.size() - 1;
  }

  bool beginsTopBowl(const plan::ItemId& formula, double life_min, double now) const {
    if (!atTop_.count(formula)) return true;
    const auto newest = std::find_if(line_.bowls.rbegin(), line_.bowls.rend(), [&](const Bowl& b) { return b.formula == formula; });
    return !wasTop_ && newest != line_.bowls.rend() && now - newest->mixFrom_min > kTopBowlAge_frac * life_min + kSame_min;
  }

  void mix(const plan::ItemId& formula, int pair) {
    double& now = clock_[static_cast<std::size_t>(pair)];
    Bowl bowl;
    bowl.formula = formula;
    bowl.pair = pair;
    bowl.number = 1 + static_cast<int>(std::count_if(line_.bowls.begin(), line_.bowls.end(),
                                                     [&](const Bowl& b) { return b.formula == formula; }));
    bowl.mixFrom_min = now;
    bowl.from_min = bowl.lastUse_min = now + hands_.mix_min;
    line_.steps.push_back({StepKind::Mix, now, bowl.from_min, pair, {}, line_.bowls.size(), 0});
    line_.bowls.push_back(std::move(bowl));
    now += hands_.mix_min;
  }

  // Rounds that the user wants while placing goes on: between two pieces, all
  // pieces that are in by then.
  void lookOnTheWay(int pair) {
    if (!hands_.lookEvery_min || !(*hands_.lookEvery_min > 0)) return;
    double& now = clock_[static_cast<std::size_t>(pair)];
    const auto first = std::find_if(line_.steps.begin(), line_.steps.end(), [](const Step& s) { return s.kind == StepKind::Place; });
    if (first == line_.steps.end()) return;
    if (now - std::max(lastLook_min_, first->from_min) < *hands_.lookEvery_min - kSame_min) return;
    const double end = now + hands_.look_min * piecesIn(now);
    line_.steps.push_back({StepKind::Look, now, end, pair, {}, {}, 0});
    lastLook_min_ = now = end;
  }
  int piecesIn(double at) const {
    std::vector<plan::ItemId> in;
    for (const Step& step : line_.steps)
      if (step.kind == StepKind::Place && step.to_min <= at + kSame_min && std::find(in.begin(), in.end(), step.piece) == in.end())
        in.push_back(step.piece);
    return static_cast<int>(in.size());
  }

  void looks() {
    for (const Step& step : line_.steps)
      if (step.kind == StepKind::Place) line_.lastIn_min = std::max(line_.lastIn_min, step.to_min);
    const double round = hands_.look_min * static_cast<double>(jobs_.size()) / hands_.pairs;
    line_.looked_min = line_.lastIn_min + round;
    if (round > 0)
      for (int pair = 0; pair < hands_.pairs; ++pair)
        line_.steps.push_back({StepKind::Look, line_.lastIn_min, line_.looked_min, pair, {}, {}, 0});
    for (const Job& job : jobs_) line_.combOut_min += job.combOut_min / hands_.pairs;
  }

  void sumUp() {
    if (line_.combOut_min > 0)
      line_.steps.push_back({StepKind::CombOut, line_.looked_min, line_.looked_min + line_.combOut_min, 0, {}, {}, 0});
    line_.total_min = line_.looked_min + line_.combOut_min;
    line_.reserve_min = line_.total_min * hands_.reserve_share;
    for (const FormulaLimits& limit : limits_) {
      if (!limit.longest_min || !(*limit.longest_min > 0)) continue;
      for (const Step& step : line_.steps)
        if (step.kind == StepKind::Place && line_.bowls[*step.bowl].formula == limit.formula &&
            line_.lastIn_min - step.from_min > *limit.longest_min + kSame_min) {
          note({NoteKind::LimitBeforeLastIn, limit.formula, step.piece, line_.lastIn_min - step.from_min, *limit.longest_min});
          break;  // the oldest one tells it
        }
    }
  }

  const std::vector<Job>& jobs_;
  const std::vector<FormulaLimits>& limits_;
  const HandSettings& hands_;
  std::array<double, 2> clock_{};
  bool wasTop_ = false;            // the piece before
  std::set<plan::ItemId> atTop_;   // formulas that a top piece has had
  double lastLook_min_ = -1e9;
  Timeline line_;
};

}  // namespace

Timeline planTimeline(const std::vector<Job>& jobs, const std::vector<FormulaLimits>& limits, const HandSettings& hands) {
  return Planner(jobs, limits, hands).plan();
}

std::vector<StepLine> linesOf(const Timeline& timeline) {
  std::vector<StepLine> lines;
  std::map<int, std::size_t> begun;  // the line that each pair of hands began last
  for (std::size_t i = 0; i < timeline.steps.size(); ++i) {
    const Step& step = timeline.steps[i];
    const auto before = begun.find(step.pair);
    if (before != begun.end() && step.kind == StepKind::Place) {
      StepLine& line = lines[before->second];
      const Step& last = timeline.steps[line.back()];
      if (last.kind == StepKind::Place && last.piece == step.piece) {
        line.push_back(i);
        continue;
      }
    }
    begun[step.pair] = lines.size();
    lines.push_back(StepLine{i});
  }
  return lines;
}

OldestNow oldestAt(const Timeline& timeline, double at_min) {
  OldestNow oldest;
  for (const Step& step : timeline.steps) {
    if (step.kind != StepKind::Place || step.from_min > at_min) continue;
    if (const double age = at_min - step.from_min; !oldest.pieceAge_min || age > *oldest.pieceAge_min) {
      oldest.pieceAge_min = age;
      oldest.piece = step.piece;
    }
  }
  for (std::size_t i = 0; i < timeline.bowls.size(); ++i) {
    const Bowl& bowl = timeline.bowls[i];
    if (bowl.mixFrom_min > at_min || bowl.lastUse_min < at_min) continue;
    if (const double age = at_min - bowl.mixFrom_min; !oldest.productAge_min || age > *oldest.productAge_min) {
      oldest.productAge_min = age;
      oldest.bowl = i;
    }
  }
  return oldest;
}

}  // namespace combdraft::work
