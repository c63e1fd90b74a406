// Client data on the disk: what comes back, who can read it, what damage does, what is
// kept and when.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTest>

#include "app/store/client_export.h"
#include "app/store/client_json.h"
#include "app/store/client_keeper.h"
#include "app/store/settings.h"
#include "app/words/date_words.h"
#include "tests/store/keeping.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using store::ClientFile;
using store::ClientFolder;
using store::ClientKeeper;
using tests::fullClient;
using tests::OddDisk;

namespace {

struct Clients {
  QTemporaryDir dir;
  QString root = dir.filePath(QStringLiteral("clients"));
  std::shared_ptr<OddDisk> disk = std::make_shared<OddDisk>();

  std::shared_ptr<ClientKeeper> keeper(std::uint64_t number = 77) { return ClientKeeper::of(root, number, disk); }
  QString file(std::uint64_t number = 77) const { return store::clientFolder(root, number) + QStringLiteral("/client.json"); }
};

int modeOf(const QString& path) { return static_cast<int>(QFileInfo(path).permissions()) & 0x0077; }

QByteArray bytesOf(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void put(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

void giveConsent(ClientKeeper& keeper) {
  keeper.edit([](ClientFile& f) { f.consent = store::Consent{"planning", "2026-02-03", {}}; });
}

}  // namespace

TEST_CASE("a client file reads back as it was written and keeps what newer programs add", "[client]") {
  const ClientFile full = fullClient(77);
  const std::string text = store::writeClient(full);
  const auto again = store::readClient(text);
  REQUIRE(again.ok());
  CHECK(*again == full);
  CHECK(store::writeClient(*again) == text);
  CHECK(again->extra.at("newer") == "[1, 2]");
  CHECK(again->consent->extra.count("later") == 1);
  // An empty one holds no example of anything.
  CHECK(store::writeClient(ClientFile{}) == "{\n  \"format\": \"combdraft client\",\n  \"version\": 1,\n  \"number\": 1\n}\n");
}

TEST_CASE("an answer that the client does not know is kept apart from no and yes", "[client]") {
  ClientFile file = fullClient(77);
  file.health.ageReached = file.health.reacted = file.history.dye = store::Answer::Unknown;
  file.health.scalp = store::ScalpFound::Unsure;
  const std::string text = store::writeClient(file);
  CHECK_THAT(text, Catch::Contains("\"dye\": \"not known\"") && Catch::Contains("\"scalp\": \"not sure\""));
  const auto again = store::readClient(text);
  REQUIRE(again.ok());
  CHECK(*again == file);
  // As an older program wrote it.
  const auto old = store::readClient(R"({"format": "combdraft client", "version": 1, "number": 3, "history": {"dye": "no", "henna": "yes"}, "health": {"scalp": "nothing found"}})");
  REQUIRE(old.ok());
  CHECK(old->history.dye == store::Answer::No);
  CHECK(old->history.henna == store::Answer::Yes);
  CHECK(old->history.metallic == store::Answer::NotAsked);
  CHECK(old->health.scalp == store::ScalpFound::Nothing);
  CHECK_THAT(store::clientText(file).toStdString(), Catch::Contains("Dye: the client does not know") && Catch::Contains("Scalp: looked at, and not sure"));
}

TEST_CASE("a client file that is wrong says where and what would be right", "[client]") {
  const auto wrong = [](const char* text) {
    const auto read = store::readClient(text);
    REQUIRE_FALSE(read.ok());
    return read.error();
  };
  CHECK(wrong("{\"format\": \"combdraft plan\", \"version\": 1}").where == "/format");
  CHECK(wrong("{\"format\": \"combdraft client\", \"version\": 9, \"number\": 3}").code == ErrorCode::VersionTooNew);
  CHECK(wrong("{\"format\": \"combdraft client\", \"version\": 1}").code == ErrorCode::FieldMissing);
  const Error scalp = wrong("{\"format\": \"combdraft client\", \"version\": 1, \"number\": 3, \"health\": {\"scalp\": \"fine\"}}");
  CHECK(scalp.where == "/health/scalp");
  CHECK_THAT(describe(scalp), Catch::Contains("nothing found"));
  CHECK(wrong("{\"format\": \"combdraft client\", \"version\": 1, \"number\": 3, \"tests\": [{\"date\": \"soon\"}]}").where == "/tests/0/date");
  const std::string long_ = "{\"format\": \"combdraft client\", \"version\": 1, \"number\": 3, \"name\": \"" + std::string(201, 'a') + "\"}";
  CHECK(wrong(long_.c_str()).code == ErrorCode::TextTooLong);
  std::string many = "{\"format\": \"combdraft client\", \"version\": 1, \"number\": 3, \"visits\": [";
  for (int i = 0; i < 1001; ++i) many += i ? ", {}" : "{}";
  CHECK(wrong((many + "]}").c_str()).code == ErrorCode::TooManyItems);
  CHECK(store::readClient(std::string(store::limits::kClientBytes + 1, ' ')).error().code == ErrorCode::FileTooLarge);
}

TEST_CASE("folder and files are their owner's only, and named by a number", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f.name = "Anna"; });
  REQUIRE(keeper->writeNow().ok());
  CHECK(modeOf(clients.root) == 0);
  CHECK(modeOf(keeper->folder()) == 0);
  CHECK(modeOf(clients.file()) == 0);
  CHECK(keeper->folder() == clients.root + QStringLiteral("/77"));
  keeper->edit([](ClientFile& f) { f.name = "Anne"; });
  REQUIRE(keeper->writeNow().ok());
  CHECK(modeOf(clients.file()) == 0);
  // Nothing of an earlier state stays beside it.
  const QStringList names = QDir(keeper->folder()).entryList(QDir::Files | QDir::Hidden);
  CHECK(names == QStringList{QStringLiteral("client.json"), QStringLiteral("lock")});
  CHECK_FALSE(bytesOf(clients.file()).contains("Anna"));
}

