#include "engine/plan/plan_file.h"

#include <unistd.h>

#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

namespace combdraft::plan {
namespace {

std::string folderOf(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

// A hidden name beside the file that nothing has yet.
std::string nameBeside(const std::string& path, Disk& disk) {
  const std::size_t slash = path.rfind('/');
  const std::size_t start = slash == std::string::npos ? 0 : slash + 1;
  const std::string stem = path.substr(0, start) + "." + path.substr(start) + ".saving-" +
                           std::to_string(::getpid()) + "-";
  int count = 1;
  while (disk.kindOf(stem + std::to_string(count)) != FileKind::Missing) ++count;
  return stem + std::to_string(count);
}

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
  const auto followed = disk.followLinks(path);
  if (!followed) return named(followed.error(), path);
  const std::string& target = *followed;
  const FileKind old = disk.kindOf(target);
  if (old == FileKind::Folder) return Error{ErrorCode::FileIsDirectory, {}, {}, path};
  if (old == FileKind::Other)
    return Error{ErrorCode::FileUnwritable, {}, {"it is not a regular file"}, path};

  const std::string bytes = writePlan(plan);
  const std::string fresh = nameBeside(target, disk);
  if (const auto written = disk.writeNew(fresh, bytes, target); !written)
    return named(written.error(), path);
  const auto step = [&](const Result<void>& result) {
    if (!result.ok()) disk.remove(fresh);
    return result.ok();
  };
  if (const auto same = checkSaved(fresh, bytes, plan, disk); !step(same))
    return named(same.error(), path);
  if (old == FileKind::File)
    if (const auto kept = disk.keepAs(target, target + std::string(kPreviousEnding)); !step(kept))
      return named(kept.error(), path);
  if (const auto replaced = disk.rename(fresh, target); !step(replaced))
    return named(replaced.error(), path);
  if (const auto synced = disk.syncFolder(folderOf(target)); !synced)
    return named(synced.error(), path);
  return {};
}

Result<void> checkSaved(const std::string& path, const std::string& bytes, const Plan& plan,
                        Disk& disk) {
  const Error differs{ErrorCode::FileReadBackDiffers, {}, {}, path};
  const auto back = disk.read(path, limits::kFileBytes);
  if (!back || *back != bytes) return differs;
  const auto again = readPlan(*back);
  if (!again || !(*again == plan)) return differs;
  return {};
}

}  // namespace combdraft::plan
