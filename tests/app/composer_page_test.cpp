// The composer: parts by mouse and keyboard, texts with undo, pages that are kept in sight.
#include <QComboBox>
#include <QListWidget>
#include <QScrollBar>
#include <catch2/catch.hpp>

#include "tests/app/composer_fixture.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::handout {
namespace {

TEST_CASE("the composer lists every part and shows its pages", "[handout][composer]") {
  Composer composer;
  CHECK(composer.page.partList()->count() == static_cast<int>(std::size(kHandoutParts)));
  CHECK(composer.page.pagesView().count() > 5);
  CHECK_FALSE(composer.controller.document().find<plan::Handout>(plan::kHandoutId));  // looking changes nothing
  CHECK_FALSE(composer.controller.isModified());
}

TEST_CASE("unticking a part takes its pages away and undo brings them back", "[handout][composer]") {
  Composer composer;
  const int before = composer.page.pagesView().count();
  composer.page.partList()->item(composer.row(HandoutPart::PredictThenOpen))->setCheckState(Qt::Unchecked);
  composer.settle();
  CHECK(composer.page.pagesView().count() == before - 2);
  CHECK(composer.controller.undoStack().undoText().contains(partTitle(HandoutPart::PredictThenOpen)));
  composer.controller.undoStack().undo();
  composer.settle();
  CHECK(composer.page.pagesView().count() == before);
  CHECK(composer.page.partList()->item(composer.row(HandoutPart::PredictThenOpen))->checkState() == Qt::Checked);
}

TEST_CASE("choosing a part shows where it begins", "[handout][composer]") {
  Composer composer;
  QScrollBar* bar = composer.page.pagesView().verticalScrollBar();
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::BlankSheets));
  CHECK(bar->value() > bar->maximum() / 2);
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::Title));
  CHECK(bar->value() <= 14);
}

TEST_CASE("parts move by Alt and arrow, by button, and stay where they are at the ends", "[handout][composer]") {
  Composer composer;
  QListWidget* list = composer.page.partList();
  list->setCurrentRow(2);
  const QString third = list->item(2)->text();
  QTest::keyClick(list, Qt::Key_Up, Qt::AltModifier);
  CHECK(list->item(1)->text() == third);
  CHECK(list->currentItem()->text() == third);
  QTest::mouseClick(composer.page.downButton(), Qt::LeftButton);
  CHECK(list->item(2)->text() == third);
  list->setCurrentRow(0);
  const plan::Handout before = composer.handout();
  QTest::mouseClick(composer.page.upButton(), Qt::LeftButton);
  CHECK(composer.handout() == before);
}

TEST_CASE("a part that is dragged keeps its tick", "[handout][composer]") {
  Composer composer;
  QListWidget* list = composer.page.partList();
  list->item(3)->setCheckState(Qt::Unchecked);
  const QString dragged = list->item(3)->text();
  list->model()->moveRow({}, 3, {}, 0);
  composer.settle();
  CHECK(list->item(0)->text() == dragged);
  CHECK(list->item(0)->checkState() == Qt::Unchecked);
  CHECK(partTitle(partsOf(composer.handout()).front().part) == dragged);
  CHECK(partsOf(composer.handout()).front().hidden);
}

TEST_CASE("typing an aim is one undo entry and stands on the first page", "[handout][composer]") {
  Composer composer;
  QPlainTextEdit* aim = composer.page.textBox(HandoutPart::Title)->edit();
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::Title));
  aim->setFocus();
  QTest::keyClicks(aim, QStringLiteral("Place it softly"));
  CHECK(composer.handout().aim == "Place it softly");
  CHECK(composer.controller.undoStack().count() == 1);
  composer.settle();
  CHECK(composer.page.pagesView().findChild<PageView*>());
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("Place it softly")));
  composer.controller.undoStack().undo();
  CHECK(composer.handout().aim.empty());
  CHECK(aim->toPlainText().isEmpty());
}

