// The client's screen: what it shows and asks for, fingers on it, what is kept,
// and that nothing else can be reached.
#include <QDialog>
#include <QFile>
#include <QImage>
#include <QMenuBar>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QToolBar>
#include <QToolButton>
#include <cmath>

#include "app/chair/chair_view.h"
#include "app/chair/hold_button.h"
#include "app/chair/touch_controls.h"
#include "app/cards/consultation_card.h"
#include "app/desk/card_column.h"
#include "app/store/client_keeper.h"
#include "engine/plan/choice_edits.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using chair::ChairView;
using chair::Heads;
using chair::HoldButton;
using desk::MainWindow;

namespace {

constexpr double kToday = 5;

// Today reads level 5, a choice 2 and one more for each piece; half a level less or
// more by the lift. Pictures are of one colour.
live::LookService::Passes chairPasses() {
  const auto pass = [](const plan::Plan& plan, const look::LookSettings& settings,
                       const std::vector<look::PictureRequest>& pictures, std::stop_token) -> Result<look::LookFrame> {
    look::Readings readings;
    const bool today = settings.subject == look::Subject::Today;
    const double lift = 0.5 * (static_cast<int>(settings.lift) - 1);
    readings.whole.level = today ? kToday : 2 + static_cast<double>(plan.pieces(settings.choice).size()) + 4 + lift;
    readings.whole.lightness = 6 * readings.whole.level;
    readings.whole.light_share = today ? 0 : 0.4;
    readings.contrast.verdict = today ? look::ContrastVerdict::OneTone : look::ContrastVerdict::TwoClearLevels;
    readings.contrast.delta = 12 + 4 * lift;
    for (int i = 0; i < look::kRegions; ++i) {
      look::RegionReading region;
      region.region = static_cast<look::Region>(i);
      region.whole = readings.whole;
      if (region.region == look::Region::Nape) region.whole->light_share = 0.02;
      readings.regions.push_back(region);
    }
    look::LookFrame frame;
    for (const look::PictureRequest& asked : pictures) {
      look::Picture picture;
      picture.view = asked.view;
      picture.projection = head::SheetView(asked.view == head::ViewName::Crown ? head::ViewName::Top : asked.view);
      picture.frame = picture.projection.frame();
      picture.pixel_mm = asked.pixel_mm;
      picture.width = static_cast<int>(picture.frame.width_mm / asked.pixel_mm);
      picture.height = static_cast<int>(picture.frame.height_mm / asked.pixel_mm);
      picture.rgba.assign(static_cast<std::size_t>(picture.width * picture.height * 4), 120);
      frame.pictures.push_back(std::make_shared<const look::Picture>(std::move(picture)));
    }
    frame.readings = std::make_shared<const look::Readings>(readings);
    return frame;
  };
  live::LookService::Passes passes{pass, pass};
  passes.advise = [](const plan::Plan& plan, const look::LookSettings& settings, const look::Readings&, std::stop_token,
                     const std::function<void(const advise::Advice&)>&) -> Result<advise::Advice> {
    advise::Advice advice;
    const double weeks = 4 + static_cast<double>(plan.pieces(settings.choice).size());
    advice.regrowth = {{hair::WornWay::Down, weeks, weeks - 1, weeks + 2}, {hair::WornWay::TiedBack, 1, 1, 1}};
    advice.complete = true;
    return advice;
  };
  return passes;
}

struct Chair : tests::Desk {
  std::unique_ptr<QPointingDevice> screen{QTest::createTouchDevice()};

