#pragma once
// What the edits of edits.h share: how a change of one side reaches the other,
// and what follows every change (twins, runs). For engine/plan only.
#include <functional>

#include "engine/head/hairline.h"
#include "engine/plan/change_set.h"

namespace combdraft::plan {

/// The head of a plan as it is drawn; the mean one when its measures are refused.
struct HeadNow {
  head::HeadShape shape;
  head::Hairline hairline;
};
HeadNow headOf(const Plan& plan);

/// Changes each item; of a pair, the source is changed once, also when the twin
/// was meant. T: Piece or Section. Twins do not follow yet: `finished` does that.
template <class T>
Plan changeEach(const Plan& plan, const std::vector<ItemId>& ids,
                const std::function<void(T&)>& change);

/// The edit from `before` to `after`, once hand work on laid-out pieces is marked
/// as their own, twins follow and runs flow.
ChangeSet finished(const Plan& before, Plan after, EditKind kind, std::vector<std::string> args = {});

}  // namespace combdraft::plan
