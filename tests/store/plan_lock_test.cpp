// The lock itself; what the window makes of it is in tests/app/one_writer_test.cpp.
#include <catch2/catch.hpp>

#include <QFile>
#include <QTemporaryDir>

#include "tests/support/hold_lock.h"

using namespace combdraft;
using store::PlanLock;

TEST_CASE("one program has a plan until it ends, however it ends", "[store][lock]") {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.json"));
  PlanLock lock;
  {
    tests::Child other("hold-lock", {path});
    other.waitUntilReady();
    CHECK(lock.take(path) == PlanLock::Standing::Others);
    CHECK(lock.standing() == PlanLock::Standing::None);
    CHECK(lock.holder().process == other.process().processId());
    CHECK_FALSE(lock.holder().isThisProgram);
    CHECK(lock.takeAnyway(path) == PlanLock::Standing::CannotTell);
    CHECK(QFile::exists(PlanLock::lockFileOf(path)));  // the other's
    other.kill();
  }
  CHECK(lock.take(path) == PlanLock::Standing::Held);
  CHECK(lock.isHeldFor(path));
  PlanLock second;
  CHECK(second.take(path) == PlanLock::Standing::Others);
  CHECK(second.holder().isThisProgram);
  // The way out of a plan that somebody has keeps the plan that one had.
  CHECK(second.take(dir.filePath(QStringLiteral("other.json"))) == PlanLock::Standing::Held);
  CHECK(second.take(path) == PlanLock::Standing::Others);
  CHECK(second.isHeldFor(dir.filePath(QStringLiteral("other.json"))));
  lock.giveBack();
  CHECK_FALSE(QFile::exists(PlanLock::lockFileOf(path)));
  CHECK(second.take(path) == PlanLock::Standing::Held);
}
