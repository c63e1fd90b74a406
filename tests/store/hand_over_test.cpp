// What the user has beside a file that is written stays, whatever its name.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "app/store/client_export.h"
#include "app/store/client_folder.h"
#include "engine/plan/json_writer.h"
#include "tests/store/keeping.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using tests::put;
using tests::titled;

namespace {

QByteArray bytesAt(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList allIn(const QString& folder) {
  return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
}

}  // namespace

TEST_CASE("a hand-over leaves the folders beside it alone", "[client]") {
  const QTemporaryDir dir, kept;
  const QString mine = dir.filePath(QStringLiteral("photos.new"));
  REQUIRE(QDir().mkdir(mine));
  put(mine + QStringLiteral("/mine.jpg"), "mine");
  put(kept.filePath(store::kClientDocument), "{}");
  tests::OddDisk disk;
  const QString to = dir.filePath(QStringLiteral("photos"));
  disk.failingWrites = 1;
  CHECK_FALSE(store::exportClient(tests::fullClient(77), kept.path(), to, disk).ok());
  CHECK(allIn(dir.path()) == QStringList{QStringLiteral("photos.new")});
  REQUIRE(store::exportClient(tests::fullClient(77), kept.path(), to, disk).ok());
  CHECK(allIn(dir.path()) == QStringList{QStringLiteral("photos"), QStringLiteral("photos.new")});
  CHECK(bytesAt(mine + QStringLiteral("/mine.jpg")) == "mine");
  CHECK(QFile::exists(to + QStringLiteral("/client.txt")));
  CHECK_FALSE(QFile::permissions(to).testAnyFlags(QFile::ReadGroup | QFile::ReadOther | QFile::ExeGroup | QFile::ExeOther));
}

TEST_CASE("a copy of unsaved work leaves the file beside it alone", "[store][recovery]") {
  const QTemporaryDir dir;
  store::LeftPlan left;
  left.folder = dir.path();
  left.document = dir.filePath(QStringLiteral("plan.json"));
  put(left.document, "cut");
  const QString to = dir.filePath(QStringLiteral("copy.json")), mine = to + QStringLiteral(".new");
  put(mine, "mine");
  REQUIRE(store::copyLeftPlan(left, to).ok());
  CHECK(bytesAt(to) == "cut");
  CHECK(bytesAt(mine) == "mine");
  CHECK(allIn(dir.path()).size() == 3);
}

TEST_CASE("the earlier version is kept without touching the file beside it", "[store]") {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.json")), previous = path + QStringLiteral(".previous");
  put(previous + QStringLiteral(".new"), "mine");
  for (const double white_frac : {0.1, 0.2, 0.3}) REQUIRE(store::savePlan(titled("Soft root", white_frac), path).ok());
  CHECK(bytesAt(previous + QStringLiteral(".new")) == "mine");
  CHECK(bytesAt(previous).toStdString() == plan::writePlan(titled("Soft root", 0.2)));
  CHECK(allIn(dir.path()).size() == 3);
}