TEST_CASE("texts of a step are kept under its piece and marked when the piece goes", "[handout][composer]") {
  Composer composer;
  QComboBox* steps = composer.page.stepChoice();
  REQUIRE(steps->count() > 1);
  const std::vector<Step> made = stepsOf(paint::Scene(composer.controller.document(), {}, nullptr), {});
  const std::size_t last = made.size() - 1;
  steps->setCurrentIndex(static_cast<int>(last));
  Q_EMIT steps->activated(static_cast<int>(last));
  composer.page.stepBox(2)->edit()->setPlainText(QStringLiteral("So that depth stays"));
  REQUIRE(composer.handout().steps.size() == 1);
  CHECK(composer.handout().steps.front().about == made[last].about);
  CHECK(composer.handout().steps.front().why == "So that depth stays");
  CHECK(composer.page.stepBox(0)->edit()->placeholderText() == made[last].made.what);

  plan::Plan without = composer.controller.document();
  for (const plan::ItemId& id : made[last].pieces) without.put(id, plan::ItemPtr());
  if (without.find<plan::Section>(made[last].about)) without.put(made[last].about, plan::ItemPtr());
  composer.controller.edit(without, QStringLiteral("Remove"));
  CHECK(steps->itemText(steps->count() - 1).contains(QStringLiteral("No longer in the plan")));
  CHECK(composer.handout().steps.size() == 1);
}

TEST_CASE("paper and turn are the plan's and show at once", "[handout][composer]") {
  Composer composer;
  Q_EMIT composer.page.paper()->chosen(1);
  Q_EMIT composer.page.turn()->chosen(1);
  composer.settle();
  CHECK(composer.handout().paper == plan::PaperSize::Letter);
  CHECK(composer.handout().turn == plan::PageTurn::Landscape);
  CHECK(composer.page.pagesView().pages()->front().size_mm == QSizeF(279.4, 215.9));
}

TEST_CASE("what is typed for a client is on the page and never in the plan", "[handout][composer]") {
  Composer composer;
  composer.page.showDocument(DocumentKind::ClientPage);
  composer.page.clientBox(2)->edit()->setPlainText(QStringLiteral("Zuleika at the desk"));
  composer.settle();
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("Zuleika")));
  CHECK_FALSE(composer.controller.isModified());
  composer.page.forgetClient();
  CHECK(composer.page.clientBox(2)->edit()->toPlainText().isEmpty());
}

TEST_CASE("another plan or the same one read anew takes a client's words out of sight at once", "[handout][composer]") {
  for (const bool isReadAnew : {true, false}) {
    INFO(isReadAnew);
    Composer composer;
    composer.page.showDocument(DocumentKind::ClientPage);
    composer.page.clientBox(2)->edit()->setPlainText(QStringLiteral("Zuleika at the desk"));
    composer.settle();
    REQUIRE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
    const plan::Plan next = isReadAnew ? composer.controller.document() : tests::sixtyPlan();
    composer.controller.replace(next, {});
    CHECK(composer.page.pagesView().count() == 0);
    CHECK(composer.page.pagesView().pages() == nullptr);
    CHECK_FALSE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
    CHECK(composer.page.clientBox(2)->edit()->toPlainText().isEmpty());
    composer.settle();
    CHECK_FALSE(wordsShown(composer.page).isEmpty());
    CHECK_FALSE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
  }
}

TEST_CASE("pages under way do not come once they are forgotten and their looks are made anew", "[handout][composer]") {
  std::atomic<bool> waits = true;
  std::atomic<int> looks = 0;
  PageMaker maker([&](const Request& request, double pixel, std::stop_token stop, const Progress& progress) {
    ++looks;
    while (waits) std::this_thread::sleep_for(std::chrono::milliseconds(2));
    return noLooks(request, pixel, std::move(stop), progress);
  });
  QSignalSpy ready(&maker, &PageMaker::ready);
  Request request = requestFor(DocumentKind::ClientPage, tests::demoPlan());
  request.client.call = QStringLiteral("Zuleika at the desk");
  maker.request(request);
  while (looks == 0) std::this_thread::sleep_for(std::chrono::milliseconds(2));  // without events: what is made waits
  maker.forget();
  waits = false;
  REQUIRE(QTest::qWaitFor([&] { return maker.isIdle(); }, 20000));
  CHECK(ready.isEmpty());
  maker.request(request);
  REQUIRE(QTest::qWaitFor([&] { return maker.isIdle() && !ready.isEmpty(); }, 20000));
  CHECK(looks == 2);
}

