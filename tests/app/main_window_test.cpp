// The whole window with a stand-in for the engine: opening, asking, dropping,
// new plans, recovery, and that everything has a name and a way for the keyboard.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDropEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <QToolBar>
#include <QToolButton>
#include <QUrl>
#include <set>

#include "app/cards/consultation_card.h"
#include "app/cards/piece_card.h"
#include "app/desk/card_column.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/new_plan_page.h"
#include "app/desk/readings_strip.h"
#include "app/desk/start_page.h"
#include "app/desk/worn_bar.h"
#include "app/store/client_keeper.h"
#include "app/store/plan_store.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_fixture.h"
#include "tests/support/places.h"

using namespace combdraft;
using tests::Desk;

namespace {

QString nameOf(const QWidget* widget) {
  if (!widget->accessibleName().isEmpty()) return widget->accessibleName();
  if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) return button->text();
  return {};
}

}  // namespace

TEST_CASE("grey hair has a lightness, not a level", "[desk][readings]") {
  look::Reading reading;
  reading.level = 9.7;
  reading.lightness = 57;
  reading.a = 1.3, reading.b = 6;  // dark with white among it
  CHECK(desk::readingText(reading, nullptr).level == QStringLiteral("Light as 9.7"));
  reading.a = 4, reading.b = 28;  // bare and warm
  CHECK(desk::readingText(reading, nullptr).level == QStringLiteral("Level 9.7"));
  reading.level = 11;
  CHECK(desk::readingText(reading, nullptr).level == QStringLiteral("Level 10+"));
}

TEST_CASE("every action has its words, its own key, and a place in a menu", "[desk]") {
  Desk desk;
  std::set<QAction*> inMenus;
  const std::function<void(QMenu*)> walk = [&](QMenu* menu) {
    for (QAction* action : menu->actions()) {
      if (action->menu()) walk(action->menu());
      inMenus.insert(action);
    }
  };
  for (QAction* action : desk.window->menuBar()->actions()) walk(action->menu());
  std::set<QString> ids, keys;
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK(ids.insert(spec.id).second);
    CHECK_FALSE(spec.text.isEmpty());
    CHECK(spec.tip.size() > 10);
    CHECK(spec.run);
    if (!spec.shortcut.isEmpty()) CHECK(keys.insert(spec.shortcut.toString()).second);
    CHECK(inMenus.contains(desk.window->actions().action(spec.id)));
  }
  CHECK(ids.size() > 20);
  for (const QToolButton* button : desk.window->findChildren<QToolBar*>().front()->findChildren<QToolButton*>()) {
    if (!button->defaultAction()) continue;  // Qt's own overflow button
    CHECK_FALSE(button->accessibleName().isEmpty());
    CHECK_FALSE(button->icon().isNull());
  }
}

TEST_CASE("the appointment has a menu of its own and no letter is given twice", "[desk]") {
  Desk desk;
  const auto checkLetters = [](const QList<QAction*>& entries) {
    std::set<QString> letters;
    for (const QAction* entry : entries) {
      const QString text = entry->text().remove(QStringLiteral("&&"));
      INFO(text.toStdString());
      if (const auto at = text.indexOf(u'&'); at >= 0) CHECK(letters.insert(text.mid(at + 1, 1).toLower()).second);
    }
  };
  const QList<QAction*> menus = desk.window->menuBar()->actions();
  checkLetters(menus);
  QStringList titles;
  for (const QAction* entry : menus) {
    QMenu* menu = entry->menu();
    REQUIRE(menu);
    const QString title = entry->text().remove(u'&');
    titles << title;
    checkLetters(menu->actions());
    for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
      if (!spec.id.startsWith(QStringLiteral("appointment."))) continue;
      INFO(title.toStdString() << ": " << spec.id.toStdString());
      CHECK(menu->actions().contains(desk.window->actions().action(spec.id)) == (title == QStringLiteral("Appointment")));
    }
  }
  CHECK(titles.contains(QStringLiteral("Appointment")));
}

