// Habits people expect: command search, keys, preferences, hints, several
// windows, how a window was left, and what needs a look.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QCheckBox>
#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSettings>
#include <QSplitter>
#include <QTreeWidget>
#include <QUndoView>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/desk/card_column.h"
#include "app/desk/command_search.h"
#include "app/desk/findings_list.h"
#include "app/desk/hint_bar.h"
#include "app/desk/keys.h"
#include "app/desk/keys_page.h"
#include "app/desk/new_plan_page.h"
#include "app/desk/preferences_page.h"
#include "app/desk/readings_strip.h"
#include "app/desk/start_page.h"
#include "app/sheet/head_sheet.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using desk::MainWindow;
using tests::Desk;

namespace {

QAction* actionOf(Desk& desk, const char* id) { return desk.window->actions().action(QLatin1String(id)); }

QString firstFound(Desk& desk, const char* words) {
  const auto ids = desk::findCommands(desk.window->actions(), QString::fromUtf8(words));
  return ids.empty() ? QString() : ids.front();
}

// What grab() sees of a widget at a place.
QColor pixelAt(QWidget& widget, const QPoint& at) { return widget.grab().toImage().pixelColor(at); }

}  // namespace

TEST_CASE("commands are found by words of name and tip, in either case", "[habits][search]") {
  Desk desk;
  CHECK(firstFound(desk, "undo") == QStringLiteral("edit.undo"));
  CHECK(firstFound(desk, "OTHER side") == QStringLiteral("piece.twin"));
  CHECK(firstFound(desk, "crown") == QStringLiteral("view.large.crown"));
  CHECK(firstFound(desk, "salon floor") == QStringLiteral("view.dark"));  // only in its tip
  CHECK(firstFound(desk, "s\u00e1ve").startsWith(QStringLiteral("file.save")));
  CHECK(firstFound(desk, "ctrl+z") == QStringLiteral("edit.undo"));
  CHECK(desk::findCommands(desk.window->actions(), QStringLiteral("zebra")).empty());
  CHECK(desk::findCommands(desk.window->actions(), {}).size() == desk.window->actions().specs().size());
  // Every command is found by its own name.
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    const auto ids = desk::findCommands(desk.window->actions(), desk::plainText(spec.text));
    INFO(spec.id.toStdString());
    CHECK(std::find(ids.begin(), ids.end(), spec.id) != ids.end());
  }
}

TEST_CASE("the command search runs a command by keyboard alone and gives the focus back", "[habits][search]") {
  Desk desk;
  desk.window->openPath(desk.file("find"));
  desk.window->activateWindow();
  desk.window->headSheet().setFocus();
  QTest::keyClick(desk.window.get(), Qt::Key_F1);
  desk::CommandSearch& search = desk.window->search();
  REQUIRE(search.isVisible());
  CHECK(QApplication::activeModalWidget() == nullptr);
  CHECK(search.field()->hasFocus());
  QTest::keyClicks(search.field(), QStringLiteral("look"));
  REQUIRE(search.list()->count() > 1);
  const int before = search.list()->currentRow();
  QTest::keyClick(search.field(), Qt::Key_Down);
  CHECK(search.list()->currentRow() == before + 1);
  QTest::keyClick(search.field(), Qt::Key_Up);
  search.field()->setText(QStringLiteral("diagram placement only"));
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK_FALSE(search.isVisible());
  CHECK(desk.window->viewState().layer() == document::Layer::Diagram);
  CHECK(desk.window->headSheet().hasFocus());

  QTest::keyClick(desk.window.get(), Qt::Key_F1);
  CHECK(search.field()->text().isEmpty());
  QTest::keyClick(search.field(), Qt::Key_Escape);
  CHECK_FALSE(search.isVisible());
  CHECK(desk.window->headSheet().hasFocus());
}

