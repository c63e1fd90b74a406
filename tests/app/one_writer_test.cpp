// One writer for one plan, and changes that come from outside.
#include <catch2/catch.hpp>

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QSysInfo>
#include <functional>

#include "app/cards/piece_card.h"
#include "app/desk/card_column.h"
#include "app/desk/message_bar.h"
#include "engine/work/log_text.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_actions.h"
#include "tests/support/hold_lock.h"

using namespace combdraft;
using document::DocumentController;
using store::PlanLock;
using tests::actionOf;
using tests::Desk;

namespace {

constexpr auto kReadOnly = DocumentController::Access::ReadOnly;
constexpr auto kFull = DocumentController::Access::Full;

double white(const QString& path) { return store::openPlan(path)->plan.hair().white_frac; }

void saveAs(Desk& desk, const QString& path) {
  actionOf(desk, "file.saveAs")->trigger();
  auto* dialog = desk.window->findChild<QFileDialog*>();
  REQUIRE(dialog);
  Q_EMIT dialog->fileSelected(path);
  delete dialog;
}

bool isLocked(const QString& path) { return QFile::exists(PlanLock::lockFileOf(path)); }

}  // namespace

TEST_CASE("the second program to open a plan reads it, is told who has it, and may go on anyway", "[lock]") {
  Desk desk;
  const QString path = desk.file("shared");
  tests::Child other("hold-lock", {path});
  other.waitUntilReady();
  desk.window->openPath(path);
  CHECK(desk.window->controller().access() == kReadOnly);
  CHECK(desk.window->windowTitle().contains(QStringLiteral("read only")));
  CHECK(desk.window->messages().text().contains(QSysInfo::machineHostName()));
  CHECK(desk.window->messages().text().contains(QStringLiteral("shared.json")));
  CHECK(QApplication::activeModalWidget() == nullptr);

  // What would change it is off and says why; what only looks is on.
  desk.window->controller().select(document::Selection::one("piece-1"));
  for (const char* id : {"file.save", "edit.paste", "piece.add", "piece.remove", "piece.duplicate", "tool.piece", "choice.copy"}) {
    INFO(id);
    CHECK_FALSE(actionOf(desk, id)->isEnabled());
    CHECK(desk.window->actions().whyNot(QLatin1String(id)).contains(QStringLiteral("open elsewhere")));
    CHECK(actionOf(desk, id)->toolTip().contains(QStringLiteral("open elsewhere")));
  }
  for (const char* id : {"edit.copy", "view.look", "tool.select", "tool.measure", "file.saveAs", "choice.compare"})
    CHECK(actionOf(desk, id)->isEnabled());

  desk.press("Just look");
  CHECK_FALSE(desk.window->messages().isShowing());
  desk.edit();  // by whatever way
  CHECK(desk.window->controller().document().hair().white_frac == 0.1);
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(desk.window->messages().text().contains(QStringLiteral("already open")));
  plan::Plan dragged = desk.window->controller().document();
  dragged.put(plan::kHairId, plan::Hair{});
  desk.window->controller().setTentative(dragged);
  CHECK_FALSE(desk.window->controller().isTentative());

  desk.press("Change it anyway");
  CHECK(desk.window->controller().access() == kFull);
  CHECK_FALSE(desk.window->messages().isShowing());
  CHECK(actionOf(desk, "piece.add")->isEnabled());
  desk.edit();
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);
  actionOf(desk, "file.save")->trigger();  // the other still runs: asked before it is changed there
  CHECK(white(path) == 0.1);
  desk.press("Replace it");
  CHECK(white(path) == 0.77);
}

