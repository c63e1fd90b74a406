// Words out of a file are shown letter by letter: no label, tooltip, list or button reads them
// as markup, which would open the pictures that they name.
#include <catch2/catch.hpp>

#include <QHelpEvent>
#include <QLabel>
#include <QToolButton>
#include <QToolTip>

#include "app/appointment/appointment_page.h"
#include "app/appointment/log_view.h"
#include "app/chair/class_view.h"
#include "app/controls/plain_words.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/card_column.h"
#include "app/sheet/head_sheet.h"
#include "engine/plan/choice_edits.h"
#include "tests/app/chair_fixture.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_actions.h"
#include "tests/app/every_word.h"

using namespace combdraft;
using namespace combdraft::tests;
using appointment::AppointmentPage;
using desk::CardColumn;

namespace {

// A picture that is nowhere: a test that fails should not read without end.
const std::string kMarkup = "<b>x</b><img src=\"file:///none.png\">";
const QString kPicture = QStringLiteral("<img src=\"file:///none.png\">");

plan::Plan markupPlan() {
  plan::Plan plan = demoPlan();
  plan::PlanInfo info = plan.info();
  info.title = info.notes = kMarkup;
  plan.put(plan::kPlanId, info);
  for (const char* id : {"formula-1", "formula-2"}) {
    plan::Formula formula = *plan.find<plan::Formula>(id);
    formula.letter = kMarkup + id;  // each its own
    formula.kind = formula.text = kMarkup;
    formula.leaflet.origin = formula.leaflet.directions = kMarkup;
    formula.products = {{kMarkup, 1, {}}};
    formula.developers = {{kMarkup, 6, plan::StrengthUnit::Percent, 2, {}}};
    plan.put(id, formula);
  }
  for (int i = 1; i <= 8; ++i) {
    const plan::ItemId id = "piece-" + std::to_string(i);
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.label = piece.note = kMarkup;
    if (i <= 2) piece.foil = kMarkup;
    plan.put(id, piece);
  }
  plan::Section section = *plan.find<plan::Section>("section-1");
  section.label = kMarkup;
  plan.put("section-1", section);
  plan::Note note;
  note.choice = "choice-1";
  note.at = {180, 60};
  note.text = kMarkup;
  plan.put("note-1", note);
  plan::Choice choice = *plan.find<plan::Choice>("choice-1");
  choice.name = kMarkup;
  plan.put("choice-1", choice);
  return plan;
}

struct MarkupDesk : Desk {
  MarkupDesk() {
    const QString path = dir.filePath(QStringLiteral("markup.json"));
    REQUIRE(store::savePlan(markupPlan(), path).ok());
    window->openPath(path);
    REQUIRE(isFresh());
  }
};

/// Every label that is seen shows its text as it is.
void checkLabels(const QWidget& widget) {
  int seen = 0;
  for (const auto* label : widget.findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) continue;
    INFO(label->text().left(80).toStdString());
    CHECK(label->textFormat() == Qt::PlainText);
    ++seen;
  }
  CHECK(seen > 0);
}

bool showsPicture(const QWidget& widget) {
  for (const auto* label : widget.findChildren<QLabel*>())
    if (label->isVisible() && label->text().contains(kPicture)) return true;
  return false;
}

/// The label of the tooltip.
const QLabel* tip() {
  for (const QWidget* widget : QApplication::allWidgets())
    if (widget->inherits("QTipLabel")) return qobject_cast<const QLabel*>(widget);
  return nullptr;
}

}  // namespace

TEST_CASE("a label that wraps shows markup as it is before it is ever seen", "[controls][plain]") {
  const controls::WrappedLabel label(QString::fromStdString(kMarkup));
  CHECK(label.textFormat() == Qt::PlainText);
  CHECK(controls::buttonText(QStringLiteral("A & B")) == QStringLiteral("A && B"));
  CHECK(controls::wordsOfButton(QStringLiteral("&Undo: A && B")) == QStringLiteral("Undo: A & B"));
  CHECK(controls::wordsOfButton(controls::buttonText(QStringLiteral("&&&"))) == QStringLiteral("&&&"));
}

