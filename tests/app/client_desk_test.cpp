// The client and the window: what titles, lists and files say, what a deletion leaves,
// what a shared copy holds.
#include <QDirIterator>
#include <QFileDialog>
#include <QListWidget>

#include "app/appointment/log_view.h"
#include "app/cards/confirm_row.h"
#include "app/cards/consultation_card.h"
#include "app/cards/consultation_client.h"
#include "app/controls/number_field.h"
#include "app/desk/card_column.h"
#include "app/desk/clients_page.h"
#include "app/desk/preferences_page.h"
#include "app/desk/start_page.h"
#include "app/words/date_words.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/plan_file.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_actions.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using store::ClientFile;
using tests::actionOf;
using tests::buttonNamed;
using tests::Desk;
using tests::fullClient;

namespace {

QStringList filesWith(const QString& root, const QByteArray& word) {
  QStringList found;
  QDirIterator files(root, QDir::Files | QDir::Hidden | QDir::System, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    if (!file.open(QIODevice::ReadOnly)) continue;
    if (file.readAll().contains(word) || file.fileName().contains(QString::fromLatin1(word))) found << file.fileName();
  }
  return found;
}

const std::shared_ptr<store::ClientKeeper>& keeperOf(Desk& desk) { return desk.window->cards().consultationCard()->keeper(); }

void fillClient(Desk& desk) {
  REQUIRE(keeperOf(desk));
  keeperOf(desk)->edit([](ClientFile& f) { f = fullClient(f.number); });
  REQUIRE(keeperOf(desk)->writeNow().ok());
}

void choose(Desk& desk, const char* dialogName, const QString& path) {
  auto* dialog = desk.window->findChild<QFileDialog*>(QLatin1String(dialogName));
  REQUIRE(dialog);
  CHECK_FALSE(dialog->windowTitle().contains(QStringLiteral("Marker")));
  Q_EMIT dialog->fileSelected(path);
  dialog->close();
}

}  // namespace

TEST_CASE("a plan brings its client along, and another plan its own", "[client][desk]") {
  Desk desk;
  CHECK_FALSE(keeperOf(desk));
  desk.window->openPath(desk.file("one"));
  REQUIRE(keeperOf(desk));
  CHECK(keeperOf(desk)->number() == desk.window->controller().document().info().number);
  actionOf(desk, "view.consultationCard")->trigger();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Consultation);
  CHECK(actionOf(desk, "view.consultationCard")->isChecked());
  fillClient(desk);
  const std::uint64_t number = keeperOf(desk)->number();

  // With another plan nobody's answers are on the screen before they are asked for.
  plan::Plan other = plan::Plan::fresh(555);
  REQUIRE(store::savePlan(other, desk.dir.filePath(QStringLiteral("other.json"))).ok());
  desk.window->openPath(desk.dir.filePath(QStringLiteral("other.json")));
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Piece);
  CHECK(keeperOf(desk)->number() == 555);
  CHECK(store::isEmpty(keeperOf(desk)->file()));

  // The new plan is a visit of the same client.
  Q_EMIT desk.window->cards().consultationCard()->clientChosen(number);
  CHECK(keeperOf(desk)->number() == number);
  CHECK(keeperOf(desk)->file().visits.back().number == 555);
  desk.window->openPath(desk.file("one"));
  desk.window->openPath(desk.dir.filePath(QStringLiteral("other.json")));
  CHECK(keeperOf(desk)->number() == number);
}

