// What is offered after a crash and what is not.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>

#include "engine/plan/json_writer.h"
#include "tests/store/keeping.h"
#include "tests/support/child_role.h"

using namespace combdraft;
using document::DocumentController;
using store::LeftPlan;
using store::Recovery;
using namespace tests;

TEST_CASE("what stands in the file already is not offered, whatever the clock says", "[store][recovery]") {
  Keeping k;
  k.saveAndOpen();
  k.edit(0.5);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  CHECK(k.left().size() == 1);
  // The same content reached the file by another way.
  REQUIRE(store::savePlan(titled("Soft root", 0.5), k.path).ok());
  CHECK(k.left().empty());
  CHECK(k.folders().isEmpty());
}

TEST_CASE("what became of the file of a left plan is told by its content", "[store][recovery]") {
  Keeping k;
  k.saveAndOpen();
  k.edit(0.5);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  REQUIRE(store::savePlan(titled("Soft root", 0.9), k.path).ok());
  CHECK(k.left().front().file == store::FileSince::Changed);
  REQUIRE(store::savePlan(titled("Soft root", 0.1), k.path).ok());
  CHECK(k.left().front().file == store::FileSince::AsKnown);
  REQUIRE(QFile::remove(k.path));
  CHECK(k.left().front().file == store::FileSince::Gone);
}

TEST_CASE("what an older program left opens, and so does a snapshot without its meta", "[store][recovery]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  const QByteArray document = QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.3)));
  for (const char* name : {"old", "bare", "odd"}) {
    REQUIRE(QDir().mkpath(root + u'/' + QLatin1String(name)));
    put(root + u'/' + QLatin1String(name) + QStringLiteral("/plan.json"), document);
  }
  put(root + QStringLiteral("/old/meta.json"),
      "{ \"title\": \"Soft root\", \"path\": \"/nowhere/soft.json\", \"contentKey\": \"1f\", \"version\": \"0.0.1\", \"attempts\": 1 }");
  put(root + QStringLiteral("/odd/meta.json"), "{ \"attempts\": -7, \"path\": [], \"title\"");
  const auto left = store::findLeftPlans(root);
  REQUIRE(left.size() == 3);
  for (const LeftPlan& one : left) {
    INFO(one.folder.toStdString());
    const bool isOld = one.folder.endsWith(QStringLiteral("old"));
    CHECK(one.originalPath == (isOld ? QStringLiteral("/nowhere/soft.json") : QString()));
    CHECK(one.attempts == (isOld ? 1 : 0));
    const auto read = store::readLeftPlan(one);
    REQUIRE(read.ok());
    CHECK(read->plan == titled("Soft root", 0.3));
    CHECK(read->file.contentKey == (isOld ? 0x1fu : 0u));
  }
}

TEST_CASE("what a program wrote when it was about to end comes first, if it is whole", "[store][recovery]") {
  Keeping k({60000, 2000, 10000, 5000});  // its own time never comes
  k.edit(0.2);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  CHECK(Recovery::writeLast() == 0);  // all of it is on the disk
  k.edit(0.7);
  CHECK(Recovery::writeLast() == 1);
  const QString last = k.recovery->folder() + QStringLiteral("/last.json");
  REQUIRE(QFile::exists(last));
  CHECK_FALSE(QFileInfo(last).permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther));
  // An older state, written by a worker that was slower.
  const QString usual = k.recovery->folder() + QStringLiteral("/plan.json");
  k.end();
  put(usual, QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.4))));
  REQUIRE(k.left().size() == 1);
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.7));
  put(last, "{ \"format\": \"comb");
  REQUIRE(QFile::remove(QFileInfo(usual).absolutePath() + QStringLiteral("/quick.json")));
  CHECK(store::peekLeftPlan(k.left().front()).value() == titled("Soft root", 0.4));
}

TEST_CASE("what cannot be read is listed with the reason, its bytes can be had, and it stays", "[store][recovery]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  REQUIRE(QDir().mkpath(root + QStringLiteral("/cut")));
  const QByteArray cut = QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.3))).left(300);
  put(root + QStringLiteral("/cut/plan.json"), cut);
  const auto left = store::findLeftPlans(root);
  REQUIRE(left.size() == 1);
  const auto read = store::readLeftPlan(left.front());
  REQUIRE_FALSE(read.ok());
  CHECK(read.error().code == ErrorCode::JsonSyntax);
  CHECK(QString::fromStdString(describe(read.error())).contains(QStringLiteral("cut/plan.json")));
  const QString copy = dir.filePath(QStringLiteral("copy.json"));
  REQUIRE(store::copyLeftPlan(left.front(), copy).ok());
  QFile file(copy);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == cut);
  CHECK(store::findLeftPlans(root).size() == 1);
  CHECK_FALSE(store::copyLeftPlan(left.front(), dir.filePath(QStringLiteral("no/such/folder.json"))).ok());
}

TEST_CASE("a discarded plan can be put back until the program ends", "[store][recovery]") {
  Keeping k;
  k.edit(0.3);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  {
    store::DiscardedPlans discarded(k.root);
    const LeftPlan left = k.left().front();
    REQUIRE(discarded.discard(left).ok());
    CHECK(k.left().empty());
    CHECK(discarded.putBack(left));
    REQUIRE(k.left().size() == 1);
    CHECK(store::peekLeftPlan(left).value() == titled("Soft root", 0.3));
    CHECK_FALSE(discarded.putBack(left));
    REQUIRE(discarded.discard(left).ok());
  }
  CHECK(k.folders().isEmpty());
}

TEST_CASE("a picture that ended the program is known to the next one", "[store][recovery]") {
  Keeping k;
  k.edit(0.3);
  REQUIRE(k.recovery->writeNow() == Recovery::Written::Yes);
  k.end();
  {
    const store::DrawingMark mark(k.left().front());
    CHECK(k.left().front().endedWhileDrawn);
  }
  CHECK_FALSE(k.left().front().endedWhileDrawn);
}

TEST_CASE("a whole plan beside a damaged newer one is reached although looking ended the program", "[store][recovery]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery")), folder = root + QStringLiteral("/a");
  REQUIRE(QDir().mkpath(folder));
  const QByteArray whole = QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.3)));
  put(folder + QStringLiteral("/quick.json"), whole.left(200));
  put(folder + QStringLiteral("/plan.json"), whole);
  put(folder + QStringLiteral("/drawing"), {});
  const auto left = store::findLeftPlans(root);
  REQUIRE(left.size() == 1);
  CHECK(left.front().endedWhileDrawn);
  const auto read = store::readLeftPlan(left.front());
  REQUIRE(read.ok());
  CHECK(read->plan == titled("Soft root", 0.3));
  // A newer one that is whole comes first, as without the mark.
  put(folder + QStringLiteral("/quick.json"), QByteArray::fromStdString(plan::writePlan(titled("Soft root", 0.6))));
  CHECK(store::readLeftPlan(left.front())->plan == titled("Soft root", 0.6));
  // None is whole: the reason is told of the one that is listed.
  put(folder + QStringLiteral("/quick.json"), whole.left(200));
  put(folder + QStringLiteral("/plan.json"), whole.left(100));
  const auto none = store::readLeftPlan(left.front());
  REQUIRE_FALSE(none.ok());
  CHECK(QString::fromStdString(none.error().file).endsWith(QStringLiteral("quick.json")));
}
