#pragma once
// Writing a file of the user's so that a whole one stands there whatever happens:
// the steps that savePlan takes, for any text.
#include <functional>
#include <string>
#include <string_view>

#include "engine/plan/disk.h"

namespace combdraft::plan {

/// What becomes of the file that stood there before.
enum class Before {
  KeptBeside,  ///< under its name and kPreviousEnding
  Gone,
};

/// Looks at the new file, by its path, before it takes the old one's place.
using ReadBack = std::function<Result<void>(const std::string& fresh)>;

/// Writes a new file beside `path`, syncs it, has it looked at, keeps or drops the
/// old one, replaces in one step and syncs the folder. Links are followed; owner
/// and mode stay; those of a new file are as of `modeLike` ("" = as the system
/// makes them). Where the old one has these very bytes the version before it stays kept.
/// On error the file is as it was before, but for FileNotSynced: then it is the new one.
/// Errors: FileIsDirectory, FileUnwritable, FileNotSynced, those of `readBack`.
Result<void> replaceFile(const std::string& path, std::string_view bytes, Before before, const ReadBack& readBack,
                         Disk& disk, const std::string& modeLike = {});

/// The folder a path stands in; "." for a bare name.
std::string folderOf(const std::string& path);

}  // namespace combdraft::plan