TEST_CASE("nothing is made before something is typed, and every change is kept by itself", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  CHECK(keeper->standing() == ClientFolder::Standing::None);
  keeper->edit([](ClientFile&) {});
  REQUIRE(keeper->writeNow().ok());
  CHECK_FALSE(QFileInfo::exists(clients.root));
  for (int i = 1; i <= 50; ++i) keeper->edit([i](ClientFile& f) { f.notes = std::string(static_cast<std::size_t>(i), 'n'); });
  CHECK(QTest::qWaitFor([&] { return QFileInfo::exists(clients.file()); }, 5000));
  CHECK(clients.disk->writes < 10);  // typing does not write fifty times
  REQUIRE(keeper->writeNow().ok());
  keeper.reset();
  CHECK(clients.keeper()->file().notes == std::string(50, 'n'));
  CHECK_FALSE(clients.keeper()->file().begun.empty());
}

TEST_CASE("what was typed last is on the disk when a window closes", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f.wishes.wanted = "lighter at the face"; });
  keeper.reset();
  CHECK(bytesOf(clients.file()).contains("lighter at the face"));
}

TEST_CASE("two windows with plans of one client share what is typed", "[client]") {
  Clients clients;
  auto one = clients.keeper(), other = clients.keeper();
  int told = 0;
  QObject::connect(other.get(), &ClientKeeper::changed, other.get(), [&] { ++told; });
  one->edit([](ClientFile& f) { f.wishes.upkeep = "every ten weeks"; });
  CHECK(told == 1);
  CHECK(other->file().wishes.upkeep == "every ten weeks");
}

TEST_CASE("a disk that fails keeps the file before, says so, and gets it later", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f.notes = "first"; });
  REQUIRE(keeper->writeNow().ok());
  int failures = 0;
  QString why;
  QObject::connect(keeper.get(), &ClientKeeper::failed, keeper.get(), [&](const QString& text) {
    ++failures;
    why = text;
  });
  clients.disk->failingWrites = 1;
  keeper->edit([](ClientFile& f) { f.notes = "second"; });
  CHECK_FALSE(keeper->writeNow().ok());
  CHECK(bytesOf(clients.file()).contains("first"));
  CHECK(QTest::qWaitFor([&] { return bytesOf(clients.file()).contains("second"); }, 8000));
  CHECK(failures == 1);
  CHECK_THAT(why.toStdString(), Catch::Contains("no space left") && !Catch::Contains("77"));
}