TEST_CASE("the row of tools takes a second line rather than cut a word", "[desk]") {
  Desk desk;
  desk.window->resize(1180, 820);
  QApplication::processEvents();
  QToolBar* bar = desk.window->findChildren<QToolBar*>().front();
  QToolButton* first = nullptr;
  QToolButton* last = nullptr;
  for (QToolButton* button : bar->findChildren<QToolButton*>()) {
    if (!button->defaultAction()) continue;  // Qt's own overflow button
    if (!first) first = button;
    last = button;
  }
  REQUIRE(first);
  const auto top = [&](QToolButton* button) { return button->mapTo(bar, QPoint(0, 0)).y(); };
  CHECK(top(first) == top(last));  // English needs one line here
  const int oneLine = bar->height();
  desk.window->resize(desk.window->minimumWidth(), 820);
  QApplication::processEvents();
  CHECK(top(last) > top(first));
  CHECK(QTest::qWaitFor([&] { return bar->height() > oneLine; }, 1000));
  for (const QToolButton* button : bar->findChildren<QToolButton*>()) {
    if (!button->defaultAction()) continue;
    INFO(button->text().toStdString());
    CHECK(button->isVisible());
    CHECK(button->width() >= button->sizeHint().width());
    CHECK(bar->rect().contains(QRect(button->mapTo(bar, QPoint(0, 0)), button->size())));
  }
  desk.window->resize(1180, 820);
  CHECK(QTest::qWaitFor([&] { return bar->height() == oneLine; }, 1000));
}

TEST_CASE("opening a plan asks for exactly one look, and an edit for one more", "[desk]") {
  Desk desk;
  CHECK(desk.window->lookService().requestsPosted() == 0);  // starting asks for none
  desk.window->openPath(desk.file("soft"));
  REQUIRE(desk.isFresh());
  QTest::qWait(50);
  CHECK(desk.window->lookService().requestsPosted() == 1);
  CHECK(desk.window->readings().tiles().front()->sentence().contains(QStringLiteral("Level 6.2")));
  desk.edit();
  CHECK(desk.window->readings().tiles().front()->sentence().contains(QStringLiteral("before the last change")));
  REQUIRE(desk.isFresh());
  CHECK_FALSE(desk.window->readings().tiles().front()->sentence().contains(QStringLiteral("before the last change")));
  CHECK(desk.window->lookService().requestsPosted() == 2);
}

TEST_CASE("undo and redo say what they do", "[desk]") {
  Desk desk;
  desk.window->openPath(desk.file("soft"));
  QAction* undo = desk.window->actions().action(QStringLiteral("edit.undo"));
  CHECK_FALSE(undo->isEnabled());
  desk.edit();
  CHECK(undo->isEnabled());
  CHECK(undo->text().contains(QStringLiteral("Change white hair")));
  undo->trigger();
  CHECK(desk.window->controller().document().hair().white_frac == 0.1);
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(desk.window->actions().action(QStringLiteral("edit.redo"))->text().contains(QStringLiteral("Change white hair")));
}

TEST_CASE("a file that is no plan is told with its name, and what is open stays", "[desk]") {
  Desk desk;
  desk.window->openPath(desk.file("soft"));
  const QString path = desk.dir.filePath(QStringLiteral("broken.json"));
  QFile broken(path);
  REQUIRE(broken.open(QIODevice::WriteOnly));
  broken.write("{ \"format\": ");
  broken.close();
  desk.window->openPath(path);
  CHECK(desk.window->messages().isShowing());
  CHECK(desk.window->messages().text().contains(QStringLiteral("broken.json")));
  CHECK(desk.window->controller().document().info().title == "soft");
  desk.window->openPath(desk.dir.filePath(QStringLiteral("missing.json")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("missing.json")));
  CHECK(QApplication::activeModalWidget() == nullptr);
}

TEST_CASE("a plan dropped onto the window opens", "[desk]") {
  Desk desk;
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(desk.file("dropped"))});
  QDragEnterEvent enter({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, {});
  QApplication::sendEvent(desk.window.get(), &enter);
  CHECK(enter.isAccepted());
  QDropEvent drop({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, {});
  QApplication::sendEvent(desk.window.get(), &drop);
  CHECK(desk.window->controller().document().info().title == "dropped");
  CHECK(desk.window->windowTitle().contains(QStringLiteral("dropped")));
}

TEST_CASE("leaving unsaved work asks inside the window: stay, do not save, save", "[desk]") {
  Desk desk;
  const QString first = desk.file("first"), second = desk.file("second");
  desk.window->openPath(first);
  desk.edit();
  desk.window->openPath(second);
  REQUIRE(desk.window->messages().isShowing());
  CHECK(desk.window->controller().document().info().title == "first");
  desk.press("Stay");
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);

  desk.window->openPath(second);
  desk.press("Save");
  CHECK(desk.window->controller().document().info().title == "second");
  CHECK(store::openPlan(first)->plan.hair().white_frac == 0.77);

  desk.edit();
  CHECK_FALSE(desk.window->close());
  desk.press("Stay");
  CHECK(desk.window->isVisible());
  CHECK_FALSE(desk.window->close());
  desk.press("Do not save…");
  desk.press("Throw it away");
  CHECK_FALSE(desk.window->isVisible());
  CHECK(store::openPlan(second)->plan.hair().white_frac == 0.1);
}

