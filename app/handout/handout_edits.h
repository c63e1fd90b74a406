#pragma once
// Changes of what is printed, as new values.
#include "app/handout/document.h"

namespace combdraft::handout {

/// The plan's handout; the usual one when it has none.
plan::Handout handoutOf(const plan::Plan& plan);
/// The plan with another handout; the plan itself when nothing differs.
plan::Plan withHandout(const plan::Plan& plan, const plan::Handout& handout);

enum class Shown { Yes, No };
plan::Handout withPart(plan::Handout handout, plan::HandoutPart part, Shown shown);
/// Moves a part up (-) or down (+) among all; as far as it goes.
plan::Handout withPartMoved(plan::Handout handout, plan::HandoutPart part, int places);
/// All parts in another order.
plan::Handout withOrder(plan::Handout handout, const std::vector<plan::HandoutPart>& order);

}  // namespace combdraft::handout
