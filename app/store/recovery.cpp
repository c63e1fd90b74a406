#include "app/store/recovery.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QStandardPaths>
#include <QUuid>

#include "app/store/plan_store.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

namespace combdraft::store {
namespace {

constexpr int kAfterLast_ms = 2000, kAtMost_ms = 30000, kRetry_ms = 10000;
const QString kDocument = QStringLiteral("/plan.json");
const QString kMeta = QStringLiteral("/meta.json");
const QString kLock = QStringLiteral("/lock");

/// A program fills the folder it makes at once; older empty ones are remains.
constexpr qint64 kFilledWithin_s = 60;
constexpr QFileDevice::Permissions kOwnerFile = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
constexpr QFileDevice::Permissions kOwnerFolder = kOwnerFile | QFileDevice::ExeOwner;

bool writeFile(const QString& path, const QByteArray& bytes, QString& why) {
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(kOwnerFile) ||
      file.write(bytes) != bytes.size() || !file.commit()) {
    why = file.errorString();
    return false;
  }
  return true;
}

/// Nothing when the file could not be read, which is not the same as empty.
std::optional<QByteArray> readWhole(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  QByteArray bytes = file.readAll();
  if (file.error() != QFileDevice::NoError) return std::nullopt;
  return bytes;
}

QByteArray readFile(const QString& path) { return readWhole(path).value_or(QByteArray()); }

QJsonObject readMeta(const QString& folder) {
  return QJsonDocument::fromJson(readFile(folder + kMeta)).object();
}

QString keyText(std::uint64_t key) { return QString::number(key, 16); }

}  // namespace

QString recoveryRoot() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
         QStringLiteral("/recovery");
}

std::vector<LeftPlan> findLeftPlans(const QString& root) {
  std::vector<LeftPlan> left;
  const QDir dir(root);
  for (const QString& name : dir.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = dir.filePath(name);
    QLockFile lock(folder + kLock);
    lock.setStaleLockTime(0);
    if (!lock.tryLock(0)) continue;  // its program is running
    const std::optional<QByteArray> document = readWhole(folder + kDocument);
    const QJsonObject meta = readMeta(folder);
    const QString path = meta[QLatin1String("path")].toString();
    // Only what is known to hold nothing is cleared away: a folder without a
    // plan that no program can still be about to fill, or one whose plan is the
    // saved file. What could not be read is listed.
    const bool isOld = QFileInfo(folder).lastModified().secsTo(QDateTime::currentDateTime()) > kFilledWithin_s;
    const bool holdsNone = !QFileInfo::exists(folder + kDocument) || (document && document->isEmpty());
    const bool isSaved = document && !document->isEmpty() && !path.isEmpty() && readWhole(path) == document;
    if (holdsNone && !isOld) {
      lock.unlock();
      continue;
    }
    const bool nothingToLose = holdsNone || isSaved;
    lock.unlock();
    if (nothingToLose) {
      QDir(folder).removeRecursively();
      continue;
    }
    left.push_back({folder, meta[QLatin1String("title")].toString(), path,
                    QFileInfo(folder + kDocument).lastModified(),
                    meta[QLatin1String("attempts")].toInt()});
  }
  return left;
}

Result<ReadLeftPlan> readLeftPlan(const LeftPlan& left) {
  QJsonObject meta = readMeta(left.folder);
  meta[QLatin1String("attempts")] = left.attempts + 1;
  QString why;
  writeFile(left.folder + kMeta, QJsonDocument(meta).toJson(), why);
  const QByteArray document = readFile(left.folder + kDocument);
  Result<plan::Plan> plan =
      plan::readPlan(std::string_view(document.constData(), static_cast<std::size_t>(document.size())));
  if (!plan) {
    Error error = plan.error();
    error.file = (left.folder + kDocument).toStdString();
    return error;
  }
  return ReadLeftPlan{std::move(plan).value(),
                      {left.originalPath,
                       meta[QLatin1String("contentKey")].toString().toULongLong(nullptr, 16)}};
}

void discardLeftPlan(const LeftPlan& left) { QDir(left.folder).removeRecursively(); }

Recovery::Recovery(document::DocumentController& controller, QString root, QObject* parent)
    : QObject(parent), controller_(controller), root_(std::move(root)) {
  afterLast_.setSingleShot(true);
  atMost_.setSingleShot(true);
  connect(&controller_, &document::DocumentController::changed, this, &Recovery::changed);
  // Saved: an older snapshot must not be offered over the newer file.
  connect(&controller_, &document::DocumentController::fileChanged, this, [this] {
    if (!controller_.isModified()) close();
  });
  connect(&afterLast_, &QTimer::timeout, this, &Recovery::writeNow);
  connect(&atMost_, &QTimer::timeout, this, &Recovery::writeNow);
}

Recovery::~Recovery() = default;

void Recovery::changed(const document::DocumentChange& change) {
  if (change.kind == document::DocumentChange::Kind::Tentative) return;
  if (change.kind == document::DocumentChange::Kind::Replaced) close();
  if (!controller_.isModified() && change.kind == document::DocumentChange::Kind::Replaced) return;
  afterLast_.start(kAfterLast_ms);
  if (!atMost_.isActive()) atMost_.start(kAtMost_ms);
}

void Recovery::writeNow() {
  afterLast_.stop();
  atMost_.stop();
  if (!controller_.isModified()) {  // undone back to what the file holds
    close();
    return;
  }
  QString why;
  if (write(why)) {
    Q_EMIT written();
  } else {
    afterLast_.start(kRetry_ms);
    Q_EMIT failed(why);
  }
}

bool Recovery::write(QString& why) {
  if (!folder_.isEmpty() && !QDir(folder_).exists()) {  // taken away under us: make another
    lock_.reset();
    folder_.clear();
  }
  if (folder_.isEmpty()) {
    if (!QDir().mkpath(root_)) {
      why = tr("The folder %1 cannot be made.").arg(root_);
      return false;
    }
    QFile::setPermissions(root_, kOwnerFolder);
    const QString folder =
        root_ + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces);
    if (!QDir().mkdir(folder)) {
      why = tr("The folder %1 cannot be made.").arg(folder);
      return false;
    }
    QFile::setPermissions(folder, kOwnerFolder);
    lock_ = std::make_unique<QLockFile>(folder + kLock);
    lock_->setStaleLockTime(0);
    if (!lock_->tryLock(0)) {
      why = tr("The folder %1 cannot be kept for this plan.").arg(folder);
      lock_.reset();
      return false;
    }
    folder_ = folder;
  }
  const plan::Plan& plan = controller_.document();
  if (!writeFile(folder_ + kDocument, QByteArray::fromStdString(plan::writePlan(plan)), why))
    return false;
  const QJsonObject meta{
      {QStringLiteral("title"), QString::fromStdString(plan.info().title)},
      {QStringLiteral("path"), controller_.file().path},
      {QStringLiteral("contentKey"), keyText(controller_.file().contentKey)},
      {QStringLiteral("version"), QStringLiteral(COMBDRAFT_VERSION)},
      {QStringLiteral("attempts"), 0}};
  return writeFile(folder_ + kMeta, QJsonDocument(meta).toJson(), why);
}

void Recovery::close() {
  afterLast_.stop();
  atMost_.stop();
  if (folder_.isEmpty()) return;
  lock_.reset();
  QDir(folder_).removeRecursively();
  folder_.clear();
}

}  // namespace combdraft::store