TEST_CASE("every command that changes a plan is held back while it may only be read", "[lock]") {
  // Triggers all that are on and sees that the plan stays; no dialog is waited for.
  Desk desk;
  const QString path = desk.file("shared");
  tests::Child other("hold-lock", {path});
  other.waitUntilReady();
  desk.window->openPath(path);
  desk.window->controller().select(document::Selection::one("piece-1"));
  const plan::Plan before = desk.window->controller().document();
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    const bool leaves = spec.id.startsWith(QStringLiteral("file.")) || spec.id.startsWith(QStringLiteral("window."));
    if (leaves || !desk.window->actions().action(spec.id)->isEnabled()) continue;
    INFO(spec.id.toStdString());
    desk.window->messages().clear(QStringLiteral("in-use"));
    desk.window->actions().action(spec.id)->trigger();
    CHECK(desk.window->controller().document() == before);
    // None of them ran into the refusal: it would have had to be held back.
    CHECK_FALSE(desk.window->messages().text().contains(QStringLiteral("already open")));
    actionOf(desk, "file.back")->trigger();
    desk.window->controller().select(document::Selection::one("piece-1"));
  }
}

TEST_CASE("what is typed into a card of a plan that may only be read does not stay there", "[lock]") {
  Desk desk;
  const QString path = desk.file("shared");
  tests::Child other("hold-lock", {path});
  other.waitUntilReady();
  desk.window->viewState().setTool(document::Tool::Section);
  desk.window->openPath(path);
  CHECK(desk.window->viewState().tool() == document::Tool::Select);  // nothing can be drawn
  desk.press("Just look");
  desk.window->controller().select(document::Selection::one("piece-1"));
  auto* thickness = tests::numberNamed(*desk.window->cards().pieceCard(), QStringLiteral("Thickness"));
  REQUIRE(thickness);
  const QString before = thickness->edit()->text();
  tests::typeInto(thickness->edit(), QStringLiteral("9"));
  QTest::keyClick(thickness->edit(), Qt::Key_Return);
  CHECK(thickness->edit()->text() == before);
  CHECK(thickness->value() == 5);
  CHECK(desk.window->messages().text().contains(QStringLiteral("already open")));
}

TEST_CASE("a plan that may only be read becomes a copy of one's own", "[lock]") {
  Desk desk;
  const QString path = desk.file("shared"), copy = desk.dir.filePath(QStringLiteral("copy.json"));
  tests::Child other("hold-lock", {path});
  other.waitUntilReady();
  desk.window->openPath(path);
  desk.press("Work on a copy");
  CHECK(desk.window->controller().access() == kFull);
  CHECK(desk.window->controller().file().path.isEmpty());
  CHECK(desk.window->controller().isModified());
  desk.edit();
  saveAs(desk, path);  // not over the other's plan without being told
  CHECK(white(path) == 0.1);
  desk.press("Stay");
  saveAs(desk, copy);
  CHECK(white(copy) == 0.77);
  CHECK(white(path) == 0.1);
  CHECK(isLocked(copy));
}

TEST_CASE("the lock of a program that was killed is taken over, whatever the clock says", "[lock]") {
  Desk desk;
  const QString path = desk.file("shared");
  {
    tests::Child other("hold-lock", {path});
    other.waitUntilReady();
  }
  REQUIRE(isLocked(path));  // it had no time to tidy up
  QFile file(PlanLock::lockFileOf(path));
  REQUIRE(file.open(QIODevice::ReadWrite));
  REQUIRE(file.setFileTime(QDateTime::currentDateTime().addYears(20), QFileDevice::FileModificationTime));
  file.close();
  desk.window->openPath(path);
  CHECK(desk.window->controller().access() == kFull);
  CHECK_FALSE(desk.window->messages().isShowing());
  CHECK(isLocked(path));
}

TEST_CASE("a lock file that names nobody is told, and does not keep anyone out for ever", "[lock]") {
  Desk desk;
  const QString path = desk.file("shared");
  QFile file(PlanLock::lockFileOf(path));
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.close();
  desk.window->openPath(path);
  CHECK(desk.window->controller().access() == kReadOnly);
  CHECK(desk.window->messages().text().contains(QStringLiteral("it is not known where")));
  desk.press("Change it anyway");
  desk.edit();
  actionOf(desk, "file.save")->trigger();
  CHECK(white(path) == 0.77);
}

