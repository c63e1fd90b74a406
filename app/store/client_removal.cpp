#include "app/store/client_removal.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <array>

#include "app/store/folder_lock.h"
#include "app/store/snapshot_folder.h"
#include "engine/plan/plan_file.h"

namespace combdraft::store {
namespace {

constexpr qint64 kNumberWithin_bytes = 64 << 10;  // it stands near the top

bool removeFile(const QString& path, Gone& gone) {
  if (!QFileInfo::exists(path)) return false;
  if (QFile::remove(path)) return true;
  gone.notRemoved << path;
  return false;
}

bool isOfPlans(const QString& folder, const std::set<std::uint64_t>& numbers) {
  const QStringList names = QDir(folder).entryList({QStringLiteral("*.json"), QStringLiteral("*.new"), QStringLiteral("*.quick")}, QDir::Files);
  return std::any_of(names.begin(), names.end(), [&](const QString& name) { return numbers.count(planNumberIn(folder + u'/' + name)) > 0; });
}

void removeFolder(const QString& folder, Gone& gone) {
  auto lock = takeFolderLock(folder + u'/' + kSnapshotLock);
  if (!lock) {
    gone.notRemoved << folder;
    return;
  }
  emptySnapshotFolder(folder);
  lock.reset();
  if (QDir(folder).removeRecursively())
    ++gone.leftPlans;
  else
    gone.notRemoved << folder;
}

QString quoted(const QString& text) { return QRegularExpression::escape(text); }

}  // namespace

std::set<std::uint64_t> planNumbersOf(const ClientFile& file) {
  std::set<std::uint64_t> numbers{file.number};
  for (const Visit& visit : file.visits) numbers.insert(visit.number);
  return numbers;
}

std::uint64_t planNumberIn(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return 0;
  static const QRegularExpression kNumber(QStringLiteral("\"number\"\\s*:\\s*(\\d{1,16})\\b"));
  const auto found = kNumber.match(QString::fromLatin1(file.read(kNumberWithin_bytes)));
  return found.hasMatch() ? found.captured(1).toULongLong() : 0;
}

void removeSnapshots(const QString& recoveryRoot, const std::set<std::uint64_t>& numbers, Gone& gone) {
  for (const QString& name : QDir(recoveryRoot).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = recoveryRoot + u'/' + name;
    if (isOfPlans(folder, numbers)) {
      removeFolder(folder, gone);
      continue;
    }
    // Discarded plans wait one folder deeper, below the lock of who discarded them.
    for (const QString& inside : QDir(folder).entryList(QDir::Dirs | QDir::NoDotAndDotDot))
      if (isOfPlans(folder + u'/' + inside, numbers)) removeFolder(folder + u'/' + inside, gone);
  }
}

void removeBeside(const QStringList& paths, const std::set<std::uint64_t>& numbers, PlanFiles files, Gone& gone) {
  for (const QString& path : paths) {
    if (!numbers.count(planNumberIn(path))) continue;
    const QFileInfo info(path);
    const QString target = info.canonicalFilePath();  // what a link leads to
    const QString previous = target + QLatin1String(plan::kPreviousEnding.data(), static_cast<qsizetype>(plan::kPreviousEnding.size()));
    if (removeFile(previous, gone)) ++gone.previous;
    removeFile(previous + QStringLiteral(".new"), gone);
    const QDir dir = QFileInfo(target).absoluteDir();
    const QRegularExpression cut(QStringLiteral("^\\.%1\\.saving-\\d+-\\d+$").arg(quoted(QFileInfo(target).fileName())));
    for (const QString& name : dir.entryList(QDir::Files | QDir::Hidden))
      if (cut.match(name).hasMatch()) removeFile(dir.filePath(name), gone);
    if (files == PlanFiles::GoToo && removeFile(target, gone)) {
      ++gone.plans;
      if (info.isSymLink()) removeFile(path, gone);
    }
  }
}

}  // namespace combdraft::store
