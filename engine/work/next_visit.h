#pragma once
// The visit after this one: today's result grown out, which pieces to repeat, and
// what repeating everything does to the hair that is left out.
#include <optional>
#include <vector>

#include "engine/base/result.h"
#include "engine/plan/change_set.h"
#include "engine/work/amounts.h"

namespace combdraft::work {

/// The hair of the next visit as an edit: longer by the growth, and light where
/// today's pieces made it so, as light hair scattered through its zone from the
/// grown-out start on. `weeks` 0 to 104. Error OutOfRange, and as amountsOf.
Result<plan::ChangeSet> grownOut(const plan::Plan& plan, const plan::ItemId& choice, double weeks);

struct RepeatPiece {
  plan::ItemId piece;
  double start_mm = 0;   ///< where its light begins by then: typed start and growth
  bool repeat = false;   ///< beyond the typed distance
};
/// Lightened pieces of a choice. Pushed hair is not asked: it starts low on purpose.
/// `show_mm`: typed by the user; from where on a grown-out start is repeated.
std::vector<RepeatPiece> piecesToRepeat(const plan::Plan& plan, const plan::ItemId& choice, double weeks, double show_mm);

/// How much of a zone's hair is still left out after visits that each lighten the
/// share `light_frac`: the same pieces every time, and pieces that fall anywhere.
struct LeftOutAfter {
  double samePieces_frac = 1, anywhere_frac = 1;
};
/// `visits` counts this one; 0 or less: all is left out.
LeftOutAfter leftOutAfter(double light_frac, int visits);

}  // namespace combdraft::work