TEST_CASE("the command search says when nothing matches, and why a command is off", "[habits][search]") {
  Desk desk;
  desk::CommandSearch& search = desk.window->search();
  search.open();
  search.field()->setText(QStringLiteral("zebra"));
  CHECK(search.note().contains(QStringLiteral("zebra")));
  CHECK(search.list()->isHidden());
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK(search.isVisible());
  search.field()->setText(QStringLiteral("duplicate"));
  CHECK(search.note().contains(QStringLiteral("Select a piece, a section or a note first")));
  QTest::keyClick(search.field(), Qt::Key_Return);
  CHECK(search.isVisible());  // nothing ran
  CHECK(desk.window->controller().document().pieces().empty());
  CHECK(search.geometry().right() < desk.window->width());
}

TEST_CASE("every command teaches in its tip, and says why it is off", "[habits]") {
  Desk desk;
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK(spec.tip.split(u' ').size() >= 3);
    CHECK(spec.tip.compare(desk::plainText(spec.text), Qt::CaseInsensitive) != 0);
    const QAction* action = desk.window->actions().action(spec.id);
    CHECK(action->toolTip().startsWith(spec.tip));
    if (!action->isEnabled()) CHECK_FALSE(desk.window->actions().whyNot(spec.id).isEmpty());
    if (!spec.shortcut.isEmpty())
      CHECK(action->toolTip().contains(spec.shortcut.toString(QKeySequence::NativeText)));
  }
  CHECK(actionOf(desk, "piece.remove")->toolTip().contains(QStringLiteral("Select a piece, a section or a note first")));
  desk.window->openPath(desk.file("tip"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK_FALSE(actionOf(desk, "piece.remove")->toolTip().contains(QStringLiteral("first")));
}

TEST_CASE("a key is changed by pressing it, works, is kept, and can be reset", "[habits][keys]") {
  Desk desk;
  desk.window->openPath(desk.file("keys"));
  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& page = desk.window->keysPage();
  REQUIRE(page.isVisible());
  CHECK(page.list()->topLevelItemCount() == static_cast<int>(desk.window->actions().specs().size()));
  page.filter()->setText(QStringLiteral("measure"));
  CHECK(page.list()->topLevelItemCount() < 5);
  page.choose(QStringLiteral("tool.measure"));
  page.catcher()->setFocus();
  QTest::keyClick(page.catcher(), Qt::Key_J, Qt::ControlModifier);
  REQUIRE(QTest::qWaitFor([&] { return actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+J")); }, 3000));
  CHECK(page.note().contains(QStringLiteral("Ctrl+J")));
  CHECK(actionOf(desk, "tool.measure")->toolTip().contains(QStringLiteral("Ctrl+J")));
  QTest::keyClick(&page, Qt::Key_Escape);
  REQUIRE(desk.window->headSheet().isVisible());
  QTest::keyClick(desk.window.get(), Qt::Key_J, Qt::ControlModifier);
  CHECK(desk.window->viewState().tool() == document::Tool::Measure);
  desk.window->close();
  desk.open();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+J")));
  CHECK_FALSE(desk.window->messages().isShowing());

  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& again = desk.window->keysPage();
  again.choose(QStringLiteral("tool.measure"));
  for (auto* button : again.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Reset this one")) button->click();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  again.choose(QStringLiteral("edit.undo"));
  again.give({});
  again.choose(QStringLiteral("edit.redo"));
  again.give(QKeySequence(QStringLiteral("Ctrl+Shift+Y")));
  CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).keys().keys.size() == 2);
  for (auto* button : again.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Reset all")) button->click();
  CHECK(desk::changedKeys(desk.window->actions()).empty());
  CHECK(store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).keys().keys.empty());
}

TEST_CASE("a key that another command has is never taken silently", "[habits][keys]") {
  Desk desk;
  actionOf(desk, "edit.keys")->trigger();
  desk::KeysPage& page = desk.window->keysPage();
  page.choose(QStringLiteral("tool.measure"));
  page.give(QKeySequence(QStringLiteral("Ctrl+D")));
  CHECK(page.note().contains(QStringLiteral("Duplicate")));
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  CHECK(actionOf(desk, "piece.duplicate")->shortcut() == QKeySequence(QStringLiteral("Ctrl+D")));
  REQUIRE(page.takeOver()->isVisible());
  page.takeOver()->click();
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(QStringLiteral("Ctrl+D")));
  CHECK(actionOf(desk, "piece.duplicate")->shortcut().isEmpty());
  // Keys that begin like those of another command would never get through.
  page.choose(QStringLiteral("tool.piece"));
  page.give(QKeySequence(QStringLiteral("Ctrl+D, Ctrl+P")));
  CHECK(page.note().contains(QStringLiteral("Measure")));
  CHECK(actionOf(desk, "tool.piece")->shortcut() == QKeySequence(Qt::Key_F3));
  // What the sheet and the fields need cannot be given away.
  for (const QKeySequence& keys : {QKeySequence(Qt::Key_Escape), QKeySequence(Qt::Key_Left), QKeySequence(Qt::Key_Tab),
                                   QKeySequence(Qt::Key_7), QKeySequence(Qt::Key_Return),
                                   QKeySequence(Qt::SHIFT | Qt::Key_Down), QKeySequence(Qt::ALT | Qt::Key_V)}) {
    INFO(keys.toString().toStdString());
    page.give(keys);
    CHECK_FALSE(page.note().isEmpty());
    CHECK(actionOf(desk, "tool.piece")->shortcut() == QKeySequence(Qt::Key_F3));
  }
}

TEST_CASE("no command comes with a key that may not be given", "[habits][keys]") {
  Desk desk;
  for (const desk::ActionSpec& spec : desk.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK(desk::keyTrouble(spec.shortcut).isEmpty());
    CHECK(desk::keyHolder(desk.window->actions(), spec.shortcut, spec.id) == nullptr);
  }
}

TEST_CASE("stored keys that are damaged are ignored and said", "[habits][keys]") {
  Desk desk;
  const QString ini = desk.dir.filePath(QStringLiteral("settings.ini"));
  desk.window->close();
  {
    QSettings settings(ini, QSettings::IniFormat);
    settings.setValue(QStringLiteral("keys/tool.measure"), QStringLiteral("Ctrl+Wobble"));
    settings.setValue(QStringLiteral("keys/no.such"), QStringLiteral("Ctrl+J"));
    settings.setValue(QStringLiteral("keys/edit.redo"), QStringLiteral("Ctrl+Z"));  // undo's
    settings.setValue(QStringLiteral("keys/view.look"), QStringLiteral("Ctrl+Shift+J"));  // sound
  }
  desk.open();
  REQUIRE(desk.window->messages().isShowing());
  const QString said = desk.window->messages().text();
  for (const char* word : {"Wobble", "no.such", "Undo"}) CHECK(said.contains(QLatin1String(word)));
  CHECK(actionOf(desk, "tool.measure")->shortcut() == QKeySequence(Qt::Key_F4));
  CHECK(actionOf(desk, "edit.undo")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Z")));
  CHECK(actionOf(desk, "edit.redo")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+Z")));
  CHECK(actionOf(desk, "view.look")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+J")));
  desk.press("Forget them");
  desk.window->close();
  desk.open();
  CHECK_FALSE(desk.window->messages().isShowing());
  CHECK(actionOf(desk, "view.look")->shortcut() == QKeySequence(QStringLiteral("Ctrl+Shift+J")));
}

TEST_CASE("preferences hold at once, are kept, and a new piece begins with them", "[habits][preferences]") {
  Desk desk;
  desk.window->openPath(desk.file("prefs"));
  actionOf(desk, "edit.preferences")->trigger();
  desk::PreferencesPage& page = desk.window->preferencesPage();
  REQUIRE(page.isVisible());
  page.unit()->button(2)->click();
  page.theme()->button(1)->click();
  CHECK(controls::currentTheme().name == controls::ThemeName::Dark);
  page.textSize()->button(3)->click();
  CHECK(qApp->font().pointSizeF() == 13);
  page.thickness()->edit()->selectAll();
  CHECK(controls::Units::current().length() == controls::LengthUnit::Inches);
  QTest::keyClicks(page.thickness()->edit(), QStringLiteral("7.5 mm"));  // the fields are in inches now
  QTest::keyClick(page.thickness()->edit(), Qt::Key_Return);
  page.start()->edit()->selectAll();
  QTest::keyClicks(page.start()->edit(), QStringLiteral("9999"));  // no hair is that long
  QTest::keyClick(page.start()->edit(), Qt::Key_Return);
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(desk.window->headSheet().isVisible());

  actionOf(desk, "piece.add")->trigger();
  const auto* piece = desk.window->controller().document().find<plan::Piece>(desk.window->controller().selection().lead());
  REQUIRE(piece);
  CHECK(piece->thickness_mm == 7.5);
  CHECK(piece->start_mm == 20);

  const store::Preferences kept = store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).preferences();
  CHECK(kept == store::Preferences{store::LengthUnit::Inch, store::ThemeChoice::Dark, 130, 7.5, 20});
  controls::Units::current().setLength(controls::LengthUnit::Millimetres);
  controls::applyTheme(*qApp, controls::ThemeName::Light);
}

TEST_CASE("preferences that are damaged count as not there", "[habits][preferences]") {
  QTemporaryDir dir;
  const QString ini = dir.filePath(QStringLiteral("settings.ini"));
  {
    QSettings settings(ini, QSettings::IniFormat);
    settings.setValue(QStringLiteral("preferences/unit"), QStringLiteral("furlong"));
    settings.setValue(QStringLiteral("preferences/theme"), 7);
    settings.setValue(QStringLiteral("preferences/textSize"), QStringLiteral("-3"));
    settings.setValue(QStringLiteral("preferences/newThickness_mm"), QStringLiteral("nan"));
    settings.setValue(QStringLiteral("preferences/newStart_mm"), QStringLiteral("1e9"));
    settings.setValue(QStringLiteral("window/layer"), QStringLiteral("many"));
    settings.setValue(QStringLiteral("window/largeView"), 99);
  }
  CHECK(store::Settings(ini).preferences() == store::Preferences{});
  CHECK(store::Settings(ini).windowState().layer == -1);
  CHECK(store::Settings(ini).windowState().largeView == -1);
}

TEST_CASE("a palette darker than its text is dark", "[habits][theme]") {
  CHECK(controls::themeOf(QPalette(Qt::white, Qt::black)) == controls::ThemeName::Dark);
  CHECK(controls::themeOf(QPalette(Qt::black, Qt::white)) == controls::ThemeName::Light);
}

TEST_CASE("a dark window has a dark head sheet, and looks stand on mid grey there", "[habits][theme]") {
  Desk desk;
  desk.window->openPath(desk.file("dark"));
  sheet::HeadSheet& sheet = desk.window->headSheet();
  const sheet::ViewPlace* back = sheet.placeOf(head::ViewName::Back);
  REQUIRE(back);
  // A place beside the neck, low in the view: no line, no hair.
  const QRectF frame = paint::frameOf(head::ViewName::Back);
  const QPoint left = back->toWidget(frame.bottomLeft() + QPointF(3, -3)).toPoint();
  const QPoint right = back->toWidget(frame.bottomRight() + QPointF(-3, -3)).toPoint();
  const paint::Palette light, dark = paint::darkPalette();
  CHECK(pixelAt(sheet, left) == light.ground);
  CHECK(pixelAt(sheet, right) == light.ground);
  actionOf(desk, "view.dark")->trigger();
  CHECK(pixelAt(sheet, left) == dark.ground);
  CHECK(pixelAt(sheet, right) == light.midGrey);  // the look's side: no bright slab
  CHECK(pixelAt(sheet, {7, 7}) == dark.ground);
  CHECK_FALSE(actionOf(desk, "view.surround")->isEnabled());  // it always has it, and says so
  CHECK(actionOf(desk, "view.surround")->isChecked());
  CHECK_FALSE(desk.window->actions().whyNot(QStringLiteral("view.surround")).isEmpty());
  actionOf(desk, "view.dark")->trigger();
  CHECK(pixelAt(sheet, right) == light.ground);  // a light one as the user had it
  actionOf(desk, "view.surround")->trigger();
  CHECK(pixelAt(sheet, right) == light.midGrey);
  CHECK(pixelAt(sheet, left) == light.ground);
}

TEST_CASE("a plan open in another window of the program comes forward there", "[habits][windows]") {
  Desk desk;
  const QString first = desk.file("first"), second = desk.file("second");
  desk.window->openPath(first);
  MainWindow* other = desk.window->newWindow();
  REQUIRE(QTest::qWaitForWindowExposed(other));
  other->openPath(second);
  CHECK(other->controller().document().info().title == "second");
  CHECK(desk.window->controller().document().info().title == "first");
  desk.window->openPath(second);
  CHECK(desk.window->controller().document().info().title == "first");  // not opened twice
  CHECK(other->messages().text().contains(QStringLiteral("second.json")));
  CHECK(QTest::qWaitFor([&] { return other->isActiveWindow(); }, 2000));
  // Preferences and keys are the whole program's.
  actionOf(desk, "edit.keys")->trigger();
  desk.window->keysPage().choose(QStringLiteral("tool.measure"));
  desk.window->keysPage().give(QKeySequence(QStringLiteral("Ctrl+J")));
  CHECK(other->actions().action(QStringLiteral("tool.measure"))->shortcut() == QKeySequence(QStringLiteral("Ctrl+J")));
  QPointer<MainWindow> gone(other);
  other->close();
  CHECK(QTest::qWaitFor([&] { return gone.isNull(); }, 2000));
  desk.window->openPath(second);
  CHECK(desk.window->controller().document().info().title == "second");
}

TEST_CASE("quitting asks in each window that has unsaved work", "[habits][windows]") {
  Desk desk;
  desk.window->openPath(desk.file("first"));
  QPointer<MainWindow> other = desk.window->newWindow();
  other->openPath(desk.file("second"));
  desk.edit();
  other->actions().action(QStringLiteral("file.quit"))->trigger();
  CHECK(desk.window->isVisible());
  CHECK(desk.window->messages().text().contains(QStringLiteral("not saved")));
  CHECK(other->isVisible());
  desk.press("Do not save");
  CHECK_FALSE(desk.window->isVisible());
  other->actions().action(QStringLiteral("file.quit"))->trigger();
  CHECK(QTest::qWaitFor([&] { return other.isNull(); }, 2000));
}

TEST_CASE("a window opens as it was left", "[habits][windows]") {
  Desk desk;
  desk.window->openPath(desk.file("left"));
  desk.window->resize(1300, 850);
  actionOf(desk, "view.look")->trigger();
  actionOf(desk, "view.large.top")->trigger();
  actionOf(desk, "view.hairCard")->trigger();
  auto* splitter = desk.window->findChild<QSplitter*>();
  REQUIRE(splitter);
  QCoreApplication::processEvents();
  const int cards = splitter->sizes().at(1);
  splitter->setSizes({splitter->width() - cards - 60, cards + 60});
  const QList<int> sizes = splitter->sizes();
  CHECK(sizes.at(1) > cards);
  REQUIRE(desk.window->close());
  desk.window = std::make_unique<MainWindow>(
      desk::DeskPlaces{desk.dir.filePath(QStringLiteral("settings.ini")), desk.dir.filePath(QStringLiteral("recovery")), desk.patterns()},
      tests::instantPasses);
  desk.window->show();
  desk.window->openPath(desk.file("left"));
  CHECK(desk.window->size() == QSize(1300, 850));
  CHECK(desk.window->viewState().layer() == document::Layer::Look);
  CHECK(desk.window->viewState().largeView() == head::ViewName::Top);
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Hair);
  QCoreApplication::processEvents();
  CHECK(std::abs(desk.window->findChild<QSplitter*>()->sizes().at(1) - sizes.at(1)) <= 2);
}

TEST_CASE("what needs a look is counted, listed, and leads to its pieces", "[habits][findings]") {
  Desk desk;
  const QString path = desk.file("look");
  CHECK_FALSE(desk.window->findingsButton().isVisible());
  desk.window->openPath(path);
  REQUIRE(desk.window->findingsButton().isVisible());
  plan::Plan plan = desk.window->controller().document();
  CHECK(plan::validate(plan).empty());
  CHECK(desk.window->findingsButton().text().contains(QStringLiteral("No finding from the drawing")));

  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.order = 4;
  for (head::ScalpPoint& point : piece.line) point.drop_deg -= 12;
  plan.put("piece-2", piece);
  for (head::ScalpPoint& point : piece.line) point.drop_deg += 24;
  plan.put("piece-3", piece);  // two with number 4, apart on the head
  desk.window->controller().edit(plan, QStringLiteral("Add"));
  const auto found = plan::validate(plan);
  REQUIRE(found.size() == 1);
  CHECK(desk.window->findingsButton().text().contains(QStringLiteral("Needs a look: 1")));
  desk.window->findingsButton().click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Findings);
  QListWidget* list = desk.window->cards().findings()->list();
  REQUIRE(list->isVisible());
  CHECK(list->item(0)->text().contains(QStringLiteral("Worth a look")));
  CHECK(list->item(0)->text().contains(QStringLiteral("Piece 4")));
  list->setFocus();
  list->setCurrentRow(0);
  QTest::keyClick(list, Qt::Key_Return);
  CHECK(desk.window->controller().selection().ids() == found.front().items);
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Findings);  // the list stays

  piece.section = "nobody";
  plan.put("piece-1", piece);
  desk.window->controller().edit(plan, QStringLiteral("Change"));
  CHECK(desk.window->findingsButton().text().contains(QStringLiteral("Wrong: 1")));
  CHECK(list->item(0)->text().contains(QStringLiteral("Wrong")));
  CHECK(list->item(0)->text().contains(QStringLiteral("nobody")));
  desk.window->controller().undoStack().setIndex(0);
  CHECK(list->isHidden());
  desk.window->findingsButton().click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Piece);
}

