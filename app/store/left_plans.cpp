#include "app/store/left_plans.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>
#include <array>

#include "app/store/folder_lock.h"
#include "app/store/plan_store.h"
#include "app/store/snapshot_folder.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/replace_file.h"

namespace combdraft::store {
namespace {

/// A program fills the folder it makes at once; older empty ones are remains.
constexpr qint64 kFilledWithin_s = 60;
const QString kDrawing = QStringLiteral("/drawing");
const QString kDiscarded = QStringLiteral("discarded-");

std::unique_ptr<QLockFile> takenLock(const QString& folder) { return takeFolderLock(folder + u'/' + kSnapshotLock); }

bool isThere(const QString& path) { return QFileInfo(path).size() > 0; }

const std::array kNewestFirst{kSnapshotLast, kSnapshotQuick, kSnapshotDocument};

bool holdsDocument(const QString& folder) {
  return std::any_of(kNewestFirst.begin(), kNewestFirst.end(), [&](const QString& name) { return isThere(folder + u'/' + name); });
}

/// Stands in a folder while what is in it is read or drawn.
class WorkMark {
 public:
  explicit WorkMark(const QString& folder) : file_(folder + kDrawing) {
    QFile mark(file_);
    (void)mark.open(QIODevice::WriteOnly);
  }
  ~WorkMark() { QFile::remove(file_); }
  WorkMark(const WorkMark&) = delete;
  WorkMark& operator=(const WorkMark&) = delete;

 private:
  QString file_;
};

// The newest that is whole; when none is, the one that was synced. What ended the
// program while it was worked on is not read again: the newest, as it is.
QString documentIn(const QString& folder) {
  QString last;
  if (QFileInfo::exists(folder + kDrawing)) {
    for (const QString& name : kNewestFirst)
      if (isThere(folder + u'/' + name)) return folder + u'/' + name;
    return last;
  }
  const WorkMark mark(folder);
  plan::Disk disk;
  for (const QString& name : kNewestFirst) {
    const QString path = folder + u'/' + name;
    if (!isThere(path)) continue;
    const auto bytes = disk.read(path.toStdString(), plan::limits::kFileBytes);
    if (bytes && plan::readPlan(*bytes)) return path;
    last = path;
  }
  return last;
}

bool isSameAsFile(const QString& document, const QString& path) {
  if (path.isEmpty()) return false;
  plan::Disk disk;
  const auto kept = disk.read(document.toStdString(), plan::limits::kFileBytes);
  const auto file = disk.read(path.toStdString(), plan::limits::kFileBytes);
  return kept && file && *kept == *file;
}

FileSince sinceOf(const document::FileIdentity& file) {
  if (file.path.isEmpty()) return FileSince::NeverSaved;
  if (!QFileInfo::exists(file.path)) return FileSince::Gone;
  return isChangedOnDisk(file) ? FileSince::Changed : FileSince::AsKnown;
}

LeftPlan leftIn(const QString& folder, const QString& document, const SnapshotMeta& meta) {
  LeftPlan left;
  left.folder = folder;
  left.document = document;
  left.title = meta.title;
  left.originalPath = meta.originalPath;
  left.fileKey = meta.fileKey;
  left.file = sinceOf({meta.originalPath, meta.fileKey});
  left.when = QFileInfo(document).lastModified();
  left.attempts = meta.attempts;
  left.endedWhileDrawn = QFileInfo::exists(folder + kDrawing);
  return left;
}

Result<plan::Plan> planAt(const QString& path) {
  plan::Disk disk;
  const auto bytes = disk.read(path.toStdString(), plan::limits::kFileBytes);
  if (!bytes) return bytes.error();
  Result<plan::Plan> plan = plan::readPlan(*bytes);
  if (plan) return plan;
  Error error = plan.error();
  error.file = path.toStdString();
  return error;
}

}  // namespace

QString recoveryRoot() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/recovery");
}

