// What needs a look, in the window: the list, the opened finding, trying and
// keeping a remedy, the chart of openings. The engine is a stand-in.
#include <catch2/catch.hpp>

#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include "app/desk/card_column.h"
#include "app/desk/finding_detail.h"
#include "app/desk/findings_card.h"
#include "app/desk/findings_list.h"
#include "app/desk/opening_chart.h"
#include "engine/advise/findings.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

namespace {

double thicknessOf(const plan::Plan& plan) {
  const auto* piece = plan.find<plan::Piece>("piece-1");
  return piece ? piece->thickness_mm : 0;
}

/// A block as large as the piece is thick, beside a part moved 20 mm.
advise::Advice adviceOn(const plan::Plan& plan) {
  advise::Advice advice;
  advice.complete = true;
  for (const double shift : {-20.0, 0.0, 20.0}) {
    look::Opening opening;
    opening.shift_mm = shift;
    if (shift > 0) {
      opening.light.area_cm2 = 2 * thicknessOf(plan);
      opening.light.pieces = {"piece-1"};
      opening.light.places = {{0, 20, 95}, {2, 20, 95}, {4, 20, 95}};
      opening.light.cell_mm = 2;
    }
    advice.openings.all.push_back(opening);
  }
  if (2 * thicknessOf(plan) <= 4) return advice;
  advise::Finding finding;
  finding.kind = advise::FindingKind::LightBlock;
  finding.worn.partShift_mm = 20;
  finding.size = 2 * thicknessOf(plan), finding.limit = 4;
  finding.unit = "cm2";
  finding.pieces = {"piece-1"};
  finding.assumption = "block.light_cm2";
  advise::Remedy thinner;
  thinner.kind = advise::RemedyKind::Thinner;
  thinner.pieces = {"piece-1"};
  thinner.amount = 2;
  finding.remedies = {thinner};
  finding.remediesTried = true;
  advice.findings = {finding};
  return advice;
}

struct AdvisedDesk : Desk {
  AdvisedDesk() : Desk(passes) {
    window->openPath(file("Crown"));
    REQUIRE(isFresh());
    window->actions().action(QStringLiteral("view.findings"))->trigger();
    REQUIRE(QTest::qWaitFor([this] { return lookLine() >= 0; }, 5000));
  }
  static live::LookService::Passes passes() {
    live::LookService::Passes passes = tests::instantPasses();
    passes.advise = [](const plan::Plan& plan, const look::LookSettings&, const look::Readings&, std::stop_token,
                       const std::function<void(const advise::Advice&)>&) -> Result<advise::Advice> { return adviceOn(plan); };
    return passes;
  }
  desk::FindingsCard& card() { return *window->cards().findingsCard(); }
  QListWidget* list() { return card().list()->list(); }
  int lookLine() {
    for (int i = 0; i < list()->count(); ++i)
      if (list()->item(i)->text().contains(QStringLiteral("The look"))) return i;
    return -1;
  }
  void openFinding() {
    list()->setFocus();
    list()->setCurrentRow(lookLine());
    REQUIRE(card().detail()->isVisible());
  }
};

}  // namespace

