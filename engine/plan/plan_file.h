#pragma once
// Plans on the disk.
#include <string>

#include "engine/plan/disk.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// The version before the last save stands beside the file under its name and
/// this ending.
inline constexpr std::string_view kPreviousEnding = ".previous";

/// Opens a plan file. Errors carry `path` in `file`; see Disk::read and readPlan.
Result<Plan> loadPlan(const std::string& path);
Result<Plan> loadPlan(const std::string& path, Disk& disk);
/// The same, and what was done to an older format.
Result<PlanAsRead> loadPlanAsRead(const std::string& path);
Result<PlanAsRead> loadPlanAsRead(const std::string& path, Disk& disk);

/// Saves in steps that each leave a whole file behind, whatever happens:
/// write to a new file beside it, sync it, read it back and compare, keep the
/// previous file, replace in one step, sync the folder. Links are followed;
/// owner and mode stay. On error the file is as it was before (unless only the
/// last sync failed, when it is the new one). A read-back goes through the
/// system's cache: it catches a wrong or cut file, not a broken disk.
Result<void> savePlan(const std::string& path, const Plan& plan);
Result<void> savePlan(const std::string& path, const Plan& plan, Disk& disk);

/// The read-back of a save: whether the file holds these bytes and they mean
/// this plan. FileReadBackDiffers when not; what the reader says, with its place, when
/// the plan holds what no file can.
Result<void> checkSaved(const std::string& path, const std::string& bytes, const Plan& plan,
                        Disk& disk);

}  // namespace combdraft::plan
