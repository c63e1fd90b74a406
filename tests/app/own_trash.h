#pragma once
// A trash in a folder of its own, so that no test puts anything into its user's.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace combdraft::tests {

class OwnTrash {
 public:
  OwnTrash() : home_(qgetenv("HOME")), data_(qgetenv("XDG_DATA_HOME")) {
    qputenv("HOME", dir_.path().toLocal8Bit());
    qputenv("XDG_DATA_HOME", dir_.filePath(QStringLiteral("data")).toLocal8Bit());
  }
  ~OwnTrash() {
    qputenv("HOME", home_);
    if (data_.isNull())
      qunsetenv("XDG_DATA_HOME");
    else
      qputenv("XDG_DATA_HOME", data_);
  }
  OwnTrash(const OwnTrash&) = delete;
  OwnTrash& operator=(const OwnTrash&) = delete;

  /// What was put into it.
  QStringList names() const { return QDir(place() + QStringLiteral("/files")).entryList(QDir::Files, QDir::Name); }
  /// A file stands where its folder would be.
  void makeImpossible() const {
    QDir().mkpath(QFileInfo(place()).path());
    QFile file(place());
    if (file.open(QIODevice::WriteOnly)) file.write("no folder");
  }

 private:
  static QString place() { return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/Trash"); }

  QTemporaryDir dir_;
  QByteArray home_, data_;
};

}  // namespace combdraft::tests
