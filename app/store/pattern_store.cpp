#include "app/store/pattern_store.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>
#include <algorithm>

#include "engine/plan/disk.h"
#include "engine/plan/field_info.h"

namespace combdraft::store {
namespace {

Error unwritable(const QString& path, const QString& why) {
  return Error{ErrorCode::FileUnwritable, "", {why.toStdString()}, path.toStdString()};
}

Result<plan::Parts> read(const QString& path) {
  std::string text;
  if (path.startsWith(u':')) {  // inside the program
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
      return Error{ErrorCode::FileMissing, "", {}, path.toStdString()};
    text = file.readAll().toStdString();
  } else {
    plan::Disk disk;
    Result<std::string> bytes = disk.read(path.toStdString(), plan::limits::kFileBytes);
    if (!bytes) {
      Error error = bytes.error();
      error.file = path.toStdString();
      return error;
    }
    text = std::move(bytes).value();
  }
  Result<plan::Parts> pattern = plan::readPattern(text);
  if (pattern) return pattern;
  Error error = pattern.error();
  error.file = path.toStdString();
  return error;
}

Result<void> write(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
    return unwritable(path, file.errorString());
  return {};
}

// "Back, fine" becomes "back-fine".
QString fileStem(const QString& name) {
  QString stem;
  for (const QChar c : name.toLower()) {
    if (c.isLetterOrNumber())
      stem += c;
    else if (!stem.isEmpty() && !stem.endsWith(u'-'))
      stem += u'-';
  }
  while (stem.endsWith(u'-')) stem.chop(1);
  return stem.isEmpty() ? QStringLiteral("pattern") : stem.left(60);
}

// A name beside it that nothing has yet.
QString freePath(const QString& path) {
  const QFileInfo file(path);
  QString free = path;
  for (int n = 2; QFile::exists(free); ++n) free = QStringLiteral("%1/%2-%3.json").arg(file.path(), file.completeBaseName(), QString::number(n));
  return free;
}

void readFolder(const QString& folder, StoredPattern::Origin origin, Patterns& into) {
  const QDir dir(folder);
  const std::size_t first = into.all.size();
  for (const QString& name : dir.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
    const QString path = dir.filePath(name);
    Result<plan::Parts> pattern = read(path);
    if (pattern)
      into.all.push_back({std::move(pattern).value(), path, origin});
    else
      into.broken.push_back(pattern.error());
  }
  std::sort(into.all.begin() + static_cast<std::ptrdiff_t>(first), into.all.end(),
            [](const StoredPattern& a, const StoredPattern& b) {
              const auto isPlain = [](const StoredPattern& p) {
                return p.path == QLatin1String(":/patterns/growing-toward-the-apex.json");
              };
              if (isPlain(a) != isPlain(b)) return isPlain(a);
              return QString::localeAwareCompare(a.name(), b.name()) < 0;
            });
}

}  // namespace

QString patternsFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/patterns");
}

Patterns readPatterns(const QString& ownFolder) {
  Patterns patterns;
  readFolder(QStringLiteral(":/patterns"), StoredPattern::Origin::Starting, patterns);
  readFolder(ownFolder, StoredPattern::Origin::Own, patterns);
  return patterns;
}

Result<QString> savePattern(const plan::Parts& pattern, const QString& ownFolder) {
  const QDir dir(ownFolder);
  if (!dir.mkpath(QStringLiteral("."))) return unwritable(ownFolder, QStringLiteral("the folder cannot be made"));
  const QString path = freePath(dir.filePath(fileStem(QString::fromStdString(pattern.name)) + QStringLiteral(".json")));
  const std::string text = plan::writePattern(pattern);
  if (const auto again = plan::readPattern(text); !again) return again.error();  // it would lie there and never open
  const Result<void> written = write(path, QByteArray::fromStdString(text));
  if (!written) return written.error();
  return path;
}

Result<QByteArray> removePattern(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return unwritable(path, file.errorString());
  const QByteArray bytes = file.readAll();
  file.close();
  if (!file.remove()) return unwritable(path, file.errorString());
  return bytes;
}

Result<QString> putPatternBack(const QString& path, const QByteArray& bytes) {
  const QString free = freePath(path);
  const Result<void> written = write(free, bytes);
  if (!written) return written.error();
  return free;
}

}  // namespace combdraft::store
