#pragma once
// The client's page: the picture that was planned, plain readings, and what the user
// typed for this client. No technique words.
#include "app/handout/document.h"
#include "app/handout/flow.h"

namespace combdraft::handout {

void addClientPage(Column& column, const Request& request, const paint::Scene& scene, const Looks& looks, const Room& room);

}  // namespace combdraft::handout
