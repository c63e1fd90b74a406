#pragma once
// A document whose unsaved work is kept, on a disk that can fail or wait at each of
// its steps, and at a pace at which no test sleeps for seconds.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QThread>
#include <atomic>
#include <memory>

#include "app/store/plan_store.h"
#include "app/store/recovery.h"
#include "tests/support/titled_plan.h"

namespace combdraft::tests {

// So that no test sleeps for seconds.
inline constexpr store::RecoveryPace kQuick{20, 20, 40, 100};

// A disk that can fail or wait at each of its steps.
struct OddDisk : plan::Disk {
  std::atomic<int> failingWrites = 0, failingSyncs = 0, writes = 0;
  std::atomic<bool> waits = false;

  Result<void> writeNew(const std::string& path, std::string_view bytes, const std::string& like) override {
    ++writes;
    while (waits) QThread::msleep(1);
    if (failingWrites > 0) {
      --failingWrites;
      return Error{ErrorCode::FileUnwritable, {}, {"no space left"}, path};
    }
    return Disk::writeNew(path, bytes, like);
  }
  Result<void> syncFolder(const std::string& folder) override {
    if (failingSyncs > 0) {
      --failingSyncs;
      return Error{ErrorCode::FileUnwritable, {}, {"the folder is not on the disk"}, folder};
    }
    return Disk::syncFolder(folder);
  }
};

struct Keeping {
  QTemporaryDir dir;
  QString root = dir.filePath(QStringLiteral("recovery"));
  QString path = dir.filePath(QStringLiteral("plan.json"));
  std::shared_ptr<OddDisk> disk = std::make_shared<OddDisk>();
  document::DocumentController controller{titled("Soft root", 0.1)};
  std::unique_ptr<store::Recovery> recovery;
  int failures = 0, successes = 0;
  QString why;

  explicit Keeping(store::RecoveryPace pace = kQuick) {
    recovery = std::make_unique<store::Recovery>(controller, root, pace, disk);
    QObject::connect(recovery.get(), &store::Recovery::failed, recovery.get(), [this](const QString& text) {
      ++failures;
      why = text;
    });
    QObject::connect(recovery.get(), &store::Recovery::written, recovery.get(), [this] { ++successes; });
  }
  void saveAndOpen() {
    const auto file = store::savePlan(controller.document(), path);
    REQUIRE(file.ok());
    controller.replace(controller.document(), *file);
  }
  void edit(double white_frac) { controller.edit(titled("Soft root", white_frac), QStringLiteral("Change white hair")); }
  /// As if the program had been killed: the snapshot stays, the lock is free.
  void end() { recovery.reset(); }
  std::vector<store::LeftPlan> left() const { return store::findLeftPlans(root); }
  QStringList folders() const { return QDir(root).entryList(QDir::Dirs | QDir::NoDotAndDotDot); }
};

inline void put(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

}  // namespace combdraft::tests
