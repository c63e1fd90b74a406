#include "engine/advise/suggestion.h"

#include <algorithm>
#include <cmath>

#include "engine/advise/rules.h"
#include "engine/advise/search_space.h"
#include "engine/base/assumptions.h"
#include "engine/base/expect.h"

namespace combdraft::advise {
namespace {

using plan::ItemId;

// What the search weighs against a level [own]: a block twice over the line, a
// whole head's worth of minutes saved, and changing everything as far as it goes.
constexpr double kBlockWeight = 0.5, kEffortWeight = 0.25, kChangeWeight = 0.04;
constexpr int kEvaluations = 160, kRepairs = 6;
constexpr double kBegun = 0.1, kOfManner = 0.25;  ///< of the progress
/// Nearer to the aims than this is not worth a proposal; farther than this is no good. Levels.
constexpr double kNearer = 0.03, kNoFarther = 0.05;
constexpr double kMayGo = 0.34;  ///< share of the pieces that a search may leave out

struct Candidate {
  std::vector<double> numbers;
  std::vector<ItemId> gone;
};

}  // namespace

std::string codeName(Manner manner) {
  switch (manner) {
    case Manner::AsDrawn: return "as-drawn";
    case Manner::Starts: return "starts";
    case Manner::FewerPieces: return "fewer-pieces";
  }
  return "";
}

std::string sentenceOf(Manner manner) {
  switch (manner) {
    case Manner::AsDrawn: return "Keeps every piece and changes as little as will do";
    case Manner::Starts: return "Keeps every piece and its thickness; changes start and backcomb only";
    case Manner::FewerPieces: return "Leaves out pieces that hardly show, then changes the rest";
  }
  return "";
}

struct Suggester::State {
  explicit State(int locks)
      : search(kSearchLocks, kSearchPixel_mm), full(std::clamp(locks, 2000, 200000)), openings(kOpeningLocks) {}

  look::LookEngine search, full;
  look::OpeningSweep openings;

  class Run;
};

/// One search of one plan.
class Suggester::State::Run {
 public:
  Run(State& state, const plan::Plan& plan, look::LookSettings settings, const Wish& wish, std::stop_token stop,
      const std::function<void(const Progress&)>& progress)
      : state_(state), plan_(plan), settings_(std::move(settings)), wish_(wish), stop_(stop), progress_(progress),
        space_(plan, settings_.choice, wish.pieces), lines_(plan.info().assumptions) {
    settings_.worn = {};
  }

  Result<std::vector<Proposal>> run() {
    if (space_.isEmpty()) return std::vector<Proposal>{};
    auto before = standing(plan_, state_.search, Standing::Size::Search);
    if (!before) return before.error();
    before_ = std::move(before).value();
    const ItemId& choice = settings_.choice.empty() ? plan_.info().activeChoice : settings_.choice;
    aims_ = wish_.aims;
    if (const auto* typed = plan_.find<plan::Choice>(choice); aims_.empty() && typed) aims_ = typed->targets;
    if (aims_.empty()) aims_ = aimsToKeep(before_.readings);
    before_.miss_levels = missOf(before_.readings, aims_);
    tell(kBegun);
    for (const Manner manner : {Manner::AsDrawn, Manner::Starts, Manner::FewerPieces}) {
      looks_ = 0;
      if (const auto error = propose(manner)) return *error;
      done_ = kBegun + kOfManner * (1 + static_cast<double>(manner));
      tell(done_);
    }
    if (const auto error = judgeInFull()) return *error;
    std::stable_sort(found_.begin(), found_.end(), [](const Proposal& a, const Proposal& b) {
      return a.after.miss_levels < b.after.miss_levels;
    });
    tell(1);
    return std::move(found_);
  }

 private:
  static Error cancelled() { return Error{ErrorCode::Cancelled, "", {}, ""}; }

  void tell(double done) {
    if (progress_) progress_({done, &found_});
  }

  Result<look::Readings> readingsOf(const plan::Plan& plan, look::LookEngine& engine) {
    const auto frame = engine.update(plan, settings_, {}, stop_);
    if (!frame) return frame.error();
    return *frame->readings;
  }

