// For a class: foil by foil with its reason, the pause, the blank sheet, a
// student's plan beside the teacher's.
#include <QDir>
#include <QFileDialog>
#include <QMenuBar>

#include "app/chair/blank_sheet.h"
#include "app/chair/class_view.h"
#include "app/chair/touch_controls.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using chair::ClassStep;
using chair::ClassView;
using desk::MainWindow;

namespace {

// How light is how many pieces there are; what was asked for is written down.
live::LookService::Passes countingPasses() {
  const auto pass = [](const plan::Plan& plan, const look::LookSettings& settings,
                       const std::vector<look::PictureRequest>&, std::stop_token) -> Result<look::LookFrame> {
    look::Readings readings;
    readings.whole.level = 4 + 0.25 * static_cast<double>(plan.pieces().size());
    readings.whole.lightness = 6 * readings.whole.level;
    readings.whole.light_share = settings.subject == look::Subject::Today ? 0 : 0.01 * static_cast<double>(plan.pieces().size());
    look::LookFrame frame;
    frame.readings = std::make_shared<const look::Readings>(readings);
    return frame;
  };
  return {pass, pass};
}

plan::Plan lesson() {
  plan::Plan plan = tests::demoPlan();
  const auto change = [&](const char* id, const char* foil, const char* note) {
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.foil = foil;
    piece.note = note;
    plan.put(id, piece);
  };
  change("piece-1", "one", "Light under the occipital keeps the ends bright.");
  change("piece-4", "one", "");
  change("piece-5", "one", "A left-out shares no foil.");
  for (const char* id : {"piece-2", "piece-3"}) {  // one step on the sheet
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.section = "section-1";
    plan.put(id, piece);
  }
  plan::Treatment glaze;
  glaze.choice = "choice-1";
  plan.put("treatment-1", glaze);
  return plan;
}

struct Lesson : tests::Desk {
  std::unique_ptr<QPointingDevice> screen{QTest::createTouchDevice()};

  explicit Lesson(QSize size = {1180, 820}) : Desk(countingPasses) {
    window->openPath(save(lesson(), "lesson"));
    REQUIRE(isFresh());
    window->actions().action(QStringLiteral("show.class"))->trigger();
    CHECK(window->isFullScreen());
    window->showNormal();  // the screen of the tests is small
    window->resize(size);
    REQUIRE(QTest::qWaitFor([&] { return view().size() == size; }, 3000));
    QTest::qWait(50);
  }
  QString save(const plan::Plan& plan, const char* name) {
    const QString path = dir.filePath(QStringLiteral("%1.json").arg(QLatin1String(name)));
    REQUIRE(store::savePlan(plan, path).ok());
    return path;
  }
  ClassView& view() { return window->classView(); }
  bool shows(double level) {
    return QTest::qWaitFor([&] {
      const chair::Pane& pane = view().picture()->pane(1);
      return pane.state.isEmpty() && pane.look && pane.look->frame.readings->whole.level == level;
    }, 5000);
  }
};

}  // namespace

