#include "app/store/plan_lock.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSysInfo>

#include "app/store/folder_lock.h"
#include "engine/plan/disk.h"

namespace combdraft::store {
namespace {

std::unique_ptr<QLockFile> lockOf(const QString& path) {
  auto lock = std::make_unique<QLockFile>(PlanLock::lockFileOf(path));
  lock->setStaleLockTime(0);  // a clock that was set says nothing about who runs
  return lock;
}

PlanHolder holderOf(const QLockFile& lock) {
  PlanHolder holder;
  if (!lock.getLockInfo(&holder.process, &holder.computer, &holder.program)) return {};
  holder.isThisProgram = holder.process == QCoreApplication::applicationPid() &&
                         (holder.computer.isEmpty() || holder.computer == QSysInfo::machineHostName());
  return holder;
}

}  // namespace

QString PlanLock::lockFileOf(const QString& path) {
  plan::Disk disk;
  const auto followed = disk.followLinks(path.toStdString());
  const QFileInfo file(followed ? QString::fromStdString(*followed) : path);
  return file.absolutePath() + QStringLiteral("/.") + file.fileName() + QStringLiteral(".in-use");
}

bool PlanLock::isHeldFor(const QString& path) const { return lock_ && lock_->fileName() == lockFileOf(path); }

PlanLock::Standing PlanLock::take(const QString& path) {
  if (isHeldFor(path)) return standing_ = Standing::Held;
  auto next = lockOf(path);
  if (next->tryLock(0)) {
    lock_ = std::move(next);  // the one before is given back
    return standing_ = Standing::Held;
  }
  if (next->error() == QLockFile::LockFailedError) {
    holder_ = holderOf(*next);
    return Standing::Others;
  }
  lock_.reset();
  return standing_ = Standing::CannotTell;
}

PlanLock::Standing PlanLock::takeAnyway(const QString& path) {
  {
    // Another computer's name says nothing about whether it still runs: what no process
    // holds goes, or the question would come at every opening.
    auto next = lockOf(path);
    if (!next->tryLock(0) && next->error() == QLockFile::LockFailedError && !removeAbandoned(*next) &&
        holderOf(*next).process == 0)
      QFile::remove(next->fileName());
  }
  const Standing standing = take(path);
  if (standing == Standing::Held) return standing;
  lock_.reset();
  return standing_ = Standing::CannotTell;
}

void PlanLock::giveBack() {
  lock_.reset();
  standing_ = Standing::None;
}

}  // namespace combdraft::store