TEST_CASE("pages far from those in sight keep no picture", "[handout][composer]") {
  Composer composer;
  PagesView& view = composer.page.pagesView();
  REQUIRE(view.count() > 5);
  QScrollBar* bar = view.verticalScrollBar();
  const QList<PageView*> pages = view.findChildren<PageView*>();
  view.grab();
  REQUIRE(pages.front()->isDrawn());
  for (int at = 0; at < bar->maximum(); at += view.viewport()->height() / 2) {
    bar->setValue(at);
    view.grab();
  }
  bar->setValue(bar->maximum());
  view.grab();
  CHECK(pages.back()->isDrawn());
  CHECK_FALSE(pages.front()->isDrawn());
  int drawn = 0;
  for (const PageView* page : pages) drawn += page->isDrawn() ? 1 : 0;
  const int inSight = view.viewport()->height() / pages.front()->height() + 2;
  CHECK(drawn <= inSight + 2);
  bar->setValue(0);
  view.grab();
  CHECK(pages.front()->isDrawn());
}

TEST_CASE("a newer edit is what is shown last", "[handout][composer]") {
  Composer composer;
  QPlainTextEdit* aim = composer.page.textBox(HandoutPart::Title)->edit();
  for (int i = 0; i < 20; ++i) aim->setPlainText(QStringLiteral("aim %1").arg(i));
  composer.settle();
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("aim 19")));
}

TEST_CASE("everything on the composer has a name and a role", "[handout][composer]") {
  Composer composer;
  for (const QWidget* widget : composer.page.findChildren<QWidget*>())
    if (widget->focusPolicy() != Qt::NoFocus && widget->isEnabled() && widget->isVisible()) {
      INFO(widget->metaObject()->className());
      CHECK(!(widget->accessibleName().isEmpty() && (!widget->focusProxy() || widget->focusProxy()->accessibleName().isEmpty()) &&
              !(qobject_cast<const QAbstractButton*>(widget) && !qobject_cast<const QAbstractButton*>(widget)->text().isEmpty())));
    }
}

TEST_CASE("the window turns to its pages and back, and undo works on both", "[handout][composer][window]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("lesson"));
  desk.window->actions().action(QStringLiteral("handout.recordCard"))->trigger();
  CHECK(desk.window->composerPage().isVisible());
  CHECK(desk.window->composerPage().kind()->current() == 1);
  CHECK(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
  CHECK(desk.window->windowTitle().contains(QStringLiteral("lesson")));
  Q_EMIT desk.window->composerPage().paper()->chosen(1);
  CHECK(desk.window->controller().isModified());
  CHECK(desk.window->actions().action(QStringLiteral("edit.undo"))->isEnabled());
  desk.window->actions().action(QStringLiteral("edit.undo"))->trigger();
  CHECK_FALSE(desk.window->controller().isModified());
  QTest::keyClick(&desk.window->composerPage(), Qt::Key_Escape);
  CHECK_FALSE(desk.window->composerPage().isVisible());
  CHECK_FALSE(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
}

TEST_CASE("opening another plan leaves no words of the client before on paper", "[handout][composer][window]") {
  tests::Desk desk;
  const QString other = desk.file("other");
  desk.window->openPath(desk.file("lesson"));
  ComposerPage& page = desk.window->composerPage();
  page.clientBox(1)->edit()->setPlainText(QStringLiteral("Zuleika in nine weeks"));
  desk.window->actions().action(QStringLiteral("handout.clientPage"))->trigger();
  REQUIRE(QTest::qWaitFor([&] { return wordsShown(page).contains(QStringLiteral("Zuleika")); }, 60000));
  desk.window->openPath(other);
  CHECK(page.clientBox(1)->edit()->toPlainText().isEmpty());
  CHECK_FALSE(wordsShown(page).contains(QStringLiteral("Zuleika")));
}

}  // namespace
}  // namespace combdraft::handout
