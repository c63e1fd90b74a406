#include "engine/plan/replace_file.h"

#include <unistd.h>

#include "engine/plan/plan_file.h"

namespace combdraft::plan {
namespace {

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

}  // namespace

std::string folderOf(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

Result<void> replaceFile(const std::string& path, std::string_view bytes, Before before, const ReadBack& readBack,
                         Disk& disk, const std::string& modeLike) {
  const auto named = [&path](Error error) {
    error.file = path;
    return error;
  };
  const auto followed = disk.followLinks(path);
  if (!followed) return named(followed.error());
  const std::string& target = *followed;
  const FileKind old = disk.kindOf(target);
  if (old == FileKind::Folder) return Error{ErrorCode::FileIsDirectory, {}, {}, path};
  if (old == FileKind::Other)
    return Error{ErrorCode::FileUnwritable, {}, {"it is not a regular file"}, path};

  const std::string fresh = nameBeside(target, disk);
  const std::string& like = old == FileKind::Missing && !modeLike.empty() ? modeLike : target;
  if (const auto written = disk.writeNew(fresh, bytes, like); !written) return named(written.error());
  const auto step = [&](const Result<void>& result) {
    if (!result.ok()) disk.remove(fresh);
    return result.ok();
  };
  if (const auto same = readBack(fresh); !step(same)) return named(same.error());
  // Written once more it has no version before: the one that is kept beside it stays.
  const auto isSame = [&] {
    const auto stands = disk.read(target, bytes.size());
    return stands && *stands == bytes;
  };
  if (old == FileKind::File && before == Before::KeptBeside && !isSame())
    if (const auto kept = disk.keepAs(target, target + std::string(kPreviousEnding)); !step(kept))
      return named(kept.error());
  if (const auto replaced = disk.rename(fresh, target); !step(replaced)) return named(replaced.error());
  if (const auto synced = disk.syncFolder(folderOf(target)); !synced) return named(synced.error());
  return {};
}

}  // namespace combdraft::plan
