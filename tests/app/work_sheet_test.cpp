// The work list on paper: bowls, steps and foils, cautions, and how the window leads there.
#include <catch2/catch.hpp>

#include "app/appointment/appointment_page.h"
#include "app/controls/theme.h"
#include "app/handout/composer_page.h"
#include "app/handout/document.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::handout {
namespace {

QString wordsOn(const paint::Page& page) {
  QStringList words;
  for (const paint::PlacedFigure& placed : page.figures)
    for (const paint::DrawingItem& item : placed.figure.items)
      if (item.text) words << item.text->words;
  return words.join(u'\n');
}

std::vector<paint::Page> pagesOf(const Request& request) {
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  Result<std::vector<paint::Page>> pages = makePages(request, {}, {}, {});
  REQUIRE(pages.ok());
  return std::move(pages).value();
}

QString flat(const std::vector<paint::Page>& pages) {
  QString all;
  for (const paint::Page& page : pages) all += wordsOn(page) + u'\n';
  return all.simplified();  // lines break by the widths of letters
}

plan::Plan typedPlan() {
  plan::Plan plan = tests::demoPlan();
  plan::Formula formula = *plan.find<plan::Formula>("formula-1");
  formula.products = {{"powder", 1, {}}};
  formula.developers = {{"developer", 6, plan::StrengthUnit::Percent, 2, {}}};
  formula.leaflet.workingLife_min = 30;
  plan.put("formula-1", formula);
  plan::Piece piece = *plan.find<plan::Piece>("piece-3");
  piece.foil = "F7";
  plan.put("piece-3", piece);
  return plan;
}

}  // namespace

TEST_CASE("the work list on paper has every step its bowls and the cautions on each page", "[handout][work]") {
  const Request request = requestFor(DocumentKind::WorkList, typedPlan());
  CHECK_FALSE(looksNeeded(request).any());
  const auto pages = pagesOf(request);
  const QString words = flat(pages);
  for (const char* part : {"Bowl by bowl", "Step by step", "Foils and hair", "Order, bowls and times", "Check before work", "A, lightener: bowl 1", "powder", "place piece 1", "place piece 8", "F7"}) {
    INFO(part);
    CHECK(words.contains(QString::fromLatin1(part)));
  }
  CHECK_FALSE(words.contains(QStringLiteral("place piece 5")));  // left out
  CHECK(words.contains(QStringLiteral("that is seen, not planned")));
  for (const paint::Page& page : pages) {
    CHECK(wordsOn(page).contains(QStringLiteral("Pain, burning, swelling")));
    CHECK(wordsOn(page).contains(QStringLiteral("The maker's directions")));
    for (const paint::PlacedFigure& placed : page.figures) {
      const QRectF on(placed.corner_mm, placed.figure.frame.size() * placed.scale);
      CHECK(on.left() >= 10);
      CHECK(on.right() <= page.size_mm.width() - 10);
      CHECK(on.bottom() <= page.size_mm.height() - 5);
    }
  }
}

TEST_CASE("the work list on paper follows its settings and the own factors", "[handout][work]") {
  Request request = requestFor(DocumentKind::WorkList, typedPlan());
  const QString before = flat(pagesOf(request));
  work::MeasuredHead head;
  head.got[static_cast<std::size_t>(work::Factor::Speed)] = 2;
  request.work.factors.heads = {head};
  const QString slower = flat(pagesOf(request));
  CHECK(slower != before);
  request.work.settings.pairs = 2;
  CHECK(flat(pagesOf(request)) != slower);
}

TEST_CASE("the work list on paper of a plan without pieces says so", "[handout][work]") {
  const QString words = flat(pagesOf(requestFor(DocumentKind::WorkList, plan::Plan::fresh(3))));
  CHECK(words.contains(QStringLiteral("No piece is lightened or deepened in this choice yet")));
  CHECK(words.contains(QStringLiteral("Pain, burning, swelling")));
}

TEST_CASE("a plan of many pieces keeps its steps on the paper", "[handout][work]") {
  const auto pages = pagesOf(requestFor(DocumentKind::WorkList, tests::sixtyPlan()));
  CHECK(pages.size() >= 2);
  CHECK(flat(pages).contains(QStringLiteral("place piece 60")));
}

TEST_CASE("the work list's page leads to paper with what is set there", "[handout][work]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("paper"));
  QApplication::processEvents();
  CHECK_FALSE(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
  desk.window->actions().action(QStringLiteral("appointment.workList"))->trigger();
  CHECK(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
  appointment::WorkListView& view = desk.window->appointmentPage().workList();
  REQUIRE(view.paper()->isEnabled());
  view.paper()->click();
  CHECK(desk.window->composerPage().isVisible());
  CHECK(desk.window->composerPage().kind()->current() == static_cast<int>(DocumentKind::WorkList));
}

}  // namespace combdraft::handout
