#pragma once
// The appointment on a line of minutes: who backcombs, mixes and places when, and
// which bowl each piece comes from. Pure: jobs in, a timeline out. Minutes are
// work of the hands; how long product stays on hair is not planned here, ever.
//
// A bowl's age counts from the beginning of its mixing. Where a life was typed,
// no product older than it is put on: a bowl is mixed anew before that, and a
// piece that takes longer than a fresh bowl lasts is told (NoteKind).
#include <optional>
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::work {

/// What of a piece is placed with one formula.
struct Portion {
  plan::ItemId formula;   ///< "" = none named: nothing is known of its life
  double place_min = 0;
  double product_g = 0;
};
struct Job {
  plan::ItemId piece, section;
  double backcomb_min = 0, combOut_min = 0;
  std::vector<Portion> portions;  ///< in placing order: the root's, then the end's
  bool top = false;               ///< at the top: see TopBowl
};
/// Typed from the leaflet; nothing = not typed. Values not above 0 count as not typed.
struct FormulaLimits {
  plan::ItemId formula;
  std::optional<double> life_min, longest_min;
};

/// Of formulas with a typed life; hair at the top shows most.
enum class TopBowl {
  Fresh,      ///< the first top piece begins a new bowl; a return to the top does where the newest is past half its life
  AsItComes,
};
struct HandSettings {
  int pairs = 1;                      ///< of hands, 1 or 2
  double mix_min = 2, look_min = 0.2; ///< a bowl; a piece that is looked at
  double reserve_share = 0.15;
  TopBowl top = TopBowl::Fresh;
  std::optional<double> lookEvery_min;  ///< typed: a round of looking while placing still goes on
};

struct Bowl {
  plan::ItemId formula;
  int number = 1;             ///< of this formula's bowls
  int pair = 0;               ///< who mixes it
  double mixFrom_min = 0, from_min = 0, lastUse_min = 0;
  double product_g = 0;       ///< that is placed from it, without waste
  std::vector<plan::ItemId> pieces;  ///< in order, each once
};

enum class StepKind { Mix, Backcomb, Place, Look, CombOut };
struct Step {
  StepKind kind{};
  double from_min = 0, to_min = 0;
  int pair = 0;
  plan::ItemId piece;           ///< Backcomb, Place
  std::optional<std::size_t> bowl;  ///< Mix, Place: index into the bowls
  double productAge_min = 0;    ///< Place: of its bowl at the end of the step
};

enum class NoteKind {
  LifeNotTyped,        ///< no re-mix can be planned for this formula
  PieceLongerThanLife, ///< mixing and placing it take longer than a bowl lasts
  LimitBeforeLastIn,   ///< a piece reaches the leaflet's longest time while others are placed
};
struct TimelineNote {
  NoteKind kind{};
  plan::ItemId formula, piece;
  double found_min = 0, limit_min = 0;
  bool operator==(const TimelineNote&) const = default;
};

struct Timeline {
  std::vector<Bowl> bowls;      ///< as they are mixed
  std::vector<Step> steps;      ///< by their beginning; looks and comb-out last
  std::vector<TimelineNote> notes;
  double lastIn_min = 0;        ///< the last piece is placed
  double looked_min = 0;        ///< the first round of looking after that is over
  double combOut_min = 0;       ///< work after the rinse
  double total_min = 0;         ///< looked_min and combOut_min; not the time on the hair
  double reserve_min = 0;
};

/// Pieces are worked in the order of `jobs`, each by the pair that is free first.
/// Preconditions: pairs 1 or 2, minutes not below 0; a job has a portion.
Timeline planTimeline(const std::vector<Job>& jobs, const std::vector<FormulaLimits>& limits,
                      const HandSettings& hands);

/// Steps as a reader takes them, as places in `steps`: what the same hands place of one piece, one formula
/// right after the other, is one line (a bowl mixed between keeps them apart); every other step is one of its own.
using StepLine = std::vector<std::size_t>;
/// In the order of their first steps; each step stands in one of them.
std::vector<StepLine> linesOf(const Timeline& timeline);

/// What is oldest at a moment, while placing and looking go on.
struct OldestNow {
  std::optional<double> pieceAge_min;    ///< since product first came to a piece
  plan::ItemId piece;
  std::optional<double> productAge_min;  ///< of the oldest bowl that is still used
  std::optional<std::size_t> bowl;
};
OldestNow oldestAt(const Timeline& timeline, double at_min);

}  // namespace combdraft::work