TEST_CASE("where the folder cannot be made waiting says so, and what was typed is written once it can", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  REQUIRE(QDir().mkpath(clients.root));
  put(keeper->folder(), "in the way");  // a file: whoever runs the tests cannot write below it
  keeper->edit([](ClientFile& f) { f.name = "Markername"; });
  for (int i = 0; i < 2; ++i) {
    const auto written = keeper->writeNow();
    REQUIRE_FALSE(written.ok());
    CHECK(written.error().code == ErrorCode::FileUnwritable);
  }
  REQUIRE(QFile::remove(keeper->folder()));
  REQUIRE(keeper->writeNow().ok());
  CHECK(bytesOf(clients.file()).contains("Markername"));
}

TEST_CASE("health answers, tests and photos are not taken without consent", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) {
    f.wishes.wanted = "kept";
    f.health.reacted = store::Answer::Yes;
    f.tests.push_back({});
    f.photos.push_back({});
    f.consent = store::Consent{"", "2026-02-03", {}};  // no purpose: none
  });
  CHECK(keeper->file().wishes.wanted == "kept");
  CHECK(keeper->file().health == store::Health{});
  CHECK(keeper->file().tests.empty());
  CHECK(keeper->file().photos.empty());
  giveConsent(*keeper);
  keeper->edit([](ClientFile& f) { f.health.reacted = store::Answer::Yes; });
  CHECK(keeper->file().health.reacted == store::Answer::Yes);
}

TEST_CASE("taking consent back takes answers and photos off the disk and leaves the rest", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f = fullClient(77); });
  REQUIRE(keeper->writeNow().ok());
  put(keeper->folder() + QStringLiteral("/photo-1.jpg"), "Markerphoto");
  keeper->edit([](ClientFile& f) { f.photos.push_back({"photo-1.jpg", store::PhotoOf::Wanted, "Markerwords", "2026-01-01", {}}); });
  REQUIRE(keeper->writeNow().ok());
  keeper->takeConsentBack();
  REQUIRE(keeper->writeNow().ok());
  const QByteArray bytes = bytesOf(clients.file());
  for (const char* gone : {"Markerreaction", "Markerscalp", "Markerresult", "Markerwords", "Markerpurpose"}) CHECK_FALSE(bytes.contains(gone));
  CHECK(bytes.contains("Markerwanted"));
  CHECK_FALSE(QFileInfo::exists(keeper->folder() + QStringLiteral("/photo-1.jpg")));
}

TEST_CASE("a photo that cannot be deleted keeps its entry and the consent until it can", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f = fullClient(77); });
  REQUIRE(keeper->writeNow().ok());
  const QString gone = keeper->folder() + QStringLiteral("/photo-1.jpg"), stuck = keeper->folder() + QStringLiteral("/photo-2.jpg");
  put(gone, "Markerphoto");
  // A folder of that name is no file to remove, whoever runs the tests.
  REQUIRE(QDir().mkpath(stuck + QStringLiteral("/inside")));
  keeper->edit([](ClientFile& f) {
    for (const char* name : {"photo-1.jpg", "photo-2.jpg", "photo-3.jpg"})  // the third has lost its file: it is gone already
      f.photos.push_back({name, store::PhotoOf::Wanted, "", "2026-01-01", {}});
  });
  CHECK_FALSE(keeper->removePhoto("photo-2.jpg"));
  CHECK(keeper->file().photos.size() == 3);
  CHECK(keeper->takeConsentBack() == 1);
  CHECK_FALSE(QFileInfo::exists(gone));
  REQUIRE(keeper->file().photos.size() == 1);
  CHECK(keeper->file().photos[0].file == "photo-2.jpg");
  CHECK(store::hasConsent(keeper->file()));
  CHECK(keeper->file().health == store::Health{});
  CHECK(keeper->file().tests.empty());
  REQUIRE(keeper->writeNow().ok());
  for (const char* word : {"Markerreaction", "Markerscalp", "Markerresult"}) CHECK_FALSE(bytesOf(clients.file()).contains(word));
  REQUIRE(QDir(stuck).removeRecursively());
  CHECK(keeper->takeConsentBack() == 0);
  CHECK(keeper->file().photos.empty());
  CHECK_FALSE(store::hasConsent(keeper->file()));
}

