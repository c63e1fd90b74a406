// Opening and saving from the window's side, and what is remembered between starts.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "app/store/plan_store.h"
#include "app/store/session.h"
#include "app/store/set_aside.h"
#include "app/store/settings.h"
#include "tests/support/titled_plan.h"

using namespace combdraft;
using tests::titled;

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

TEST_CASE("what is set aside is kept, and so is what was set aside before", "[store]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("settings.ini"));
  const auto write = [&](const char* text) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
  };
  write("first");
  const auto first = store::setAside(path);
  write("second");
  const auto second = store::setAside(path);
  REQUIRE(first.ok());
  REQUIRE(second.ok());
  CHECK(*first == path + QStringLiteral(".broken"));
  CHECK(*second != *first);
  QFile kept(*first);
  REQUIRE(kept.open(QIODevice::ReadOnly));
  CHECK(kept.readAll() == "first");
  CHECK_FALSE(QFile::exists(path));
  CHECK_FALSE(store::setAside(path).ok());
}

TEST_CASE("a settings file that is none is set aside with a word about it", "[store]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("settings.ini"));
  CHECK(store::mendSettings(path).isEmpty());  // not there yet
  store::Settings(path).setPreferences({store::LengthUnit::Inch});
  CHECK(store::mendSettings(path).isEmpty());
  CHECK(store::Settings(path).preferences().unit == store::LengthUnit::Inch);
  for (const QByteArray& text : {QByteArray("[preferences\nunit=cm\n"), QByteArray("\x7f" "ELF\0\0\0\1", 8)}) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
    file.close();
    CHECK(store::mendSettings(path).contains(QStringLiteral("settings.ini.broken")));
    CHECK_FALSE(QFile::exists(path));
    CHECK(store::Settings(path).preferences() == store::Preferences{});
  }
  // No folder can be made below a file.
  QFile block(dir.filePath(QStringLiteral("block")));
  REQUIRE(block.open(QIODevice::WriteOnly));
  CHECK(store::mendSettings(dir.filePath(QStringLiteral("block/settings.ini"))).contains(QStringLiteral("cannot be written")));
}

TEST_CASE("a session comes back as it was written, to the first program that asks", "[store][session]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("session.json"));
  const std::vector<store::SessionWindow> windows{
      {dir.filePath(QStringLiteral("a.json")), {QByteArray("geometry\0", 9), QByteArray("s"), 2, -2, 3}},
      {QString(), {QByteArray(), QByteArray(), 0, 5, 0}}};
  {
    store::SessionFile first(path);
    REQUIRE(first.isOurs());
    store::SessionFile second(path);
    CHECK_FALSE(second.isOurs());
    REQUIRE(first.write(windows).ok());
    REQUIRE(first.setFailedStarts(1).ok());
    REQUIRE(second.write({}).ok());
    first.freeze();
    REQUIRE(first.write({}).ok());
  }
  store::SessionFile next(path);
  CHECK(next.read() == store::Session{windows, 1});
  CHECK_FALSE(QFileInfo(path).permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther));
}

TEST_CASE("a session file that cannot be used is set aside, odd values in it are left out", "[store][session]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("session.json"));
  const auto write = [&](const char* text) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
  };
  store::SessionFile session(path);
  CHECK(session.read() == store::Session{});
  CHECK(session.trouble().isEmpty());
  for (const char* text : {"{ \"format\": 1, \"windows\"", "{}", "[1, 2]", "{ \"format\": 2, \"windows\": [] }"}) {
    INFO(text);
    write(text);
    store::SessionFile again(dir.filePath(QStringLiteral("session.json")));
    CHECK(session.read() == store::Session{});
    CHECK(session.trouble().contains(QStringLiteral("session.json.broken")));
    CHECK_FALSE(QFile::exists(path));
  }
  write("{ \"format\": 1, \"windows\": [ { \"path\": 7, \"layer\": 99, \"card\": \"x\" } ], \"failedStarts\": -4 }");
  const store::Session read = session.read();
  REQUIRE(read.windows.size() == 1);
  CHECK(read.windows.front() == store::SessionWindow{});
  CHECK(read.failedStarts == 0);
}

TEST_CASE("settings that cannot be written are told with their file", "[store]") {
  QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("settings.ini"));
  REQUIRE(QDir().mkdir(path));  // a folder where the file should be
  const store::Rates rates{60, {}, QStringLiteral("crowns")};
  store::Settings settings(path);
  CHECK(settings.written().ok());  // nothing was set
  settings.setRates(rates);
  const auto written = settings.written();
  REQUIRE_FALSE(written.ok());
  CHECK(written.error().file == path.toStdString());
  CHECK(store::unwrittenText(written.error()).contains(path));
  settings.setOwnFactors({});
  CHECK_FALSE(settings.written().ok());
  REQUIRE(QDir().rmdir(path));
  settings.setRates(rates);
  CHECK(settings.written().ok());
  CHECK(QFileInfo(path).isFile());
  CHECK(store::Settings(path).rates() == rates);
}