TEST_CASE("no word about a client stands in a title, list, setting, session, recovery or dialog", "[client][desk]") {
  Desk desk;
  desk.session = std::make_shared<store::SessionFile>(desk.dir.filePath(QStringLiteral("session.json")));
  desk.pace = {20, 20, 40, 100};
  desk.window.reset();
  desk.open();
  const QString path = desk.file("Soft root");
  desk.window->openPath(path);
  fillClient(desk);
  desk.edit();
  REQUIRE(desk.window->recovery().writeNow() == store::Recovery::Written::Yes);
  QTest::qWait(700);  // the session is written in groups
  CHECK(desk.window->windowTitle().startsWith(QStringLiteral("Soft root")));
  for (const char* id : {"client.photo", "client.handOver", "file.saveAs", "file.open", "file.shareCopy"}) {
    INFO(id);
    REQUIRE(actionOf(desk, id)->isEnabled());
    actionOf(desk, id)->trigger();
  }
  QStringList words{desk.window->windowTitle(), desk.window->messages().text()};
  for (auto* dialog : desk.window->findChildren<QFileDialog*>()) {
    words << dialog->windowTitle() << dialog->selectedFiles();
    dialog->close();
  }
  CHECK(words.size() >= 7);
  CHECK_FALSE(words.join(u'\n').contains(QStringLiteral("Marker")));
  for (const auto& recent : store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).recent())
    CHECK(recent.title == QStringLiteral("Soft root"));
  // On the disk the words are in the client's folder and nowhere else.
  const QString folder = keeperOf(desk)->folder();
  const QStringList found = filesWith(desk.dir.path(), "Marker");
  CHECK(found == QStringList{folder + QStringLiteral("/client.json")});
  CHECK(filesWith(desk.dir.path(), "Soft root").size() >= 3);  // the search finds what is there
}

TEST_CASE("deleting a client leaves no word of it in any file of the program", "[client][desk][gone]") {
  const bool withPlan = GENERATE(false, true);
  CAPTURE(withPlan);
  Desk desk;
  desk.session = std::make_shared<store::SessionFile>(desk.dir.filePath(QStringLiteral("session.json")));
  desk.pace = {20, 20, 40, 100};
  desk.window.reset();
  desk.open();
  const QString path = desk.file("Soft root");
  desk.window->openPath(path);
  fillClient(desk);
  // The plan says something, is saved, then does not say it any more: the version before does.
  const auto note = [&](const char* words) {
    plan::Plan next = desk.window->controller().document();
    plan::PlanInfo info = next.info();
    info.notes = words;
    next.put(plan::kPlanId, info);
    desk.window->controller().edit(next, QStringLiteral("Notes"));
  };
  note("Markerbefore");
  actionOf(desk, "file.save")->trigger();
  note("Plain");
  actionOf(desk, "file.save")->trigger();
  REQUIRE_FALSE(filesWith(desk.dir.path(), "Markerbefore").isEmpty());
  // A program that ended left it too.
  const QString left = desk.dir.filePath(QStringLiteral("recovery/left"));
  REQUIRE(QDir().mkpath(left));
  plan::Plan other = desk.window->controller().document();
  plan::PlanInfo info = other.info();
  info.notes = "Markerleft";
  other.put(plan::kPlanId, info);
  plan::Disk disk;
  REQUIRE(plan::savePlan((left + QStringLiteral("/plan.json")).toStdString(), other, disk).ok());
  note("Still at work");  // unsaved
  REQUIRE(desk.window->recovery().writeNow() == store::Recovery::Written::Yes);

  actionOf(desk, "client.delete")->trigger();
  auto* client = desk.window->cards().consultationCard()->client();
  cards::ConfirmRow* row = withPlan ? client->removeWithPlan() : client->remove();
  row->ask()->click();
  CHECK_FALSE(filesWith(desk.dir.path(), "Marker").isEmpty());  // asked once more
  row->yes()->click();
  CHECK(filesWith(desk.dir.path(), "Marker") == QStringList());
  CHECK_FALSE(QFileInfo::exists(desk.dir.filePath(QStringLiteral("clients/21"))));
  INFO(desk.window->messages().text().toStdString());
  CHECK(desk.window->messages().text().contains(QStringLiteral("Deleted: what was kept of the client")));
  for (const char* stays : {"PDFs", "handed-over folders", "backups"}) CHECK(desk.window->messages().text().contains(QLatin1String(stays)));
  CHECK(desk.window->messages().text().contains(QStringLiteral("and this plan")) == withPlan);
  if (withPlan) {
    CHECK_FALSE(QFileInfo::exists(path));
    CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).recent().empty());
    CHECK(filesWith(desk.dir.path(), "Soft root") == QStringList());
    CHECK(store::findLeftPlans(desk.dir.filePath(QStringLiteral("recovery"))).empty());
  } else {
    CHECK(QFileInfo::exists(path));
    CHECK(desk.window->controller().isModified());
    CHECK(desk.window->controller().document().info().notes == "Still at work");
    CHECK(filesWith(desk.dir.filePath(QStringLiteral("recovery")), "Still at work").size() >= 1);  // still kept
  }
}

