#pragma once
// Plans that a program left behind by ending without closing them: found,
// opened, kept, discarded with a way back. Whether anything would be lost is
// decided by content, never by time.
#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/document/document_controller.h"
#include "engine/base/result.h"

namespace combdraft::store {

/// Where snapshots live unless told otherwise.
QString recoveryRoot();

/// What became of the file a left plan belongs to.
enum class FileSince { NeverSaved, AsKnown, Changed, Gone };

struct LeftPlan {
  QString folder;
  QString document;      ///< path of the snapshot in it
  QString title;
  QString originalPath;  ///< "" = was never saved
  std::uint64_t fileKey = 0;
  FileSince file = FileSince::NeverSaved;
  QDateTime when;        ///< for people only
  int attempts = 0;      ///< how often it was opened before without getting through
  /// Working on its picture ended the program before: no picture, a safe start.
  bool endedWhileDrawn = false;
};

/// From how many failed openings on a start without the look is offered.
inline constexpr int kSafeFromAttempts = 2;

/// Plans that hold something their file does not, newest first. Folders that a
/// running program holds (see folder_lock.h) are left alone; folders with nothing to lose are removed,
/// and so is what programs that ended had discarded.
std::vector<LeftPlan> findLeftPlans(const QString& root);

struct ReadLeftPlan {
  plan::Plan plan;
  document::FileIdentity file;  ///< saving goes to the right place and asks when it must
  int attempts = 0;             ///< this one counted
};
/// Counts the attempt on the disk, then reads: the document, or when it cannot be read
/// the newest of the folder that can. The error names the document.
Result<ReadLeftPlan> readLeftPlan(const LeftPlan& left);
/// Reads without counting, to show it.
Result<plan::Plan> peekLeftPlan(const LeftPlan& left);
/// Copies the bytes as they are, for what cannot be read.
Result<void> copyLeftPlan(const LeftPlan& left, const QString& to);
/// Takes it away for good: it stands in a new snapshot or a file by now.
void removeLeftPlan(const LeftPlan& left);

/// While it lives, a left plan is being drawn; if the program ends meanwhile,
/// the next one knows.
class DrawingMark {
 public:
  explicit DrawingMark(const LeftPlan& left);
  ~DrawingMark();
  DrawingMark(const DrawingMark&) = delete;
  DrawingMark& operator=(const DrawingMark&) = delete;

 private:
  QString file_;
};

/// Discarded plans wait here until the program ends.
class DiscardedPlans {
 public:
  explicit DiscardedPlans(QString root) : root_(std::move(root)) {}
  ~DiscardedPlans();
  DiscardedPlans(const DiscardedPlans&) = delete;
  DiscardedPlans& operator=(const DiscardedPlans&) = delete;

  Result<void> discard(const LeftPlan& left);
  /// False when it could not be put back; it stays where it waits.
  bool putBack(const LeftPlan& left);

 private:
  QString root_, place_;
  std::unique_ptr<QLockFile> lock_;
};

}  // namespace combdraft::store