TEST_CASE("a plan is taken apart foil by foil in working order", "[class]") {
  const plan::Plan plan = lesson();
  const auto steps = chair::classSteps(plan);
  REQUIRE(steps.size() == 1 + 7 + 2);  // two of eight pieces share a foil
  CHECK(steps.front().kind == ClassStep::Kind::Today);
  CHECK(steps[1].pieces == std::vector<plan::ItemId>{"piece-1", "piece-4"});
  CHECK(steps[4].pieces == std::vector<plan::ItemId>{"piece-5"});
  CHECK(steps[8].kind == ClassStep::Kind::Predict);
  CHECK(steps[9].kind == ClassStep::Kind::Opened);
  CHECK(chair::planAfter(plan, steps, 0).pieces().empty());
  CHECK(chair::planAfter(plan, steps, 1).pieces().size() == 2);
  CHECK(chair::planAfter(plan, steps, 7).pieces().size() == 8);
  CHECK(chair::planAfter(plan, steps, 7).treatments().empty());
  CHECK(chair::planAfter(plan, steps, 9) == plan);
  CHECK(chair::foilCount(steps, 4).now == 4);
  CHECK(chair::foilCount(steps, 4).all == 7);
  CHECK(chair::viewOf(plan, steps[1]) == head::ViewName::Back);
  CHECK(chair::classSteps(plan::Plan::fresh(3)).size() == 1);

  // A twin that comes before its source stands alone meanwhile.
  plan::Plan twins = plan;
  plan::Piece twin = *plan.find<plan::Piece>("piece-2");
  twin.order = 0;
  twin.twinOf = "piece-3";
  twins.put("piece-2", twin);
  const auto first = chair::planAfter(twins, chair::classSteps(twins), 1);
  REQUIRE(first.find<plan::Piece>("piece-2"));
  CHECK(first.find<plan::Piece>("piece-2")->twinOf.empty());
}

TEST_CASE("next and back build the pattern with its reasons and the look grows", "[class]") {
  Lesson lesson;
  ClassView& view = lesson.view();
  CHECK(view.titleText() == QLatin1String("Today"));
  CHECK_FALSE(view.backButton()->isEnabled());
  REQUIRE(lesson.shows(4));
  CHECK(view.picture()->pane(1).look->settings.subject == look::Subject::Today);
  view.nextButton()->click();
  CHECK(view.titleText() == QLatin1String("Pieces 1, 4 (steps 1, 3 on the sheet)"));
  CHECK(view.picture()->line().contains(QLatin1String("how far this hair lightens")));
  CHECK(view.nextButton()->text() == QLatin1String("Place the next"));
  CHECK(view.backButton()->text() == QLatin1String("Take it back"));
  CHECK(view.whatText().contains(QLatin1String("Piece 1")));
  CHECK(view.whatText().contains(QLatin1String("Piece 4")));
  CHECK(view.reasonText() == QLatin1String("Light under the occipital keeps the ends bright."));
  CHECK(view.picture()->pane(0).kind == chair::Pane::Kind::Diagram);
  CHECK(view.picture()->pane(0).marked == std::vector<plan::ItemId>{"piece-1", "piece-4"});
  CHECK(view.picture()->pane(0).scene->pieces().size() == 2);
  REQUIRE(lesson.shows(4.5));
  QTest::keyClick(&view, Qt::Key_PageDown);
  CHECK(view.titleText() == QLatin1String("Piece 2 (step 2 on the sheet)"));
  CHECK(view.reasonText().contains(QLatin1String("Dark hair between the teeth")));  // no note: as the sheet says
  REQUIRE(lesson.shows(4.75));
  QTest::keyClick(&view, Qt::Key_PageUp);
  CHECK(view.titleText().startsWith(QLatin1String("Pieces 1, 4")));
  CHECK(lesson.shows(4.5));
  view.goTo(3);
  CHECK(view.titleText() == QLatin1String("Piece 3 (step 2 on the sheet)"));

  QTest::keyClick(&view, Qt::Key_End);
  QTest::keyClick(&view, Qt::Key_Left);
  CHECK(view.titleText() == QLatin1String("Before the crown opens"));
  CHECK(view.whatText().contains(QLatin1String("What will show")));
  CHECK(view.nextButton()->text() == QLatin1String("Open the crown"));
  REQUIRE(lesson.shows(6));
  CHECK(view.picture()->pane(1).look->settings.worn.way == hair::WornWay::Down);
  QTest::keyClick(&view, Qt::Key_Right);
  REQUIRE(QTest::qWaitFor([&] {
    const auto& pane = view.picture()->pane(1);
    return pane.state.isEmpty() && pane.look && pane.look->settings.worn.way == hair::WornWay::CrownOpened;
  }, 5000));
  CHECK_FALSE(view.nextButton()->isEnabled());
  CHECK(lesson.window->controller().document() == store::openPlan(lesson.dir.filePath(QStringLiteral("lesson.json")))->plan);
}