TEST_CASE("a question goes with the plan it was asked about", "[desk]") {
  Desk desk;
  const auto asks = [&](const char* button) {
    const auto buttons = desk.window->messages().buttons();
    return std::any_of(buttons.begin(), buttons.end(), [&](const QPushButton* one) { return one->text() == QString::fromUtf8(button); });
  };
  const QString first = desk.file("first"), second = desk.file("second");
  desk.window->openPath(first);
  desk.edit();
  CHECK_FALSE(desk.window->close());
  desk.press("Do not save…");
  REQUIRE(asks("Throw it away"));
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();  // answered another way
  CHECK_FALSE(asks("Throw it away"));
  desk.edit(0.3);
  CHECK_FALSE(desk.window->close());
  desk.press("Do not save…");
  REQUIRE(asks("Throw it away"));
  desk.window->controller().replace(store::openPlan(second)->plan, store::openPlan(second)->file);
  CHECK_FALSE(asks("Throw it away"));
  CHECK_FALSE(desk.window->messages().isShowing());

  // The same with the one that would write: it must not put this plan into another's file.
  desk.window->openPath(first);
  desk.edit(0.4);
  desk.file("first", 0.5);  // someone else
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  REQUIRE(asks("Put mine in its place"));
  desk.window->controller().replace(store::openPlan(second)->plan, store::openPlan(second)->file);
  CHECK_FALSE(asks("Put mine in its place"));
  CHECK(store::openPlan(first)->plan.hair().white_frac == 0.5);
}

TEST_CASE("saving over a file that someone else changed asks first", "[desk]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  desk.edit();
  desk.file("shared", 0.5);  // someone else
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  REQUIRE(desk.window->messages().isShowing());
  CHECK(store::openPlan(path)->plan.hair().white_frac == 0.5);
  desk.press("Put mine in its place");
  CHECK(store::openPlan(path)->plan.hair().white_frac == 0.77);
  CHECK_FALSE(desk.window->controller().isModified());
}

TEST_CASE("a name that is still typed in goes along with a save, and closing asks for it", "[desk]") {
  Desk desk;
  const QString path = desk.file("typed");
  desk.window->openPath(path);
  desk.window->controller().select(document::Selection::one("piece-1"));
  auto* field = desk.window->cards().pieceCard()->findChild<controls::TextField*>(QStringLiteral("name"));
  REQUIRE(field);
  QLineEdit* name = field->edit();
  const auto labelNow = [&] { return desk.window->controller().document().find<plan::Piece>("piece-1")->label; };
  const auto labelSaved = [&] {
    const auto saved = store::openPlan(path);
    REQUIRE(saved.ok());
    return saved->plan.find<plan::Piece>("piece-1")->label;
  };
  desk.window->activateWindow();
  REQUIRE(QTest::qWaitFor([&] { return desk.window->isActiveWindow(); }, 2000));
  name->setFocus();
  REQUIRE(name->hasFocus());
  name->selectAll();
  QTest::keyClicks(name, QStringLiteral("nape"));
  CHECK(labelNow().empty());  // no Enter yet
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  CHECK(labelSaved() == "nape");
  CHECK(name->hasFocus());  // and goes on being typed in
  name->end(false);
  QTest::keyClicks(name, QStringLiteral(" left"));
  CHECK_FALSE(desk.window->close());
  CHECK(desk.window->isVisible());
  CHECK(desk.window->messages().text().contains(QStringLiteral("changes that are not saved")));
  CHECK(labelNow() == "nape left");
  desk.press("Save");
  CHECK_FALSE(desk.window->isVisible());
  CHECK(labelSaved() == "nape left");
}

