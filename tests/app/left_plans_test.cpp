// Recovery as the window offers it.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QPointer>

#include "app/appointment/appointment_page.h"
#include "app/desk/left_compare_page.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/message_bar.h"
#include "app/desk/plan_changes.h"
#include "app/desk/start_page.h"
#include "app/store/plan_lock.h"
#include "app/store/snapshot_folder.h"
#include "engine/work/log_text.h"
#include "tests/app/desk_fixture.h"
#include "tests/app/every_word.h"

using namespace combdraft;
using desk::LeftPlansBox;
using tests::Desk;

namespace {

struct Left : Desk {
  QString path = file("kept");

  Left() { end(); }
  /// Ends with unsaved work, as if killed.
  void end() {
    window->openPath(path);
    edit();
    REQUIRE(window->recovery().writeNow() == store::Recovery::Written::Yes);
    window.reset();
  }
  LeftPlansBox& box() { return window->startPage().leftPlans(); }
  const LeftPlansBox::Row& row() {
    REQUIRE(box().rows().size() == 1);
    return box().rows().front();
  }
  void click(QPushButton* button) {
    REQUIRE(button);
    QPointer<QPushButton> pressed = button;
    button->click();
    QCoreApplication::processEvents();  // its answer comes with the next turn
  }
  std::vector<store::LeftPlan> left() { return store::findLeftPlans(dir.filePath(QStringLiteral("recovery"))); }
  double white() { return window->controller().document().hair().white_frac; }
};

void setAttempts(const store::LeftPlan& left, int attempts) {
  plan::Disk disk;
  store::SnapshotMeta meta = store::readSnapshotMeta(left.folder);
  meta.attempts = attempts;
  REQUIRE(store::writeSnapshotMeta(left.folder, meta, disk).ok());
}

}  // namespace

TEST_CASE("work left behind is offered on the start page with a picture and its file", "[left]") {
  Left desk;
  desk.open();
  const auto& row = desk.row();
  REQUIRE(row.box->isVisible());
  CHECK(row.words->text().contains(QStringLiteral("kept.json has not changed since")));
  CHECK(row.trouble == nullptr);
  CHECK(row.openSafely == nullptr);
  REQUIRE(QTest::qWaitFor([&] { return desk.box().areDrawingsDone(); }, 20000));
  CHECK_FALSE(row.drawing->pixmap().isNull());
  for (QPushButton* button : {row.open, row.compare, row.keep, row.discard}) {
    REQUIRE(button);
    CHECK(button->accessibleName().contains(QStringLiteral("kept")));
    CHECK(button->height() >= 28);
    CHECK(button->focusPolicy() & Qt::TabFocus);
  }
  desk.click(row.keep);
  CHECK(desk.left().size() == 1);
  desk.click(desk.row().open);
  CHECK(desk.white() == 0.77);
  CHECK(desk.window->controller().isModified());
  CHECK(desk.window->controller().file().path == desk.path);
  CHECK_FALSE(desk.window->isLookPaused());
  // The old snapshot went once the new one was on the disk.
  CHECK(QDir(desk.dir.filePath(QStringLiteral("recovery"))).entryList(QDir::Dirs | QDir::NoDotAndDotDot).size() == 1);
  CHECK_FALSE(desk.window->recovery().folder().isEmpty());
  CHECK(QFile::exists(store::PlanLock::lockFileOf(desk.path)));
}

