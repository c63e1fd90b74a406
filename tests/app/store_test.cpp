// Nothing typed is lost: snapshots, what is offered after a crash, what is not.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include "app/store/plan_store.h"
#include "app/store/recovery.h"
#include "app/store/settings.h"

using namespace combdraft;
using document::DocumentController;

namespace {

plan::Plan titled(const char* title, double white_frac) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::PlanInfo info = plan.info();
  info.title = title;
  plan.put(plan::kPlanId, info);
  plan::Hair hair = plan.hair();
  hair.white_frac = white_frac;
  plan.put(plan::kHairId, hair);
  return plan;
}

}  // namespace

TEST_CASE("a program that dies leaves its last state, and the next start finds it", "[store]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  const QString path = dir.filePath(QStringLiteral("plan.json"));
  const plan::Plan saved = titled("Soft root", 0.1), edited = titled("Soft root", 0.3);
  const auto file = store::savePlan(saved, path);
  REQUIRE(file.ok());
  {
    DocumentController controller(saved);
    controller.replace(saved, *file);
    store::Recovery recovery(controller, root);
    controller.edit(edited, QStringLiteral("Change white hair"));
    CHECK(store::findLeftPlans(root).empty());
    REQUIRE(QTest::qWaitFor([&] { return !recovery.folder().isEmpty(); }, 4000));
    CHECK(store::findLeftPlans(root).empty());  // still running: not offered
    const auto permissions = QFileInfo(recovery.folder()).permissions();
    CHECK_FALSE(permissions.testAnyFlags(QFile::ReadGroup | QFile::ReadOther | QFile::ExeOther));
    CHECK_FALSE(QFileInfo(recovery.folder() + QStringLiteral("/plan.json"))
                    .permissions()
                    .testAnyFlags(QFile::ReadGroup | QFile::ReadOther));
  }  // gone without closing
  const auto left = store::findLeftPlans(root);
  REQUIRE(left.size() == 1);
  CHECK(left.front().title == QStringLiteral("Soft root"));
  CHECK(left.front().originalPath == path);
  const auto read = store::readLeftPlan(left.front());
  REQUIRE(read.ok());
  CHECK(read->plan == edited);
  CHECK(read->file == *file);
  CHECK(store::findLeftPlans(root).front().attempts == 1);
  store::discardLeftPlan(left.front());
  CHECK(store::findLeftPlans(root).empty());
}

TEST_CASE("what stands in the file already is not offered, whatever the clock says", "[store]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  const QString path = dir.filePath(QStringLiteral("plan.json"));
  const plan::Plan edited = titled("Fine all over", 0.5);
  {
    DocumentController controller(titled("Fine all over", 0.1));
    const auto file = store::savePlan(controller.document(), path);
    REQUIRE(file.ok());
    controller.replace(controller.document(), *file);
    store::Recovery recovery(controller, root);
    controller.edit(edited, QStringLiteral("Change"));
    recovery.writeNow();
  }
  // The same content reached the file by another way.
  REQUIRE(store::savePlan(edited, path).ok());
  CHECK(store::findLeftPlans(root).empty());
  CHECK(QDir(root).entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty());
}

TEST_CASE("a plan that was never saved is kept too, and closing takes its snapshot away", "[store]") {
  QTemporaryDir dir;
  const QString root = dir.filePath(QStringLiteral("recovery"));
  DocumentController controller(plan::Plan::fresh(1));
  store::Recovery recovery(controller, root);
  controller.replaceModified(titled("", 0.2), {});
  REQUIRE(QTest::qWaitFor([&] { return !recovery.folder().isEmpty(); }, 4000));
  const QString folder = recovery.folder();
  CHECK(QFile::exists(folder + QStringLiteral("/plan.json")));
  recovery.close();
  CHECK_FALSE(QFile::exists(folder));
}

TEST_CASE("a snapshot folder that cannot be made is told, not swallowed", "[store]") {
  QTemporaryDir dir;
  const QString blocked = dir.filePath(QStringLiteral("file"));
  QFile file(blocked);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.close();
  DocumentController controller(plan::Plan::fresh(1));
  store::Recovery recovery(controller, blocked + QStringLiteral("/recovery"));
  QString why;
  QObject::connect(&recovery, &store::Recovery::failed, &recovery, [&](const QString& w) { why = w; });
  controller.replaceModified(titled("x", 0), {});
  recovery.writeNow();
  CHECK_FALSE(why.isEmpty());
}

TEST_CASE("a file changed by someone else is noticed by content", "[store]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.json"));
  const auto file = store::savePlan(titled("A", 0.1), path);
  REQUIRE(file.ok());
  CHECK_FALSE(store::isChangedOnDisk(*file));
  const auto opened = store::openPlan(path);
  REQUIRE(opened.ok());
  CHECK(opened->file == *file);
  REQUIRE(store::savePlan(titled("B", 0.1), path).ok());
  CHECK(store::isChangedOnDisk(*file));
  CHECK_FALSE(store::isChangedOnDisk({}));
}

TEST_CASE("recent plans: newest first, ten, each once, gone ones marked", "[store]") {
  QTemporaryDir dir;
  const QString ini = dir.filePath(QStringLiteral("settings.ini"));
  store::Settings settings(ini);
  for (int i = 0; i < 12; ++i)
    settings.addRecent(dir.filePath(QStringLiteral("%1.json").arg(i)), QStringLiteral("Plan %1").arg(i));
  settings.addRecent(dir.filePath(QStringLiteral("5.json")), QStringLiteral("Plan 5"));
  const auto recent = store::Settings(ini).recent();
  REQUIRE(recent.size() == 10);
  CHECK(recent[0].title == QStringLiteral("Plan 5"));
  CHECK(recent[1].title == QStringLiteral("Plan 11"));
  CHECK_FALSE(recent[0].exists);
  settings.removeRecent(recent[0].path);
  CHECK(store::Settings(ini).recent().size() == 9);
}
