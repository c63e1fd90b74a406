#pragma once
// Nothing typed is lost: at no moment are more than two seconds of edits
// missing from the disk, however steadily they come.
//
// Every edit hands its plan (a value; copying shares its items) to a worker,
// which writes the newest one at the latest `snapshotAfter_ms` after the first
// that is not written yet. The window's thread is never asked to write, and
// never has to get round to it. Writing that fails is tried again for as long
// as there is something to write; autosave cannot be turned off.
//
// The worker hands a snapshot to the system at once (it then outlives the
// program), and a second thread brings it onto the disk (it then outlives the
// power). A disk that keeps the second waiting for seconds does not hold up the
// first. A snapshot being written while its plan is saved or closed is removed
// after it was written.
#include <QObject>
#include <QTimer>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "app/document/document_controller.h"
#include "app/store/left_plans.h"
#include "app/store/snapshot_folder.h"

namespace combdraft::store {

struct RecoveryPace {
  int snapshotAfter_ms = 1000;  ///< after the first edit that is not written; the rest of the 2 s is for writing
  int retryFirst_ms = 2000;     ///< after a failure; each later one doubles
  int retryMost_ms = 10000;
  int standsAfter_ms = 5000;    ///< from then on a recovered plan counts as opened
};

class Recovery : public QObject {
  Q_OBJECT

 public:
  explicit Recovery(document::DocumentController& controller, QString root = recoveryRoot(), RecoveryPace pace = {},
                    std::shared_ptr<plan::Disk> disk = std::make_shared<plan::Disk>(), QObject* parent = nullptr);
  /// Finishes what was asked for and leaves the snapshot where it is; `close`
  /// takes it away.
  ~Recovery() override;

  enum class Written { Yes, No };
  /// Writes the snapshot and waits until it is on the disk (at most five
  /// seconds), as before something that relies on it. Nothing to write is Yes.
  Written writeNow();
  /// The document was saved or given up: nothing to recover. Returns at once.
  void close();
  enum class Reached { Newest, Older };
  enum class Ended { Yes, No };
  /// The same, and waits until the folder is let go and removed, also one that is being
  /// written. No: the disk does not answer for that long; it goes once the disk does.
  Ended closeAndWait(std::chrono::milliseconds atMost = std::chrono::seconds(5));
  enum class Forget { OnceStood, Never };
  /// The plan now open was recovered, and this often opened without getting
  /// through; that is forgotten once it has stood for a while, or not yet.
  void setAttempts(int attempts, Forget forget = Forget::OnceStood);
  /// Where the snapshot stands; "" = there is none.
  QString folder() const;

  /// For a program that is about to end itself, on any thread: writes what is
  /// not on the disk yet, of every window. Waits at most a second for a lock.
  /// Returns how many were written.
  static int writeLast();

 Q_SIGNALS:
  /// A snapshot could not be written; it is tried again.
  void failed(const QString& why);
  /// A snapshot is on the disk: the newest there is, or one that was edited since.
  void written(combdraft::store::Recovery::Reached which);

 private:
  using Clock = std::chrono::steady_clock;

  void changed(const document::DocumentChange& change);
  void note();
  using Lock = std::unique_lock<std::mutex>;
  void work(const std::stop_token& stop);
  void syncAlong(const std::stop_token& stop);
  // Called with the mutex held, which is free while the system works.
  void handOver(Lock& lock);
  void removeFolder(Lock& lock);
  void ended(std::uint64_t serial, const Result<void>& result);
  bool isAllWritten() const;
  bool hasOldQuick() const { return notQuickSerial_ != 0 && writtenSerial_ >= notQuickSerial_; }
  bool writeLastOfThis();

  document::DocumentController& controller_;
  const QString root_;
  const RecoveryPace pace_;
  QTimer stands_;
  int attempts_ = 0;
  std::uint64_t closedSerial_ = 0;  ///< of the newest snapshot when it was last closed

  // shared, under the mutex
  mutable std::mutex mutex_;
  std::condition_variable_any wake_, done_;
  std::optional<Snapshot> newest_;
  std::uint64_t serial_ = 0;         ///< of `newest_`
  std::uint64_t startedSerial_ = 0;  ///< newest that was handed to the system
  std::uint64_t writtenSerial_ = 0;  ///< on the disk
  std::uint64_t triedSerial_ = 0;    ///< written, or failed
  Clock::time_point due_{};          ///< when `newest_` is to be written
  int failures_ = 0;                 ///< in a row
  bool urgent_ = false, removeWanted_ = false, isRemoving_ = false;
  QString folderPath_;
  struct Sync {
    Snapshot snapshot;
    std::uint64_t serial = 0;
    QString folder;
  };
  std::optional<Sync> toSync_;
  bool isSyncing_ = false;
  /// What the system holds is older than this snapshot, which it would not
  /// take; 0 = it is not. Once that one is synced, the older one goes.
  std::uint64_t notQuickSerial_ = 0;

  const std::shared_ptr<plan::Disk> disk_;
  SnapshotFolder folder_;         ///< the worker's
  std::jthread worker_, syncer_;  ///< last: stop before the rest goes
};

}  // namespace combdraft::store