TEST_CASE("deleting client and plan in the middle of an autosave leaves no snapshot of it", "[client][desk][gone]") {
  Desk desk;
  desk.pace = {1, 20, 40, 100};
  desk.window.reset();
  desk.open();
  const QString kept = desk.dir.filePath(QStringLiteral("recovery"));
  for (int round = 0; round < 5; ++round) {
    CAPTURE(round);
    desk.window->openPath(desk.file("Soft root"));
    fillClient(desk);
    for (int i = 0; i < 20; ++i) {
      plan::Plan next = desk.window->controller().document();
      plan::PlanInfo info = next.info();
      info.notes = "Markerbusy " + std::to_string(i);
      next.put(plan::kPlanId, info);
      desk.window->controller().edit(next, QStringLiteral("Notes"));
      if (i == 10) REQUIRE(desk.window->recovery().writeNow() == store::Recovery::Written::Yes);
    }
    CHECK_FALSE(filesWith(kept, "Markerbusy").isEmpty());
    actionOf(desk, "client.delete")->trigger();
    cards::ConfirmRow* row = desk.window->cards().consultationCard()->client()->removeWithPlan();
    row->ask()->click();
    row->yes()->click();
    CHECK(filesWith(kept, "Markerbusy") == QStringList());
    CHECK(QDir(kept).entryList(QDir::Dirs | QDir::NoDotAndDotDot) == QStringList());
    INFO(desk.window->messages().text().toStdString());
    CHECK(desk.window->messages().text().contains(QStringLiteral("and this plan")));
  }
}

namespace {

// A file stands where the client's folder must be made: whoever runs the tests cannot write there.
QString blockFolder(Desk& desk) {
  REQUIRE(keeperOf(desk));
  const QString folder = keeperOf(desk)->folder();
  REQUIRE(QDir().mkpath(keeperOf(desk)->root()));
  QFile inTheWay(folder);
  REQUIRE(inTheWay.open(QIODevice::WriteOnly | QIODevice::NewOnly));
  return folder;
}

void typeName(Desk& desk) {
  keeperOf(desk)->edit([](ClientFile& f) { f.name = "Markername"; });
}

bool says(desk::MainWindow& window, const char* words) { return window.messages().text().contains(QString::fromUtf8(words)); }

}  // namespace

TEST_CASE("a tap that is not on the disk is said beside the pieces until it is", "[appointment][desk][kept]") {
  Desk desk;
  desk.window->openPath(desk.file("tapped"));
  actionOf(desk, "appointment.log")->trigger();
  auto* log = desk.window->findChild<appointment::LogView*>();
  REQUIRE(log);
  CHECK(log->unwrittenText().isEmpty());
  // A file stands where the copies for recovery are made: whoever runs the tests cannot write there.
  const QString root = desk.places().recoveryRoot;
  REQUIRE(QDir(root).removeRecursively());
  QFile inTheWay(root);
  REQUIRE(inTheWay.open(QIODevice::WriteOnly | QIODevice::NewOnly));
  log->button(work::Tap::Placed)->click();
  CHECK(log->unwrittenText().contains(QStringLiteral("write times on paper")));
  CHECK(says(*desk.window, "only in this window"));  // and does not hide it
  CHECK_FALSE(says(*desk.window, root.toUtf8().constData()));
  REQUIRE(inTheWay.remove());
  CHECK(QTest::qWaitFor([&] { return log->unwrittenText().isEmpty(); }, 10000));
}

