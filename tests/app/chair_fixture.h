#pragma once
// The client's screen over a stand-in for the engine that answers in words and pictures,
// with fingers on it.
#include <QAbstractButton>
#include <QAbstractSlider>
#include <QAction>
#include <QLabel>
#include <QPointingDevice>
#include <QScrollBar>
#include <algorithm>

#include "app/chair/chair_view.h"
#include "engine/plan/choice_edits.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::tests {

inline constexpr double kToday = 5;  ///< level

/// Today reads level 5, a choice 6 and one more for each piece up to 9; half a level less
/// or more by the lift. Pictures are of one colour.
inline live::LookService::Passes chairPasses() {
  const auto pass = [](const plan::Plan& plan, const look::LookSettings& settings,
                       const std::vector<look::PictureRequest>& pictures, std::stop_token) -> Result<look::LookFrame> {
    look::Readings readings;
    const bool today = settings.subject == look::Subject::Today;
    const double lift = 0.5 * (static_cast<int>(settings.lift) - 1);
    readings.whole.level = today ? kToday : std::min(6 + static_cast<double>(plan.pieces(settings.choice).size()), 9.0) + lift;
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

/// The client's screen of a plan with two choices, in a window of `size`.
struct Chair : Desk {
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
  chair::ChairView& view() { return window->chairView(); }
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

/// Every control that is shown, and where it may be seen.
inline std::vector<QWidget*> controlsOf(QWidget& view) {
  std::vector<QWidget*> found;
  for (QWidget* one : view.findChildren<QWidget*>())
    if (one->isVisible() && !one->objectName().startsWith(QStringLiteral("qt_")) &&
        (qobject_cast<QAbstractButton*>(one) || qobject_cast<QAbstractSlider*>(one)) && !qobject_cast<QScrollBar*>(one))
      found.push_back(one);
  return found;
}

/// Targets of 48 pixels that are named, whole, in the window and apart; labels that are whole.
inline void checkLayout(QWidget& view) {
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

}  // namespace combdraft::tests
