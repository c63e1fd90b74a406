#include "engine/plan/plan_file.h"

#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/replace_file.h"

namespace combdraft::plan {
namespace {

Error named(Error error, const std::string& path) {
  error.file = path;
  return error;
}

}  // namespace

Result<Plan> loadPlan(const std::string& path) {
  Disk disk;
  return loadPlan(path, disk);
}

Result<Plan> loadPlan(const std::string& path, Disk& disk) {
  auto read = loadPlanAsRead(path, disk);
  if (!read) return read.error();
  return std::move(read).value().plan;
}

Result<PlanAsRead> loadPlanAsRead(const std::string& path) {
  Disk disk;
  return loadPlanAsRead(path, disk);
}

Result<PlanAsRead> loadPlanAsRead(const std::string& path, Disk& disk) {
  const auto bytes = disk.read(path, limits::kFileBytes);
  if (!bytes) return named(bytes.error(), path);
  auto read = readPlanAsRead(*bytes);
  if (!read) return named(read.error(), path);
  return read;
}

Result<void> savePlan(const std::string& path, const Plan& plan) {
  Disk disk;
  return savePlan(path, plan, disk);
}

Result<void> savePlan(const std::string& path, const Plan& plan, Disk& disk) {
  const std::string bytes = writePlan(plan);
  return replaceFile(path, bytes, Before::KeptBeside,
                     [&](const std::string& fresh) { return checkSaved(fresh, bytes, plan, disk); }, disk);
}

Result<void> checkSaved(const std::string& path, const std::string& bytes, const Plan& plan,
                        Disk& disk) {
  const Error differs{ErrorCode::FileReadBackDiffers, {}, {}, path};
  const auto back = disk.read(path, limits::kFileBytes);
  if (!back || *back != bytes) return differs;
  const auto again = readPlan(*back);
  if (!again) return named(again.error(), path);
  if (!(*again == plan)) return differs;
  return {};
}

}  // namespace combdraft::plan