std::vector<LeftPlan> findLeftPlans(const QString& root) {
  std::vector<LeftPlan> found;
  const QDir dir(root);
  for (const QString& name : dir.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = dir.filePath(name);
    auto lock = takenLock(folder);
    if (!lock) continue;  // its program is running
    if (name.startsWith(kDiscarded)) {
      lock.reset();  // before its file goes
      QDir(folder).removeRecursively();
      continue;
    }
    // Only what is known to hold nothing is cleared away: a folder without a
    // plan that no program can still be about to fill, or one whose plan is the
    // saved file. What could not be read is listed.
    const bool holdsNone = !holdsDocument(folder);
    const bool isOld = QFileInfo(folder).lastModified().secsTo(QDateTime::currentDateTime()) > kFilledWithin_s;
    if (holdsNone && !isOld) continue;
    const QString document = documentIn(folder);
    const SnapshotMeta meta = readSnapshotMeta(folder);
    if (holdsNone || isSameAsFile(document, meta.originalPath)) {
      emptySnapshotFolder(folder);
      lock.reset();
      QDir(folder).removeRecursively();
      continue;
    }
    found.push_back(leftIn(folder, document, meta));
  }
  std::sort(found.begin(), found.end(), [](const LeftPlan& a, const LeftPlan& b) { return a.when > b.when; });
  return found;
}

Result<plan::Plan> peekLeftPlan(const LeftPlan& left) { return planAt(left.document); }

Result<ReadLeftPlan> readLeftPlan(const LeftPlan& left) {
  plan::Disk disk;
  SnapshotMeta meta = readSnapshotMeta(left.folder);
  meta.attempts = left.attempts + 1;
  // Not being able to count must not keep anyone from the plan.
  if (const auto lock = takenLock(left.folder))
    if (const auto counted = writeSnapshotMeta(left.folder, meta, disk); counted.ok())
      (void)disk.syncFolder(left.folder.toStdString());
  Result<plan::Plan> plan = peekLeftPlan(left);
  // With a drawing mark the newest was chosen unread; when it is damaged, an older one
  // beside it may be whole.
  for (const QString& name : kNewestFirst) {
    if (plan) break;
    const QString other = left.folder + u'/' + name;
    if (other == left.document || !isThere(other)) continue;
    if (Result<plan::Plan> older = planAt(other)) plan = std::move(older);
  }
  if (!plan) return plan.error();
  return ReadLeftPlan{std::move(plan).value(), {left.originalPath, left.fileKey}, meta.attempts};
}

Result<void> copyLeftPlan(const LeftPlan& left, const QString& to) {
  plan::Disk disk;
  // Also what is too large to be a plan.
  const auto bytes = disk.read(left.document.toStdString(), SIZE_MAX - 1);
  if (!bytes) return bytes.error();
  const auto readBack = [&](const std::string& fresh) -> Result<void> {
    const auto back = disk.read(fresh, SIZE_MAX - 1);
    if (back && *back == *bytes) return {};
    return Error{ErrorCode::FileReadBackDiffers, {}, {}, fresh};
  };
  return plan::replaceFile(to.toStdString(), *bytes, plan::Before::Gone, readBack, disk, left.document.toStdString());
}

void removeLeftPlan(const LeftPlan& left) {
  emptySnapshotFolder(left.folder);
  QDir(left.folder).removeRecursively();
}

DrawingMark::DrawingMark(const LeftPlan& left) : file_(left.folder + kDrawing) {
  QFile mark(file_);
  (void)mark.open(QIODevice::WriteOnly);
}

DrawingMark::~DrawingMark() { QFile::remove(file_); }

DiscardedPlans::~DiscardedPlans() {
  lock_.reset();
  if (!place_.isEmpty()) QDir(place_).removeRecursively();
}

Result<void> DiscardedPlans::discard(const LeftPlan& left) {
  const Error cannot{ErrorCode::FileUnwritable, {}, {"it cannot be moved aside"}, left.folder.toStdString()};
  if (place_.isEmpty()) {
    const QString place = root_ + u'/' + kDiscarded + QUuid::createUuid().toString(QUuid::WithoutBraces);
    if (!QDir().mkpath(place)) return cannot;
    QFile::setPermissions(place, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
    lock_ = takenLock(place);
    if (!lock_) return cannot;
    place_ = place;
  }
  if (!QDir().rename(left.folder, place_ + u'/' + QFileInfo(left.folder).fileName())) return cannot;
  return {};
}

bool DiscardedPlans::putBack(const LeftPlan& left) {
  return !place_.isEmpty() && QDir().rename(place_ + u'/' + QFileInfo(left.folder).fileName(), left.folder);
}

}  // namespace combdraft::store