  explicit Chair(QSize size = {1180, 820}) : Desk(chairPasses) {
    window->openPath(file("Beach afternoon"));
    REQUIRE(isFresh());
    const auto second = plan::addChoice(window->controller().document(), "softer", {});
    window->controller().edit(plan::applied(window->controller().document(), *second), QStringLiteral("Second choice"));
    window->controller().edit(plan::applied(window->controller().document(), plan::activateChoice(window->controller().document(), "choice-1")),
                              QStringLiteral("First again"));
    window->controller().markSaved(window->controller().file());
    action("show.client")->trigger();
    CHECK(window->isFullScreen());
    window->showNormal();  // the screen of the tests is small
    window->resize(size);
    REQUIRE(QTest::qWaitFor([&] { return view().size() == size; }, 3000));
    QTest::qWait(50);
  }
  ChairView& view() { return window->chairView(); }
  QAction* action(const char* id) { return window->actions().action(QLatin1String(id)); }
  const plan::Plan& plan() { return window->controller().document(); }
  bool settled() {
    const bool known = QTest::qWaitFor([&] { return view().picture()->pane(0).state.isEmpty() && view().picture()->pane(1).state.isEmpty(); }, 5000);
    QTest::qWait(50);  // words are laid out
    return known;
  }
  // The screen of the tests is smaller than the window: what is touched comes to its middle.
  void reach(QWidget* at, QPoint where) { window->move(window->pos() + QPoint(400, 400) - at->mapToGlobal(where)); }
  void tap(QWidget* at) { tap(at, at->rect().center()); }
  void tap(QWidget* at, QPoint where) {
    reach(at, where);
    QTest::touchEvent(at, screen.get()).press(0, where, at);
    QTest::touchEvent(at, screen.get()).release(0, where, at);
  }
  void drag(QWidget* at, QPoint from, QPoint to) {
    reach(at, from);
    QTest::touchEvent(at, screen.get()).press(0, from, at);
    for (int i = 1; i <= 8; ++i) QTest::touchEvent(at, screen.get()).move(0, from + (to - from) * i / 8, at);
    QTest::touchEvent(at, screen.get()).release(0, to, at);
  }
};

// Every control that is shown, and where it may be seen.
std::vector<QWidget*> controlsOf(QWidget& view) {
  std::vector<QWidget*> found;
  for (QWidget* one : view.findChildren<QWidget*>())
    if (one->isVisible() && !one->objectName().startsWith(QStringLiteral("qt_")) &&
        (qobject_cast<QAbstractButton*>(one) || qobject_cast<QAbstractSlider*>(one)) && !qobject_cast<QScrollBar*>(one))
      found.push_back(one);
  return found;
}

void checkLayout(QWidget& view) {
  const QRect window = view.rect();
  const std::vector<QWidget*> controls = controlsOf(view);
  for (QWidget* one : controls) {
    INFO(one->metaObject()->className() << " " << one->accessibleName().toStdString());
    CHECK_FALSE(one->accessibleName().isEmpty());
    CHECK(one->width() >= 48);
    CHECK(one->height() >= 48);
    const QRect place(one->mapTo(&view, QPoint(0, 0)), one->size());
    CHECK(window.contains(place));
    CHECK(one->width() >= one->minimumSizeHint().width());
    CHECK(one->visibleRegion().boundingRect().size() == one->size());  // nothing lies over it
    for (QWidget* other : controls)
      if (other != one && !other->isAncestorOf(one) && !one->isAncestorOf(other))
        CHECK_FALSE(place.intersects(QRect(other->mapTo(&view, QPoint(0, 0)), other->size())));
  }
  for (QLabel* label : view.findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) continue;
    INFO("label " << label->text().toStdString());
    const int needs = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
    CHECK(label->height() >= needs);
    CHECK(window.contains(QRect(label->mapTo(&view, QPoint(0, 0)), label->size())));
  }
}

}  // namespace

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
  // The line stands whole under each picture.
  for (const int side : {0, 1}) {
    const QRectF line = chair.view().picture()->lineRect(side);
    const QRect needs = chair.view().picture()->fontMetrics().boundingRect(QRect(0, 0, static_cast<int>(line.width()), 1000),
                                                                           Qt::TextWordWrap | Qt::AlignHCenter, chair.view().picture()->line());
    CHECK(needs.height() <= line.height() + 1);
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

TEST_CASE("three plain readings go from one end to the other, without words of technique", "[chair]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  CHECK(view.readingText(0).contains(QLatin1String("today it is light brown (5.0)")));
  CHECK(view.readingText(1).contains(QLatin1String(" to ")));
  CHECK(view.readingText(1).contains(QLatin1String("steps")));
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(2).contains(QLatin1String("4 to 7 weeks")); }, 8000));
  CHECK(view.darkText().contains(QLatin1String("60 %")));
  CHECK(view.darkText().contains(QLatin1String("nape")));
  QString all;
  for (const QLabel* label : view.findChildren<QLabel*>()) all += label->text() + u' ';
  for (QAbstractButton* button : view.findChildren<QAbstractButton*>()) all += button->text() + u' ';
  for (const char* word : {"piece", "foil", "backcomb", "lightener", "developer", "gram", "L*", "formula", "weave", "ready", "safe", "guarantee"})
    CHECK_FALSE(all.contains(QLatin1String(word), Qt::CaseInsensitive));
}

