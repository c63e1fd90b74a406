#pragma once
// What the program remembers for its user between starts. An INI file through
// QSettings: readable, one file, written atomically and shared safely between
// windows by Qt; a JSON file of our own would give us nothing more.
#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

namespace combdraft::store {

/// A plan that was opened or saved lately. Titles only, never a person.
struct RecentPlan {
  QString path, title;
  bool exists = true;
};

class Settings {
 public:
  /// `path` = the INI file; "" = the user's own configuration folder.
  explicit Settings(QString path = {});

  bool isDark() const;
  void setDark(bool dark);
  bool isGreySurround() const;
  void setGreySurround(bool grey);
  QByteArray windowGeometry() const;
  void setWindowGeometry(const QByteArray& geometry);
  /// Folder of the last file dialog.
  QString lastFolder() const;
  void setLastFolder(const QString& folder);

  /// Newest first, at most ten; those whose file is gone are marked.
  std::vector<RecentPlan> recent() const;
  void addRecent(const QString& path, const QString& title);
  void removeRecent(const QString& path);

 private:
  QString path_;
};

}  // namespace combdraft::store