  Result<Standing> standing(const plan::Plan& plan, look::LookEngine& engine, Standing::Size size) {
    auto readings = readingsOf(plan, engine);
    if (!readings) return readings.error();
    const auto opened = state_.openings.update(plan, settings_, stop_);
    if (!opened) return opened.error();
    Standing s;
    s.size = size;
    s.readings = std::move(readings).value();
    if (const auto* worst = opened->worstLight()) s.lightBlock_cm2 = worst->light.area_cm2, makers_ = worst->light.pieces;
    else makers_.clear();
    if (const auto* worst = opened->worstDark()) s.darkBlock_cm2 = worst->dark.area_cm2;
    s.miss_levels = missOf(s.readings, aims_);
    s.effort = effortOf(plan, settings_.choice);
    return s;
  }

  /// What the search makes small, without the openings.
  double cost(const std::vector<double>& numbers, const std::vector<ItemId>& gone) {
    const plan::Plan tried = space_.tried(numbers, gone);
    const auto readings = readingsOf(tried, state_.search);
    if (!readings) return 1e6;  // stopped: the caller looks
    // Not shared out exactly; a bar that moves is enough.
    if (++looks_ % 10 == 0) tell(done_ + kOfManner * std::min(1.0, static_cast<double>(looks_) / (kEvaluations + 2)));
    double turned = 0;
    for (const double number : numbers) turned += number * number;
    const Effort effort = effortOf(tried, settings_.choice);
    const double miss = missOf(*readings, aims_);
    return miss * miss + kEffortWeight * effort.minutes / std::max(before_.effort.minutes, 1e-9) +
           kChangeWeight * turned / static_cast<double>(numbers.size());
  }

  double overTheLine(const Standing& s) const {
    return std::max(0.0, s.lightBlock_cm2 / lines_["block.light_cm2"] - 1) +
           std::max(0.0, s.darkBlock_cm2 / lines_["block.dark_cm2"] - 1);
  }

  static std::vector<Turn> turnsOf(Manner manner) {
    if (manner == Manner::Starts) return {Turn::Start, Turn::Backcomb};
    return {Turn::Thickness, Turn::Share, Turn::Start, Turn::Backcomb};
  }

  std::optional<Error> propose(Manner manner) {
    const SearchSpace untouched = space_;
    Candidate c{space_.asDrawn(), {}};
    if (manner == Manner::FewerPieces) c.gone = hardlySeen();
    c.numbers = lowest([&](const std::vector<double>& x) { return cost(x, c.gone); }, c.numbers,
                       space_.bounds(turnsOf(manner)), kEvaluations, stop_);
    if (stop_.stop_requested()) return cancelled();
    // Blocks that are left: their pieces give way, a little at a time.
    Result<Standing> after = standing(space_.tried(c.numbers, c.gone), state_.search, Standing::Size::Search);
    for (int i = 0; after && i < kRepairs && after->lightBlock_cm2 > lines_["block.light_cm2"] && !makers_.empty(); ++i) {
      space_.quieten(makers_, manner == Manner::Starts ? SearchSpace::Quiet::ByStart : SearchSpace::Quiet::ThinnerAndLower);
      after = standing(space_.tried(c.numbers, c.gone), state_.search, Standing::Size::Search);
    }
    if (!after) return after.error();
    Proposal p;
    p.manner = manner;
    p.edit = space_.edit(c.numbers, c.gone);
    p.changed = space_.sayings(p.edit);
    space_ = untouched;
    p.before = before_;
    p.after = *after;
    if (isWorthwhile(p)) found_.push_back(std::move(p));
    return std::nullopt;
  }

  bool isWorthwhile(const Proposal& p) const {
    if (p.edit.empty() || brokenBy(plan_, plan::applied(plan_, p.edit))) return false;
    const double nearer = p.before.miss_levels - p.after.miss_levels;
    const double blocks = overTheLine(p.before) - overTheLine(p.after);
    const int fewer = p.before.effort.pieces - p.after.effort.pieces;
    if (blocks < -0.05) return false;  // never a worse block
    const bool gains = nearer > kNearer || blocks > 0.1 || fewer > 0;
    if (!gains || nearer < -(kNoFarther + kBlockWeight * std::max(0.0, blocks))) return false;
    return std::none_of(found_.begin(), found_.end(),
                        [&](const Proposal& other) { return areAlike(p.edit, other.edit); });
  }

