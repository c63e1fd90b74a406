#pragma once
// Reads a plan file for a command.
#include <string>

#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::command {

/// Errors: FileMissing, FileIsDirectory, FileUnreadable, FileEmpty,
/// FileTooLarge (never read into memory) and those of plan::readPlan, with the
/// file's name filled in.
Result<plan::Plan> openPlan(const std::string& file);

}  // namespace combdraft::command
