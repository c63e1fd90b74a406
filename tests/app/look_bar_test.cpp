// The bar above the sheet: every way of wearing, wet or dry, from how far, and
// that it takes two rows at most.
#include <catch2/catch.hpp>

#include <QLabel>
#include <set>

#include "app/controls/flow_layout.h"
#include "app/desk/worn_bar.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

namespace {

int rowsOf(const desk::WornBar& bar) {
  std::set<int> tops;
  for (int i = 0; i < bar.layout()->count(); ++i)
    if (!bar.layout()->itemAt(i)->isEmpty()) tops.insert(bar.layout()->itemAt(i)->geometry().center().y() / 30);
  return static_cast<int>(tops.size());
}

const hair::Worn& wornOf(Desk& desk) { return desk.window->viewState().lookSettings().worn; }

}  // namespace

TEST_CASE("every way of wearing is chosen in the bar and by its command", "[desk][bar]") {
  Desk desk;
  desk.window->openPath(desk.file("ways"));
  for (const hair::WornWay way : hair::kWornWays) {
    INFO(hair::wornWord(way));
    desk.window->wornBar().worn()->button(static_cast<int>(way))->click();
    CHECK(wornOf(desk).way == way);
    QAction* action = desk.window->actions().action(QStringLiteral("look.worn.") + QString::fromUtf8(hair::wornWord(way).data()));
    CHECK(action->isChecked());
    CHECK_FALSE(action->shortcut().isEmpty());
    desk.window->wornBar().worn()->button(way == hair::WornWay::Down ? 1 : 0)->click();
    CHECK_FALSE(action->isChecked());
    action->trigger();
    CHECK(wornOf(desk).way == way);
    CHECK(desk.window->wornBar().worn()->current() == static_cast<int>(way));
    CHECK_FALSE(desk.window->controller().isModified());  // how it is looked at is no part of the plan
  }
}

TEST_CASE("where the layer is raised can be moved, and only then", "[desk][bar]") {
  Desk desk;
  desk.window->openPath(desk.file("raised"));
  desk::WornBar& bar = desk.window->wornBar();
  CHECK_FALSE(bar.raised()->isVisible());
  bar.worn()->button(static_cast<int>(hair::WornWay::LayerRaised))->click();
  CHECK(bar.raised()->isVisible());
  CHECK(bar.raised()->minimum() == 40);
  CHECK(bar.raised()->maximum() == 220);
  CHECK(bar.raised()->value() == 140);
  QTest::keyClick(bar.raised(), Qt::Key_Right);
  CHECK(wornOf(desk).raised_mm == 141);
  CHECK(bar.raised()->accessibleDescription().contains(QStringLiteral("141 mm")));
  bar.worn()->button(0)->click();
  CHECK_FALSE(bar.raised()->isVisible());
}

TEST_CASE("the part says why it cannot be moved", "[desk][bar]") {
  Desk desk;
  desk.window->openPath(desk.file("part"));
  desk::WornBar& bar = desk.window->wornBar();
  for (const hair::WornWay way : hair::kWornWays) {
    bar.worn()->button(static_cast<int>(way))->click();
    CHECK(bar.part()->isEnabled() == hair::showsPart(way));
    CHECK(bar.partText().contains(QStringLiteral("tied")) == !hair::showsPart(way));
  }
}

TEST_CASE("wet hair and the distance go to the look", "[desk][bar]") {
  Desk desk;
  desk.window->openPath(desk.file("wet"));
  desk::WornBar& bar = desk.window->wornBar();
  const auto& settings = [&]() -> const look::LookSettings& { return desk.window->viewState().lookSettings(); };
  CHECK(settings().moisture == look::Moisture::Dry);
  bar.moisture()->button(1)->click();
  CHECK(settings().moisture == look::Moisture::Wet);
  desk.window->actions().action(QStringLiteral("look.wet"))->trigger();
  CHECK(settings().moisture == look::Moisture::Dry);
  CHECK(bar.distance()->currentText().contains(QStringLiteral("1 m")));
  const double metres[] = {0.6, 1, 2, 3};
  for (int i = 0; i < 4; ++i) {
    bar.distance()->setCurrentIndex(i);
    Q_EMIT bar.distance()->activated(i);
    CHECK(settings().distance_m == metres[i]);
    CHECK(desk.window->actions().action(QStringLiteral("look.distance.%1").arg(i + 1))->isChecked());
  }
}

TEST_CASE("the bar takes two rows at most in a window of 1180", "[desk][bar]") {
  Desk desk;
  desk.window->openPath(desk.file("rows"));
  for (const hair::WornWay way : hair::kWornWays) {
    desk.window->wornBar().worn()->button(static_cast<int>(way))->click();
    QCoreApplication::processEvents();
    INFO(hair::wornWord(way));
    CHECK(rowsOf(desk.window->wornBar()) == 2);
    CHECK(desk.window->wornBar().height() < 8 * desk.window->fontMetrics().height());
  }
}
