#include "app/store/session.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QStandardPaths>
#include <algorithm>

#include "app/store/folder_lock.h"
#include "app/store/set_aside.h"
#include "app/words/engine_words.h"

namespace combdraft::store {
namespace {

constexpr int kFormat = 1;
constexpr qsizetype kMostWindows = 32;
constexpr qint64 kMostFile_bytes = 1 << 20;
constexpr qsizetype kMostState_bytes = 4096;

QJsonObject toJson(const SessionWindow& window) {
  return {{QStringLiteral("path"), window.path},
          {QStringLiteral("geometry"), QString::fromLatin1(window.state.geometry.toBase64())},
          {QStringLiteral("splitter"), QString::fromLatin1(window.state.splitter.toBase64())},
          {QStringLiteral("layer"), window.state.layer},
          {QStringLiteral("largeView"), window.state.largeView},
          {QStringLiteral("card"), window.state.card}};
}

int wholeOf(const QJsonValue& value, int low, int high) {
  const int whole = value.toInt(low - 1);
  return whole < low || whole > high ? -1 : whole;
}

QByteArray bytesOf(const QJsonValue& value) {
  const QByteArray bytes = QByteArray::fromBase64(value.toString().toLatin1());
  return bytes.size() > kMostState_bytes ? QByteArray() : bytes;
}

SessionWindow fromJson(const QJsonObject& window) {
  return {window[QLatin1String("path")].toString(),
          {bytesOf(window[QLatin1String("geometry")]), bytesOf(window[QLatin1String("splitter")]),
           wholeOf(window[QLatin1String("layer")], 0, 2), wholeOf(window[QLatin1String("largeView")], -2, 5),
           wholeOf(window[QLatin1String("card")], 0, 99)}};
}

}  // namespace

QString sessionFile() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/session.json");
}

SessionFile::SessionFile(QString path) : path_(std::move(path)) {
  QDir().mkpath(QFileInfo(path_).absolutePath());
  lock_ = takeFolderLock(path_ + QStringLiteral(".lock"));
}

Session SessionFile::read() {
  QFile file(path_);
  if (!isOurs() || !file.exists()) return {};
  QJsonParseError problem{};
  QJsonObject root;
  if (file.open(QIODevice::ReadOnly) && file.size() <= kMostFile_bytes)
    root = QJsonDocument::fromJson(file.readAll(), &problem).object();
  file.close();
  if (root[QLatin1String("format")].toInt() != kFormat || !root[QLatin1String("windows")].isArray()) {
    const Result<QString> aside = setAside(path_);
    trouble_ = aside ? QCoreApplication::translate("store", "The list of what was open could not be read and was set aside as %1.")
                           .arg(QFileInfo(*aside).fileName())
                     : QCoreApplication::translate("store", "The list of what was open could not be read: %1")
                           .arg(words::inWords(aside.error()));
    return {};
  }
  Session session;
  session.failedStarts = std::max(0, root[QLatin1String("failedStarts")].toInt());
  for (const QJsonValue& window : root[QLatin1String("windows")].toArray())
    if (static_cast<qsizetype>(session.windows.size()) < kMostWindows) session.windows.push_back(fromJson(window.toObject()));
  written_ = session;
  return session;
}

Result<void> SessionFile::write(const std::vector<SessionWindow>& windows) {
  if (isFrozen_) return {};
  return put({windows, written_.failedStarts});
}

Result<void> SessionFile::setFailedStarts(int count) { return put({written_.windows, count}); }

Result<void> SessionFile::put(Session session) {
  if (!isOurs() || session == written_) return {};
  QJsonArray windows;
  for (const SessionWindow& window : session.windows) windows << toJson(window);
  const QJsonObject root{{QStringLiteral("format"), kFormat},
                         {QStringLiteral("failedStarts"), session.failedStarts},
                         {QStringLiteral("windows"), windows}};
  QSaveFile file(path_);
  const QByteArray bytes = QJsonDocument(root).toJson();
  if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) ||
      file.write(bytes) != bytes.size() || !file.commit())
    return Error{ErrorCode::FileUnwritable, {}, {file.errorString().toStdString()}, path_.toStdString()};
  written_ = std::move(session);
  return {};
}

}  // namespace combdraft::store
