#pragma once
// One folder of autosave: the document, then what belongs to it, each replaced
// in one step. Only its owner can read it. Its lock says whose it is: a stale
// lock means that the program ended without closing the plan.
//
//   lock        held while the program runs
//   quick.json  the newest snapshot, handed to the system and not yet synced: it
//               outlives the program, and after a power cut may be damaged
//   plan.json   the newest that is on the disk for certain
//   meta.json   where the plan belongs; written last
//   last.json   written by a program that was about to end itself; newest of all
#include <QLockFile>
#include <QString>
#include <memory>

#include "app/document/document_controller.h"
#include "engine/base/result.h"
#include "engine/plan/disk.h"

namespace combdraft::store {

/// What is kept of an open plan.
struct Snapshot {
  plan::Plan plan;
  document::FileIdentity file;
  int attempts = 0;  ///< how often it was opened before without getting through
};

/// What stands in `meta.json`. Fields that are missing have these values, so
/// that what an older version wrote opens.
struct SnapshotMeta {
  QString title, originalPath;
  std::uint64_t fileKey = 0;      ///< content of the file as last known; 0 = none
  std::uint64_t snapshotKey = 0;  ///< content of the snapshot this was written for
  QString programVersion;
  int attempts = 0;
};

inline const QString kSnapshotDocument = QStringLiteral("plan.json");
inline const QString kSnapshotQuick = QStringLiteral("quick.json");
inline const QString kSnapshotLast = QStringLiteral("last.json");
inline const QString kSnapshotMeta = QStringLiteral("meta.json");
inline const QString kSnapshotLock = QStringLiteral("lock");

SnapshotMeta readSnapshotMeta(const QString& folder);
/// Replaces `meta.json` of a folder whose lock is free or ours.
Result<void> writeSnapshotMeta(const QString& folder, const SnapshotMeta& meta, plan::Disk& disk);

/// Used by one thread at a time; `writeSynced` may run beside it.
class SnapshotFolder {
 public:
  /// A new folder below `root`, made by the first `writeQuick`.
  SnapshotFolder(QString root, std::shared_ptr<plan::Disk> disk);
  /// Leaves what was written where it is, and frees the lock.
  ~SnapshotFolder() = default;

  enum class Quick { Taken, NotTaken };
  /// Hands the snapshot to the system without waiting for the disk. An error
  /// says that there is no folder to write to. NotTaken: `writeSynced` will tell
  /// why; what the system had before stands there still.
  Result<Quick> writeQuick(const Snapshot& snapshot);
  /// Takes away what the system was handed: something newer was synced.
  void dropQuick();
  /// The document first, so that no half removed folder is offered.
  void remove();
  /// "" = not made yet.
  const QString& path() const { return path_; }

  /// Returns once document, meta and their names are on the disk. On error what
  /// was there before is still there, whole.
  static Result<void> writeSynced(const QString& folder, const Snapshot& snapshot, plan::Disk& disk);

 private:
  Result<void> make();

  QString root_, path_;
  std::shared_ptr<plan::Disk> disk_;
  std::unique_ptr<QLockFile> lock_;
};

/// For a program that is about to end: writes `last.json` beside what another
/// thread may be writing, into `folder` or, when that is "", into a new one.
Result<void> writeLastSnapshot(const QString& root, const QString& folder, const Snapshot& snapshot);

/// The first step of removing a folder: from here on it holds nothing to recover.
void emptySnapshotFolder(const QString& folder);

}  // namespace combdraft::store