TEST_CASE("closing asks while what was typed about the client is not on the disk", "[client][desk][kept]") {
  Desk desk;
  desk.window->openPath(desk.file("one"));
  const QString folder = blockFolder(desk);
  typeName(desk);
  REQUIRE_FALSE(desk.window->controller().isModified());
  CHECK_FALSE(desk.window->close());
  CHECK(desk.window->isVisible());
  CHECK(says(*desk.window, "What you typed about the client is not on the disk"));
  CHECK_FALSE(says(*desk.window, "Marker"));
  CHECK_FALSE(says(*desk.window, "21"));  // nor its folder
  desk.press("Try again");
  CHECK(desk.window->isVisible());
  CHECK(says(*desk.window, "is not on the disk"));
  desk.press("Leave and lose it…");
  CHECK(desk.window->isVisible());  // asked once more
  CHECK(says(*desk.window, "goes for good"));
  desk.press("Stay");
  CHECK(desk.window->isVisible());
  // Escape is to stay.
  CHECK_FALSE(desk.window->close());
  QTest::keyClick(&desk.window->messages(), Qt::Key_Escape);
  CHECK(desk.window->isVisible());
  CHECK_FALSE(says(*desk.window, "is not on the disk"));
  // Once it can be written, closing does not ask.
  REQUIRE(QFile::remove(folder));
  CHECK(desk.window->close());
  CHECK(filesWith(folder, "Markername") == QStringList{folder + QStringLiteral("/client.json")});
}

TEST_CASE("an unsaved plan and an unkept client are asked for one after the other", "[client][desk][kept]") {
  Desk desk;
  desk.window->openPath(desk.file("one"));
  (void)blockFolder(desk);
  typeName(desk);
  desk.edit();
  const std::uint64_t number = keeperOf(desk)->number();
  // Another plan does not take its place either.
  plan::Plan other = plan::Plan::fresh(555);
  const QString path = desk.dir.filePath(QStringLiteral("other.json"));
  REQUIRE(store::savePlan(other, path).ok());
  desk.window->openPath(path);
  CHECK(says(*desk.window, "changes that are not saved"));
  desk.press("Save");
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(says(*desk.window, "is not on the disk"));
  CHECK(keeperOf(desk)->number() == number);
  desk.press("Stay");
  CHECK(desk.window->controller().document().info().number != 555);
  // Nor does another client.
  Q_EMIT desk.window->cards().consultationCard()->clientChosen(556);
  CHECK(says(*desk.window, "is not on the disk"));
  CHECK(keeperOf(desk)->number() == number);
  desk.press("Stay");
  CHECK(keeperOf(desk)->file().name == "Markername");
  // Losing it is the user's word, given twice.
  CHECK_FALSE(desk.window->close());
  desk.press("Leave and lose it…");
  desk.press("Throw it away");
  CHECK_FALSE(desk.window->isVisible());
}

TEST_CASE("the last window of a client asks, the others leave it to that one", "[client][desk][kept]") {
  Desk desk;
  desk.window->openPath(desk.file("one"));
  auto second = std::make_unique<desk::MainWindow>(desk.places(), tests::instantPasses);
  second->show();
  const QString path = desk.dir.filePath(QStringLiteral("second-visit.json"));
  REQUIRE(store::savePlan(desk.window->controller().document(), path).ok());
  second->openPath(path);
  REQUIRE(second->cards().consultationCard()->keeper() == keeperOf(desk));
  (void)blockFolder(desk);
  typeName(desk);
  CHECK(second->close());
  CHECK_FALSE(desk.window->close());
  CHECK(says(*desk.window, "is not on the disk"));
}

