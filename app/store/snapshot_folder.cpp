#include "app/store/snapshot_folder.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>
#include <algorithm>

#include "app/store/folder_lock.h"
#include "engine/base/content_hash.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

namespace combdraft::store {
namespace {

constexpr QFileDevice::Permissions kOwnerFile = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
constexpr QFileDevice::Permissions kOwnerFolder = kOwnerFile | QFileDevice::ExeOwner;
constexpr std::size_t kMostMeta_bytes = 1u << 20;  // a path, a title and some numbers

Error cannotMake(const QString& folder) {
  return {ErrorCode::FileUnwritable, {}, {"this folder cannot be made or kept"}, folder.toStdString()};
}

QString keyText(std::uint64_t key) { return QString::number(key, 16); }
std::uint64_t keyOf(const QJsonValue& text) { return text.toString().toULongLong(nullptr, 16); }

/// Replaces `folder`/`name` in one step; nobody but the owner can read it.
Result<void> put(const QString& folder, const QString& name, std::string_view bytes, plan::Disk& disk) {
  const std::string whole = (folder + u'/' + name).toStdString(), fresh = whole + ".new";
  disk.remove(fresh);  // left by a program that ended while it wrote
  // The lock is the owner's only, so the new file is from its first byte on.
  if (const auto written = disk.writeNew(fresh, bytes, (folder + u'/' + kSnapshotLock).toStdString()); !written)
    return written;
  const auto renamed = disk.rename(fresh, whole);
  if (!renamed) disk.remove(fresh);
  return renamed;
}

/// The same without waiting for the disk; false = what was there still is.
bool putUnsynced(const QString& folder, const QString& name, const std::string& bytes) {
  const QString whole = folder + u'/' + name, fresh = whole + QStringLiteral(".quick");
  QFile::remove(fresh);
  QFile file(fresh);
  const auto size = static_cast<qint64>(bytes.size());
  if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly, kOwnerFile)) return false;
  const bool isWhole = file.write(bytes.data(), size) == size && file.flush();
  file.close();
  plan::Disk disk;
  if (isWhole && disk.rename(fresh.toStdString(), whole.toStdString())) return true;
  QFile::remove(fresh);
  return false;
}

SnapshotMeta metaOf(const Snapshot& snapshot, const std::string& bytes) {
  return {QString::fromStdString(snapshot.plan.info().title),
          snapshot.file.path,
          snapshot.file.contentKey,
          ContentHash().add(std::string_view(bytes)).key(),
          QStringLiteral(COMBDRAFT_VERSION),
          snapshot.attempts};
}

QString newFolder(const QString& root) {
  return root + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces);
}

bool makeOwnFolder(const QString& folder) {
  return QDir().mkdir(folder) && QFile::setPermissions(folder, kOwnerFolder);
}

}  // namespace

SnapshotMeta readSnapshotMeta(const QString& folder) {
  plan::Disk disk;
  const auto bytes = disk.read((folder + u'/' + kSnapshotMeta).toStdString(), kMostMeta_bytes);
  if (!bytes) return {};
  const QJsonObject meta = QJsonDocument::fromJson(QByteArray::fromStdString(*bytes)).object();
  return {meta[QLatin1String("title")].toString(),
          meta[QLatin1String("path")].toString(),
          keyOf(meta[QLatin1String("contentKey")]),
          keyOf(meta[QLatin1String("snapshotKey")]),
          meta[QLatin1String("version")].toString(),
          std::max(0, meta[QLatin1String("attempts")].toInt())};
}

namespace {

std::string metaText(const SnapshotMeta& meta) {
  const QJsonObject object{{QStringLiteral("format"), plan::kFormatVersion},
                           {QStringLiteral("title"), meta.title},
                           {QStringLiteral("path"), meta.originalPath},
                           {QStringLiteral("contentKey"), keyText(meta.fileKey)},
                           {QStringLiteral("snapshotKey"), keyText(meta.snapshotKey)},
                           {QStringLiteral("version"), meta.programVersion},
                           {QStringLiteral("attempts"), meta.attempts}};
  return QJsonDocument(object).toJson().toStdString();
}

}  // namespace

