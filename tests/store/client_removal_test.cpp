// Delete means gone: every file of the program's own folders is searched for the words
// that were typed.
#include <catch2/catch.hpp>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QTest>
#include <QThread>
#include <thread>

#include "app/store/client_removal.h"
#include "engine/plan/plan_file.h"
#include "tests/store/keeping.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using tests::fullClient;
using tests::titled;

namespace {

constexpr std::uint64_t kClient = 4711, kSecond = 4712, kOther = 99;

plan::Plan markedPlan(std::uint64_t number, const char* word) {
  plan::Plan plan = titled("Soft root", 0.1);
  plan::PlanInfo info = plan.info();
  info.number = number;
  info.notes = word;
  plan.put(plan::kPlanId, info);
  return plan;
}

void put(const QString& path, const QByteArray& bytes) {
  QDir().mkpath(QFileInfo(path).absolutePath());
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

void leave(const QString& root, const QString& name, const plan::Plan& plan) {
  const QString folder = root + u'/' + name;
  REQUIRE(QDir().mkpath(folder));
  plan::Disk disk;
  put(folder + QStringLiteral("/lock"), {});
  QFile::remove(folder + QStringLiteral("/lock"));
  REQUIRE(plan::savePlan((folder + QStringLiteral("/plan.json")).toStdString(), plan, disk).ok());
}

// Files below `root`, hidden ones too, in which a word stands.
QStringList filesWith(const QString& root, const QByteArray& word) {
  QStringList found;
  QDirIterator files(root, QDir::Files | QDir::Hidden | QDir::System, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    REQUIRE(file.open(QIODevice::ReadOnly));
    if (file.readAll().contains(word) || file.fileName().contains(QString::fromLatin1(word))) found << file.fileName();
  }
  return found;
}

struct Places {
  QTemporaryDir dir;
  QString clients = dir.filePath(QStringLiteral("clients")), recovery = dir.filePath(QStringLiteral("recovery"));
  QString plan = dir.filePath(QStringLiteral("plan.json")), other = dir.filePath(QStringLiteral("other.json"));
};

}  // namespace

TEST_CASE("after a deletion no word of the client is in any file of the program", "[client][gone]") {
  Places places;
  auto keeper = store::ClientKeeper::of(places.clients, kClient);
  keeper->edit([](store::ClientFile& f) {
    f = fullClient(kClient);
    f.visits.push_back({"2026-05-01", "Second visit", kSecond, "Markersecond", {}});
  });
  REQUIRE(keeper->writeNow().ok());
  put(keeper->folder() + QStringLiteral("/photo-1.jpg"), "Markerphoto");
  put(keeper->folder() + QStringLiteral("/client.json.broken"), "Markerbroken");
  {
    store::ClientFolder other(places.clients, kOther);
    plan::Disk disk;
    store::ClientFile file;
    file.number = kOther;
    file.notes = "Staysnotes";
    REQUIRE(other.write(file, disk).ok());
  }
  // The plan: saved three times, a save that was cut short, and what was left behind.
  for (const char* word : {"Markerfirst", "Markersaid", "Plainwords"})
    REQUIRE(plan::savePlan(places.plan.toStdString(), markedPlan(kClient, word)).ok());
  put(places.dir.filePath(QStringLiteral(".plan.json.saving-12-1")), "Markercut");
  REQUIRE(plan::savePlan(places.other.toStdString(), markedPlan(kOther, "Staysfirst")).ok());
  REQUIRE(plan::savePlan(places.other.toStdString(), markedPlan(kOther, "Stayssecond")).ok());
  leave(places.recovery, QStringLiteral("a"), markedPlan(kClient, "Markerleft"));
  leave(places.recovery, QStringLiteral("b"), markedPlan(kSecond, "Markerleft"));
  leave(places.recovery, QStringLiteral("c"), markedPlan(kOther, "Staysleft"));
  leave(places.recovery, QStringLiteral("discarded-1/d"), markedPlan(kClient, "Markerdiscarded"));
  put(places.recovery + QStringLiteral("/e/quick.json"), "{\"format\": \"combdraft plan\", \"number\": 4711, \"notes\": \"Markerdamaged");
  REQUIRE(filesWith(places.dir.path(), "Marker").size() > 8);

  const auto numbers = store::planNumbersOf(keeper->file());
  CHECK(numbers == std::set<std::uint64_t>{kClient, kSecond});
  store::Gone gone;
  REQUIRE(keeper->remove().ok());
  store::removeSnapshots(places.recovery, numbers, gone);
  store::removeBeside({places.plan, places.other, places.dir.filePath(QStringLiteral("gone.json"))}, numbers, store::PlanFiles::Stay, gone);
  CHECK(gone.notRemoved.isEmpty());
  CHECK(gone.leftPlans == 4);
  CHECK(gone.previous == 1);
  CHECK(gone.plans == 0);
  CHECK(filesWith(places.dir.path(), "Marker") == QStringList());
  CHECK_FALSE(QFileInfo::exists(keeper->folder()));
  CHECK(plan::loadPlan(places.plan.toStdString()).ok());  // the drawing stays
  // Nothing of anybody else went.
  CHECK(filesWith(places.dir.path(), "Staysnotes").size() == 1);
  CHECK(filesWith(places.dir.path(), "Staysfirst").size() == 1);
  CHECK(filesWith(places.dir.path(), "Stayssecond").size() == 1);
  CHECK(filesWith(places.dir.path(), "Staysleft").size() == 1);

  // Nor does anything come back by itself.
  keeper.reset();
  CHECK(filesWith(places.dir.path(), "Marker") == QStringList());
}

TEST_CASE("a plan goes too when that is asked for", "[client][gone]") {
  Places places;
  REQUIRE(plan::savePlan(places.plan.toStdString(), markedPlan(kClient, "Markerfirst")).ok());
  REQUIRE(plan::savePlan(places.plan.toStdString(), markedPlan(kClient, "Markersecond")).ok());
  store::Gone gone;
  store::removeBeside({places.plan}, {kClient}, store::PlanFiles::GoToo, gone);
  CHECK(gone.plans == 1);
  CHECK(QDir(places.dir.path()).entryList(QDir::Files | QDir::Hidden).isEmpty());
}

TEST_CASE("what a running program holds is named and not half removed", "[client][gone]") {
  Places places;
  leave(places.recovery, QStringLiteral("a"), markedPlan(kClient, "Markerleft"));
  QLockFile running(places.recovery + QStringLiteral("/a/lock"));
  running.setStaleLockTime(0);
  REQUIRE(running.tryLock(0));
  store::Gone gone;
  store::removeSnapshots(places.recovery, {kClient}, gone);
  CHECK(gone.leftPlans == 0);
  CHECK(gone.notRemoved == QStringList{places.recovery + QStringLiteral("/a")});
  CHECK(filesWith(places.recovery, "Markerleft").size() == 1);
}

TEST_CASE("a client who is deleted while something is being written stays deleted", "[client][gone]") {
  Places places;
  auto disk = std::make_shared<tests::OddDisk>();
  auto keeper = store::ClientKeeper::of(places.clients, kClient, disk);
  for (int round = 0; round < 3; ++round) {
    disk->waits = true;
    const int before = disk->writes;
    keeper->edit([round](store::ClientFile& f) { f.notes = "Markernotes " + std::to_string(round); });
    REQUIRE(QTest::qWaitFor([&] { return disk->writes > before; }));
    const std::jthread answers([&disk] {
      QThread::msleep(50);
      disk->waits = false;
    });
    REQUIRE(keeper->remove().ok());
    CHECK(store::isEmpty(keeper->file()));
    CHECK_FALSE(QFileInfo::exists(keeper->folder()));
  }
  QTest::qWait(700);  // longer than a write waits
  CHECK_FALSE(QFileInfo::exists(keeper->folder()));
}

TEST_CASE("deleting a client comes to an end although the disk does not answer", "[client][gone]") {
  Places places;
  auto disk = std::make_shared<tests::OddDisk>();
  auto keeper = store::ClientKeeper::of(places.clients, kClient, disk);
  disk->waits = true;
  keeper->edit([](store::ClientFile& f) { f.notes = "Markernotes"; });
  REQUIRE(QTest::qWaitFor([&] { return disk->writes > 0; }));
  const Result<void> removed = keeper->remove();
  CHECK_FALSE(removed.ok());
  CHECK(keeper->file().notes == "Markernotes");  // and is still there
  disk->waits = false;
  CHECK(keeper->remove().ok());
  CHECK_FALSE(QFileInfo::exists(keeper->folder()));
}