  /// Whether two edits come to nearly the same pieces.
  static bool areAlike(const plan::ChangeSet& a, const plan::ChangeSet& b) {
    if (a.changes.size() != b.changes.size()) return false;
    for (std::size_t i = 0; i < a.changes.size(); ++i) {
      if (a.changes[i].id != b.changes[i].id) return false;
      const auto *pa = a.changes[i].after ? std::get_if<plan::Piece>(a.changes[i].after.get()) : nullptr,
                 *pb = b.changes[i].after ? std::get_if<plan::Piece>(b.changes[i].after.get()) : nullptr;
      if (!pa != !pb) return false;
      if (!pa) continue;
      if (std::abs(pa->thickness_mm - pb->thickness_mm) > 0.5 || std::abs(pa->taken_frac - pb->taken_frac) > 0.1 ||
          std::abs(pa->start_mm - pb->start_mm) > 5 || std::abs(pa->backcomb.depth_mm - pb->backcomb.depth_mm) > 10)
        return false;
    }
    return true;
  }

  /// Pieces that the look hardly misses: the least missed first, up to a third.
  std::vector<ItemId> hardlySeen() {
    const std::vector<double> drawn = space_.asDrawn();
    std::vector<std::pair<double, ItemId>> ranked;
    for (const ItemId& id : space_.owners()) {
      if (stop_.stop_requested()) return {};
      const auto readings = readingsOf(space_.tried(drawn, {id}), state_.search);
      if (readings) ranked.emplace_back(missOf(*readings, aims_), id);
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    const std::size_t most = static_cast<std::size_t>(static_cast<double>(ranked.size()) * kMayGo);
    std::vector<ItemId> gone, best;
    double lowestMiss = before_.miss_levels + 0.1;
    for (std::size_t i = 0; i < most; ++i) {
      gone.push_back(ranked[i].second);
      const auto readings = readingsOf(space_.tried(drawn, gone), state_.search);
      if (!readings) return {};
      // The rest can make up for a little.
      if (missOf(*readings, aims_) > lowestMiss + 0.25) break;
      best = gone;
    }
    return best;
  }

  std::optional<Error> judgeInFull() {
    if (found_.empty()) return std::nullopt;
    auto before = standing(plan_, state_.full, Standing::Size::Full);
    if (!before) return before.error();
    for (Proposal& p : found_) {
      auto after = standing(plan::applied(plan_, p.edit), state_.full, Standing::Size::Full);
      if (!after) return after.error();
      p.before = *before;
      p.after = std::move(after).value();
    }
    return std::nullopt;
  }

  State& state_;
  const plan::Plan& plan_;
  look::LookSettings settings_;
  const Wish& wish_;
  std::stop_token stop_;
  const std::function<void(const Progress&)>& progress_;
  SearchSpace space_;
  Assumptions lines_;
  Aims aims_;
  Standing before_;
  double done_ = kBegun;  ///< progress before the manner under way
  int looks_ = 0;         ///< of the manner under way
  std::vector<ItemId> makers_;  ///< of the worst light block seen last
  std::vector<Proposal> found_;
};

Suggester::Suggester(int locks) : state_(std::make_unique<State>(locks)) {}
Suggester::~Suggester() = default;
Suggester::Suggester(Suggester&&) noexcept = default;
Suggester& Suggester::operator=(Suggester&&) noexcept = default;

void Suggester::prepare(const plan::Plan& plan, look::LookSettings settings, std::stop_token stop) {
  settings.worn = {};
  // A measure that no head has is said by the search.
  if (!state_->search.update(plan, settings, {}, stop)) return;
  if (!state_->openings.update(plan, settings, stop)) return;
  (void)state_->full.update(plan, settings, {}, stop);
}

Result<std::vector<Proposal>> Suggester::search(const plan::Plan& plan, const look::LookSettings& settings,
                                                const Wish& wish, std::stop_token stop,
                                                const std::function<void(const Progress&)>& progress) {
  return State::Run(*state_, plan, settings, wish, stop, progress).run();
}

}  // namespace combdraft::advise
