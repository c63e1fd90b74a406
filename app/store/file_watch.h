#pragma once
// Notices that the open plan's file holds something else than this program last
// saw there. Decided by content; the system's notices and the window coming to
// the front only say when to look. Each state is told once.
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

#include "app/document/document_controller.h"

namespace combdraft::store {

class FileWatch : public QObject {
  Q_OBJECT

 public:
  /// `settle_ms`: how long a notice waits for others, as while a file is being written.
  explicit FileWatch(document::DocumentController& controller, int settle_ms = 300, QObject* parent = nullptr);

  /// Looks now.
  void look();

 Q_SIGNALS:
  void changedOnDisk();
  void goneFromDisk();
  /// It holds again what was known.
  void asKnownAgain();

 private:
  void follow();
  void watch();

  document::DocumentController& controller_;
  QFileSystemWatcher watcher_;
  QTimer settle_;
  document::FileIdentity known_;
  enum class Told { AsKnown, Changed, Gone } told_ = Told::AsKnown;
  std::uint64_t toldKey_ = 0;
};

}  // namespace combdraft::store
