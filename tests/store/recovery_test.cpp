// Nothing typed is lost: snapshots while edits keep coming and while disks fail.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <thread>

#include "engine/plan/json_writer.h"
#include "tests/store/keeping.h"
#include "tests/support/child_role.h"

using namespace combdraft;
using document::DocumentController;
using store::LeftPlan;
using store::Recovery;
using namespace tests;

namespace {

/// One snapshot is there, and the disk hangs in the middle of the next.
void hangInAWrite(Keeping& k) {
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.disk->waits = true;
  const int before = k.disk->writes;
  k.edit(0.3);
  REQUIRE(QTest::qWaitFor([&] { return k.disk->writes > before; }));
}

}  // namespace

TEST_CASE("a program that dies leaves its last state, and the next start finds it", "[store][recovery]") {
  Keeping k;
  k.saveAndOpen();
  const document::FileIdentity file = k.controller.file();
  k.edit(0.3);
  REQUIRE(QTest::qWaitFor([&] { return k.successes > 0; }));
  CHECK(k.left().empty());  // still running: not offered
  const QString folder = k.recovery->folder();
  CHECK_FALSE(QFileInfo(folder).permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther | QFile::ExeOther));
  CHECK_FALSE(QFileInfo(k.root).permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther | QFile::ExeOther));
  const auto files = QDir(folder).entryInfoList(QDir::Files | QDir::Hidden);
  CHECK(files.size() == 4);
  for (const QFileInfo& one : files) {
    INFO(one.fileName().toStdString());
    CHECK_FALSE(one.permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup | QFile::WriteOther));
  }
  k.end();
  REQUIRE(k.left().size() == 1);
  const LeftPlan left = k.left().front();
  CHECK(left.title == QStringLiteral("Soft root"));
  CHECK(left.originalPath == k.path);
  CHECK(left.file == store::FileSince::AsKnown);
  const auto read = store::readLeftPlan(left);
  REQUIRE(read.ok());
  CHECK(read->plan == titled("Soft root", 0.3));
  CHECK(read->file == file);
  CHECK(read->attempts == 1);
  CHECK(k.left().front().attempts == 1);
  store::removeLeftPlan(left);
  CHECK(k.left().empty());
}

TEST_CASE("snapshots come while edits keep coming, without any pause between them", "[store][recovery]") {
  Keeping k({200, 2000, 10000, 5000});
  double white_frac = 0.1;
  const auto typeOn = [&] {
    white_frac = white_frac > 0.9 ? 0.1 : white_frac + 0.001;
    k.edit(white_frac);
    return k.successes >= 3;
  };
  // An edit at every turn of the loop: never 200 ms without one.
  CHECK(QTest::qWaitFor(typeOn, 20000));
  CHECK(k.failures == 0);
}

TEST_CASE("a snapshot is written although the window's thread is busy", "[store][recovery]") {
  Keeping k;
  k.edit(0.4);
  // Nothing runs here but this loop.
  int turns = 0;
  while (k.recovery->folder().isEmpty() && ++turns < 5000) QThread::msleep(2);
  CHECK_FALSE(k.recovery->folder().isEmpty());
  CHECK(k.successes == 0);  // no event was handled
}

TEST_CASE("autosave that fails says so, tries again and again, and is never off", "[store][recovery]") {
  Keeping k;
  k.disk->failingWrites = 3;
  k.edit(0.2);
  REQUIRE(QTest::qWaitFor([&] { return k.failures == 3 && k.successes == 1; }));
  CHECK(k.why.contains(QStringLiteral("no space left")));
  k.disk->failingWrites = 1;
  k.edit(0.6);
  REQUIRE(QTest::qWaitFor([&] { return k.failures == 4 && k.successes == 2; }));
  k.end();
  REQUIRE(k.left().size() == 1);
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.6));
}

