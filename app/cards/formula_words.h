#pragma once
// Formulas as the cards name and list them.
#include <QString>
#include <utility>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::cards {

/// All formulas of the plan, by letter, then id.
std::vector<std::pair<plan::ItemId, const plan::Formula*>> formulasOf(const plan::Plan& plan);
/// "A, lightener"; "formula 3" when it has neither letter nor kind.
QString formulaName(const plan::ItemId& id, const plan::Formula& formula);
/// The first of A, B, C ... that no formula has; "" when all are taken.
std::string freeLetter(const plan::Plan& plan);

/// Who names a formula.
struct FormulaUse {
  std::vector<plan::ItemId> roots, ends;  ///< pieces, in working order
  std::vector<plan::ItemId> treatments;
  bool isEmpty() const { return roots.empty() && ends.empty() && treatments.empty(); }
};
/// In all choices. A piece's end counts only when its end formula takes over.
FormulaUse usesOf(const plan::Plan& plan, const plan::ItemId& formula);

}  // namespace combdraft::cards
