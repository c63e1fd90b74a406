// Several windows of one program, how a window was left, and low ones.
#include <catch2/catch.hpp>

#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QSplitter>

#include "app/cards/piece_card.h"
#include "app/controls/text_field.h"
#include "app/desk/card_column.h"
#include "app/desk/keys_page.h"
#include "app/desk/readings_strip.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using desk::MainWindow;
using tests::actionOf;
using tests::Desk;

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
  CHECK(desk.window->messages().text().contains(QStringLiteral("changes that are not saved")));
  CHECK(other->isVisible());
  desk.press("Do not save…");
  desk.press("Throw it away");
  CHECK_FALSE(desk.window->isVisible());
  other->actions().action(QStringLiteral("file.quit"))->trigger();
  CHECK(QTest::qWaitFor([&] { return other.isNull(); }, 2000));
}

TEST_CASE("quitting asks for a field that is still typed in", "[habits][windows]") {
  Desk desk;
  desk.window->openPath(desk.file("first"));
  desk.window->controller().select(document::Selection::one("piece-1"));
  auto* field = desk.window->cards().pieceCard()->findChild<controls::TextField*>(QStringLiteral("name"));
  REQUIRE(field);
  desk.window->activateWindow();
  REQUIRE(QTest::qWaitFor([&] { return desk.window->isActiveWindow(); }, 2000));
  field->edit()->setFocus();
  QTest::keyClicks(field->edit(), QStringLiteral("nape"));
  actionOf(desk, "file.quit")->trigger();
  CHECK(desk.window->isVisible());
  CHECK(desk.window->messages().text().contains(QStringLiteral("changes that are not saved")));
  CHECK(desk.window->controller().document().find<plan::Piece>("piece-1")->label == "nape");
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