TEST_CASE("a shared copy leaves out what is of the client and says what goes along", "[client][desk][share]") {
  Desk desk;
  desk.window->openPath(desk.file("Soft root"));
  fillClient(desk);
  plan::Plan next = desk.window->controller().document();
  plan::PlanInfo info = next.info();
  info.notes = "Markernotes";
  next.put(plan::kPlanId, info);
  desk.window->controller().edit(next, QStringLiteral("Notes"));
  desk.window->controller().record(document::DocumentController::Record::Log, "[\"Markerlog\"]");
  next = desk.window->controller().document();
  REQUIRE(next.info().logJson == "[\"Markerlog\"]");
  actionOf(desk, "file.shareCopy")->trigger();
  const QString to = desk.dir.filePath(QStringLiteral("copy.json"));
  choose(desk, "shareCopy", to);
  const auto copy = store::openPlan(to);
  REQUIRE(copy.ok());
  CHECK(copy->plan.info().title == "Soft root");
  CHECK(copy->plan.pieces().size() == next.pieces().size());
  CHECK(copy->plan.info().number != next.info().number);
  QFile file(to);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK_FALSE(file.readAll().contains("Marker"));
  for (const char* part : {"Soft root", "with their history", "formulas", "handout texts", "names you gave", "Look through them"}) {
    INFO(part);
    CHECK(desk.window->messages().text().contains(QLatin1String(part)));
  }
  CHECK(desk.window->controller().document() == next);
  CHECK(desk.window->controller().file().path != to);
  // A name that is taken is refused: what stood there would stay beside the copy.
  actionOf(desk, "file.shareCopy")->trigger();
  choose(desk, "shareCopy", to);
  CHECK(desk.window->messages().text().contains(QStringLiteral("Choose a new name")));
  CHECK_FALSE(QFileInfo::exists(to + QStringLiteral(".previous")));
}

TEST_CASE("what is kept is handed over from the window", "[client][desk]") {
  Desk desk;
  desk.window->openPath(desk.file("Soft root"));
  CHECK_FALSE(actionOf(desk, "client.handOver")->isEnabled());
  fillClient(desk);
  actionOf(desk, "client.handOver")->trigger();
  const QString to = desk.dir.filePath(QStringLiteral("handed"));
  choose(desk, "handOver", to);
  CHECK(QFileInfo::exists(to + QStringLiteral("/client.txt")));
  CHECK(QFileInfo::exists(to + QStringLiteral("/client.json")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("handed")));
  CHECK_FALSE(desk.window->messages().text().contains(QStringLiteral("Marker")));
}

TEST_CASE("two plans begun with one example are two clients", "[client][desk]") {
  Desk desk;
  Q_EMIT desk.window->startPage().exampleWanted(desk.file("example"));
  const std::uint64_t first = desk.window->controller().document().info().number;
  CHECK(first != 21);
  CHECK(keeperOf(desk)->number() == first);
  Q_EMIT desk.window->startPage().exampleWanted(desk.file("example"));
  desk.press("Do not save…");
  desk.press("Throw it away");
  CHECK(desk.window->controller().document().info().number != first);
}

TEST_CASE("a copy of a plan that another window has open shares its client", "[client][desk]") {
  Desk desk;
  desk.window->openPath(desk.file("one"));
  fillClient(desk);
  auto second = std::make_unique<desk::MainWindow>(desk.places(), tests::instantPasses);
  second->show();
  plan::Plan visit = desk.window->controller().document();
  const QString path = desk.dir.filePath(QStringLiteral("second-visit.json"));
  REQUIRE(store::savePlan(visit, path).ok());
  second->openPath(path);
  CHECK(second->cards().consultationCard()->keeper() == keeperOf(desk));
  // While both are open nothing can be deleted half.
  desk.window->cards().consultationCard()->client()->remove()->ask()->click();
  desk.window->cards().consultationCard()->client()->remove()->yes()->click();
  CHECK(desk.window->messages().text().contains(QStringLiteral("another window")));
  CHECK_FALSE(store::isEmpty(keeperOf(desk)->file()));
}

