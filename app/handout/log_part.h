#pragma once
// The appointment tap by tap, as a part of the record card: the taps of the log that
// stand, visit by visit, and planned against got where a level was seen after the rinse.
#include "app/handout/flow.h"
#include "engine/plan/plan.h"

namespace combdraft::handout {

/// Nothing where nothing was tapped; a sentence where the log cannot be read.
void addLog(Column& column, const plan::Plan& plan);

}  // namespace combdraft::handout