TEST_CASE("a recovered plan is compared with the saved one", "[left]") {
  Left desk;
  desk.open();
  desk.click(desk.row().compare);
  desk::LeftComparePage& page = desk.window->leftComparePage();
  REQUIRE(page.isVisible());
  CHECK_FALSE(page.picture(0)->pixmap().isNull());
  CHECK_FALSE(page.picture(1)->pixmap().isNull());
  // Neither title nor columns say that anything was saved.
  const QString words = tests::everyWordOf(page);
  INFO(words.toStdString());
  CHECK(words.contains(QStringLiteral("Compare: unsaved work beside the file")));
  CHECK(words.contains(QStringLiteral("Nothing is decided yet. Your unsaved work waits until you open or discard it.")));
  CHECK(words.contains(QStringLiteral("Unsaved work, kept, changed")));
  CHECK(words.contains(QStringLiteral("In the file kept.json")));
  REQUIRE(page.changes()->count() == 1);
  CHECK(page.changes()->item(0)->text().startsWith(QStringLiteral("The hair")));
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(desk.box().isVisible());
  desk.click(desk.row().compare);
  page.openSaved()->click();
  CHECK(desk.white() == 0.1);
  CHECK(desk.left().size() == 1);  // it stays
  desk.window->actions().action(QStringLiteral("file.start"))->trigger();
  desk.click(desk.row().compare);
  page.openRecovered()->click();
  CHECK(desk.white() == 0.77);
}

TEST_CASE("what differs is told in plain words", "[left]") {
  plan::Plan before = plan::Plan::fresh(3);
  plan::Piece piece;
  piece.choice = before.info().activeChoice;
  piece.line = {{150, 80}, {180, 80}};
  for (int i = 1; i <= 12; ++i) {
    piece.order = i;
    before.put("piece-" + std::to_string(i), piece);
  }
  plan::Plan after = before;
  CHECK(desk::planChanges(before, after).isEmpty());
  after.put("piece-1", plan::ItemPtr());
  piece.order = 2, piece.thickness_mm = 9, piece.label = "fringe";
  after.put("piece-2", piece);
  plan::Formula formula;
  formula.letter = "A";
  after.put("formula-1", formula);
  plan::Head head = after.head();
  head.part = {};
  head.hairline.nape_mm = 7;
  after.put(plan::kHeadId, head);
  plan::PlanInfo info = after.info();
  info.title = "Soft";
  after.put(plan::kPlanId, info);
  const QStringList lines = desk::planChanges(before, after);
  CHECK(lines.contains(QStringLiteral("1 piece removed: piece 1")));
  CHECK(lines.contains(QStringLiteral("1 piece changed: fringe")));
  CHECK(lines.contains(QStringLiteral("1 formula added: A")));
  CHECK(lines.contains(QStringLiteral("The title: “” became “Soft”")));
  CHECK(lines.filter(QStringLiteral("The head")).size() == 1);
  CHECK(lines.size() == 5);
  info.logJson = "[]";  // not read, and still not the same
  info.agreedJson = "{}", info.visitsJson = "[1]";
  after.put(plan::kPlanId, info);
  for (const char* line : {"The appointment's log", "The agreed picture", "The visits"})
    CHECK(desk::planChanges(before, after).contains(QString::fromUtf8(line)));
  // A long list is counted.
  for (int i = 1; i <= 12; ++i) before.put("piece-" + std::to_string(i), plan::ItemPtr());
  const QStringList many = desk::planChanges(before, after).filter(QStringLiteral("11 pieces added"));
  REQUIRE(many.size() == 1);
  CHECK(many.front().endsWith(QStringLiteral("and 3 more")));
}

TEST_CASE("discarded work can be put back", "[left]") {
  Left desk;
  desk.open();
  desk.click(desk.row().discard);
  CHECK(desk.box().isHidden());
  CHECK(desk.window->messages().text().contains(QStringLiteral("“kept” was discarded")));
  desk.press("Put back");
  CHECK(QTest::qWaitFor([&] { return desk.row().box->isVisible(); }));
  desk.click(desk.row().open);
  CHECK(desk.white() == 0.77);
}