Result<void> writeSnapshotMeta(const QString& folder, const SnapshotMeta& meta, plan::Disk& disk) {
  return put(folder, kSnapshotMeta, metaText(meta), disk);
}

SnapshotFolder::SnapshotFolder(QString root, std::shared_ptr<plan::Disk> disk)
    : root_(std::move(root)), disk_(std::move(disk)) {}

Result<void> SnapshotFolder::make() {
  if (!path_.isEmpty() && QDir(path_).exists()) return {};
  lock_.reset();  // taken away under us: make another
  path_.clear();
  if (!QDir().mkpath(root_)) return cannotMake(root_);
  QFile::setPermissions(root_, kOwnerFolder);
  const QString folder = newFolder(root_);
  if (!makeOwnFolder(folder)) return cannotMake(folder);
  auto lock = takeFolderLock(folder + u'/' + kSnapshotLock);
  if (!lock || !QFile::setPermissions(lock->fileName(), kOwnerFile)) return cannotMake(folder);
  lock_ = std::move(lock);
  path_ = folder;
  return disk_->syncFolder(root_.toStdString());
}

Result<SnapshotFolder::Quick> SnapshotFolder::writeQuick(const Snapshot& snapshot) {
  if (const auto made = make(); !made) return made.error();
  const std::string bytes = plan::writePlan(snapshot.plan);
  if (!putUnsynced(path_, kSnapshotQuick, bytes)) return Quick::NotTaken;
  // Until the first meta is on the disk, where the plan belongs must not be lost.
  if (!QFile::exists(path_ + u'/' + kSnapshotMeta)) putUnsynced(path_, kSnapshotMeta, metaText(metaOf(snapshot, bytes)));
  return Quick::Taken;
}

void SnapshotFolder::dropQuick() { QFile::remove(path_ + u'/' + kSnapshotQuick); }

Result<void> SnapshotFolder::writeSynced(const QString& folder, const Snapshot& snapshot, plan::Disk& disk) {
  const std::string bytes = plan::writePlan(snapshot.plan);
  if (const auto done = put(folder, kSnapshotDocument, bytes, disk); !done) return done;
  if (const auto done = writeSnapshotMeta(folder, metaOf(snapshot, bytes), disk); !done) return done;
  return disk.syncFolder(folder.toStdString());
}

void SnapshotFolder::remove() {
  if (path_.isEmpty()) return;
  emptySnapshotFolder(path_);
  lock_.reset();  // before its file goes
  QDir(path_).removeRecursively();
  path_.clear();
}

Result<void> writeLastSnapshot(const QString& root, const QString& folder, const Snapshot& snapshot) {
  plan::Disk disk;
  const std::string bytes = plan::writePlan(snapshot.plan);
  if (!folder.isEmpty()) {
    if (const auto done = put(folder, kSnapshotLast, bytes, disk); !done) return done;
    return disk.syncFolder(folder.toStdString());
  }
  const QString fresh = newFolder(root);
  if (!QDir().mkpath(root) || !QFile::setPermissions(root, kOwnerFolder) || !makeOwnFolder(fresh)) return cannotMake(fresh);
  QFile like(fresh + u'/' + kSnapshotLock);  // nobody's: the program ends
  if (!like.open(QIODevice::WriteOnly) || !like.setPermissions(kOwnerFile)) return cannotMake(fresh);
  like.close();
  Result<void> done = put(fresh, kSnapshotLast, bytes, disk);
  if (done) done = writeSnapshotMeta(fresh, metaOf(snapshot, bytes), disk);
  QFile::remove(like.fileName());  // also when that failed: what was written is offered
  if (!done) return done;
  if (const auto synced = disk.syncFolder(fresh.toStdString()); !synced) return synced;
  return disk.syncFolder(root.toStdString());
}

void emptySnapshotFolder(const QString& folder) {
  QFile::remove(folder + u'/' + kSnapshotLast);
  QFile::remove(folder + u'/' + kSnapshotQuick);
  QFile::remove(folder + u'/' + kSnapshotDocument);
}

}  // namespace combdraft::store
