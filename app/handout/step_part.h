#pragma once
// The numbered steps with their pictures, and how long placing takes by step.
#include "app/handout/document.h"
#include "app/handout/flow.h"

namespace combdraft::handout {

void addSteps(Column& column, const Request& request, const paint::Scene& scene, std::stop_token stop);
void addTiming(Column& column, const Request& request, const paint::Scene& scene);

}  // namespace combdraft::handout
