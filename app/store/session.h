#pragma once
// What was open: a JSON file written when something changes, so that it is
// there however the program ends. Paths of saved plans and how their windows
// stood; never what is in a plan (that is the recovery's).
#include <QByteArray>
#include <QLockFile>
#include <QString>
#include <memory>
#include <vector>

#include "app/store/settings.h"
#include "engine/base/result.h"

namespace combdraft::store {

struct SessionWindow {
  QString path;  ///< "" = the start page
  WindowState state;
  bool operator==(const SessionWindow&) const = default;
};

struct Session {
  std::vector<SessionWindow> windows;  ///< the one in front last
  /// How often the program ended soon after it had brought this back.
  int failedStarts = 0;
  bool operator==(const Session&) const = default;
};

/// From so many on it is asked before it is brought back.
inline constexpr int kAskFromFailedStarts = 2;

/// Where the session stands unless told otherwise.
QString sessionFile();

class SessionFile {
 public:
  /// The first program to ask has the session; others neither read nor write it.
  explicit SessionFile(QString path);

  bool isOurs() const { return lock_ != nullptr; }
  /// What was open, or nothing. A file that cannot be used is set aside and
  /// `trouble` says so.
  Session read();
  /// Replaces the windows. Nothing happens when they are what was written last,
  /// nor while frozen. Atomic.
  Result<void> write(const std::vector<SessionWindow>& windows);
  Result<void> setFailedStarts(int count);
  int failedStarts() const { return written_.failedStarts; }
  /// While everything is being closed, what was open stays written.
  void freeze() { isFrozen_ = true; }
  void thaw() { isFrozen_ = false; }
  const QString& trouble() const { return trouble_; }

 private:
  Result<void> put(Session session);

  QString path_, trouble_;
  bool isFrozen_ = false;
  std::unique_ptr<QLockFile> lock_;
  Session written_;
};

}  // namespace combdraft::store