TEST_CASE("the lock goes with the plan: save as, another plan, close", "[lock]") {
  Desk desk;
  const QString first = desk.file("first"), second = desk.file("second"), third = desk.dir.filePath(QStringLiteral("third.json"));
  desk.window->openPath(first);
  CHECK(isLocked(first));
  CHECK(QFileInfo(PlanLock::lockFileOf(first)).fileName() == QStringLiteral(".first.json.in-use"));
  saveAs(desk, third);
  CHECK(desk.window->messages().text().contains(QStringLiteral("Saved as third.json. You go on in it; first.json stays")));
  CHECK_FALSE(isLocked(first));
  CHECK(isLocked(third));
  desk.window->openPath(second);
  CHECK_FALSE(isLocked(third));
  CHECK(isLocked(second));
  desk.window->openPath(second);  // once more, in the same window
  CHECK(desk.window->controller().access() == kFull);
  CHECK(isLocked(second));
  desk.window->openPath(desk.dir.filePath(QStringLiteral("missing.json")));
  CHECK(isLocked(second));  // what is open stays locked
  desk.window->close();
  CHECK_FALSE(isLocked(second));
}

TEST_CASE("two names of one file are one plan, and one window asks before it writes over another's", "[lock]") {
  Desk desk;
  const QString path = desk.file("real"), other = desk.file("other"), link = desk.dir.filePath(QStringLiteral("link.json"));
  REQUIRE(QFile::link(path, link));
  CHECK(PlanLock::lockFileOf(link) == PlanLock::lockFileOf(path));
  desk.window->openPath(path);
  desk::MainWindow* second = desk.window->newWindow();
  second->openPath(other);
  CHECK(second->controller().access() == kFull);
  second->actions().action(QStringLiteral("file.saveAs"))->trigger();
  auto* dialog = second->findChild<QFileDialog*>();
  REQUIRE(dialog);
  Q_EMIT dialog->fileSelected(link);
  CHECK(second->messages().text().contains(QStringLiteral("another window of this program")));
  CHECK(store::openPlan(path)->plan.info().title == "real");
  second->close();
}

TEST_CASE("where no lock can be made the plan opens, and it is said", "[lock]") {
  PlanLock lock;
  CHECK(lock.take(QStringLiteral("/proc/plan.json")) == PlanLock::Standing::CannotTell);
  CHECK_FALSE(lock.isHeldFor(QStringLiteral("/proc/plan.json")));
}

// ---- changes from outside -------------------------------------------------------

TEST_CASE("the program's own saves are never taken for somebody else's", "[watch]") {
  Desk desk;
  desk.window->openPath(desk.file("own"));
  int alarms = 0;
  const auto count = [&] { ++alarms; };
  QObject::connect(&desk.window->fileWatch(), &store::FileWatch::changedOnDisk, count);
  QObject::connect(&desk.window->fileWatch(), &store::FileWatch::goneFromDisk, count);
  for (int i = 0; i < 5; ++i) {
    desk.edit();
    actionOf(desk, "file.save")->trigger();
    QTest::qWait(60);
    desk.window->controller().undoStack().undo();
    actionOf(desk, "file.save")->trigger();
  }
  QTest::qWait(600);
  desk.window->fileWatch().look();
  CHECK(alarms == 0);
  // A file written anew with what it held is no change either.
  QFile file(desk.window->controller().file().path);
  REQUIRE(file.open(QIODevice::ReadWrite));
  const QByteArray bytes = file.readAll();
  file.resize(0);
  file.seek(0);
  file.write(bytes);
  file.close();
  QTest::qWait(600);
  CHECK(alarms == 0);
}

