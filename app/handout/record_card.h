#pragma once
// The record card: everything that is needed to do it again.
#include "app/handout/document.h"
#include "app/handout/flow.h"

namespace combdraft::handout {

void addRecordCard(Column& column, const Request& request, const paint::Scene& scene, const Looks& looks, const Room& room);

}  // namespace combdraft::handout
