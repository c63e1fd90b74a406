#include "app/store/client_keeper.h"

#include <QCoreApplication>
#include <QDate>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QThreadPool>
#include <QUuid>
#include <algorithm>
#include <chrono>
#include <map>

#include "app/store/client_json.h"
#include "app/store/client_photo.h"
#include "app/words/engine_words.h"

namespace combdraft::store {
namespace {

using namespace std::chrono_literals;
constexpr auto kWriteAfter = 300ms;
constexpr auto kMostWait = 5s;
constexpr int kMostBackOff = 4;  // 300 ms doubled four times

std::map<QString, std::weak_ptr<ClientKeeper>>& openKeepers() {
  static std::map<QString, std::weak_ptr<ClientKeeper>> keepers;  // window's thread only
  return keepers;
}

struct Words {
  Q_DECLARE_TR_FUNCTIONS(store)
};

// One whose file was missing before is gone too.
bool removeFile(const QString& path) { return QFile::remove(path) || !QFileInfo::exists(path); }

Error silentDisk() { return {ErrorCode::FileUnwritable, {}, {"the disk does not answer"}, {}}; }

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace

std::shared_ptr<ClientKeeper> ClientKeeper::of(const QString& root, std::uint64_t number, std::shared_ptr<plan::Disk> disk) {
  auto& keepers = openKeepers();
  std::erase_if(keepers, [](const auto& entry) { return entry.second.expired(); });
  const QString path = clientFolder(root, number);
  if (const auto it = keepers.find(path); it != keepers.end())
    if (auto open = it->second.lock()) return open;
  std::shared_ptr<ClientKeeper> made(new ClientKeeper(root, number, std::move(disk)));
  keepers[path] = made;
  return made;
}

ClientKeeper::ClientKeeper(const QString& root, std::uint64_t number, std::shared_ptr<plan::Disk> disk)
    : root_(root), disk_(std::move(disk)), folder_(root, number) {
  ClientFolder::Opened opened = folder_.open();
  file_ = std::move(opened.file);
  file_.number = number;
  standing_ = opened.standing;
  using Standing = ClientFolder::Standing;
  if (standing_ == Standing::Others)
    trouble_ = Words::tr("This client is open in another program. What is kept can be read here, not changed.");
  else if (standing_ == Standing::Cannot)
    trouble_ = Words::tr("What is kept of this client cannot be read, and was left as it is. Nothing can be kept here until it can.");
  else if (!opened.setAside.isEmpty())
    trouble_ = Words::tr("What was kept of this client is damaged. It was set aside in its folder as %1; its photos are still here.").arg(opened.setAside);
  worker_ = std::jthread([this](const std::stop_token& stop) { work(stop); });
}

ClientKeeper::~ClientKeeper() {
  (void)writeNow();
  worker_.request_stop();
  wake_.notify_all();
}

bool ClientKeeper::mayEdit() const {
  return standing_ == ClientFolder::Standing::None || standing_ == ClientFolder::Standing::Held;
}

void ClientKeeper::edit(const std::function<void(ClientFile&)>& change) {
  if (!mayEdit()) return;
  ClientFile next = file_;
  change(next);
  next.number = file_.number;
  if (!hasConsent(next)) {
    // What was there stays until consent is taken back; nothing new comes.
    next.health = file_.health;
    next.tests = file_.tests;
    next.photos = file_.photos;
  }
  if (next == file_) return;
  if (next.begun.empty()) next.begun = today();
  file_ = std::move(next);
  keep();
  Q_EMIT changed();
}

int ClientKeeper::photosOnTheWayOfAll() {
  int count = 0;
  for (const auto& [folder, held] : openKeepers())
    if (const auto keeper = held.lock()) count += keeper->photosOnTheWay();
  return count;
}

std::size_t ClientKeeper::takeConsentBack() {
  if (!mayEdit()) return 0;
  std::vector<ClientPhoto> stuck;
  for (const ClientPhoto& photo : file_.photos)
    if (!removeFile(folder() + u'/' + QString::fromStdString(photo.file))) stuck.push_back(photo);
  // Those too that no entry names, whatever left them there; where nobody else has the folder.
  const bool isOurs = standing_ == ClientFolder::Standing::Held;
  for (const QString& name : isOurs ? QDir(folder()).entryList({QStringLiteral("photo-*.jpg")}, QDir::Files) : QStringList()) {
    const bool isKnown = std::any_of(stuck.begin(), stuck.end(), [&](const ClientPhoto& photo) { return photo.file == name.toStdString(); });
    if (isKnown || removeFile(folder() + u'/' + name)) continue;
    ClientPhoto left;
    left.file = name.toStdString();
    left.date = today();
    stuck.push_back(std::move(left));
  }
  ClientFile rest = withoutConsent(file_);
  if (!stuck.empty()) {
    // Without it nothing on the screen would lead to them any more.
    rest.consent = file_.consent;
    rest.photos = stuck;
  }
  file_ = std::move(rest);
  keep();
  Q_EMIT changed();
  return stuck.size();
}

void ClientKeeper::addPhotos(const QStringList& paths, PhotoOf of) {
  for (const QString& path : paths) {
    // It stays open until they are in, whatever the window shows by then, and is let go of on
    // the window's thread.
    ++photosOnTheWay_;
    QThreadPool::globalInstance()->start([self = shared_from_this(), path, of]() mutable {
      Result<std::string> bytes = photoBytesOf(path);
      QMetaObject::invokeMethod(qApp, [keeper = std::move(self), of, name = QFileInfo(path).fileName(), bytes = std::move(bytes)]() mutable {
        --keeper->photosOnTheWay_;
        keeper->photoRead(name, of, std::move(bytes));
      });
    });
  }
}

void ClientKeeper::photoRead(const QString& name, PhotoOf of, Result<std::string> bytes) {
  Error error;
  if (!bytes) {
    error = bytes.error();
  } else if (!hasConsent(file_) || !mayEdit()) {
    error = {ErrorCode::FileUnwritable, {}, {"photos are kept only with the client's consent"}, {}};
  } else if (file_.photos.size() >= limits::kClientPhotos) {  // no more could be read back
    error = {ErrorCode::TooManyItems, {}, {std::to_string(file_.photos.size() + 1), std::to_string(limits::kClientPhotos)}, {}};
  } else {
    ClientPhoto photo;
    photo.file = "photo-" + QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString() + ".jpg";
    photo.of = of;
    photo.date = today();
    Result<void> written;
    {
      const std::unique_lock lock(disk_mutex_, kMostWait);
      written = lock ? folder_.addFile(QString::fromStdString(photo.file), *bytes, *disk_) : Result<void>(silentDisk());
    }
    if (written) {
      standing_ = ClientFolder::Standing::Held;
      edit([&](ClientFile& file) { file.photos.push_back(photo); });
      Q_EMIT photoAdded();
      return;
    }
    error = written.error();
  }
  error.file = name.toStdString();
  Q_EMIT photoRefused(name, error);
}

bool ClientKeeper::removePhoto(const std::string& name) {
  if (!mayEdit() || !removeFile(folder() + u'/' + QString::fromStdString(name))) return false;
  // Also one that came before consent was taken back and stands alone.
  std::erase_if(file_.photos, [&](const ClientPhoto& photo) { return photo.file == name; });
  keep();
  Q_EMIT changed();
  return true;
}

void ClientKeeper::keep() {
  const std::scoped_lock lock(mutex_);
  newest_ = file_;
  wake_.notify_all();
}

void ClientKeeper::work(const std::stop_token& stop) {
  std::unique_lock lock(mutex_);
  while (true) {
    wake_.wait(lock, stop, [this] { return newest_.has_value(); });
    if (!newest_) return;  // stopped
    // More may come meanwhile; a failed one waits longer.
    wake_.wait_for(lock, stop, kWriteAfter * (1 << std::min(failures_, kMostBackOff)), [this] { return isHurried_; });
    if (!newest_) continue;  // removed
    const ClientFile file = std::move(*newest_);
    newest_.reset();
    isWriting_ = true;
    lock.unlock();
    Result<void> result;
    {
      const std::scoped_lock held(disk_mutex_);
      result = folder_.write(file, *disk_);
    }
    lock.lock();
    isWriting_ = false;
    failures_ = result ? 0 : failures_ + 1;
    lastError_ = result ? std::nullopt : std::optional(result.error());
    if (!result && !newest_) newest_ = file;  // tried again
    if (!result) isHurried_ = false;
    done_.notify_all();
    const std::weak_ptr<ClientKeeper> self = weak_from_this();
    if (qApp)
      QMetaObject::invokeMethod(qApp, [self, result] {
        if (const auto keeper = self.lock()) keeper->finished(result);
      });
    if (!result && stop.stop_requested()) return;
  }
}

void ClientKeeper::finished(const Result<void>& result) {
  if (result) {
    standing_ = ClientFolder::Standing::Held;
    Q_EMIT written();
    return;
  }
  Error error = result.error();
  error.file.clear();  // its folder is named by a number nobody knows
  Q_EMIT failed(words::inWords(error));
}

Result<void> ClientKeeper::writeNow() {
  std::unique_lock lock(mutex_);
  if (!newest_ && !isWriting_) return {};
  isHurried_ = true;
  lastError_.reset();
  wake_.notify_all();
  done_.wait_for(lock, kMostWait, [this] { return (!newest_ && !isWriting_) || lastError_; });
  isHurried_ = false;
  if (lastError_) return *lastError_;
  if (newest_ || isWriting_) return silentDisk();
  return {};
}

Result<void> ClientKeeper::remove() {
  if (!mayEdit()) return Error{ErrorCode::FileUnwritable, {}, {"another program has this client open, or it cannot be read"}, {}};
  Result<void> removed;
  {
    // The worker cannot begin while this is held, and is not let finish after it.
    std::unique_lock lock(mutex_);
    if (!done_.wait_for(lock, kMostWait, [this] { return !isWriting_; })) return silentDisk();
    newest_.reset();
    const std::scoped_lock held(disk_mutex_);
    removed = folder_.remove();
  }
  if (!removed) return removed;
  ClientFile nothing;
  nothing.number = file_.number;
  file_ = std::move(nothing);
  standing_ = ClientFolder::Standing::None;
  Q_EMIT changed();
  return {};
}

}  // namespace combdraft::store
