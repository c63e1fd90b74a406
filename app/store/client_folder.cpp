#include "app/store/client_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <algorithm>

#include "app/store/client_json.h"
#include "app/store/folder_lock.h"
#include "app/store/set_aside.h"
#include "engine/plan/replace_file.h"

namespace combdraft::store {
namespace {

constexpr QFileDevice::Permissions kOwnerFile = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
constexpr QFileDevice::Permissions kOwnerFolder = kOwnerFile | QFileDevice::ExeOwner;

Error cannot(const QString& path, const char* why) { return {ErrorCode::FileUnwritable, {}, {why}, path.toStdString()}; }

Result<ClientFile> readAt(const QString& folder, std::uint64_t number) {
  const std::string path = (folder + u'/' + kClientDocument).toStdString();
  plan::Disk disk;
  const auto bytes = disk.read(path, limits::kClientBytes);
  Result<ClientFile> file = bytes ? readClient(*bytes) : bytes.error();
  if (file && file->number != number)
    file = Error{ErrorCode::FieldOutOfRange, "/number", {std::to_string(file->number), std::to_string(number) + ", as its folder is named"}, {}};
  if (file) return file;
  Error error = file.error();
  error.file = path;
  return error;
}

// The file is not what it should be, whoever reads it.
bool isDamage(ErrorCode code) {
  switch (code) {
    case ErrorCode::FileMissing:
    case ErrorCode::FileIsDirectory:
    case ErrorCode::FileUnreadable:
    case ErrorCode::VersionTooNew: return false;
    default: return true;
  }
}

// What an interrupted import or a damaged file left without an entry.
void adoptPhotos(const QString& folder, ClientFile& file) {
  for (const QString& name : QDir(folder).entryList({QStringLiteral("photo-*.jpg")}, QDir::Files, QDir::Name)) {
    const std::string plain = name.toStdString();
    if (file.photos.size() >= limits::kClientPhotos ||
        std::any_of(file.photos.begin(), file.photos.end(), [&](const ClientPhoto& photo) { return photo.file == plain; }))
      continue;
    ClientPhoto photo;
    photo.file = plain;
    photo.date = QFileInfo(folder + u'/' + name).lastModified().date().toString(Qt::ISODate).toStdString();
    file.photos.push_back(std::move(photo));
  }
}

bool makeOwnFolder(const QString& folder) {
  return (QDir(folder).exists() || QDir().mkdir(folder)) && QFile::setPermissions(folder, kOwnerFolder);
}

}  // namespace

QString clientsRoot() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/clients");
}

QString clientFolder(const QString& root, std::uint64_t number) { return root + u'/' + QString::number(number); }

std::uint64_t clientOfPlan(const QString& root, std::uint64_t planNumber) {
  if (QFileInfo::exists(clientFolder(root, planNumber) + u'/' + kClientDocument)) return planNumber;
  for (const ClientEntry& client : findClients(root))
    if (std::any_of(client.file.visits.begin(), client.file.visits.end(),
                    [&](const Visit& visit) { return visit.number == planNumber; }))
      return client.number;
  return planNumber;
}

std::vector<ClientEntry> findClients(const QString& root) {
  std::vector<ClientEntry> found;
  for (const QString& name : QDir(root).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    bool isNumber = false;
    const std::uint64_t number = name.toULongLong(&isNumber);
    if (!isNumber || clientFolder(root, number) != root + u'/' + name) continue;
    ClientEntry entry;
    entry.number = number;
    entry.folder = root + u'/' + name;
    Result<ClientFile> file = readAt(entry.folder, number);
    if (file) {
      entry.file = std::move(file).value();
    } else {
      // Only a lock: somebody looked, nothing was typed.
      if (QDir(entry.folder).entryList(QDir::Files) == QStringList{kClientLock}) continue;
      entry.file.number = number;
      entry.trouble = file.error();
    }
    found.push_back(std::move(entry));
  }
  std::stable_sort(found.begin(), found.end(), [](const ClientEntry& a, const ClientEntry& b) {
    return lastOccasion(a.file) < lastOccasion(b.file);
  });
  return found;
}

