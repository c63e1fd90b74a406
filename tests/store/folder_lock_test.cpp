// Locks that another computer, a power cut or a number used again has left in this
// user's own folders: https://doc.qt.io/qt-6/qlockfile.html says when Qt takes one for
// stale, and another computer's never is.
#include <catch2/catch.hpp>

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QLockFile>
#include <QTemporaryDir>

#include "app/store/client_folder.h"
#include "app/store/folder_lock.h"
#include "app/store/plan_lock.h"
#include "app/store/session.h"
#include "engine/plan/json_writer.h"
#include "tests/store/keeping.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using tests::put;
using tests::titled;

namespace {

const QByteArray kOtherComputers = "4194303\nsome-program\nanother-computer\nanother-id\nanother-start\n";

bool takesWithoutHelp(const QString& file) {
  QLockFile lock(file);
  lock.setStaleLockTime(0);
  return lock.tryLock(0);
}

// A power cut leaves one with nothing in it, found some time later.
void leaveOld(const QString& path, const QByteArray& bytes) {
  put(path, bytes);
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadWrite));
  REQUIRE(file.setFileTime(QDateTime::currentDateTime().addSecs(-3600), QFileDevice::FileModificationTime));
}

}  // namespace

TEST_CASE("a lock that no process holds is taken over whatever stands in it", "[store][lock]") {
  const QTemporaryDir dir;
  const QString file = dir.filePath(QStringLiteral("lock"));
  SECTION("another computer's") { put(file, kOtherComputers); }
  SECTION("empty") { leaveOld(file, {}); }
  SECTION("of something else") { leaveOld(file, "what is this\n"); }
  REQUIRE_FALSE(takesWithoutHelp(file));
  const auto lock = store::takeFolderLock(file);
  REQUIRE(lock != nullptr);
  CHECK(lock->isLocked());
  CHECK(store::takeFolderLock(file) == nullptr);
  CHECK_FALSE(QFile::exists(file + QStringLiteral(".rmlock")));
}

TEST_CASE("a lock that a process holds stays its own whatever stands in it", "[store][lock]") {
  const QTemporaryDir dir;
  const QString file = dir.filePath(QStringLiteral("lock"));
  const auto held = store::takeFolderLock(file);
  REQUIRE(held != nullptr);
  SECTION("another computer's name") { put(file, kOtherComputers); }
  SECTION("nothing") { leaveOld(file, {}); }
  CHECK(store::takeFolderLock(file) == nullptr);
  CHECK(QFile::exists(file));
}

TEST_CASE("unsaved work under another computer's lock is offered", "[store][recovery][lock]") {
  const QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery")), folder = root + QStringLiteral("/a");
  REQUIRE(QDir().mkpath(folder));
  put(folder + QStringLiteral("/plan.json"), QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.3))));
  const QString lock = folder + QStringLiteral("/lock");
  SECTION("another computer's") { put(lock, kOtherComputers); }
  SECTION("empty") { leaveOld(lock, {}); }
  const auto left = store::findLeftPlans(root);
  REQUIRE(left.size() == 1);
  const auto read = store::readLeftPlan(left.front());
  REQUIRE(read.ok());
  CHECK(read->plan == titled("Soft root", 0.3));
}

TEST_CASE("what was open and clients are not lost to another computer's lock", "[store][session][client][lock]") {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("session.json"));
  put(path + QStringLiteral(".lock"), kOtherComputers);
  CHECK(store::SessionFile(path).isOurs());

  const QString root = dir.filePath(QStringLiteral("clients"));
  plan::Disk disk;
  REQUIRE(store::ClientFolder(root, 77).write(tests::fullClient(77), disk).ok());
  put(store::clientFolder(root, 77) + u'/' + store::kClientLock, kOtherComputers);
  {
    store::ClientFolder client(root, 77);
    const auto opened = client.open();
    CHECK(opened.standing == store::ClientFolder::Standing::Held);
    CHECK(opened.file == tests::fullClient(77));
  }
  put(store::clientFolder(root, 77) + u'/' + store::kClientLock, kOtherComputers);
  CHECK(store::removeClientFolder(root, 77).ok());
  CHECK_FALSE(QDir(store::clientFolder(root, 77)).exists());
}

TEST_CASE("a plan under another computer's lock is asked about once", "[store][lock]") {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.json"));
  put(store::PlanLock::lockFileOf(path), kOtherComputers);
  store::PlanLock lock;
  REQUIRE(lock.take(path) == store::PlanLock::Standing::Others);
  CHECK(lock.holder().computer == QStringLiteral("another-computer"));
  CHECK(lock.takeAnyway(path) == store::PlanLock::Standing::Held);
  lock.giveBack();
  CHECK(lock.take(path) == store::PlanLock::Standing::Held);
}

TEST_CASE("a last snapshot in a folder of its own leaves no lock behind", "[store][recovery][lock]") {
  const QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  REQUIRE(store::writeLastSnapshot(root, {}, {titled("Soft root", 0.3), {}, 0}).ok());
  const QStringList folders = QDir(root).entryList(QDir::Dirs | QDir::NoDotAndDotDot);
  REQUIRE(folders.size() == 1);
  CHECK_FALSE(QFile::exists(root + u'/' + folders.front() + QStringLiteral("/lock")));
  CHECK(store::findLeftPlans(root).size() == 1);
}