TEST_CASE("reading anew keeps a record that cannot be put together with the file's, and says so", "[desk][watch]") {
  using Record = document::DocumentController::Record;
  // Which side is a newer program's, so that it cannot be read here.
  const bool isMineNewer = GENERATE(false, true);
  CAPTURE(isMineNewer);
  const std::string agreed = R"({"date": "2026-03-01"})", agreedNewer = R"({"date": 5})";
  const std::string log = R"({"events": []})", logNewer = R"({"events": 7})";
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  document::DocumentController& controller = desk.window->controller();
  controller.record(Record::Agreed, isMineNewer ? agreedNewer : agreed);
  controller.record(Record::Visits, R"({"mine": 1})");
  controller.record(Record::Log, isMineNewer ? logNewer : log);
  const plan::PlanInfo mine = controller.document().info();
  const auto opened = store::openPlan(path);
  REQUIRE(opened.ok());
  plan::Plan theirs = opened->plan;
  plan::PlanInfo info = theirs.info();
  info.agreedJson = isMineNewer ? agreed : agreedNewer;
  info.visitsJson = R"({"theirs": 1})";
  info.logJson = isMineNewer ? log : logNewer;
  theirs.put(plan::kPlanId, info);
  plan::Hair hair = theirs.hair();
  hair.white_frac = 0.5;
  theirs.put(plan::kHairId, hair);
  REQUIRE(store::savePlan(theirs, path).ok());
  desk.window->fileWatch().look();
  desk.press("Read it anew");
  CHECK(desk.window->messages().text().contains(QStringLiteral("Undo brings back all but agreed picture, visits and log")));
  desk.press("Read it anew");
  CHECK(controller.document().hair().white_frac == 0.5);
  CHECK(controller.document().info().agreedJson == mine.agreedJson);
  CHECK(controller.document().info().visitsJson == mine.visitsJson);
  CHECK(controller.document().info().logJson == mine.logJson);
  CHECK(controller.isModified());  // the file holds others
  CHECK(desk.window->messages().text().contains(QStringLiteral("the agreed picture, the visits, the log")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("shared.json.previous")));
  const auto buttons = desk.window->messages().buttons();
  REQUIRE_FALSE(buttons.empty());
  CHECK(buttons.front()->text() == QStringLiteral("Save as…"));
  desk.press("Decide later");
  CHECK(controller.document().info().logJson == mine.logJson);
}

TEST_CASE("a file that holds another client's plan now is not read into this client's window", "[desk][watch]") {
  Desk desk;
  const QString path = desk.file("shared");
  desk.window->openPath(path);
  const std::uint64_t number = desk.window->controller().document().info().number;
  plan::Plan other = desk.window->controller().document();
  plan::PlanInfo info = other.info();
  info.number = number + 1;
  other.put(plan::kPlanId, info);
  REQUIRE(store::savePlan(other, path).ok());
  desk.window->fileWatch().look();
  desk.press("Read it anew");
  CHECK(desk.window->messages().text().contains(QStringLiteral("holds another client's plan now")));
  CHECK(desk.window->controller().document().info().number == number);
  CHECK(desk.window->cards().consultationCard()->keeper()->number() == number);
  desk.press("Open it instead");
  CHECK(desk.window->controller().document().info().number == number + 1);
  CHECK(desk.window->cards().consultationCard()->keeper()->number() == number + 1);
}

TEST_CASE("killed with unsaved work, the next start offers it and nothing is lost", "[desk]") {
  Desk desk;
  const QString path = desk.file("kept");
  desk.window->openPath(path);
  desk.edit();
  desk.window->recovery().writeNow();
  desk.window.reset();  // without close(): as if it had been killed
  desk.open();
  desk.window->offerRecovery();
  REQUIRE(desk.window->messages().isShowing());
  CHECK(desk.window->messages().text().contains(QStringLiteral("kept")));
  desk.press("Open recovered");
  CHECK(desk.window->controller().document().hair().white_frac == 0.77);
  CHECK(desk.window->controller().isModified());
  CHECK(desk.window->controller().file().path == path);
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  CHECK(store::openPlan(path)->plan.hair().white_frac == 0.77);
  desk.window.reset();
  desk.open();
  desk.window->offerRecovery();
  CHECK_FALSE(desk.window->messages().isShowing());
}