TEST_CASE("a snapshot counts as written only once its names are on the disk", "[store][recovery]") {
  Keeping k({20, 2000, 2000, 5000});
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.disk->failingSyncs = 1;
  k.edit(0.3);
  CHECK(k.recovery->writeNow() == Recovery::Written::No);
  CHECK(k.failures == 1);
  REQUIRE(QTest::qWaitFor([&] { return k.successes == 2; }));
}

TEST_CASE("a failed write leaves the snapshot before it whole", "[store][recovery]") {
  Keeping k({20, 60000, 60000, 5000});
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.disk->failingWrites = 1000;
  k.edit(0.3);
  CHECK(k.recovery->writeNow() == Recovery::Written::No);
  const QString quick = k.recovery->folder() + QStringLiteral("/quick.json");
  k.end();
  // What the system still took is newer; a power cut may take it away again.
  REQUIRE(k.left().size() == 1);
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.3));
  for (const QByteArray& damaged : {QByteArray("{ \"format\""), QByteArray(500, '\0'), QByteArray()}) {
    put(quick, damaged);
    REQUIRE(k.left().size() == 1);
    CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.2));
  }
}

TEST_CASE("what the system would not take does not hide what was synced after it", "[store][recovery]") {
  Keeping k;
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  const QString folder = k.recovery->folder();
  REQUIRE(QDir().mkdir(folder + QStringLiteral("/quick.json.quick")));  // in the way
  k.edit(0.3);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  REQUIRE(QTest::qWaitFor([&] { return !QFile::exists(folder + QStringLiteral("/quick.json")); }));
  k.end();
  REQUIRE(k.left().size() == 1);
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.3));
}

TEST_CASE("a disk that keeps a sync waiting does not keep the next edits waiting", "[store][recovery]") {
  Keeping k;
  k.disk->waits = true;
  k.edit(0.2);
  REQUIRE(QTest::qWaitFor([&] { return k.disk->writes > 0; }));  // it hangs in the first
  k.edit(0.3);
  const auto kept = [&] {
    QFile file(k.recovery->folder() + QStringLiteral("/quick.json"));
    if (k.recovery->folder().isEmpty() || !file.open(QIODevice::ReadOnly)) return false;
    return file.readAll() == QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.3)));
  };
  CHECK(QTest::qWaitFor(kept));
  // Where it belongs is there too.
  CHECK(store::readSnapshotMeta(k.recovery->folder()).title == QStringLiteral("Soft root"));
  CHECK(k.successes == 0);
  k.disk->waits = false;
  CHECK(QTest::qWaitFor([&] { return k.successes > 0; }));
}

TEST_CASE("a save while a snapshot is being written takes the snapshot away after it", "[store][recovery]") {
  Keeping k;
  hangInAWrite(k);
  const auto file = store::savePlan(k.controller.document(), k.path);
  REQUIRE(file.ok());
  k.controller.markSaved(*file);
  CHECK(k.recovery->folder().isEmpty());
  k.disk->waits = false;
  CHECK(QTest::qWaitFor([&] { return k.folders().isEmpty(); }));
  k.end();
  CHECK(k.left().empty());
}

TEST_CASE("closing and waiting comes to an end once nothing of the snapshot is there or under way", "[store][recovery]") {
  Keeping k;
  CHECK(k.recovery->closeAndWait() == Recovery::Ended::Yes);  // nothing was written yet
  hangInAWrite(k);
  CHECK(k.recovery->closeAndWait(std::chrono::milliseconds(20)) == Recovery::Ended::No);
  CHECK(k.recovery->folder().isEmpty());      // it is given up,
  CHECK(k.folders().size() == 1);             // and still there: the worker holds it
  const std::jthread disk([&k] {
    QThread::msleep(50);
    k.disk->waits = false;
  });
  CHECK(k.recovery->closeAndWait() == Recovery::Ended::Yes);
  CHECK(k.folders().isEmpty());
  k.edit(0.4);  // it goes on afterwards
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  CHECK(k.folders().size() == 1);
}

