// The client's screen: what it shows and asks for, its layout, fingers on it, and that
// nothing else can be reached. Its readings and what is agreed on have files of their own.
#include <QDialog>
#include <QImage>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

#include "app/chair/hold_button.h"
#include "app/chair/touch_controls.h"
#include "tests/app/chair_fixture.h"

using namespace combdraft;
using chair::ChairView;
using chair::Heads;
using chair::HoldButton;
using desk::MainWindow;
using tests::Chair;
using tests::chairPasses;
using tests::checkLayout;
using tests::kToday;

TEST_CASE("the client's screen fits wide and tall windows with targets of 48 pixels", "[chair]") {
  const QSize size = GENERATE(QSize(1180, 820), QSize(820, 1180), QSize(1366, 1024));
  Chair chair(size);
  REQUIRE(chair.settled());
  // The longest words, and the layout that follows them a turn later.
  REQUIRE(QTest::qWaitFor([&] { return chair.view().readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  REQUIRE(QTest::qWaitFor([&] { return chair.view().readingText(2).contains(QLatin1String("4 to 7 weeks")); }, 8000));
  QTest::qWait(50);
  checkLayout(chair.view());
  CHECK(chair.view().picture()->width() >= 600);
  CHECK(chair.view().picture()->height() >= 380);
  // The line stands whole under each picture, also under one that is pulled narrow.
  for (const double divider_frac : {0.5, 0.35, 0.2, 0.8}) {
    chair.view().picture()->setDivider(divider_frac);
    for (const int side : {0, 1}) {
      INFO("divider at " << divider_frac << ", side " << side);
      const QRectF line = chair.view().picture()->lineRect(side);
      const QRect needs = chair.view().picture()->fontMetrics().boundingRect(QRect(0, 0, static_cast<int>(line.width()), 1000),
                                                                             Qt::TextWordWrap | Qt::AlignHCenter, chair.view().picture()->line());
      CHECK(needs.height() <= line.height() + 1);
      CHECK(line.right() <= chair.view().picture()->width());
    }
  }
  CHECK(chair.view().picture()->line().contains(QLatin1String("not a promise; a test strand")));
}

TEST_CASE("today stands beside the choice and another choice one touch away", "[chair]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  CHECK(view.picture()->pane(0).title == QLatin1String("Today"));
  CHECK(view.picture()->pane(1).title == QLatin1String("Choice A"));
  CHECK(view.picture()->pane(0).look->frame.readings->whole.level == kToday);
  CHECK(view.picture()->pane(1).look->frame.readings->whole.level == 7);
  CHECK_FALSE(view.thisOne(0)->isVisible());  // today is no choice
  REQUIRE(view.chips(0).size() == 3);
  REQUIRE(view.chips(1).size() == 2);
  chair.tap(view.chips(0)[2]);
  REQUIRE(chair.settled());
  CHECK(view.picture()->pane(0).title == QLatin1String("Choice softer"));
  CHECK(view.picture()->pane(0).look->settings.choice == "choice-2");
  CHECK(view.picture()->pane(0).look->frame.readings->whole.level == 6);
  CHECK(view.thisOne(0)->isVisible());
  checkLayout(view);
}

TEST_CASE("how it is worn, when, in which light and how far it lightens are one touch each", "[chair]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  using hair::WornWay;
  const std::pair<int, WornWay> ways[] = {{2, WornWay::HalfUp}, {3, WornWay::TiedBack}, {4, WornWay::CrownOpened}, {0, WornWay::Down}};
  for (const auto& [button, way] : ways) {
    chair.tap(view.wornRow()->button(button));
    CHECK(view.settings().worn.way == way);
    REQUIRE(chair.settled());
    CHECK(view.picture()->pane(1).look->settings.worn.way == way);
    CHECK(view.picture()->pane(0).look->settings.worn.way == way);  // both wear the same
    CHECK(view.part()->isEnabled() == hair::showsPart(way));
  }
  chair.tap(view.wornRow()->button(1));
  CHECK(view.settings().worn.way == WornWay::Down);
  CHECK(view.settings().worn.partShift_mm == 25);
  chair.drag(view.part(), view.part()->rect().center(), QPoint(20, 24));
  CHECK(view.settings().worn.partShift_mm < -40);
  CHECK(view.wornRow()->current() == 1);
  chair.tap(view.weeks(), QPoint(view.weeks()->width() / 2, 24));
  CHECK(std::abs(view.settings().weeks - 13) <= 1);
  chair.tap(view.lightRow()->button(2));
  CHECK(view.settings().light == colour::Light::WarmLamp);
  chair.tap(view.liftRow()->button(2));
  REQUIRE(chair.settled());
  CHECK(view.picture()->pane(1).look->settings.lift == look::Lift::More);
  CHECK(view.picture()->pane(1).look->frame.readings->whole.level == 7.5);
  // All ends are known by now: the other one comes at once.
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  chair.tap(view.liftRow()->button(0));
  CHECK(view.picture()->pane(1).look->settings.lift == look::Lift::Less);
  CHECK(view.picture()->pane(1).state.isEmpty());
  // By key as well.
  view.liftRow()->button(0)->setFocus();
  QTest::keyClick(view.liftRow()->button(0), Qt::Key_Right);
  CHECK(view.settings().lift == look::Lift::AsPlanned);
  CHECK_FALSE(chair.window->controller().isModified());
  CHECK(chair.window->viewState().lookSettings().weeks == 0);  // the desk's own view stays
}

TEST_CASE("a finger pulls the divider and two fingers enlarge and move", "[chair][touch]") {
  Chair chair;
  REQUIRE(chair.settled());
  chair::PairPicture& picture = *chair.view().picture();
  const int w = picture.width(), h = picture.height();
  chair.drag(&picture, {w / 2, h / 2}, {w * 3 / 10, h / 2});
  CHECK(picture.divider_frac() == Approx(0.3).margin(0.01));
  chair.tap(chair.view().headsRow()->button(0));
  CHECK(picture.heads() == Heads::One);
  CHECK(picture.divider_frac() == 0.5);
  chair.drag(&picture, {w / 2, h / 2}, {w * 9 / 10, h / 2});
  CHECK(picture.divider_frac() == Approx(0.9).margin(0.01));

  // The first of two fingers did not mean the divider.
  const QPoint a(w / 2 - 60, h / 2), b(w / 2 + 60, h / 2);
  chair.reach(&picture, a);
  QTest::touchEvent(&picture, chair.screen.get()).press(0, a, &picture);
  QTest::touchEvent(&picture, chair.screen.get()).stationary(0).press(1, b, &picture);
  for (int i = 1; i <= 10; ++i)
    QTest::touchEvent(&picture, chair.screen.get()).move(0, a - QPoint(6 * i, 0), &picture).move(1, b + QPoint(6 * i, 0), &picture);
  CHECK(picture.divider_frac() == Approx(0.9).margin(0.01));
  const double zoom = picture.zoom();
  CHECK(zoom > 1.7);  // twice as far apart, less the first step
  CHECK(zoom < 2.1);
  const QPointF before = picture.moved();
  for (int i = 1; i <= 10; ++i)
    QTest::touchEvent(&picture, chair.screen.get()).move(0, a + QPoint(-60 + 5 * i, 4 * i), &picture).move(1, b + QPoint(60 + 5 * i, 4 * i), &picture);
  QTest::touchEvent(&picture, chair.screen.get()).release(0, a + QPoint(-10, 40), &picture).release(1, b + QPoint(110, 40), &picture);
  CHECK(picture.zoom() == Approx(zoom).margin(0.05));
  CHECK((picture.moved() - before).y() > 30);
  CHECK(picture.wanted().pixel_mm < 1);  // asked for anew, finer
  // Enlarged, one finger moves the picture; near the divider it pulls it.
  const QPointF still = picture.moved();
  chair.drag(&picture, {w / 3, h / 2}, {w / 3, h / 2 - 50});
  CHECK(picture.moved().y() < still.y() - 40);
  CHECK(picture.divider_frac() == Approx(0.9).margin(0.01));
  QTest::keyClick(&picture, Qt::Key_0);
  CHECK(picture.zoom() == 1);
  QTest::keyClick(&picture, Qt::Key_Left);
  CHECK(picture.divider_frac() == Approx(0.88).margin(0.01));
}

TEST_CASE("the divider is a comb with teeth that a finger beside it or a key pulls", "[chair][touch]") {
  Chair chair;
  REQUIRE(chair.settled());
  chair::PairPicture& picture = *chair.view().picture();
  const int w = picture.width(), h = picture.height();
  const QRectF comb = picture.combRect();
  CHECK(comb.left() < w / 2.0);
  CHECK(comb.right() > w / 2.0 + 15);  // its teeth point to the right picture
  CHECK(comb.height() >= 70);
  CHECK(comb.bottom() <= picture.lineRect(0).top());
  // Down through its teeth ink and paper take turns.
  const auto teethAt = [&](const QImage& image, double x) {
    int teeth = 0;
    bool wasInk = false;
    for (int y = static_cast<int>(comb.top()); y < static_cast<int>(comb.bottom()); ++y) {
      const bool isInk = image.pixelColor(static_cast<int>(x), y).lightness() < 128;
      if (isInk && !wasInk) ++teeth;
      wasInk = isInk;
    }
    return teeth;
  };
  const QImage drawn = picture.grab().toImage();
  REQUIRE(drawn.size() == picture.size());
  CHECK(teethAt(drawn, comb.right() - 8) >= 10);
  CHECK(teethAt(drawn, w / 2.0) <= 1);  // its back is whole

  // Enlarged, a finger 23 pixels beside it still takes it, and not the picture.
  QTest::keyClick(&picture, Qt::Key_Plus);
  REQUIRE(picture.zoom() > 1);
  const QPointF still = picture.moved();
  const QPoint beside(w / 2 + 23, h / 2);
  chair.drag(&picture, beside, beside - QPoint(123, 0));
  CHECK(picture.moved() == still);
  CHECK(picture.divider_frac() == Approx((w / 2.0 - 100) / w).margin(0.01));
  const double before = picture.divider_frac();
  QTest::keyClick(&picture, Qt::Key_Right);
  CHECK(picture.divider_frac() == Approx(before + 0.02).margin(0.001));
  CHECK(picture.accessibleDescription().contains(QLatin1String("divider")));
  // At the right edge its teeth turn round and stay in the window.
  chair.tap(chair.view().headsRow()->button(0));
  picture.setDivider(1);
  CHECK(picture.combRect().right() <= w);
}

TEST_CASE("a row of pictures goes on in the next line where its words have no room", "[chair][touch]") {
  controls::applyTheme(*qApp, controls::ThemeName::Light);
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  auto* row = new chair::PictureRow(QStringLiteral("Light"),
                                    {{QStringLiteral("Daylight through a window"), QStringLiteral("light-day")},
                                     {QStringLiteral("A sky without sun"), QStringLiteral("light-overcast")},
                                     {QStringLiteral("A warm lamp at home"), QStringLiteral("light-lamp")},
                                     {QStringLiteral("Cool"), {}}},
                                    Qt::Horizontal, &window);
  column->addWidget(row);
  column->addStretch(1);
  const int oneLine = row->sizeHint().width();
  window.resize(oneLine * 6 / 10, 400);
  window.show();
  REQUIRE(QTest::qWaitForWindowExposed(&window));
  QTest::qWait(20);
  const auto check = [&] {
    for (int i = 0; i < row->count(); ++i) {
      const QAbstractButton& one = *row->button(i);
      INFO(one.text().toStdString());
      CHECK(one.width() >= one.sizeHint().width());
      CHECK(one.width() >= chair::kTarget_px);
      CHECK(one.height() >= chair::kTarget_px);
      CHECK(row->rect().contains(one.geometry()));
      for (int other = 0; other < i; ++other) CHECK_FALSE(one.geometry().intersects(row->button(other)->geometry()));
    }
  };
  check();
  CHECK(row->button(3)->y() > row->button(0)->geometry().bottom());
  window.resize(oneLine + 60, 400);
  QTest::qWait(20);
  check();
  CHECK(row->button(3)->geometry().top() < row->button(0)->geometry().bottom());
}

TEST_CASE("the front is as in the mirror until switched and says which", "[chair]") {
  Chair chair;
  REQUIRE(chair.settled());
  chair::PairPicture& picture = *chair.view().picture();
  CHECK(picture.facing() == chair::Facing::AsInMirror);
  CHECK(picture.viewWords().contains(QLatin1String("mirror")));
  chair.tap(chair.view().facingRow()->button(1));
  CHECK(picture.facing() == chair::Facing::AsOthersSee);
  CHECK(picture.viewWords().contains(QLatin1String("as others see you")));
  chair.tap(chair.view().facingRow()->button(0));
  chair.tap(chair.view().viewRow()->button(3));
  CHECK(picture.view() == head::ViewName::Back);
  CHECK(picture.facing() == chair::Facing::AsOthersSee);  // a back is not turned
  CHECK_FALSE(chair.view().facingRow()->isEnabled());
  REQUIRE(chair.settled());

  // The mirror turns the picture, and nothing else.
  const chair::Pane pane = picture.pane(1);
  const QImage seen = chair::paneImage(pane, head::ViewName::Front, chair::Facing::AsOthersSee, 1);
  const QImage mirrored = chair::paneImage(pane, head::ViewName::Front, chair::Facing::AsInMirror, 1);
  CHECK(seen.size() == mirrored.size());
  int differ = 0;
  for (int y = 0; y < seen.height(); y += 3)
    for (int x = 0; x < seen.width(); x += 3) {
      const QColor one = seen.pixelColor(x, y), other = mirrored.pixelColor(seen.width() - 1 - x, y);
      if (std::abs(one.lightness() - other.lightness()) > 60) ++differ;
    }
  CHECK(differ < 40);  // edges of lines only
}

TEST_CASE("leaving needs a held finger or a held key", "[chair][touch]") {
  Chair chair;
  HoldButton* leave = chair.view().leaveButton();
  const auto showing = [&] { return chair.window->showing(); };
  chair.tap(leave);
  CHECK(showing() == MainWindow::Showing::Client);
  CHECK(chair.view().noticeText().contains(QLatin1String("hold")));
  QTest::keyClick(&chair.view(), Qt::Key_Escape);
  QTest::keyClick(leave, Qt::Key_Space);
  QTest::qWait(100);
  CHECK(showing() == MainWindow::Showing::Client);
  chair.window->close();
  CHECK(chair.window->isVisible());
  CHECK(showing() == MainWindow::Showing::Client);

  SECTION("finger") {
    chair.reach(leave, leave->rect().center());
    QTest::touchEvent(leave, chair.screen.get()).press(0, leave->rect().center(), leave);
    CHECK(leave->isHolding());
    CHECK(QTest::qWaitFor([&] { return showing() == MainWindow::Showing::Desk; }, HoldButton::kHold_ms + 3000));
    QTest::touchEvent(leave, chair.screen.get()).release(0, leave->rect().center(), leave);
  }
  SECTION("Escape") {
    QTest::keyPress(&chair.view(), Qt::Key_Escape);
    CHECK(QTest::qWaitFor([&] { return showing() == MainWindow::Showing::Desk; }, HoldButton::kHold_ms + 3000));
    QTest::keyRelease(chair.window.get(), Qt::Key_Escape);
  }
  SECTION("Space on the button") {
    leave->setFocus();
    QTest::keyPress(leave, Qt::Key_Space);
    CHECK(QTest::qWaitFor([&] { return showing() == MainWindow::Showing::Desk; }, HoldButton::kHold_ms + 3000));
    QTest::keyRelease(chair.window.get(), Qt::Key_Space);
  }
  CHECK(chair.window->menuBar()->isVisible());
  CHECK_FALSE(chair.window->isFullScreen());
  CHECK(chair.action("file.save")->isEnabled());
  CHECK(chair.isFresh());  // the sheet's look comes back
}

TEST_CASE("nothing of the desk and no other plan can be reached from the client's screen", "[chair]") {
  Chair chair;
  auto other = std::make_unique<MainWindow>(chair.places(), chairPasses);
  QTest::keyPress(&chair.view(), Qt::Key_Escape);
  REQUIRE(QTest::qWaitFor([&] { return chair.window->showing() == MainWindow::Showing::Desk; }, HoldButton::kHold_ms + 3000));
  other->show();
  REQUIRE(QTest::qWaitForWindowExposed(other.get()));
  QDialog preview(chair.window.get());  // of somebody's pages
  preview.show();
  chair.action("show.client")->trigger();
  CHECK_FALSE(other->isVisible());
  CHECK_FALSE(preview.isVisible());
  CHECK_FALSE(chair.window->windowTitle().contains(QLatin1String("Beach")));
  CHECK_FALSE(chair.window->menuBar()->isVisible());
  for (QToolBar* bar : chair.window->findChildren<QToolBar*>()) CHECK_FALSE(bar->isVisible());
  CHECK_FALSE(chair.window->acceptDrops());
  for (const desk::ActionSpec& spec : chair.window->actions().specs()) {
    INFO(spec.id.toStdString());
    CHECK_FALSE(chair.window->actions().action(spec.id)->isEnabled());
  }
  // Every key of the desk, on the screen as it stands.
  const plan::Plan before = chair.plan();
  for (const desk::ActionSpec& spec : chair.window->actions().specs()) {
    if (spec.shortcut.isEmpty()) continue;
    const QKeyCombination keys = spec.shortcut[0];
    QTest::keyClick(&chair.view(), keys.key(), keys.keyboardModifiers());
  }
  CHECK(chair.plan() == before);
  CHECK(chair.window->showing() == MainWindow::Showing::Client);
  // Tab walks the screen's own controls only.
  chair.view().picture()->setFocus();
  for (int i = 0; i < 80; ++i) {
    QTest::keyClick(chair.window->focusWidget(), Qt::Key_Tab);
    REQUIRE(chair.window->focusWidget());
    CHECK(chair.view().isAncestorOf(chair.window->focusWidget()));
  }
  // A message that comes meanwhile waits behind it.
  chair.window->messages().say({desk::Message::Kind::Caution, QStringLiteral("other-client.json was changed"), {}, QStringLiteral("x")});
  CHECK_FALSE(chair.window->messages().isVisible());
  QContextMenuEvent menu(QContextMenuEvent::Mouse, QPoint(5, 5), chair.window->mapToGlobal(QPoint(5, 5)));
  QApplication::sendEvent(chair.window.get(), &menu);
  CHECK_FALSE(QApplication::activePopupWidget());
  QTest::keyPress(&chair.view(), Qt::Key_Escape);
  REQUIRE(QTest::qWaitFor([&] { return chair.window->showing() == MainWindow::Showing::Desk; }, HoldButton::kHold_ms + 3000));
  CHECK(other->isVisible());
  CHECK(chair.window->messages().isVisible());
}

TEST_CASE("a look that cannot be worked out says so on the client's screen", "[chair]") {
  tests::Desk desk([] {
    live::LookService::Passes passes = chairPasses();
    passes.full = [](const plan::Plan&, const look::LookSettings&, const std::vector<look::PictureRequest>&, std::stop_token) -> Result<look::LookFrame> {
      return Error{ErrorCode::OutOfRange, "/head/circumference_mm", {"2000", "450 to 680"}, {}};
    };
    return passes;
  });
  desk.window->openPath(desk.file("odd"));
  desk.window->actions().action(QStringLiteral("show.client"))->trigger();
  CHECK(QTest::qWaitFor([&] { return desk.window->chairView().noticeText().contains(QLatin1String("cannot be worked out")); }, 5000));
}