TEST_CASE("eight touches lead to the look of a new plan, whose first piece can be added by key", "[desk]") {
  Desk desk;
  desk.window->actions().action(QStringLiteral("file.new"))->trigger();
  desk::NewPlanPage& page = desk.window->newPlanPage();
  REQUIRE(page.isVisible());
  for (std::size_t i = 0; i < 7; ++i) page.question(i)->button(1)->click();
  for (QPushButton* button : page.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Show the look")) button->click();
  CHECK_FALSE(page.isVisible());
  REQUIRE(desk.isFresh());
  CHECK(desk.window->controller().isModified());
  CHECK(desk.window->controller().document().hair().curl == plan::CurlClass::Wave);
  QTest::keyClick(desk.window.get(), Qt::Key_Insert);
  const auto pieces = desk.window->controller().document().pieces();
  REQUIRE(pieces.size() == 1);
  CHECK(desk.window->controller().selection().contains(pieces.front().first));
  desk.window->actions().action(QStringLiteral("piece.remove"))->trigger();
  CHECK(desk.window->controller().document().pieces().empty());
}

TEST_CASE("how it's worn goes to the look by button and by key", "[desk]") {
  Desk desk;
  desk.window->openPath(desk.file("worn"));
  REQUIRE(desk.isFresh());
  desk.window->wornBar().worn()->button(2)->click();
  CHECK(desk.window->viewState().lookSettings().worn.way == hair::WornWay::TiedBack);
  QTest::keyClick(desk.window->wornBar().worn()->button(2), Qt::Key_Left);
  CHECK(desk.window->viewState().lookSettings().worn.way == hair::WornWay::HalfUp);
  desk.window->wornBar().worn()->button(0)->click();  // with the top tied there is no part to move
  QTest::keyClick(desk.window->wornBar().part(), Qt::Key_Right);
  CHECK(desk.window->viewState().lookSettings().worn.partShift_mm == 1);
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(desk::partText(12).contains(QStringLiteral("client's right")));
  CHECK(desk::partText(-12).contains(QStringLiteral("client's left")));
}

TEST_CASE("every control can be reached by Tab, has a name, and is large enough to touch", "[desk][access]") {
  Desk desk;
  desk.window->openPath(desk.file("walk"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  REQUIRE(desk.isFresh());
  std::set<QWidget*> reached;
  QWidget* first = desk.window->nextInFocusChain();
  QWidget* widget = first;
  do {
    const bool stops = widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
                       !widget->focusProxy();
    if (stops) reached.insert(widget);
    widget = widget->nextInFocusChain();
  } while (widget != first);
  for (QWidget* stop : reached) {
    INFO(stop->metaObject()->className() << " " << stop->objectName().toStdString());
    CHECK_FALSE(nameOf(stop).isEmpty());
    CHECK(stop->height() >= 28);
    CHECK(stop->width() >= 28);
  }
  // Everything that a mouse can use is among them.
  for (QWidget* control : desk.window->findChildren<QWidget*>()) {
    const bool isControl = qobject_cast<QAbstractButton*>(control) || qobject_cast<QLineEdit*>(control) ||
                           qobject_cast<QComboBox*>(control) || qobject_cast<QSlider*>(control);
    if (!isControl || !control->isVisible() || !control->isEnabled() || control->objectName().startsWith(QStringLiteral("qt_")))
      continue;
    INFO(control->metaObject()->className() << " " << nameOf(control).toStdString());
    // In a row of choices Tab stops once, at the chosen one; the arrow keys do the rest.
    const auto* button = qobject_cast<QAbstractButton*>(control);
    const bool isInRow = button && button->group() && button->group()->exclusive() && button->group()->checkedButton();
    CHECK(reached.contains(isInRow ? button->group()->checkedButton() : control));
  }
}

TEST_CASE("a plan of an older format opens, says so, and stands unchanged until it is saved", "[window]") {
  Desk desk;
  const QString old = QString::fromStdString(test::testsDir() + "/format/1/every-field.json"), path = desk.dir.filePath(QStringLiteral("old.json"));
  REQUIRE(QFile::copy(old, path));
  desk.window->openPath(path);
  CHECK(desk.window->messages().text().contains(QStringLiteral("format 1")));
  CHECK(desk.window->messages().text().contains(QStringLiteral("old.json.previous")));
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(desk.window->controller().document().find<plan::Formula>("formula-1")->leaflet.origin == "leaflet");
}
