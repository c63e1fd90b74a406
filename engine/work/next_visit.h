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
/// grown-out start on. Where the plan's log knows of placed pieces, only those count, at
/// the level that came and stands. `weeks` 0 to 104. Errors: OutOfRange, TooManyItems
/// (hair.scattered: the zones that find no room in it), as readLog and amountsOf.
Result<plan::ChangeSet> grownOut(const plan::Plan& plan, const plan::ItemId& choice, double weeks);

struct RepeatPiece {
  plan::ItemId piece;
  double start_mm = 0;   ///< where its light begins by then: typed start and growth
  bool repeat = false;   ///< beyond the typed distance
  bool wasPlaced = true; ///< false where the log knows of placed pieces and not of this one
};
/// Lightened pieces of a choice. Pushed hair is not asked: it starts low on purpose.
/// `show_mm`: typed by the user; from where on a grown-out start is repeated.
std::vector<RepeatPiece> piecesToRepeat(const plan::Plan& plan, const plan::ItemId& choice, double weeks, double show_mm);

/// The pieces, if they are lightened, stop where today's light begins by then, in the place
/// of any stop that they have: product over hair that is light already can break it. Pushed
/// hair keeps its own start. Unknown ids are passed over.
plan::ChangeSet stoppedAtOldLight(const plan::Plan& today, const plan::Plan& next, const std::vector<plan::ItemId>& pieces, double weeks);

/// How much of a zone's hair is still left out after visits that each lighten the
/// share `light_frac`: the same pieces every time, and pieces that fall anywhere.
struct LeftOutAfter {
  double samePieces_frac = 1, anywhere_frac = 1;
};
/// `visits` counts this one; 0 or less: all is left out.
LeftOutAfter leftOutAfter(double light_frac, int visits);

}  // namespace combdraft::work