TEST_CASE("a damaged client file is set aside and its photos found again", "[client]") {
  Clients clients;
  auto first = clients.keeper();
  giveConsent(*first);
  REQUIRE(first->writeNow().ok());
  const QString folder = first->folder();
  first.reset();
  put(folder + QStringLiteral("/photo-abc.jpg"), "bytes");
  put(clients.file(), "{\"format\": \"combdraft cl");
  auto keeper = clients.keeper();
  CHECK_THAT(keeper->trouble().toStdString(), Catch::Contains("client.json.broken"));
  CHECK(bytesOf(folder + QStringLiteral("/client.json.broken")) == "{\"format\": \"combdraft cl");
  CHECK(keeper->mayEdit());
  REQUIRE(keeper->file().photos.size() == 1);
  CHECK(keeper->file().photos[0].file == "photo-abc.jpg");
  keeper->edit([](ClientFile& f) { f.notes = "anew"; });
  REQUIRE(keeper->writeNow().ok());
  CHECK(QFileInfo::exists(folder + QStringLiteral("/client.json.broken")));  // never overwritten
}

TEST_CASE("a client file of a newer program is left alone", "[client]") {
  Clients clients;
  QDir().mkpath(clients.root + QStringLiteral("/77"));
  const QByteArray newer = "{\"format\": \"combdraft client\", \"version\": 2, \"number\": 77}";
  put(clients.file(), newer);
  auto keeper = clients.keeper();
  CHECK(keeper->standing() == ClientFolder::Standing::Cannot);
  CHECK_FALSE(keeper->trouble().isEmpty());
  keeper->edit([](ClientFile& f) { f.notes = "lost?"; });
  REQUIRE(keeper->writeNow().ok());
  CHECK(keeper->file().notes.empty());
  CHECK(bytesOf(clients.file()) == newer);
}

TEST_CASE("a client that is open elsewhere can be read and not changed", "[client]") {
  Clients clients;
  ClientFolder other(clients.root, 77);
  plan::Disk disk;
  ClientFile file = fullClient(77);
  REQUIRE(other.write(file, disk).ok());
  auto keeper = clients.keeper();  // the lock is another's
  CHECK(keeper->standing() == ClientFolder::Standing::Others);
  CHECK(keeper->file() == file);
  keeper->edit([](ClientFile& f) { f.notes = "no"; });
  CHECK(keeper->file() == file);
  CHECK_FALSE(keeper->remove().ok());
  CHECK(QFileInfo::exists(clients.file()));
}

TEST_CASE("a client that was written elsewhere meanwhile is not overwritten", "[client]") {
  Clients clients;
  plan::Disk disk;
  ClientFolder late(clients.root, 77);
  CHECK(late.open().standing == ClientFolder::Standing::None);
  {
    ClientFolder other(clients.root, 77);
    REQUIRE(other.write(fullClient(77), disk).ok());
  }
  ClientFile mine;
  mine.number = 77;
  mine.notes = "mine";
  CHECK_FALSE(late.write(mine, disk).ok());
  CHECK(bytesOf(clients.file()).contains("Markernotes"));
}

TEST_CASE("several plans of one client are found in one place", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) {
    f.visits = {{"2026-01-07", "First", 77, "", {}}, {"2026-05-07", "Second", 4242, "", {}}};
  });
  REQUIRE(keeper->writeNow().ok());
  CHECK(store::clientOfPlan(clients.root, 77) == 77);
  CHECK(store::clientOfPlan(clients.root, 4242) == 77);
  CHECK(store::clientOfPlan(clients.root, 5) == 5);
}

TEST_CASE("clients over the time of the user's policy are found and stay", "[client]") {
  Clients clients;
  plan::Disk disk;
  const QDate today(2026, 6, 1);
  ClientFile old = fullClient(1), fresh = fullClient(2), kept = fullClient(3);
  old.visits = {{"2024-05-30", "", 1, "", {}}};
  old.consent->date = old.begun = old.kept = "2024-01-01";
  fresh.visits = {{"2024-06-02", "", 2, "", {}}};
  fresh.consent->date = fresh.begun = fresh.kept = "2024-01-01";
  kept = old;
  kept.number = 3;
  kept.kept = "2026-05-01";
  for (const ClientFile& f : {old, fresh, kept}) REQUIRE(ClientFolder(clients.root, f.number).write(f, disk).ok());
  const auto found = store::findClients(clients.root);
  REQUIRE(found.size() == 3);
  CHECK(found[0].number == 1);  // the oldest first
  store::ClientPolicy policy;
  CHECK_FALSE(store::isOverKept(old, policy, today));  // nothing decided, nothing over
  policy.keep_months = 24;
  CHECK(store::isOverKept(old, policy, today));
  CHECK_FALSE(store::isOverKept(fresh, policy, today));
  CHECK_FALSE(store::isOverKept(kept, policy, today));
  CHECK(store::findClients(clients.root).size() == 3);
}