ClientFolder::ClientFolder(QString root, std::uint64_t number)
    : root_(std::move(root)), path_(clientFolder(root_, number)), number_(number) {}

Result<void> ClientFolder::hold() {
  if (lock_ && QDir(path_).exists()) return {};
  lock_.reset();
  if (!QDir().mkpath(root_) || !QFile::setPermissions(root_, kOwnerFolder) || !makeOwnFolder(path_))
    return cannot(path_, "this folder cannot be made or kept for you alone");
  const QString name = path_ + u'/' + kClientLock;
  auto lock = takeFolderLock(name);
  if (!lock) return cannot(path_, "another program has this client open");
  // Everything written later takes its mode.
  QFile::setPermissions(name, kOwnerFile);
  lock_ = std::move(lock);
  return {};
}

ClientFolder::Opened ClientFolder::open() {
  Opened opened;
  opened.file.number = number_;
  if (!QDir(path_).exists()) return opened;
  if (const auto held = hold(); !held) {
    opened.standing = QFileInfo::exists(path_ + u'/' + kClientLock) ? Standing::Others : Standing::Cannot;
    if (Result<ClientFile> file = readAt(path_, number_)) opened.file = std::move(file).value();
    opened.trouble = held.error();
    return opened;
  }
  opened.standing = Standing::Held;
  isKnown_ = true;
  Result<ClientFile> file = readAt(path_, number_);
  if (file) {
    opened.file = std::move(file).value();
  } else if (isDamage(file.error().code)) {
    opened.trouble = file.error();
    const Result<QString> aside = setAside(path_ + u'/' + kClientDocument);
    if (!aside) {
      opened.standing = Standing::Cannot;
      isKnown_ = false;
      return opened;
    }
    opened.setAside = QFileInfo(*aside).fileName();
  } else if (file.error().code != ErrorCode::FileMissing) {
    opened.trouble = file.error();
    opened.standing = Standing::Cannot;
    isKnown_ = false;
    return opened;
  }
  adoptPhotos(path_, opened.file);
  return opened;
}

Result<void> ClientFolder::write(const ClientFile& file, plan::Disk& disk) {
  if (const auto held = hold(); !held) return held;
  const std::string document = (path_ + u'/' + kClientDocument).toStdString();
  if (!isKnown_ && disk.kindOf(document) != plan::FileKind::Missing)
    return cannot(path_, "another program has written this client meanwhile; open the plan again to see it");
  const std::string bytes = writeClient(file);
  const auto readBack = [&](const std::string& fresh) -> Result<void> {
    const auto back = disk.read(fresh, limits::kClientBytes);
    if (back && *back == bytes)
      if (const auto again = readClient(*back); again && *again == file) return {};
    return Error{ErrorCode::FileReadBackDiffers, {}, {}, fresh};
  };
  // No earlier version is kept: what is taken out is gone.
  const auto written = plan::replaceFile(document, bytes, plan::Before::Gone, readBack, disk,
                                         (path_ + u'/' + kClientLock).toStdString());
  if (written) isKnown_ = true;
  return written;
}

Result<void> ClientFolder::addFile(const QString& name, std::string_view bytes, plan::Disk& disk) {
  if (const auto held = hold(); !held) return held;
  return disk.writeNew((path_ + u'/' + name).toStdString(), bytes, (path_ + u'/' + kClientLock).toStdString());
}

Result<void> ClientFolder::remove() {
  if (QDir(path_).exists())
    if (const auto held = hold(); !held) return held;
  // The document first: half removed it is nobody's.
  QFile::remove(path_ + u'/' + kClientDocument);
  lock_.reset();
  isKnown_ = false;
  if (QDir(path_).exists() && !QDir(path_).removeRecursively()) return cannot(path_, "not all of it can be removed");
  return {};
}

Result<void> removeClientFolder(const QString& root, std::uint64_t number) { return ClientFolder(root, number).remove(); }

}  // namespace combdraft::store