TEST_CASE("the blank sheet keeps what fingers draw until it is wiped or closed", "[class][touch]") {
  Lesson lesson;
  ClassView& view = lesson.view();
  view.goTo(8);
  lesson.view().sheetButton()->click();
  REQUIRE(view.isDrawing());
  chair::BlankSheet& sheet = *view.sheet();
  QTest::qWait(20);
  const QPoint a(sheet.width() / 2 - 80, sheet.height() / 2), b(sheet.width() / 2 + 80, sheet.height() / 2);
  lesson.window->move(lesson.window->pos() + QPoint(300, 400) - sheet.mapToGlobal(a));  // the screen of the tests is small
  QTest::touchEvent(&sheet, lesson.screen.get()).press(0, a, &sheet).press(1, b, &sheet);  // two hands draw at once
  for (int i = 1; i <= 6; ++i)
    QTest::touchEvent(&sheet, lesson.screen.get()).move(0, a + QPoint(0, 9 * i), &sheet).move(1, b - QPoint(0, 9 * i), &sheet);
  QTest::touchEvent(&sheet, lesson.screen.get()).release(0, a + QPoint(0, 54), &sheet).release(1, b - QPoint(0, 54), &sheet);
  REQUIRE(sheet.strokes().size() == 2);
  CHECK(sheet.strokes()[0].size() >= 5);
  QTest::mousePress(&sheet, Qt::LeftButton, {}, a);
  QTest::mouseMove(&sheet, a + QPoint(30, 30));
  QTest::mouseRelease(&sheet, Qt::LeftButton, {}, a + QPoint(30, 30));
  CHECK(sheet.strokes().size() == 3);
  const QImage drawn = sheet.grab().toImage();

  view.nextButton()->click();  // the crown opens; the sheet waits
  CHECK_FALSE(view.isDrawing());
  view.sheetButton()->click();
  CHECK(sheet.strokes().size() == 3);
  QTest::qWait(20);
  CHECK(sheet.grab().toImage() == drawn);
  QTest::keyClick(&sheet, Qt::Key_Backspace);
  CHECK(sheet.strokes().size() == 2);
  view.wipeButton()->click();
  CHECK(sheet.strokes().empty());
  CHECK_FALSE(sheet.grab().toImage() == drawn);
  QTest::keyClick(&view, Qt::Key_Escape);
  CHECK_FALSE(view.isDrawing());
  CHECK(lesson.window->showing() == MainWindow::Showing::Class);
}

TEST_CASE("a student's plan stands beside the teacher's with the differences named", "[class]") {
  Lesson desk;
  ClassView& view = desk.view();
  plan::Plan student = lesson();
  student.put("piece-8", plan::ItemPtr());
  student.put("piece-7", plan::ItemPtr());
  plan::Piece moved = *student.find<plan::Piece>("piece-2");
  moved.start_mm = 5;
  student.put("piece-2", moved);
  desk.window->takeStudent(desk.save(student, "homework"));
  REQUIRE(view.hasStudent());
  REQUIRE(QTest::qWaitFor([&] { return view.picture()->pane(0).state.isEmpty() && view.picture()->pane(1).state.isEmpty(); }, 5000));
  CHECK(view.picture()->pane(0).look->frame.readings->whole.level == 6);
  CHECK(view.picture()->pane(1).look->frame.readings->whole.level == 5.5);
  CHECK(view.picture()->pane(1).title == QStringLiteral("The student\u2019s plan"));  // not its file's name
  CHECK(view.reasonText().contains(QLatin1String("2 pieces removed: piece 7, piece 8")));
  CHECK(view.reasonText().contains(QLatin1String("1 piece changed: piece 2")));
  CHECK(view.whatText().contains(QLatin1String("0.5 levels darker")));
  CHECK(view.whatText().contains(QStringLiteral("8 in the teacher\u2019s, 6 in the student\u2019s")));
  CHECK_FALSE(view.nextButton()->isEnabled());
  desk.window->takeStudent(desk.dir.filePath(QStringLiteral("missing.json")));
  CHECK(view.noticeText().contains(QLatin1String("missing.json")));
  CHECK(view.hasStudent());
  QTest::keyClick(&view, Qt::Key_Escape);
  CHECK_FALSE(view.hasStudent());
  CHECK(view.titleText() == QLatin1String("Today"));
  // The end of the lesson is never shown under that name.
  REQUIRE(QTest::qWaitFor([&] { return view.picture()->pane(1).look && view.picture()->pane(1).state.isEmpty(); }, 5000));
  CHECK(view.picture()->pane(1).look->frame.readings->whole.level < 6);
  QTest::keyClick(&view, Qt::Key_Escape);
  CHECK(desk.window->showing() == MainWindow::Showing::Desk);
  CHECK(desk.window->menuBar()->isVisible());
  CHECK(desk.isFresh());
}