TEST_CASE("the ends of a reading that is grey or short of hair are told in words", "[chair]") {
  look::Readings planned;
  planned.contrast.verdict = look::ContrastVerdict::TooLittleHair;
  chair::LookSpan span{nullptr, std::make_shared<const look::Readings>(planned), nullptr};
  CHECK(chair::howMuchDifference(span).value == QLatin1String("not seen"));
  CHECK(chair::howLight({}, nullptr).value.isEmpty());
  CHECK(chair::weeksUntilRegrowth(std::nullopt).value.isEmpty());
  look::Regrowth never;
  CHECK(chair::weeksUntilRegrowth(never).value == QLatin1String("not told"));
  CHECK(chair::weeksUntilRegrowth(never).sentence.contains(QLatin1String("as far as it looks ahead (26 weeks)")));
  CHECK(chair::levelWords(7.1) == QLatin1String("blond"));
  CHECK(chair::levelWords(7.6) == QLatin1String("between blond and light blond"));
  look::Regrowth open{hair::WornWay::Down, 12, 9, std::nullopt};
  CHECK(chair::weeksUntilRegrowth(open).value == QLatin1String("9 to more than 26 weeks"));
  CHECK(chair::whatStaysDark(nullptr).isEmpty());
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

TEST_CASE("this one keeps choice and picture and span and date outside undo and in the file", "[chair][agreement]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  chair.tap(view.wornRow()->button(3));
  chair.tap(view.weeks(), QPoint(view.weeks()->width() / 2, 24));
  REQUIRE(chair.settled());
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  const int entries = chair.window->controller().undoStack().count();
  const int asked = chair.window->lookService().requestsPosted();
  chair.tap(view.thisOne(1));
  CHECK(view.noticeText().contains(QLatin1String("Kept with the plan: Choice A")));
  CHECK(view.chips(1)[0]->text().startsWith(QStringLiteral("\u2713")));
  CHECK(chair.window->controller().isModified());
  CHECK(chair.window->controller().undoStack().count() == entries);
  QTest::qWait(50);
  CHECK(view.picture()->pane(1).state.isEmpty());  // no look is worked out anew for it
  CHECK(chair.window->lookService().requestsPosted() <= asked + 1);

  const auto agreed = plan::readAgreement(chair.plan().info().agreedJson);
  REQUIRE(agreed.ok());
  CHECK(agreed->choice == "choice-1");
  CHECK(agreed->choiceName == "A");
  CHECK(agreed->date == QDate::currentDate().toString(Qt::ISODate).toStdString());
  CHECK(agreed->view.worn == "tied-back");
  CHECK(std::abs(agreed->view.weeks - 13) <= 1);
  CHECK(agreed->view.facing == plan::Facing::AsInMirror);
  REQUIRE(agreed->span);
  CHECK(agreed->span->low == 6.5);
  CHECK(agreed->span->level == 7);
  CHECK(agreed->span->high == 7.5);
  CHECK(agreed->promiseLine == view.picture()->line().toStdString());
  CHECK_FALSE(agreed->engineVersion.empty());
  REQUIRE(agreed->frozen);
  CHECK(agreed->frozen->pieces("choice-1").size() == 1);
  CHECK_FALSE(agreed->frozen->find<plan::Choice>("choice-2"));
  CHECK(agreed->pictureBase64.size() <= plan::kAgreedPictureBytes);
  QImage picture;
  REQUIRE(picture.loadFromData(QByteArray::fromBase64(QByteArray::fromStdString(agreed->pictureBase64)), "PNG"));
  CHECK(picture.width() >= 150);

  // Saved and read again it is there; another one keeps the first.
  chair.tap(view.chips(1)[1]);
  REQUIRE(chair.settled());
  chair.tap(view.thisOne(1));
  const auto second = plan::readAgreement(chair.plan().info().agreedJson);
  REQUIRE(second.ok());
  CHECK(second->choice == "choice-2");
  REQUIRE(second->earlier.size() == 1);
  CHECK(plan::readAgreement(second->earlier[0])->choice == "choice-1");
  const QString path = chair.dir.filePath(QStringLiteral("kept.json"));
  REQUIRE(store::savePlan(chair.plan(), path).ok());
  CHECK(store::openPlan(path)->plan.info().agreedJson == chair.plan().info().agreedJson);
}

TEST_CASE("a plan that may only be read says that nothing was kept", "[chair][agreement]") {
  Chair chair;
  REQUIRE(chair.settled());
  chair.window->controller().setAccess(document::DocumentController::Access::ReadOnly);
  chair.tap(chair.view().thisOne(1));
  CHECK(chair.view().noticeText().contains(QLatin1String("not kept")));
  CHECK(chair.plan().info().agreedJson.empty());
}

TEST_CASE("visits and minutes and price stand there only when something is typed", "[chair]") {
  Chair chair;
  CHECK(chair.view().costText().isEmpty());
  chair.view().setCostLine([](const plan::ItemId& id) { return id == "choice-1" ? QStringLiteral("2 visits, 180 minutes, 240") : QString(); });
  CHECK(chair.view().costText() == QLatin1String("2 visits, 180 minutes, 240"));
  chair.tap(chair.view().chips(1)[1]);
  CHECK(chair.view().costText().isEmpty());
}

TEST_CASE("what the colourist typed for a choice stands on the client's screen and nothing that was worked out", "[chair][price]") {
  Chair chair;
  REQUIRE(chair.settled());
  cards::ConsultationCard* card = chair.window->cards().consultationCard();
  REQUIRE(card->keeper());
  store::Rates rates;
  rates.perHour = 77;
  card->setRates(rates);
  chair.tap(chair.view().chips(1)[0]);
  CHECK(chair.view().costText().isEmpty());
  card->keeper()->edit([&](store::ClientFile& file) {
    store::Offer& offer = store::offerFor(file, chair.plan().info().number, "choice-1");
    offer.visits = "two";
    offer.price = "240 crowns";
  });
  chair.tap(chair.view().chips(1)[0]);
  CHECK(chair.view().costText() == QStringLiteral("Visits: two; Price: 240 crowns"));
  chair.tap(chair.view().chips(1)[1]);
  CHECK(chair.view().costText().isEmpty());
}

TEST_CASE("how light is told in halves outwards once both ends are known", "[chair]") {
  const auto at = [](double level) {
    look::Readings readings;
    readings.whole.level = level;
    return std::make_shared<const look::Readings>(readings);
  };
  CHECK(chair::howLight({at(6.6), at(6.8), at(6.9)}, nullptr).value == QLatin1String("6.5 to 7.0"));
  CHECK(chair::howLight({at(7), at(7), at(7)}, nullptr).value == QLatin1String("6.5 to 7.5"));
  CHECK(chair::howLight({at(5.9), at(6.2), at(7.1)}, nullptr).value == QLatin1String("5.5 to 7.5"));
  CHECK(chair::howLight({nullptr, at(6.8), nullptr}, nullptr).value == QLatin1String("about 7.0"));
  CHECK(chair::howLight({at(6.6), at(6.8), at(6.9)}, nullptr).title.contains(QLatin1String("less or more")));
  // What is kept with an agreement is what stood there.
  const auto raw = chair::levelSpan({at(5.9), at(6.2), at(7.1)});
  REQUIRE(raw);
  CHECK(raw->low == 5.9);
  CHECK(chair::asShown(*raw).low == 5.5);
  CHECK(chair::asShown(*raw).high == 7.5);
  CHECK(chair::asShown(*raw).planned == 6.2);
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
