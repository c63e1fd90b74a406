#pragma once
// Nothing typed is lost: a snapshot of the document 2 s after the last change
// (at most 30 s apart while changes keep coming), in a folder of its own that
// only the user can read. A killed program leaves the folder behind; the next
// start offers it. Whether anything would be lost is decided by content, never
// by time.
#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QTimer>
#include <memory>
#include <vector>

#include "app/document/document_controller.h"
#include "engine/base/result.h"

namespace combdraft::store {

/// A plan left behind by a program that ended without closing it.
struct LeftPlan {
  QString folder;
  QString title;
  QString originalPath;  ///< "" = was never saved
  QDateTime when;        ///< for people only
  int attempts = 0;      ///< how often it was opened before without getting through
};

/// Where snapshots live unless told otherwise.
QString recoveryRoot();

/// Plans that hold something their file does not. Folders of running programs
/// are left alone; folders with nothing to lose are removed.
std::vector<LeftPlan> findLeftPlans(const QString& root);
/// Counts the attempt, then reads. The original path and what the file held
/// come along, so that saving goes to the right place and asks when it must.
struct ReadLeftPlan {
  plan::Plan plan;
  document::FileIdentity file;
};
Result<ReadLeftPlan> readLeftPlan(const LeftPlan& left);
void discardLeftPlan(const LeftPlan& left);

class Recovery : public QObject {
  Q_OBJECT

 public:
  Recovery(document::DocumentController& controller, QString root = recoveryRoot(),
           QObject* parent = nullptr);
  /// Leaves the snapshot where it is; `close` takes it away.
  ~Recovery() override;

  /// Writes the snapshot at once (before a risky step).
  void writeNow();
  /// The document was saved or given up: nothing to recover.
  void close();
  const QString& folder() const { return folder_; }

 Q_SIGNALS:
  /// A snapshot could not be written; it is tried again.
  void failed(const QString& why);
  void written();

 private:
  void changed(const document::DocumentChange& change);
  bool write(QString& why);

  document::DocumentController& controller_;
  QString root_, folder_;
  std::unique_ptr<QLockFile> lock_;
  QTimer afterLast_, atMost_;
};

}  // namespace combdraft::store