TEST_CASE("a plan changed by another program is noticed by itself and read anew, with a way back", "[watch]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  desk.file("shared", 0.5);  // someone else
  REQUIRE(QTest::qWaitFor([&] { return desk.window->messages().isShowing(); }));
  CHECK(desk.window->messages().text().contains(QStringLiteral("shared.json was saved meanwhile")));
  desk.press("Read it anew");
  CHECK(desk.window->controller().document().hair().white_frac == 0.5);
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK_FALSE(desk.window->messages().isShowing());
  actionOf(desk, "edit.undo")->trigger();
  CHECK(desk.window->controller().document().hair().white_frac == 0.1);
  CHECK(desk.window->controller().isModified());
}

TEST_CASE("reading anew keeps the taps made since and those of the file", "[watch][log]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  auto& controller = desk.window->controller();
  work::AppointmentLog log;
  std::int64_t ms = 0;
  const auto tap = [&](work::AppointmentLog& to, const char* run) {
    work::LogEvent event;
    event.tap = work::Tap::Looked;
    event.pieces = {"piece-1"};
    ms += 60'000;
    to = work::appended(to, event, {1'700'000'000'000 + ms, ms, run});
  };
  using document::DocumentController;
  for (int i = 0; i < 2; ++i) tap(log, "here");
  controller.record(DocumentController::Record::Log, work::writeLog(log));
  actionOf(desk, "file.save")->trigger();
  // Elsewhere the saved plan goes on by one tap; here by three.
  const auto other = store::openPlan(path);
  REQUIRE(other.ok());
  plan::Plan theirs = other->plan;
  plan::PlanInfo info = theirs.info();
  work::AppointmentLog elsewhere = log;
  tap(elsewhere, "elsewhere");
  info.logJson = work::writeLog(elsewhere);
  theirs.put(plan::kPlanId, info);
  for (int i = 0; i < 3; ++i) tap(log, "here");
  controller.record(DocumentController::Record::Log, work::writeLog(log));
  REQUIRE(store::savePlan(theirs, path).ok());
  desk.window->fileWatch().look();
  desk.press("Read it anew");
  if (desk.window->messages().isShowing()) desk.press("Read it anew");  // asked first where something is unsaved
  const auto both = work::readLog(controller.document().info().logJson);
  REQUIRE(both.ok());
  CHECK(both->events.size() == 6);
  CHECK(controller.isModified());  // the file does not have them all
}

