#pragma once
// What can be placed on a head, and its words: "section back", "3 pieces".
#include <QString>

#include "engine/plan/plan.h"

namespace combdraft::desk {

/// Those of `ids` that are sections, pieces or notes of the plan.
std::vector<plan::ItemId> placedThings(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);
/// "piece 7", "section “back”", "2 sections and 1 piece". Pieces whose section is
/// among `ids` are not counted.
QString thingsName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);

}  // namespace combdraft::desk