TEST_CASE("a finding of the look opens with its place, its line and its remedies", "[findings]") {
  AdvisedDesk desk;
  CHECK(desk.card().list()->countText().contains(QStringLiteral("Needs a look")));
  desk.openFinding();
  CHECK(desk.window->controller().selection().contains("piece-1"));
  CHECK(desk.window->viewState().marks().places.size() == 3);
  CHECK(desk.card().detail()->tryButtons().size() == 1);

  SECTION("show it wears the hair the way that shows it") {
    for (QPushButton* button : desk.card().detail()->findChildren<QPushButton*>())
      if (button->text() == QStringLiteral("Show it")) button->click();
    CHECK(desk.window->viewState().lookSettings().worn.partShift_mm == 20);
    CHECK(desk.window->viewState().largeView() == head::ViewName::Top);
  }
  SECTION("trying changes nothing until it is kept") {
    const plan::Plan before = desk.window->controller().document();
    desk.card().detail()->tryButtons().front()->click();
    REQUIRE(desk.card().detail()->isTrying());
    CHECK(thicknessOf(desk.window->controller().plan()) == 2);
    CHECK(desk.window->controller().document() == before);
    CHECK(QTest::qWaitFor([&] { return desk.card().detail()->effectText().contains(QStringLiteral("Not listed any more")); }, 5000));

    SECTION("dropped") { desk.card().detail()->dropButton()->click(); }
    SECTION("dropped by Escape") { QTest::keyClick(desk.card().detail()->dropButton(), Qt::Key_Escape); }
    REQUIRE_FALSE(desk.card().detail()->isTrying());
    CHECK(desk.window->controller().plan() == before);
    CHECK_FALSE(desk.window->controller().undoStack().canUndo());
  }
  SECTION("keeping is one edit that undo takes back") {
    desk.card().detail()->tryButtons().front()->click();
    desk.card().detail()->keepButton()->click();
    CHECK_FALSE(desk.card().detail()->isTrying());
    CHECK(thicknessOf(desk.window->controller().document()) == 2);
    CHECK(desk.window->controller().undoStack().count() == 1);
    CHECK(QTest::qWaitFor([&] { return desk.lookLine() < 0; }, 5000));
    CHECK(desk.window->viewState().marks().places.empty());
    desk.window->controller().undoStack().undo();
    CHECK(thicknessOf(desk.window->controller().document()) > 2);
    CHECK(QTest::qWaitFor([&] { return desk.lookLine() >= 0; }, 5000));
  }
  SECTION("another edit ends the trial") {
    desk.card().detail()->tryButtons().front()->click();
    desk.edit();
    CHECK_FALSE(desk.card().detail()->isTrying());
    CHECK(thicknessOf(desk.window->controller().document()) > 2);
  }
  SECTION("leaving the card takes the mark off the sheet") {
    desk.window->cards().turnTo(desk::CardColumn::Card::Piece);
    CHECK(desk.window->viewState().marks().places.empty());
  }
}

TEST_CASE("an opened finding is as wide as its card, on a small window too", "[findings]") {
  AdvisedDesk desk;
  desk.openFinding();
  QScrollArea* area = desk.card().findChild<QScrollArea*>();
  REQUIRE(area);
  for (const QSize& size : {QSize(820, 1180), QSize(1366, 768)}) {
    desk.window->resize(size);
    CHECK(QTest::qWaitFor([&] { return area->verticalScrollBar()->isVisible(); }, 2000));  // it is laid out
    CHECK(area->widget()->width() <= area->viewport()->width());
    for (const QPushButton* button : desk.card().detail()->findChildren<QPushButton*>()) {
      INFO(button->text().toStdString() << " at " << size.width());
      CHECK(button->mapTo(area->widget(), QPoint(button->width(), 0)).x() <= area->viewport()->width());
    }
  }
}

TEST_CASE("an opened finding stays under the hand while more is found out", "[findings]") {
  AdvisedDesk desk;
  desk.openFinding();
  QScrollBar* bar = desk.card().findChild<QScrollArea*>()->verticalScrollBar();
  desk.window->resize(1366, 768);
  int most = -1;  // it has come to its top, and all is laid out
  REQUIRE(QTest::qWaitFor([&] {
    QTest::qWait(150);
    return bar->value() > 0 && bar->maximum() == std::exchange(most, bar->maximum());
  }, 5000));
  REQUIRE(bar->value() < bar->maximum());
  bar->setValue(bar->maximum());
  const int place = bar->value();
  auto more = std::make_shared<live::AdviceResult>();
  more->revision = desk.window->controller().revision();
  more->advice = adviceOn(desk.window->controller().document());
  more->advice.findings.front().remedies.front().amount = 3;
  desk.card().setAdvice(more);
  QTest::qWait(200);
  CHECK(desk.card().detail()->isVisible());
  CHECK(bar->value() == place);
}

TEST_CASE("the chart of openings says its worst and moves the part", "[findings]") {
  AdvisedDesk desk;
  desk::OpeningChart* chart = desk.card().chart();
  CHECK(chart->words().contains(QStringLiteral("20 mm to client's right")));
  CHECK(chart->accessibleDescription() == chart->words());
  chart->setFocus();
  QTest::keyClick(chart, Qt::Key_Right);
  QTest::keyClick(chart, Qt::Key_Right, Qt::ShiftModifier);
  CHECK(desk.window->viewState().lookSettings().worn.partShift_mm == 11);
  QTest::keyClick(chart, Qt::Key_Home);
  CHECK(desk.window->viewState().lookSettings().worn.partShift_mm == 0);
  QTest::mouseClick(chart, Qt::LeftButton, {}, QPoint(chart->width() / 2, chart->height() / 2));
  CHECK(desk.window->viewState().lookSettings().worn.partShift_mm > 0);
  QTest::mouseClick(chart, Qt::LeftButton, {}, QPoint(chart->width() - 8, chart->height() / 2));
  CHECK(desk.window->viewState().lookSettings().worn.way == hair::WornWay::TiedBack);
}
