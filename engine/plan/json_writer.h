#pragma once
// Plan -> plan file text.
#include <string>

#include "engine/plan/plan.h"

namespace combdraft::plan {

/// Readable JSON in one fixed order: numbers as the shortest text that reads
/// back, points on one line, fields that say "none" left out. readPlan gives
/// the same plan again, and writing that gives the same bytes.
std::string writePlan(const Plan& plan);

}  // namespace combdraft::plan
