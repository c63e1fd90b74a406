#include "app/store/recovery.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>
#include <vector>

namespace combdraft::store {
namespace {

using std::chrono::milliseconds;

constexpr milliseconds kWaitForDisk{5000}, kWaitForLock{1000};

// Every Recovery of the program, for its last moment.
struct All {
  std::timed_mutex mutex;
  std::vector<Recovery*> list;
};
All& all() {
  static All* const everything = new All;  // outlives whatever ends the program
  return *everything;
}

}  // namespace

Recovery::Recovery(document::DocumentController& controller, QString root, RecoveryPace pace,
                   std::shared_ptr<plan::Disk> disk, QObject* parent)
    : QObject(parent), controller_(controller), root_(std::move(root)), pace_(pace), folder_(root_, std::move(disk)) {
  stands_.setSingleShot(true);
  connect(&stands_, &QTimer::timeout, this, [this] {
    attempts_ = 0;
    if (controller_.isModified()) note();
  });
  connect(&controller_, &document::DocumentController::changed, this, &Recovery::changed);
  // Saved, or undone back to what the file holds: an older snapshot must not be
  // offered over it. Else where it belongs to may have changed.
  connect(&controller_, &document::DocumentController::fileChanged, this,
          [this] { controller_.isModified() ? note() : close(); });
  worker_ = std::jthread([this](const std::stop_token& stop) { work(stop); });
  const std::scoped_lock lock(all().mutex);
  all().list.push_back(this);
}

Recovery::~Recovery() {
  {
    const std::scoped_lock lock(all().mutex);
    std::erase(all().list, this);
  }
  worker_.request_stop();
  wake_.notify_all();
  worker_.join();
}

void Recovery::changed(const document::DocumentChange& change) {
  if (change.kind == document::DocumentChange::Kind::Tentative) return;
  if (change.kind == document::DocumentChange::Kind::Replaced) {
    close();
    if (!controller_.isModified()) return;
  }
  note();
}

void Recovery::note() {
  Snapshot snapshot{controller_.document(), controller_.file(), attempts_};
  const std::scoped_lock lock(mutex_);
  // Later edits do not put off what is due, nor hurry what failed.
  const bool isFirst = !newest_ || (failures_ == 0 && serial_ == startedSerial_);
  if (isFirst) due_ = Clock::now() + milliseconds(pace_.snapshotAfter_ms);
  newest_ = std::move(snapshot);
  ++serial_;
  wake_.notify_all();
}

void Recovery::setAttempts(int attempts, Forget forget) {
  attempts_ = attempts;
  stands_.stop();
  if (forget == Forget::OnceStood) stands_.start(pace_.standsAfter_ms);
  if (controller_.isModified()) note();
}

Recovery::Written Recovery::writeNow() {
  if (!controller_.isModified()) return Written::Yes;
  note();
  bool isWritten = false;
  {
    std::unique_lock lock(mutex_);
    const std::uint64_t wanted = serial_;
    urgent_ = serial_ > writtenSerial_;
    wake_.notify_all();
    done_.wait_for(lock, kWaitForDisk, [&] { return triedSerial_ >= wanted; });
    isWritten = writtenSerial_ >= wanted;
  }
  QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);  // the news of it
  return isWritten ? Written::Yes : Written::No;
}

void Recovery::close() {
  stands_.stop();
  attempts_ = 0;
  const std::scoped_lock lock(mutex_);
  closedSerial_ = serial_;
  newest_.reset();
  failures_ = 0;
  urgent_ = false;
  removeWanted_ = true;
  wake_.notify_all();
}

QString Recovery::folder() const {
  const std::scoped_lock lock(mutex_);
  return removeWanted_ ? QString() : folderPath_;
}

void Recovery::work(const std::stop_token& stop) {
  std::unique_lock lock(mutex_);
  for (;;) {
    if (removeWanted_) {
      removeWanted_ = false;
      folderPath_.clear();
      lock.unlock();
      folder_.remove();
      lock.lock();
      continue;
    }
    const bool waits = newest_ && serial_ > writtenSerial_;
    if (!waits) urgent_ = false;
    const bool isLast = stop.stop_requested();
    if (waits && (urgent_ || isLast || Clock::now() >= due_)) {
      writeNewest(lock);
      if (!isLast) continue;
    }
    if (isLast && !removeWanted_) return;
    const auto isNews = [&, before = serial_] { return removeWanted_ || urgent_ || serial_ != before; };
    if (waits)
      wake_.wait_until(lock, stop, due_, isNews);
    else
      wake_.wait(lock, stop, isNews);
  }
}

void Recovery::writeNewest(std::unique_lock<std::timed_mutex>& lock) {
  const Snapshot snapshot = *newest_;
  const std::uint64_t serial = serial_;
  startedSerial_ = serial;
  urgent_ = false;
  lock.unlock();
  const Result<void> result = folder_.write(snapshot);
  lock.lock();
  folderPath_ = folder_.path();
  triedSerial_ = std::max(triedSerial_, serial);
  QString why;
  if (result.ok()) {
    writtenSerial_ = std::max(writtenSerial_, serial);
    failures_ = 0;
  } else {
    why = QString::fromStdString(describe(result.error()));
    const int doubled = std::min(failures_++, 10);
    due_ = Clock::now() + milliseconds(std::min(pace_.retryFirst_ms << doubled, pace_.retryMost_ms));
  }
  done_.notify_all();
  QMetaObject::invokeMethod(
      this,
      [this, serial, why] {
        if (serial <= closedSerial_) return;  // of a plan that is gone
        if (why.isEmpty())
          Q_EMIT written();
        else
          Q_EMIT failed(why);
      },
      Qt::QueuedConnection);
}

bool Recovery::writeLastOfThis() {
  const std::unique_lock lock(mutex_, kWaitForLock);
  if (!lock || !newest_ || serial_ == writtenSerial_) return false;
  return writeLastSnapshot(root_, folderPath_, *newest_).ok();
}

int Recovery::writeLast() {
  const std::unique_lock lock(all().mutex, kWaitForLock);
  if (!lock) return 0;
  int count = 0;
  for (Recovery* recovery : all().list) count += recovery->writeLastOfThis();
  return count;
}

}  // namespace combdraft::store
