#include "app/store/file_watch.h"

#include <QFileInfo>

#include "app/store/plan_store.h"

namespace combdraft::store {

FileWatch::FileWatch(document::DocumentController& controller, int settle_ms, QObject* parent)
    : QObject(parent), controller_(controller) {
  settle_.setSingleShot(true);
  settle_.setInterval(settle_ms);
  connect(&settle_, &QTimer::timeout, this, &FileWatch::look);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &settle_, qOverload<>(&QTimer::start));
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, &settle_, qOverload<>(&QTimer::start));
  connect(&controller_, &document::DocumentController::fileChanged, this, &FileWatch::follow);
  follow();
}

void FileWatch::follow() {
  if (known_ == controller_.file()) return;
  known_ = controller_.file();
  told_ = Told::AsKnown;
  watch();
}

// A file that was replaced is another to the system, and its folder tells when
// it comes back.
void FileWatch::watch() {
  const QStringList old = watcher_.files() + watcher_.directories();
  QStringList wanted;
  if (!known_.path.isEmpty()) {
    wanted << QFileInfo(known_.path).absolutePath();
    if (QFileInfo::exists(known_.path)) wanted << known_.path;
  }
  if (old == wanted) return;
  if (!old.isEmpty()) watcher_.removePaths(old);
  if (!wanted.isEmpty()) watcher_.addPaths(wanted);
}

void FileWatch::look() {
  if (known_.path.isEmpty() || known_.contentKey == 0) return;
  watch();
  const bool isThere = QFileInfo::exists(known_.path);
  const std::uint64_t key = isThere ? contentKeyOf(known_.path) : 0;
  const Told now = !isThere ? Told::Gone : key == known_.contentKey ? Told::AsKnown : Told::Changed;
  if (now == told_ && (now != Told::Changed || key == toldKey_)) return;
  told_ = now;
  toldKey_ = key;
  if (now == Told::Changed) Q_EMIT changedOnDisk();
  if (now == Told::Gone) Q_EMIT goneFromDisk();
  if (now == Told::AsKnown) Q_EMIT asKnownAgain();
}

}  // namespace combdraft::store
