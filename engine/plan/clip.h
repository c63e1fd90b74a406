#pragma once
// The clipboard: what is selected as JSON text, and such text into a plan.
#include <string>
#include <string_view>

#include "engine/base/result.h"
#include "engine/plan/change_set.h"

namespace combdraft::plan {

inline constexpr std::string_view kClipFormat = "combdraft clip";
/// How far below its model a copy stands.
inline constexpr double kCopyBelow_mm = 20;

/// The selected sections with the pieces in them, pieces, notes, and the formulas
/// they use; "" when none of `ids` is such an item. Pairs stay pairs when both are
/// selected.
std::string copied(const Plan& plan, const std::vector<ItemId>& ids);

/// Adds a clip to the active choice; see addParts. Errors as readParts (NotAPlan
/// when the text is something else) and TooManyItems.
Result<ChangeSet> pasted(const Plan& plan, std::string_view text);

/// A copy of what is selected beside it. Sections of one side without a twin are
/// copied to the same place on the other side; everything else stands
/// kCopyBelow_mm lower, or higher where the hair ends. Error: TooManyItems.
Result<ChangeSet> duplicated(const Plan& plan, const std::vector<ItemId>& ids);

}  // namespace combdraft::plan