TEST_CASE("what is written while something newer waits is told as older", "[store][recovery]") {
  Keeping k;
  std::vector<Recovery::Reached> told;
  QObject::connect(k.recovery.get(), &Recovery::written, k.recovery.get(), [&](Recovery::Reached which) { told.push_back(which); });
  hangInAWrite(k);
  told.clear();
  k.edit(0.4);  // waits behind it
  k.disk->waits = false;
  REQUIRE(QTest::qWaitFor([&] { return !told.empty() && told.back() == Recovery::Reached::Newest; }));
  CHECK(told.front() == Recovery::Reached::Older);
}

TEST_CASE("undone back to what the file holds leaves nothing to recover", "[store][recovery]") {
  Keeping k;
  k.saveAndOpen();
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.controller.undoStack().undo();
  CHECK(QTest::qWaitFor([&] { return k.folders().isEmpty(); }));
  k.controller.undoStack().redo();
  CHECK(QTest::qWaitFor([&] { return k.folders().size() == 1 && k.successes == 2; }));
}

TEST_CASE("a plan that was never saved is kept too, and closing takes its snapshot away", "[store][recovery]") {
  Keeping k;
  k.controller.replaceModified(titled("", 0.2), {});
  REQUIRE(QTest::qWaitFor([&] { return k.successes > 0; }));
  const QString folder = k.recovery->folder();
  CHECK(QFile::exists(folder + QStringLiteral("/plan.json")));
  k.recovery->close();
  CHECK(QTest::qWaitFor([&] { return !QFile::exists(folder); }));
}

TEST_CASE("a snapshot folder that cannot be made is told, not swallowed", "[store][recovery]") {
  QTemporaryDir dir;
  const QString blocked = dir.filePath(QStringLiteral("file"));
  put(blocked, "");
  DocumentController controller(plan::Plan::fresh(1));
  Recovery recovery(controller, blocked + QStringLiteral("/recovery"), kQuick);
  QString why;
  QObject::connect(&recovery, &Recovery::failed, &recovery, [&](const QString& text) { why = text; });
  controller.replaceModified(titled("x", 0), {});
  CHECK(recovery.writeNow() == Recovery::Written::No);
  CHECK(why.contains(QStringLiteral("cannot be made")));
  CHECK_FALSE(why.contains(blocked));  // a hidden place, with the name of who is logged in
}

TEST_CASE("a snapshot folder taken away under the program is made again", "[store][recovery]") {
  Keeping k;
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  REQUIRE(QDir(k.recovery->folder()).removeRecursively());
  k.edit(0.3);
  CHECK(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  REQUIRE(k.left().size() == 1);
}

TEST_CASE("openings are counted over snapshots, and forgotten once the plan has stood", "[store][recovery]") {
  Keeping k({20, 20, 40, 60000});
  k.controller.replaceModified(titled("odd", 0.2), {});
  k.recovery->setAttempts(2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  CHECK(k.left().front().attempts == 2);  // it ended before it had stood
  CHECK(store::readLeftPlan(k.left().front())->attempts == 3);

  Keeping calm;
  calm.controller.replaceModified(titled("odd", 0.2), {});
  calm.recovery->setAttempts(2);
  REQUIRE(calm.recovery->writeNow() == Recovery::Written::Yes);
  REQUIRE(QTest::qWaitFor([&] { return store::readSnapshotMeta(calm.recovery->folder()).attempts == 0; }));
}

TEST_CASE("work that was never written is written when the program is about to end", "[store][recovery]") {
  Keeping k({60000, 2000, 10000, 5000});
  k.edit(0.7);
  CHECK(k.folders().isEmpty());
  CHECK(Recovery::writeLast() == 1);
  REQUIRE(k.left().size() == 1);
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.7));
}

