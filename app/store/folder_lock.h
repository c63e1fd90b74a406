#pragma once
// Locks in folders that are this user's own: unsaved work, what was open, clients. A
// lock counts for as long as a running process holds its file, whatever stands in it:
// another computer's name (this system was set up anew, or a backup came back), a
// number that another process has by now, or nothing (a power cut).
#include <QLockFile>
#include <QString>
#include <memory>

namespace combdraft::store {

/// Takes the lock `file`. Null: a running process holds it, or no file can be made there.
std::unique_ptr<QLockFile> takeFolderLock(const QString& file);

/// Removes the file of a lock that could not be taken, unless a process holds it. False:
/// it is held, or the disk cannot tell.
bool removeAbandoned(QLockFile& lock);

}  // namespace combdraft::store