TEST_CASE("no label of the desk and its cards reads the words of a plan as markup", "[desk][plain]") {
  MarkupDesk desk;
  CHECK(everyWordOf(*desk.window).contains(kPicture));
  desk.window->controller().select(document::Selection::one("piece-1"));
  for (int i = 0; i < CardColumn::kCards; ++i) {
    desk.window->cards().turnTo(static_cast<CardColumn::Card>(i));
    QTest::qWait(20);
    checkLabels(*desk.window);
  }
  desk.window->cards().turnTo(CardColumn::Card::Piece);
  QTest::qWait(20);
  CHECK(showsPicture(desk.window->cards()));  // in one foil with the other
}

TEST_CASE("no label of an appointment reads the words of a plan as markup", "[appointment][plain]") {
  MarkupDesk desk;
  auto& page = desk.window->appointmentPage();
  actionOf(desk, "appointment.log")->trigger();
  page.log().pieces()->setCurrentRow(0);
  page.log().button(work::Tap::Placed)->click();
  bool isShown = false;
  for (const auto view : {AppointmentPage::View::WorkList, AppointmentPage::View::Log, AppointmentPage::View::After, AppointmentPage::View::Outcome, AppointmentPage::View::NextVisit}) {
    page.turnTo(view);
    QTest::qWait(300);
    checkLabels(page);
    isShown = isShown || showsPicture(page);
  }
  CHECK(isShown);
}

TEST_CASE("a class is shown the note of a piece as it was typed", "[class][plain]") {
  MarkupDesk desk;
  actionOf(desk, "show.class")->trigger();
  desk.window->showNormal();
  chair::ClassView& view = desk.window->classView();
  view.nextButton()->click();
  QTest::qWait(50);
  CHECK(view.reasonText().contains(kPicture));
  CHECK(showsPicture(view));
  checkLabels(view);
}

TEST_CASE("a tooltip shows a note and a name as they were typed", "[desk][plain]") {
  MarkupDesk desk;
  sheet::HeadSheet& sheet = desk.window->headSheet();
  desk.window->viewState().setHover(std::nullopt, "note-1");
  const QPoint at = sheet.rect().center();
  QHelpEvent help(QEvent::ToolTip, at, sheet.mapToGlobal(at));
  QApplication::sendEvent(&sheet, &help);
  REQUIRE(tip());
  CHECK(tip()->text().contains(kPicture));
  CHECK(tip()->textFormat() == Qt::PlainText);
  QToolTip::showText(sheet.mapToGlobal(at), QString::fromStdString(kMarkup), &sheet);  // as lists, buttons and menus do
  REQUIRE(tip());
  CHECK(tip()->text() == QString::fromStdString(kMarkup));
  CHECK(tip()->textFormat() == Qt::PlainText);
  QToolTip::hideText();
}

TEST_CASE("an ampersand in a name is shown and makes no key", "[desk][plain]") {
  Desk desk;
  desk.window->openPath(desk.file("Soft root"));
  REQUIRE(desk.isFresh());
  const plan::Plan before = desk.window->controller().document();
  desk.window->controller().edit(plan::applied(before, plan::renameChoice(before, "choice-1", "A & B")), QStringLiteral("Use the pattern “A & B”"));
  const QAction* card = actionOf(desk, "view.choicesCard");
  CHECK(card->iconText() == QLatin1String("Choice A && B"));
  int named = 0;
  for (const auto* button : desk.window->findChildren<QToolButton*>())
    if (button->defaultAction() == card) {
      ++named;
      CHECK(button->accessibleName() == QLatin1String("Choice A & B"));
    }
  CHECK(named > 0);
  const QString undo = actionOf(desk, "edit.undo")->text();
  CHECK(undo.endsWith(QStringLiteral("Use the pattern “A && B”")));
  CHECK(desk::plainText(undo).endsWith(QStringLiteral("Use the pattern “A & B”")));
}

TEST_CASE("the client's screen shows an ampersand in the name of a choice", "[chair][plain]") {
  Desk desk(chairPasses);
  desk.window->openPath(desk.file("Soft root"));
  REQUIRE(desk.isFresh());
  const plan::Plan before = desk.window->controller().document();
  desk.window->controller().edit(plan::applied(before, plan::renameChoice(before, "choice-1", "A & B")), QStringLiteral("Name"));
  actionOf(desk, "show.client")->trigger();
  desk.window->showNormal();
  const auto& chips = desk.window->chairView().chips(1);
  REQUIRE(chips.size() == 1);
  CHECK(chips[0]->text() == QLatin1String("Choice A && B"));
}
