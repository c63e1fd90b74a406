#pragma once
// A plan taken apart for a class: today, then one foil after the other in
// working order, a pause to predict, and the crown opened.
#include <QString>
#include <vector>

#include "engine/head/sheet_view.h"
#include "engine/plan/plan.h"

namespace combdraft::chair {

struct ClassStep {
  enum class Kind { Today, Foil, Predict, Opened } kind = Kind::Foil;
  std::vector<plan::ItemId> pieces;  ///< of a foil: what it brings
  bool operator==(const ClassStep&) const = default;
};

/// The steps of a choice ("" = the active one). Pieces with the same foil name
/// are one step, where the first of them comes; a piece without a name is its own.
std::vector<ClassStep> classSteps(const plan::Plan& plan, const plan::ItemId& choice = {});

/// The plan as it stands after step `index`: the choice holds only the pieces
/// brought so far. Root shadow and glaze come after the last foil.
plan::Plan planAfter(const plan::Plan& plan, const std::vector<ClassStep>& steps, std::size_t index);

/// The view that sees a step best: where the middle of its first piece lies.
head::ViewName viewOf(const plan::Plan& plan, const ClassStep& step);

/// How many foils there are up to and with a step, and in all.
struct FoilCount {
  int now = 0, all = 0;
};
FoilCount foilCount(const std::vector<ClassStep>& steps, std::size_t index);

}  // namespace combdraft::chair