TEST_CASE("what is kept longer than the user wants is listed and decided by the user", "[client][desk][retention]") {
  Desk desk;
  plan::Disk disk;
  for (const std::uint64_t number : {5, 6}) {
    ClientFile file = fullClient(number);
    file.consent->date = file.begun = file.kept = "2001-01-01";
    file.tests.clear();
    file.visits.clear();
    if (number == 6) file.visits = {{QDate::currentDate().toString(Qt::ISODate).toStdString(), "", 6, "", {}}};
    REQUIRE(store::ClientFolder(desk.places().clientsFolder, number).write(file, disk).ok());
  }
  desk.window->offerRetention();
  CHECK_FALSE(desk.window->messages().isShowing());  // nothing decided
  desk::PreferencesPage& preferences = desk.window->preferencesPage();
  CHECK_FALSE(preferences.keepMonths()->value());
  tests::typeInto(preferences.keepMonths()->edit(), QStringLiteral("36"));
  CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).clientPolicy().keep_months == 36);
  desk.window->offerRetention();
  CHECK(desk.window->messages().text().contains(QStringLiteral("36 months that you set: 1")));
  CHECK_FALSE(desk.window->messages().text().contains(QStringLiteral("Marker")));
  desk.press("Decide");
  desk::ClientsPage& page = desk.window->clientsPage();
  REQUIRE(page.list()->count() == 2);
  CHECK(page.list()->item(0)->text().contains(QStringLiteral("over your time")));
  CHECK_FALSE(page.list()->item(1)->text().contains(QStringLiteral("over your time")));
  CHECK(store::findClients(desk.places().clientsFolder).size() == 2);
  page.list()->setCurrentRow(0);
  page.keepButton()->click();
  CHECK_FALSE(page.list()->item(0)->text().contains(QStringLiteral("over your time")));
  CHECK_FALSE(page.list()->item(1)->text().contains(QStringLiteral("over your time")));
  page.list()->setCurrentRow(1);
  page.removeRow()->ask()->click();
  page.removeRow()->yes()->click();
  CHECK(store::findClients(desk.places().clientsFolder).size() == 1);
  CHECK(page.list()->count() == 1);
  // Names leave the screen with the page.
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(page.list()->count() == 0);
}

TEST_CASE("the user's months for tests reach the consultation", "[client][desk]") {
  Desk desk;
  desk.window->openPath(desk.file("one"));
  keeperOf(desk)->edit([](ClientFile& f) {
    f.consent = store::Consent{"planning", "2026-01-01", {}};
    f.tests = {{store::TestKind::Skin, "2026-01-01", "", "", {}}};
  });
  CHECK_FALSE(desk.window->cards().consultationCard()->cautions().contains(QStringLiteral("Skin test: overdue")));
  tests::typeInto(desk.window->preferencesPage().testMonths(store::TestKind::Skin)->edit(), QStringLiteral("1"));
  CHECK(desk.window->cards().consultationCard()->cautions().contains(QStringLiteral("Skin test: overdue since ") + words::dateText(QDate(2026, 2, 1))));
}

TEST_CASE("new plan and consultation ask for age, past reactions, scalp and tests due", "[client][desk][cautions]") {
  Desk desk;
  actionOf(desk, "file.new")->trigger();
  auto* caution = desk.window->findChild<QLabel*>(QStringLiteral("newPlanCaution"));
  REQUIRE(caution);
  desk.window->openPath(desk.file("one"));
  for (const QString& text : {caution->text(), desk.window->cards().consultationCard()->cautions()}) {
    INFO(text.toStdString());
    CHECK((text.contains(QStringLiteral("age")) && text.contains(QStringLiteral("reaction")) && text.contains(QStringLiteral("scalp")) &&
           text.contains(QStringLiteral("tests")) && text.contains(QStringLiteral("due")) && text.contains(QStringLiteral("refer"))));
  }
}
