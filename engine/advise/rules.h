#pragma once
// What no remedy and no suggestion may do, whatever it would win. One check for
// both: it compares the plan before and after.
#include <optional>
#include <string_view>

#include "engine/plan/plan.h"

namespace combdraft::advise {

enum class Rule {
  PlacementOnly,      ///< no formula, level, colour, order of a held piece or hair is touched
  HeldStays,          ///< a held piece keeps all it has, and all its hair
  NotNearerTheScalp,  ///< no start moves nearer; new light keeps the least start of the plan
  NotOnMarkedHair,    ///< no more light where hair is marked already light, or in poor condition
  NoMoreBackcomb,     ///< none where condition is poor or not checked
};
std::string_view ruleSentence(Rule rule);

struct BrokenRule {
  Rule rule{};
  plan::ItemId piece;
};
/// The first rule that going from `before` to `after` breaks, or nothing. A
/// piece inside the strip of one that was there, with no more light and no more
/// backcomb than that, counts as part of it (a split, a thinner piece).
std::optional<BrokenRule> brokenBy(const plan::Plan& before, const plan::Plan& after);

/// The smallest start typed on a piece that lightens in this choice, mm;
/// nothing when none does.
std::optional<double> leastStart_mm(const plan::Plan& plan, const plan::ItemId& choice = {});
/// Whether more light may go on the hair that a piece takes.
bool mayTakeMoreLight(const plan::Plan& plan, const plan::Piece& piece);
/// Whether the hair that a piece takes was checked and is not in poor condition.
bool mayBackcombMore(const plan::Plan& plan, const plan::Piece& piece);

}  // namespace combdraft::advise
