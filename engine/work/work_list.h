#pragma once
// The work list of a plan: order, foils, bowls, minutes and what needs a look,
// from the plan, its formulas as typed and the user's own numbers.
#include <optional>
#include <string>
#include <vector>

#include "engine/work/amounts.h"
#include "engine/work/strength.h"
#include "engine/work/timeline.h"
#include "engine/work/work_order.h"

namespace combdraft::work {

struct OwnFactors;

struct WorkSettings {
  plan::ItemId choice;           ///< "" = the active one
  OrderUse order = OrderUse::AsPlanned;
  TopBowl top = TopBowl::Fresh;
  int pairs = 1;                 ///< of hands, 1 or 2
  std::vector<double> foils_mm;  ///< the user's own widths
  std::optional<double> lookEvery_min;
  int locks = 40'000;            ///< that hair is counted on
  std::optional<double> smallestBowl_g{};  ///< the least that the user mixes, typed; smaller bowls are told
  std::vector<double> perHair_heads{};     ///< as AmountSettings
};
/// Product for 1 g of hair as weighed on each head of the factors, within the assumption's range; empty
/// where the plan as typed has a value of its own, which comes first (withFactors).
std::vector<double> weighedHeads(const OwnFactors& factors, const plan::Plan& typed);

enum class WorkNoteKind {
  // the plan
  FormulaNotNamed,      ///< pieces that name no formula
  SlowAfterOthers,      ///< resistant hair is placed after hair that takes faster
  HairlineBeforeOthers, ///< fine hair at the hairline is placed before slower hair
  FoilTooNarrow,        ///< wider than any of the user's sizes; found: mm
  // what was typed of a formula
  StrengthRefused,      ///< text: what was found and what would be right
  OverEuLimit,          ///< found: percent
  LifeNotAboveZero,
  LongestNotAboveZero,
  PartsNotTyped,        ///< a bowl shows its total only
  // the timeline
  LifeNotTyped,
  BowlTiny,             ///< less than the user mixes at least; text: numbers of the bowls, "2, 3"; found, limit: g
  PieceLongerThanLife,  ///< found: the longest of them, limit: minutes; one note for each formula
  LimitBeforeLastIn,    ///< found, limit: minutes
  FirstLookLate,        ///< neither a longest time nor rounds of looking typed; the piece that waits longest, found: minutes
};
struct WorkNote {
  WorkNoteKind kind{};
  plan::ItemId formula;
  std::vector<plan::ItemId> pieces;
  double found = 0, limit = 0;
  std::string text;
  bool operator==(const WorkNote&) const = default;
};
std::string codeName(WorkNoteKind kind);
/// One plain English sentence, for the command line and tests.
std::string sentenceOf(const WorkNote& note);

struct BowlGrams {
  double mixed_g = 0;  ///< with its share of waste
  std::optional<std::vector<PartGrams>> split;
};

struct WorkList {
  std::vector<plan::ItemId> order;
  Amounts amounts;
  Timeline timeline;
  std::vector<BowlGrams> bowls;  ///< beside timeline.bowls
  std::vector<WorkNote> notes;
};

/// Errors: as amountsOf; OutOfRange for pairs of hands other than 1 or 2, a look
/// interval and a smallest bowl that are not above 0.
Result<WorkList> workListOf(const plan::Plan& plan, const WorkSettings& settings);
/// The same at once, from hair that was counted before (HairCount). From an empty count come order, bowls and
/// minutes, which need no hair; grams and foils are 0 then, and nothing is told of them.
Result<WorkList> workListOf(const plan::Plan& plan, const WorkSettings& settings, const HairCount& hair);

/// Minutes only, from amounts that are known: what a list of changes is tried with.
std::vector<Job> jobsOf(const plan::Plan& plan, const std::vector<plan::ItemId>& order, const Amounts& amounts);

/// A change of the plan that would save time, with how much. It changes the look
/// too: the look is to be seen before it is taken.
struct Saving {
  enum class Kind { SecondPair, WithoutBackcomb, SliceForWeave, LeaveOut } kind{};
  plan::ItemId section;              ///< "" = pieces in no section, see `zone`; SecondPair: none
  std::vector<plan::ItemId> pieces;  ///< that it changes
  double saved_min = 0;              ///< of the total, without the reserve
  std::optional<plan::HairZone> zone{};  ///< where pieces in no section lie: they are taken zone by zone
};
/// Largest saving first; those of less than half a minute are left out. Each is
/// worked out by planning the appointment again.
std::vector<Saving> savingsOf(const plan::Plan& plan, const WorkSettings& settings, const WorkList& list);

}  // namespace combdraft::work
