#pragma once
// Holds the values of items in memory against field_info.h, as the reader does
// for a file.
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::plan {

struct FieldProblem {
  std::string field, found, allowed;
};

/// Numbers out of range, lists too short or long, texts too long or with
/// control characters.
std::vector<FieldProblem> checkFields(const Item& item);

}  // namespace combdraft::plan
