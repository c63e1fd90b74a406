#include "engine/plan/disk.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <system_error>

namespace combdraft::plan {
namespace {

// A file descriptor that is closed on every way out.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  int number() const { return number_; }
  explicit operator bool() const { return number_ >= 0; }
  bool closeNow() {
    const int number = number_;
    number_ = -1;
    return ::close(number) == 0;
  }

 private:
  int number_;
};

std::string reason() {
  switch (errno) {
    case ENOSPC:
    case EDQUOT: return "the disk is full";
    case EACCES:
    case EPERM: return "you may not do that there";
    case EROFS: return "the disk can only be read";
    case ENOENT:
    case ENOTDIR: return "there is no such folder";
    case EIO: return "the disk reports a fault";
    default: return std::generic_category().message(errno);
  }
}

Error unwritable(const std::string& path) {
  return {ErrorCode::FileUnwritable, {}, {reason()}, path};
}

Error notSynced(const std::string& folder) { return {ErrorCode::FileNotSynced, {}, {reason()}, folder}; }

bool writeAll(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

// Some disks know no owners or no modes (a stick, a share, a folder of another system).
bool isUnknownToDisk() { return errno == EPERM || errno == ENOSYS || errno == ENOTSUP || errno == EINVAL; }

bool takeOwnerAndMode(int file, const struct stat& like) {
  // Only root may give a file away; a changed group is tried by itself.
  if (::fchown(file, like.st_uid, like.st_gid) != 0 &&
      ::fchown(file, static_cast<uid_t>(-1), like.st_gid) != 0 && !isUnknownToDisk())
    return false;
  if (::fchmod(file, like.st_mode & 0777) == 0) return true;
  // Then the mode that the disk gives counts: nobody may be let in who was kept out.
  struct stat made {};
  return isUnknownToDisk() && ::fstat(file, &made) == 0 && (made.st_mode & ~like.st_mode & 0077) == 0;
}

// Block by block: what is kept may be empty, or anything that somebody chose to replace.
Result<void> copyFile(const std::string& from, const std::string& to) {
  constexpr std::size_t kBlock_bytes = 1 << 20;
  struct stat info {};
  const Descriptor source(::open(from.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (!source || ::fstat(source.number(), &info) != 0) return unwritable(from);
  Descriptor copy(::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
  if (!copy) return unwritable(from);
  bool isWhole = takeOwnerAndMode(copy.number(), info);
  for (std::string block(kBlock_bytes, '\0'); isWhole;) {
    const ssize_t got = ::read(source.number(), block.data(), block.size());
    if (got < 0 && errno == EINTR) continue;
    if (got == 0) break;
    isWhole = got > 0 && writeAll(copy.number(), std::string_view(block).substr(0, static_cast<std::size_t>(got)));
  }
  if (isWhole && ::fsync(copy.number()) == 0 && copy.closeNow()) return {};
  const Error error = unwritable(from);
  ::unlink(to.c_str());
  return error;
}

// A hidden name beside `path` that nothing has, of the kind that saving uses: what a
// cut leaves behind is then found as one of this plan's.
std::string nameForKeeping(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  const std::size_t start = slash == std::string::npos ? 0 : slash + 1;
  const std::string stem = path.substr(0, start) + "." + path.substr(start) + ".saving-" + std::to_string(::getpid()) + "-";
  struct stat info {};
  int count = 1;
  while (::lstat((stem + std::to_string(count)).c_str(), &info) == 0) ++count;
  return stem + std::to_string(count);
}

}  // namespace

FileKind Disk::kindOf(const std::string& path) {
  struct stat info {};
  if (::stat(path.c_str(), &info) != 0) return FileKind::Missing;
  return S_ISREG(info.st_mode) ? FileKind::File
         : S_ISDIR(info.st_mode) ? FileKind::Folder
                                 : FileKind::Other;
}

Result<std::string> Disk::followLinks(const std::string& path) {
  std::string here = path;
  for (int hop = 0; hop < 40; ++hop) {
    struct stat info {};
    if (::lstat(here.c_str(), &info) != 0 || !S_ISLNK(info.st_mode)) return here;
    char target[4096];
    const ssize_t length = ::readlink(here.c_str(), target, sizeof target);
    if (length < 0) return unwritable(path);
    const std::string to(target, static_cast<std::size_t>(length));
    const std::size_t slash = here.rfind('/');
    here = to.starts_with('/') || slash == std::string::npos ? to : here.substr(0, slash + 1) + to;
  }
  errno = ELOOP;
  return unwritable(path);
}

Result<std::string> Disk::read(const std::string& path, std::size_t mostBytes) {
  const auto unreadable = [&](ErrorCode code, std::vector<std::string> args = {}) {
    return Error{code, {}, std::move(args), path};
  };
  // Without O_NONBLOCK a pipe would wait for a writer for ever.
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (!file)
    return errno == ENOENT || errno == ENOTDIR ? unreadable(ErrorCode::FileMissing)
                                               : unreadable(ErrorCode::FileUnreadable, {reason()});
  struct stat info {};
  if (::fstat(file.number(), &info) != 0) return unreadable(ErrorCode::FileUnreadable, {reason()});
  if (S_ISDIR(info.st_mode)) return unreadable(ErrorCode::FileIsDirectory);
  if (!S_ISREG(info.st_mode))
    return unreadable(ErrorCode::FileUnreadable, {"it is not a regular file"});
  const auto tooLarge = [&](std::size_t size) {
    return unreadable(ErrorCode::FileTooLarge, {std::to_string(size), std::to_string(mostBytes)});
  };
  const auto size = static_cast<std::size_t>(info.st_size);
  if (size > mostBytes) return tooLarge(size);
  std::string bytes(size + 1, '\0');  // one more shows a file that grew meanwhile
  std::size_t filled = 0;
  while (filled < bytes.size()) {
    const ssize_t got = ::read(file.number(), bytes.data() + filled, bytes.size() - filled);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return unreadable(ErrorCode::FileUnreadable, {reason()});
    if (got == 0) break;
    filled += static_cast<std::size_t>(got);
  }
  if (filled > size)
    return unreadable(ErrorCode::FileUnreadable, {"it changed while it was being read"});
  bytes.resize(filled);
  if (bytes.empty()) return unreadable(ErrorCode::FileEmpty);
  return bytes;
}

Result<void> Disk::writeNew(const std::string& path, std::string_view bytes,
                            const std::string& like) {
  struct stat old {};
  const bool replaces = ::stat(like.c_str(), &old) == 0;
  // Nobody else may read it before it has the old file's mode.
  Descriptor file(
      ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, replaces ? 0600 : 0666));
  if (!file) return unwritable(path);
  if ((replaces && !takeOwnerAndMode(file.number(), old)) || !writeAll(file.number(), bytes) ||
      ::fsync(file.number()) != 0 || !file.closeNow()) {
    const Error error = unwritable(path);
    ::unlink(path.c_str());
    return error;
  }
  return {};
}

Result<void> Disk::link(const std::string& path, const std::string& name) {
  if (::link(path.c_str(), name.c_str()) != 0) return unwritable(name);
  return {};
}

Result<void> Disk::keepAs(const std::string& path, const std::string& name) {
  // By way of a third name, so that an older `name` is there until the new one is.
  const std::string between = nameForKeeping(path);
  if (!link(path, between))
    if (const auto copied = copyFile(path, between); !copied) return copied;
  const auto renamed = Disk::rename(between, name);
  // Renaming one name of a file to another name of the same file does nothing.
  ::unlink(between.c_str());
  return renamed;
}

Result<void> Disk::rename(const std::string& from, const std::string& to) {
  if (std::rename(from.c_str(), to.c_str()) != 0) return unwritable(to);
  return {};
}

void Disk::remove(const std::string& path) { ::unlink(path.c_str()); }

Result<void> Disk::syncFolder(const std::string& folder) {
  const Descriptor handle(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  // One that may be written and not listed cannot be synced, as a folder on some network
  // disks: these say so.
  if (!handle) return errno == EACCES ? Result<void>() : Result<void>(notSynced(folder));
  if (::fsync(handle.number()) != 0 && errno != EINVAL && errno != ENOTSUP)
    return notSynced(folder);
  return {};
}

}  // namespace combdraft::plan