TEST_CASE("a class never sees the folder of the clients' plans", "[class]") {
  Lesson desk;
  const auto folderShown = [&desk] {
    desk.view().studentButton()->click();
    auto* dialog = desk.window->findChild<QFileDialog*>(QStringLiteral("studentsPlan"));
    REQUIRE(dialog);
    const QString folder = dialog->directory().canonicalPath();
    delete dialog;
    return folder;
  };
  const QString plans = QDir(desk.dir.path()).canonicalPath();  // where the teacher's was opened
  CHECK(desk.view().studentButton()->toolTip().contains(QStringLiteral("everybody sees")));
  CHECK(folderShown() != plans);
  REQUIRE(QDir(plans).mkdir(QStringLiteral("students")));
  desk.window->takeStudent(desk.save(lesson(), "students/homework"));
  REQUIRE(desk.view().hasStudent());
  CHECK(desk.view().studentButton()->toolTip().isEmpty());  // it leads back now
  desk.view().closeStudent();
  CHECK(folderShown() == plans + QStringLiteral("/students"));
  // A file that cannot be read leads nowhere.
  desk.window->takeStudent(desk.dir.filePath(QStringLiteral("missing.json")));
  CHECK(folderShown() == plans + QStringLiteral("/students"));
}

TEST_CASE("the class view fits wide and tall windows", "[class]") {
  const QSize size = GENERATE(QSize(1180, 820), QSize(820, 1180), QSize(1920, 1080));
  Lesson lesson(size);
  lesson.view().goTo(1);
  QTest::qWait(30);
  const QRect window = lesson.view().rect();
  for (QAbstractButton* button : lesson.view().findChildren<QAbstractButton*>()) {
    if (!button->isVisible()) continue;
    INFO(button->text().toStdString());
    CHECK(button->height() >= 48);
    CHECK(button->width() >= 48);
    CHECK(button->width() >= button->minimumSizeHint().width());
    CHECK(window.contains(QRect(button->mapTo(&lesson.view(), QPoint(0, 0)), button->size())));
    CHECK_FALSE((button->accessibleName() + button->text()).isEmpty());
  }
  CHECK(lesson.view().picture()->height() > window.height() * 4 / 10);
}

TEST_CASE("a choice without pieces says so instead of a lesson", "[class]") {
  tests::Desk desk(countingPasses);
  plan::Plan empty = plan::Plan::fresh(9);
  const QString path = desk.dir.filePath(QStringLiteral("empty.json"));
  REQUIRE(store::savePlan(empty, path).ok());
  desk.window->openPath(path);
  REQUIRE(desk.isFresh());
  desk.window->actions().action(QStringLiteral("show.class"))->trigger();
  CHECK(desk.window->classView().whatText().contains(QLatin1String("no pieces")));
  CHECK_FALSE(desk.window->classView().nextButton()->isEnabled());
}