TEST_CASE("hints come once, take no focus, and can be put away for good", "[habits][hints]") {
  Desk desk;
  desk::HintBar& bar = desk.window->hints();
  CHECK_FALSE(bar.isVisible());
  desk.window->openPath(desk.file("hints"));
  REQUIRE(bar.isVisible());
  CHECK(desk.window->headSheet().hasFocus());
  CHECK(QApplication::activeModalWidget() == nullptr);
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(bar.shownId() == QStringLiteral("handles"));
  bar.gotIt()->click();
  CHECK_FALSE(bar.isVisible());
  desk.window->controller().select({});
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(bar.shownId() != QStringLiteral("handles"));
  desk.window->close();
  desk.open();
  desk.window->openPath(desk.file("hints"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(desk.window->hints().shownId() != QStringLiteral("handles"));
  REQUIRE(desk.window->hints().isVisible());
  desk.window->hints().noMore()->click();
  desk.edit();
  CHECK_FALSE(desk.window->hints().isVisible());

  actionOf(desk, "edit.preferences")->trigger();
  desk::PreferencesPage& page = desk.window->preferencesPage();
  CHECK_FALSE(page.hints()->isChecked());
  REQUIRE(page.hintsAgain()->isEnabled());
  page.hintsAgain()->click();
  CHECK(page.hints()->isChecked());
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(desk.window->hints().shownId() == QStringLiteral("handles"));
}

TEST_CASE("the history names what was done and goes back to a chosen line", "[habits][history]") {
  Desk desk;
  desk.window->openPath(desk.file("history"));
  desk.edit();
  actionOf(desk, "piece.add")->trigger();
  REQUIRE(desk.window->controller().document().pieces().size() == 2);
  actionOf(desk, "view.done")->trigger();
  auto* history = desk.window->cards().findChild<QUndoView*>();
  REQUIRE(history);
  REQUIRE(history->isVisible());
  REQUIRE(history->model()->rowCount() == 3);
  CHECK(history->model()->index(0, 0).data().toString() == QStringLiteral("As it was opened"));
  CHECK(history->model()->index(1, 0).data().toString() == QStringLiteral("Change white hair"));
  CHECK(history->model()->index(2, 0).data().toString() == QStringLiteral("Add a piece"));
  CHECK(history->visualRect(history->model()->index(1, 0)).height() >= 28);
  history->setFocus();
  QTest::keyClick(history, Qt::Key_Home);
  CHECK(desk.window->controller().document().pieces().size() == 1);
  CHECK(desk.window->controller().document().hair().white_frac == 0.1);
  QTest::keyClick(history, Qt::Key_End);
  CHECK(desk.window->controller().document().pieces().size() == 2);
}

TEST_CASE("a low window folds the readings to one line and remembers otherwise, and the cards can be widened by key", "[habits][windows]") {
  Desk desk;
  desk.window->openPath(desk.file("low"));
  REQUIRE(desk.isFresh());
  desk::ReadingsStrip* strip = &desk.window->readings();
  CHECK(strip->detail() == desk::Detail::All);
  CHECK(strip->wholeLine()->isHidden());
  const int tall = strip->height();
  desk.window->resize(1180, 740);
  QCoreApplication::processEvents();
  CHECK(strip->detail() == desk::Detail::OneLine);
  CHECK(QTest::qWaitFor([&] { return strip->height() < tall; }, 1000));
  CHECK(strip->height() <= 3 * desk.window->fontMetrics().height());
  CHECK(strip->wholeLine()->isVisible());
  CHECK(strip->wholeLine()->text().contains(QStringLiteral("Level 6.2")));
  CHECK_FALSE(strip->tiles().front()->isVisible());
  // The user wants them in a low window: kept, and the tall window is as it was.
  strip->foldButton()->click();
  CHECK(strip->detail() == desk::Detail::All);
  desk.window->resize(1180, 820);
  QCoreApplication::processEvents();
  actionOf(desk, "view.foldReadings")->trigger();
  CHECK(strip->detail() == desk::Detail::OneLine);
  REQUIRE(desk.window->close());
  desk.open();
  desk.window->openPath(desk.file("low"));
  strip = &desk.window->readings();
  CHECK(strip->detail() == desk::Detail::OneLine);
  desk.window->resize(1180, 740);
  QCoreApplication::processEvents();
  CHECK(strip->detail() == desk::Detail::All);
  const int cards = desk.window->cards().width();
  QTest::keyClick(desk.window.get(), Qt::Key_Left, Qt::ControlModifier | Qt::AltModifier);
  CHECK(desk.window->cards().width() > cards);
  actionOf(desk, "view.cardsNarrower")->trigger();
  CHECK(desk.window->cards().width() == cards);
}

TEST_CASE("rows of lists are large enough to touch", "[habits][access]") {
  Desk desk;
  desk.window->openPath(desk.file("rows"));
  actionOf(desk, "file.start")->trigger();
  for (QListWidget* list : {desk.window->startPage().recentList(), desk.window->startPage().exampleList()}) {
    REQUIRE(list->count() > 0);
    CHECK(list->visualItemRect(list->item(0)).height() >= 28);
  }
  desk.window->search().open();
  CHECK(desk.window->search().list()->visualItemRect(desk.window->search().list()->item(0)).height() >= 28);
  actionOf(desk, "edit.keys")->trigger();
  QTreeWidget* keys = desk.window->keysPage().list();
  CHECK(keys->visualItemRect(keys->topLevelItem(0)).height() >= 28);
}

TEST_CASE("pages of settings can be walked by Tab and are large enough to touch", "[habits][access]") {
  Desk desk;
  for (const char* id : {"edit.preferences", "edit.keys"}) {
    actionOf(desk, id)->trigger();
    QWidget* first = desk.window->nextInFocusChain();
    int stops = 0;
    for (QWidget* w = first;;) {
      if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) && !w->focusProxy()) {
        ++stops;
        INFO(id << " " << w->metaObject()->className() << " " << w->objectName().toStdString());
        const auto* button = qobject_cast<QAbstractButton*>(w);
        CHECK_FALSE((w->accessibleName().isEmpty() && (!button || button->text().isEmpty())));
        CHECK(w->height() >= 28);
        CHECK(w->width() >= 28);
      }
      w = w->nextInFocusChain();
      if (w == first) break;
    }
    CHECK(stops > 5);
  }
}
