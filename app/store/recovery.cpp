#include "app/store/recovery.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>
#include <new>
#include <utility>
#include <vector>

#include "app/words/engine_words.h"

namespace combdraft::store {
namespace {

using std::chrono::milliseconds;

constexpr milliseconds kWaitForDisk{5000}, kWaitForLock{1000};

// Every Recovery of the program, for its last moment.
struct All {
  std::mutex mutex;
  std::vector<Recovery*> list;
};
All& all() {
  static All* const everything = new All;  // outlives whatever ends the program
  return *everything;
}

// A program that is about to end may hold the lock itself, somewhere below.
std::unique_lock<std::mutex> lockInTime(std::mutex& mutex) {
  const auto until = std::chrono::steady_clock::now() + kWaitForLock;
  std::unique_lock lock(mutex, std::try_to_lock);
  while (!lock && std::chrono::steady_clock::now() < until) {
    std::this_thread::sleep_for(milliseconds(2));
    (void)lock.try_lock();
  }
  return lock;
}

// Short of memory a write fails, as on a full disk, and is tried again.
template <class Write>
auto withinMemory(const Write& write) -> decltype(write()) {
  try {
    return write();
  } catch (const std::bad_alloc&) {
    return Error{ErrorCode::FileUnwritable, {}, {"there is not enough memory for it"}, {}};
  }
}

}  // namespace

Recovery::Recovery(document::DocumentController& controller, QString root, RecoveryPace pace,
                   std::shared_ptr<plan::Disk> disk, QObject* parent)
    : QObject(parent), controller_(controller), root_(std::move(root)), pace_(pace), disk_(std::move(disk)), folder_(root_, disk_) {
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
  syncer_ = std::jthread([this](const std::stop_token& stop) { syncAlong(stop); });
  const std::scoped_lock lock(all().mutex);
  all().list.push_back(this);
}

Recovery::~Recovery() {
  {
    const std::scoped_lock lock(all().mutex);
    std::erase(all().list, this);
  }
  // What the worker still hands over is still synced.
  worker_.request_stop();
  worker_.join();
  syncer_.request_stop();
  syncer_.join();
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

Recovery::Ended Recovery::closeAndWait(milliseconds atMost) {
  close();
  Lock lock(mutex_);
  return done_.wait_for(lock, atMost, [this] { return !removeWanted_ && !isRemoving_; }) ? Ended::Yes : Ended::No;
}

QString Recovery::folder() const {
  const std::scoped_lock lock(mutex_);
  return removeWanted_ ? QString() : folderPath_;
}

void Recovery::work(const std::stop_token& stop) {
  Lock lock(mutex_);
  for (;;) {
    if (removeWanted_) {
      removeFolder(lock);
      continue;
    }
    if (hasOldQuick()) {
      notQuickSerial_ = 0;
      lock.unlock();
      folder_.dropQuick();
      lock.lock();
      continue;
    }
    const bool waits = newest_ && serial_ > startedSerial_;
    if (!waits) urgent_ = false;
    const bool isLast = stop.stop_requested();
    if (waits && (urgent_ || isLast || Clock::now() >= due_)) {
      handOver(lock);
      if (!isLast) continue;
    }
    if (isLast && !removeWanted_) return;
    const auto isNews = [&, before = serial_, started = startedSerial_] {
      return removeWanted_ || urgent_ || serial_ != before || startedSerial_ != started || hasOldQuick();
    };
    if (waits)
      wake_.wait_until(lock, stop, due_, isNews);
    else
      wake_.wait(lock, stop, isNews);
  }
}

void Recovery::removeFolder(Lock& lock) {
  removeWanted_ = false;
  isRemoving_ = true;
  folderPath_.clear();
  toSync_.reset();
  notQuickSerial_ = 0;
  done_.wait(lock, [this] { return !isSyncing_; });
  lock.unlock();
  folder_.remove();
  lock.lock();
  isRemoving_ = false;
  done_.notify_all();
}

void Recovery::handOver(Lock& lock) {
  const Snapshot snapshot = *newest_;
  const std::uint64_t serial = startedSerial_ = serial_;
  urgent_ = false;
  lock.unlock();
  const Result<SnapshotFolder::Quick> result = withinMemory([&] { return folder_.writeQuick(snapshot); });
  lock.lock();
  if (!result.ok()) return ended(serial, result.error());
  notQuickSerial_ = *result == SnapshotFolder::Quick::Taken ? 0 : serial;
  if (removeWanted_) return;  // closed meanwhile
  folderPath_ = folder_.path();
  toSync_ = Sync{snapshot, serial, folderPath_};
  wake_.notify_all();
}

void Recovery::syncAlong(const std::stop_token& stop) {
  Lock lock(mutex_);
  for (;;) {
    wake_.wait(lock, stop, [this] { return toSync_.has_value(); });
    if (!toSync_) return;
    const Sync sync = *std::exchange(toSync_, std::nullopt);
    isSyncing_ = true;
    lock.unlock();
    const Result<void> result = withinMemory([&] { return SnapshotFolder::writeSynced(sync.folder, sync.snapshot, *disk_); });
    lock.lock();
    isSyncing_ = false;
    ended(sync.serial, result);
  }
}

void Recovery::ended(std::uint64_t serial, const Result<void>& result) {
  triedSerial_ = std::max(triedSerial_, serial);
  QString why;
  if (result.ok()) {
    writtenSerial_ = std::max(writtenSerial_, serial);
    failures_ = 0;
  } else if (newest_ && serial > closedSerial_) {  // of this plan
    Error error = result.error();
    error.file.clear();  // a hidden place of the program's, not where the work is
    why = words::inWords(error);
    const int doubled = std::min(failures_++, 10);
    due_ = Clock::now() + milliseconds(std::min(pace_.retryFirst_ms << doubled, pace_.retryMost_ms));
    startedSerial_ = writtenSerial_;  // all of it once more, with a new folder if need be
  }
  done_.notify_all();
  wake_.notify_all();
  QMetaObject::invokeMethod(
      this,
      [this, serial, why] {
        if (serial <= closedSerial_) return;  // of a plan that is gone
        if (why.isEmpty())
          Q_EMIT written(isAllWritten() ? Reached::Newest : Reached::Older);
        else
          Q_EMIT failed(why);
      },
      Qt::QueuedConnection);
}

bool Recovery::isAllWritten() const {
  const std::scoped_lock lock(mutex_);
  return writtenSerial_ >= serial_;
}

bool Recovery::writeLastOfThis() {
  const Lock lock = lockInTime(mutex_);
  if (!lock || !newest_ || serial_ == writtenSerial_) return false;
  return writeLastSnapshot(root_, folderPath_, *newest_).ok();
}

int Recovery::writeLast() {
  const Lock lock = lockInTime(all().mutex);
  if (!lock) return 0;
  int count = 0;
  for (Recovery* recovery : all().list) count += recovery->writeLastOfThis();
  return count;
}

}  // namespace combdraft::store