namespace {

// Edits without end, told line by line: killed by the test.
int editOn(const QStringList& arguments) {
  DocumentController controller(titled("Soft root", 0));
  Recovery recovery(controller, arguments.at(0), {20, 20, 40, 5000});
  int count = 0;
  QObject::connect(&recovery, &Recovery::written, &recovery, [&] {
    if (count > 0) tests::tellReady();
  });
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
    controller.edit(titled("Soft root", ++count % 1000 / 1000.0), QStringLiteral("Change"));
  });
  timer.start(1);
  return QCoreApplication::exec();
}
const tests::ChildRole editing("edit-on", editOn);

}  // namespace

TEST_CASE("killed at any moment of an autosave, a whole plan is left", "[store][recovery][process]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  for (int round = 0; round < 8; ++round) {
    tests::Child child("edit-on", {root});
    child.waitUntilReady();
    QThread::msleep(static_cast<unsigned long>(round * 7));
    child.kill();
  }
  const auto left = store::findLeftPlans(root);
  CHECK(left.size() == 8);
  for (const LeftPlan& one : left) {
    const auto read = store::peekLeftPlan(one);
    INFO((read ? std::string("whole") : describe(read.error())));
    REQUIRE(read.ok());
    CHECK(read->info().title == "Soft root");
  }
}

namespace {

constexpr int kManyPieces = 1500;

// Edits a large plan as fast as the loop turns; each edit's number stands in
// the plan, and its time, of the system's clock, on standard output.
int editByClock(const QStringList& arguments) {
  plan::Plan plan = titled("clock", 0);
  plan::Piece piece;
  piece.choice = plan.info().activeChoice;
  piece.line = {{150, 80}, {165, 80}, {180, 80}, {195, 80}, {210, 80}};
  for (int i = 0; i < kManyPieces; ++i) plan.put("piece-" + std::to_string(i), piece);
  DocumentController controller(plan);
  Recovery recovery(controller, arguments.at(0));  // at the delivered pace
  std::uint64_t count = 0;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
    plan::PlanInfo info = plan.info();
    info.notes = std::to_string(++count);
    plan.put(plan::kPlanId, info);
    controller.edit(plan, QStringLiteral("Change"));
    std::printf("%llu %lld\n", static_cast<unsigned long long>(count),
                static_cast<long long>(QDateTime::currentMSecsSinceEpoch()));
    std::fflush(stdout);
  });
  timer.start(2);
  return QCoreApplication::exec();
}
const tests::ChildRole byClock("edit-by-clock", editByClock);

}  // namespace

// The promise itself, measured; long, and asked for by name:
// app_tests "killed while a large plan*"
TEST_CASE("killed while a large plan is edited without a pause, at most two seconds of edits are missing",
          "[.][pace][process]") {
  qint64 worst_ms = 0;
  for (int round = 0; round < 20; ++round) {
    QTemporaryDir dir;
    tests::Child child("edit-by-clock", {dir.path()});
    while (!child.process().canReadLine()) REQUIRE(child.process().waitForReadyRead(30000));
    QThread::msleep(static_cast<unsigned long>(2500 + round * 137));
    child.kill();
    std::vector<qint64> times_ms;
    for (const QByteArray& line : child.process().readAllStandardOutput().split('\n'))
      if (const auto parts = line.split(' '); parts.size() == 2) times_ms.push_back(parts[1].toLongLong());
    const auto left = store::findLeftPlans(dir.path());
    INFO("edits: " << times_ms.size());
    REQUIRE(left.size() == 1);
    const auto read = store::peekLeftPlan(left.front());
    REQUIRE(read.ok());
    const auto kept = static_cast<std::size_t>(std::stoul(read->info().notes));
    REQUIRE(kept <= times_ms.size());
    // The first edit that is missing is this old at the end.
    if (kept < times_ms.size()) worst_ms = std::max(worst_ms, times_ms.back() - times_ms[kept]);
  }
  WARN("oldest missing edit: " << worst_ms << " ms");
  CHECK(worst_ms <= 2000);
}
