#include "app/store/folder_lock.h"

#include <QDateTime>
#include <QFileInfo>
#include <cstdlib>

namespace combdraft::store {
namespace {

constexpr qint64 kHeldWithin_s = 2;

// A program makes the file, then holds it, then writes its name into it.
bool mayBeJustMade(const QLockFile& lock) {
  qint64 process = 0;
  QString computer, program;
  if (lock.getLockInfo(&process, &computer, &program)) return false;
  const qint64 age_s = QFileInfo(lock.fileName()).lastModified().secsTo(QDateTime::currentDateTime());
  return std::abs(age_s) < kHeldWithin_s;
}

}  // namespace

bool removeAbandoned(QLockFile& lock) {
  // One after the other, else the second removes what the first has taken. Qt's own
  // name for this turn, since it removes stale locks too.
  QLockFile turn(lock.fileName() + QStringLiteral(".rmlock"));
  return turn.tryLock(0) && !mayBeJustMade(lock) && lock.removeStaleLockFile();
}

std::unique_ptr<QLockFile> takeFolderLock(const QString& file) {
  auto lock = std::make_unique<QLockFile>(file);
  lock->setStaleLockTime(0);  // a clock that was set says nothing about who runs
  if (lock->tryLock(0)) return lock;
  if (lock->error() == QLockFile::LockFailedError && removeAbandoned(*lock) && lock->tryLock(0)) return lock;
  return nullptr;
}

}  // namespace combdraft::store