TEST_CASE("a test is due as typed, else by the user's policy, else nobody decided", "[client]") {
  store::ClientTest test{store::TestKind::Skin, "2026-01-31", "", "", {}};
  store::ClientPolicy policy;
  CHECK_FALSE(store::dueOn(test, policy).isValid());
  policy.test_months[static_cast<std::size_t>(store::TestKind::Skin)] = 1;
  CHECK(store::dueOn(test, policy) == QDate(2026, 2, 28));
  test.due = "2026-04-01";
  CHECK(store::dueOn(test, policy) == QDate(2026, 4, 1));
  test = {store::TestKind::Strand, "2026-01-31", "", "", {}};
  CHECK_FALSE(store::dueOn(test, policy).isValid());  // of another kind
}

TEST_CASE("the policy for clients is kept, and nothing is preset", "[client]") {
  QTemporaryDir dir;
  const QString ini = dir.filePath(QStringLiteral("settings.ini"));
  CHECK(store::Settings(ini).clientPolicy() == store::ClientPolicy{});
  store::ClientPolicy policy;
  policy.keep_months = 36;
  policy.test_months = {6, 0, 3, 0, 0, 600};
  store::Settings(ini).setClientPolicy(policy);
  CHECK(store::Settings(ini).clientPolicy() == policy);
}

TEST_CASE("what is kept is handed over as text and JSON, whole or not at all", "[client]") {
  Clients clients;
  auto keeper = clients.keeper();
  keeper->edit([](ClientFile& f) { f = fullClient(77); });
  REQUIRE(keeper->writeNow().ok());
  put(keeper->folder() + QStringLiteral("/photo-1.jpg"), "photo bytes");
  keeper->edit([](ClientFile& f) {
    f.photos = {{"photo-1.jpg", store::PhotoOf::Today, "", "2026-01-01", {}}, {"photo-2.jpg", store::PhotoOf::Wanted, "", "", {}}};
  });
  REQUIRE(keeper->writeNow().ok());
  const QString to = clients.dir.filePath(QStringLiteral("handed over"));
  const auto missing = store::exportClient(keeper->file(), keeper->folder(), to, *clients.disk);
  REQUIRE(missing.ok());
  CHECK(*missing == QStringList{QStringLiteral("photo-2.jpg")});
  CHECK(modeOf(to) == 0);
  CHECK(bytesOf(to + QStringLiteral("/photo-1.jpg")) == "photo bytes");
  const auto again = store::readClient(bytesOf(to + QStringLiteral("/client.json")).toStdString());
  REQUIRE(again.ok());
  CHECK(*again == keeper->file());
  const QByteArray text = bytesOf(to + QStringLiteral("/client.txt"));
  CHECK(text.contains(("You agreed on: " + words::dateText(QDate(2026, 1, 4)).toStdString()).c_str()));
  // Every word that was typed stands in it.
  const QByteArray all = QByteArray::fromStdString(store::writeClient(keeper->file()));
  qsizetype at = 0;
  int words = 0;
  while ((at = all.indexOf("Marker", at)) >= 0) {
    qsizetype end = at;
    while (end < all.size() && QChar::isLetterOrNumber(static_cast<uint>(static_cast<unsigned char>(all[end])))) ++end;
    INFO(all.mid(at, end - at).toStdString());
    CHECK(text.contains(all.mid(at, end - at)));
    at = end;
    ++words;
  }
  CHECK(words > 15);
  // A name that is taken, and a disk that fails, leave nothing half written.
  CHECK_FALSE(store::exportClient(keeper->file(), keeper->folder(), to, *clients.disk).ok());
  clients.disk->failingWrites = 1;
  const QString second = clients.dir.filePath(QStringLiteral("second"));
  CHECK_FALSE(store::exportClient(keeper->file(), keeper->folder(), second, *clients.disk).ok());
  CHECK_FALSE(QFileInfo::exists(second));
  CHECK_FALSE(QFileInfo::exists(second + QStringLiteral(".new")));
}
