#pragma once
// What loading and saving ask of a disk (POSIX). Tests derive from it to put
// faults in: a full disk, bytes that change, a power cut between two steps.
#include <string>
#include <string_view>

#include "engine/base/result.h"

namespace combdraft::plan {

/// What stands at a path, links followed.
enum class FileKind { Missing, File, Folder, Other };

class Disk {
 public:
  virtual ~Disk() = default;

  virtual FileKind kindOf(const std::string& path);
  /// The path itself, or where it leads when it is a symbolic link, also to a
  /// file that does not exist yet. FileUnwritable for links that go in a circle.
  virtual Result<std::string> followLinks(const std::string& path);
  /// The whole file. Errors: FileMissing, FileIsDirectory, FileUnreadable,
  /// FileEmpty, FileTooLarge (before anything is read).
  virtual Result<std::string> read(const std::string& path, std::size_t mostBytes);
  /// Makes a file that must not exist yet, and returns once its bytes are on
  /// the disk. Owner, group and mode are those of `like` where that exists.
  virtual Result<void> writeNew(const std::string& path, std::string_view bytes,
                                const std::string& like);
  /// Gives a file a second name that must not exist yet; some disks cannot.
  virtual Result<void> link(const std::string& path, const std::string& name);
  /// Gives the content of `path` a second name, which replaces any old `name`; a copy
  /// where the disk cannot link.
  virtual Result<void> keepAs(const std::string& path, const std::string& name);
  /// Replaces `to` by `from` in one step.
  virtual Result<void> rename(const std::string& from, const std::string& to);
  virtual void remove(const std::string& path);
  /// Returns once the folder's list of names is on the disk.
  virtual Result<void> syncFolder(const std::string& folder);
};

}  // namespace combdraft::plan
