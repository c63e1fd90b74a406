#pragma once
// The work list on paper: what is mixed and placed, one step after the other, foils,
// and what needs a look. Minutes are work of the hands, never time on the hair.
#include "app/handout/document.h"
#include "app/handout/flow.h"

namespace combdraft::handout {

void addWorkSheet(Column& column, const Request& request);

}  // namespace combdraft::handout
