#pragma once
// Plan -> plan file text.
#include <string>
#include <string_view>

#include "engine/plan/parts.h"

namespace combdraft::plan {

/// Readable JSON in one fixed order: numbers as the shortest text that reads
/// back, points on one line, fields that say "none" left out. readPlan gives
/// the same plan again, and writing that gives the same bytes.
std::string writePlan(const Plan& plan);

/// The same for parts of a plan; see readParts. A head as in a new plan is left out.
std::string writeParts(const Parts& parts, std::string_view formatName);

}  // namespace combdraft::plan