TEST_CASE("hair that was under product is said first, and leads to the log", "[left][log]") {
  Left desk;
  desk.open();
  desk.click(desk.row().open);
  work::LogEvent placed;
  placed.tap = work::Tap::Placed;
  placed.pieces = {"piece-1"};
  const auto log = work::appended({}, placed, {1'700'000'000'000, 1, "one"});
  desk.window->controller().record(document::DocumentController::Record::Log, work::writeLog(log));
  REQUIRE(desk.window->recovery().writeNow() == store::Recovery::Written::Yes);
  desk.window.reset();
  desk.open();
  const QString words = QStringLiteral("1 piece was not tapped as rinsed; it went on");
  CHECK(desk.row().trouble->text().contains(words));
  desk.window->offerRecovery();
  CHECK(desk.window->messages().text().contains(words));
  // Only taps differ: that is not nothing.
  REQUIRE(desk.left().size() == 1);
  CHECK(desk::planChanges(store::openPlan(desk.path)->plan, *store::peekLeftPlan(desk.left().front()))
            .contains(QStringLiteral("The appointment's log: 0 taps became 1")));
  desk.click(desk.row().discard);
  CHECK(desk.window->messages().text().contains(words));
  CHECK(desk.left().size() == 1);  // asked first
  desk.press("Open recovered");
  CHECK(desk.window->messages().text().contains(words));
  desk.press("Open the log");
  CHECK(desk.window->appointmentPage().view() == appointment::AppointmentPage::View::Log);
  CHECK(desk.window->appointmentPage().isVisible());
}

TEST_CASE("after two openings that ended the program the look waits until it is asked for", "[left]") {
  Left desk;
  setAttempts(desk.left().front(), 2);
  desk.open();
  desk.window->offerRecovery();
  const auto& row = desk.row();
  REQUIRE(row.openSafely);
  REQUIRE(row.trouble);
  CHECK(row.trouble->text().contains(QStringLiteral("2 times")));
  desk.press("Open without the look");
  CHECK(desk.white() == 0.77);
  CHECK(desk.window->isLookPaused());
  CHECK(desk.window->viewState().layer() == document::Layer::Diagram);
  desk.edit();
  QTest::qWait(100);
  CHECK(desk.window->lookService().requestsPosted() == 0);
  CHECK(desk.window->actions().action(QStringLiteral("view.workOutLook"))->isEnabled());
  // Counted on, so that the third time is offered the same way.
  CHECK(store::readSnapshotMeta(desk.window->recovery().folder()).attempts == 3);
  desk.press("Work out the look");
  CHECK_FALSE(desk.window->isLookPaused());
  CHECK(QTest::qWaitFor([&] { return desk.window->lookService().requestsPosted() == 1; }));
}

TEST_CASE("a plan whose picture ended the program is not drawn again", "[left]") {
  Left desk;
  QFile mark(desk.left().front().folder + QStringLiteral("/drawing"));
  REQUIRE(mark.open(QIODevice::WriteOnly));
  mark.close();
  desk.open();
  const auto& row = desk.row();
  REQUIRE(row.trouble);
  CHECK(row.trouble->text().contains(QStringLiteral("while it read or drew")));
  REQUIRE(QTest::qWaitFor([&] { return desk.box().areDrawingsDone(); }));
  CHECK(row.drawing->pixmap().isNull());
  CHECK(row.openSafely);
  CHECK_FALSE(row.compare);
}

TEST_CASE("what cannot be read says why, gives its bytes and stays", "[left]") {
  Left desk;
  const QString folder = desk.left().front().folder;
  REQUIRE(QFile::remove(folder + QStringLiteral("/quick.json")));
  REQUIRE(QFile::resize(folder + QStringLiteral("/plan.json"), 200));
  desk.open();
  const auto& row = desk.row();
  REQUIRE(row.trouble);
  CHECK(row.trouble->text().contains(QStringLiteral("not valid JSON")));
  CHECK_FALSE(row.open);
  CHECK_FALSE(row.discard);
  desk.click(row.copy);
  auto* dialog = desk.window->findChild<QFileDialog*>(QStringLiteral("copyLeft"));
  REQUIRE(dialog);
  const QString copy = desk.dir.filePath(QStringLiteral("bytes.json"));
  Q_EMIT dialog->fileSelected(copy);
  CHECK(QFileInfo(copy).size() == 200);
  CHECK(desk.left().size() == 1);
}