TEST_CASE("putting one's own plan in its place takes nobody's taps away", "[watch][log]") {
  for (const bool keepFirst : {false, true}) {
    INFO(keepFirst);
    Desk desk;
    const QString path = desk.file("shared");
    desk.window->openPath(path);
    auto& controller = desk.window->controller();
    const auto tapped = [](const char* run, std::int64_t ms) {
      work::LogEvent event;
      event.tap = work::Tap::Placed;
      event.pieces = {"piece-1"};
      return work::appended({}, event, {1'700'000'000'000 + ms, ms, run});
    };
    plan::Plan theirs = controller.document();
    plan::PlanInfo info = theirs.info();
    info.logJson = work::writeLog(tapped("elsewhere", 60'000));
    info.agreedJson = R"({"date": "2026-01-02"})";
    theirs.put(plan::kPlanId, info);
    REQUIRE(store::savePlan(theirs, path).ok());
    controller.record(DocumentController::Record::Log, work::writeLog(tapped("here", 120'000)));
    desk.edit();
    if (keepFirst) {
      desk.window->fileWatch().look();
      desk.press("Keep mine");
      actionOf(desk, "file.save")->trigger();
    } else {
      actionOf(desk, "file.save")->trigger();
      CHECK(desk.window->messages().text().contains(QStringLiteral("taps, visits and agreed pictures are put together")));
      desk.press("Put mine in its place");
    }
    CHECK_FALSE(controller.isModified());
    const auto saved = store::openPlan(path);
    REQUIRE(saved.ok());
    CHECK(saved->plan.hair().white_frac == 0.77);
    CHECK(work::readLog(saved->plan.info().logJson)->events.size() == 2);
    CHECK(saved->plan.info().agreedJson == info.agreedJson);
  }
}

TEST_CASE("what cannot be taken over from another version is said, and not called taken over", "[watch][log]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  plan::Plan other = plan::Plan::fresh(777);  // another client's
  REQUIRE(store::savePlan(other, path).ok());
  desk.window->fileWatch().look();
  desk.press("Keep mine");
  QString said = desk.window->messages().text();
  desk.press("Close");
  said += desk.window->messages().text();
  CHECK(said.contains(QStringLiteral("the agreed picture, the visits, the log")));
  CHECK(said.contains(QStringLiteral("Yours stays, unsaved. Your next save")));
}

TEST_CASE("with changes here, reading anew asks, and undo brings them back", "[watch]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  desk.edit();
  desk.file("shared", 0.5);
  desk.window->fileWatch().look();
  CHECK(desk.window->messages().text().contains(QStringLiteral("you have changes here too")));
  desk.press("Read it anew");
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);  // asked first
  desk.press("Stay");
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);
  desk.window->fileWatch().look();
  CHECK_FALSE(desk.window->messages().isShowing());  // told once
  desk.file("shared", 0.6);
  desk.window->fileWatch().look();
  desk.press("Read it anew");
  desk.press("Read it anew");
  CHECK(desk.window->controller().document().hair().white_frac == 0.6);
  actionOf(desk, "edit.undo")->trigger();
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);
}

TEST_CASE("keeping one's own makes the plan unsaved, and saving it is not asked again", "[watch]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  desk.file("shared", 0.5);
  desk.window->fileWatch().look();
  desk.press("Keep mine");
  CHECK(desk.window->controller().isModified());
  CHECK_FALSE(desk.window->close());  // it asks
  desk.press("Stay");
  actionOf(desk, "file.save")->trigger();
  CHECK(white(path) == 0.1);
  CHECK_FALSE(desk.window->controller().isModified());
  // What was there is kept beside it.
  CHECK(white(path + QStringLiteral(".previous")) == 0.5);
}

TEST_CASE("a file that is gone is said, and the plan is safe", "[watch]") {
  Desk desk;
  const QString path = desk.file("gone");
  desk.window->openPath(path);
  REQUIRE(QFile::remove(path));
  REQUIRE(QTest::qWaitFor([&] { return desk.window->messages().isShowing(); }));
  CHECK(desk.window->messages().text().contains(QStringLiteral("gone.json is not there any more")));
  CHECK(desk.window->controller().isModified());
  // It is unsaved work now, and autosaved as such.
  REQUIRE(QTest::qWaitFor([&] { return !desk.window->recovery().folder().isEmpty(); }));
  desk.press("Save it there again");
  CHECK(white(path) == 0.1);
  CHECK_FALSE(desk.window->controller().isModified());
}

TEST_CASE("a plan that someone write-protected is looked at, and changed only when that is said", "[lock]") {
  Desk desk;
  const QString path = desk.file("master"), other = desk.file("other");
  const auto protect = [](const QString& file) { REQUIRE(QFile::setPermissions(file, QFile::ReadOwner | QFile::ReadGroup)); };
  protect(path);
  desk.window->openPath(path);
  CHECK(desk.window->controller().access() == kReadOnly);
  CHECK(desk.window->messages().text().contains(QStringLiteral("master.json is write-protected")));
  CHECK(desk.window->actions().whyNot(QStringLiteral("file.save")).contains(QStringLiteral("write-protected")));
  desk.press("Just look");
  desk.edit();
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(desk.window->messages().text().contains(QStringLiteral("write-protected")));
  desk.press("Change it anyway");
  desk.edit();
  actionOf(desk, "file.save")->trigger();
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(white(path) == 0.77);
  CHECK(store::isProtected(path));  // and stays so

  protect(other);
  saveAs(desk, other);
  CHECK(white(other) == 0.1);
  CHECK(desk.window->messages().text().contains(QStringLiteral("other.json is write-protected")));
  desk.press("Replace it");
  CHECK(white(other) == 0.77);
}
