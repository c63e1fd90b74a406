// The card of assumptions: every entry of the table, edits with undo, what
// differs is marked by sign and word and printed.
#include <catch2/catch.hpp>

#include <QLabel>
#include <QUndoStack>
#include <set>

#include "app/cards/assumptions_card.h"
#include "app/command/look_output.h"
#include "app/controls/units.h"
#include "app/desk/card_column.h"
#include "app/desk/readings_strip.h"
#include "app/paint/assumption_words.h"
#include "app/paint/sheet_page.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;

namespace {

struct Card {
  document::DocumentController controller{plan::Plan::fresh(3)};
  cards::AssumptionsCard card{controller};

  Card() { card.show(); }
  const std::map<std::string, double>& overrides() { return controller.document().info().assumptions; }
  QString note(const QString& name) {  // the line under a field
    const auto* field = tests::numberNamed(card, name);
    const QRect place = field->geometry();
    const QLabel* nearest = nullptr;
    for (const QLabel* label : card.findChildren<QLabel*>(Qt::FindDirectChildrenOnly))
      if (label->y() >= place.bottom() && (!nearest || label->y() < nearest->y())) nearest = label;
    REQUIRE(nearest);
    return nearest->text();
  }
};

std::string pageText(const plan::Plan& plan, paint::PageLayer layer) {
  const paint::Scene scene(plan, {}, nullptr);
  const paint::Page page = paint::sheetPage(scene, nullptr, {{head::ViewName::Back}, layer, paint::Ground::Paper, {}});
  QStringList all;
  for (const auto& placed : page.figures)
    for (const paint::DrawingItem& item : placed.figure.items)
      if (item.text) all << item.text->words;
  return all.join(u' ').toStdString();
}

plan::Plan changedPlan() {
  plan::Plan plan = plan::Plan::fresh(3);
  plan::PlanInfo info = plan.info();
  info.assumptions = {{"fall.whorlReach_mm", 30}, {"block.difference", 0.5}, {"fall.lean", 0.13}};
  plan.put(plan::kPlanId, info);
  return plan;
}

}  // namespace

TEST_CASE("every assumption has a field with its default, unit, range and origin", "[cards][assumptions]") {
  Card c;
  QCoreApplication::processEvents();
  CHECK(static_cast<std::size_t>(c.card.findChildren<controls::NumberField*>().size()) == assumptionTable().size());
  for (const Assumption& a : assumptionTable()) {
    INFO(a.name);
    auto* field = tests::numberNamed(c.card, paint::assumptionName(a.name));
    CHECK(field->value() == a.value);
    CHECK(field->spec().low == a.low);
    CHECK(field->spec().high == a.high);
    const QString description = field->edit()->accessibleDescription();
    CHECK(description.contains(QStringLiteral("default")));
    CHECK(description.contains(a.from == Provenance::Published        ? QStringLiteral("published [")
                               : a.from == Provenance::CommonPractice ? QStringLiteral("common practice")
                                                                      : QStringLiteral("own assumption")));
  }
  CHECK(c.card.summary().contains(QStringLiteral("as we set them")));
}

TEST_CASE("which assumptions have no plain name yet", "[cards][assumptions]") {
  std::string missing;
  std::set<QString> names;
  for (const Assumption& a : assumptionTable()) {
    if (!paint::hasPlainName(a.name)) missing += " " + std::string(a.name);
    const QString name = paint::assumptionName(a.name);
    if (paint::hasPlainName(a.name)) CHECK(names.insert(name).second);  // two of one name could not be told apart
    CHECK_FALSE(name.isEmpty());
    CHECK_FALSE(name.contains(u'_'));
    CHECK_FALSE(name == QString::fromUtf8(a.name.data(), static_cast<qsizetype>(a.name.size())));
  }
  if (!missing.empty()) WARN("shown by their sentence, without a plain name:" << missing);
  CHECK(paint::hasPlainName("fall.partSide_mm"));
  CHECK_FALSE(paint::hasPlainName("no.such"));
  CHECK(paint::assumptionName("no.such") == QStringLiteral("no.such"));
}

TEST_CASE("a changed assumption is an edit with undo, marked by sign and word", "[cards][assumptions]") {
  Card c;
  auto* field = tests::numberNamed(c.card, QStringLiteral("Reach of the swirl"));
  tests::typeInto(field->edit(), QStringLiteral("30"));
  CHECK(c.overrides() == std::map<std::string, double>{{"fall.whorlReach_mm", 30}});
  CHECK(c.controller.undoStack().undoText().contains(QStringLiteral("Reach of the swirl")));
  QCoreApplication::processEvents();
  CHECK(c.note(QStringLiteral("Reach of the swirl")).startsWith(QStringLiteral("\u25C6 changed; default 36 mm")));
  CHECK(c.card.summary().startsWith(u'\u25C6'));
  // Out of range: refused with the range, nothing changed.
  tests::typeInto(field->edit(), QStringLiteral("90"));
  CHECK(field->problem().contains(QStringLiteral("28 to 44")));
  CHECK(c.overrides().at("fall.whorlReach_mm") == 30);
  QTest::keyClick(field->edit(), Qt::Key_Escape);
  c.controller.undoStack().undo();
  CHECK(c.overrides().empty());
  CHECK(field->value() == 36);
  c.controller.undoStack().redo();
  // Typing the default is the same as never having changed it.
  tests::typeInto(field->edit(), QStringLiteral("36"));
  CHECK(c.overrides().empty());
  CHECK_FALSE(c.note(QStringLiteral("Reach of the swirl")).contains(QStringLiteral("changed")));
}

TEST_CASE("shares are typed in per cent, arrow keys join into one entry", "[cards][assumptions]") {
  Card c;
  tests::typeInto(tests::numberNamed(c.card, QStringLiteral("Patch stands out from, of the planned"))->edit(), QStringLiteral("50"));
  CHECK(c.overrides().at("block.difference") == Approx(0.5));
  auto* growth = tests::numberNamed(c.card, QStringLiteral("Growth in a week"));
  const int before = c.controller.undoStack().count();
  for (int i = 0; i < 3; ++i) QTest::keyClick(growth->edit(), Qt::Key_Down);
  CHECK(c.controller.undoStack().count() == before + 1);
  CHECK(c.overrides().at("growth.mm_per_week") < 2.58);
}

TEST_CASE("one assumption or all go back to their defaults", "[cards][assumptions]") {
  Card c;
  tests::typeInto(tests::numberNamed(c.card, QStringLiteral("Frizz"))->edit(), QStringLiteral("0.12"));
  tests::typeInto(tests::numberNamed(c.card, QStringLiteral("Reach of the part"))->edit(), QStringLiteral("60"));
  tests::typeInto(tests::numberNamed(c.card, QStringLiteral("Pull of the part"))->edit(), QStringLiteral("1.5"));
  CHECK(c.overrides().size() == 3);
  tests::buttonNamed(c.card, QStringLiteral("Reset: Frizz"))->click();
  CHECK(c.overrides().size() == 2);
  CHECK_FALSE(c.overrides().contains("fall.frizz_rad"));
  CHECK(tests::buttonNamed(c.card, QStringLiteral("Reset: Frizz"))->isHidden());
  tests::buttonNamed(c.card, QStringLiteral("Reset all"))->click();
  CHECK(c.overrides().empty());
  CHECK_FALSE(tests::buttonNamed(c.card, QStringLiteral("Reset all"))->isEnabled());
  c.controller.undoStack().undo();
  CHECK(c.overrides().size() == 2);
}

TEST_CASE("every print names what the plan assumes otherwise", "[paint][assumptions]") {
  for (const auto layer : {paint::PageLayer::Diagram, paint::PageLayer::Look, paint::PageLayer::Both}) {
    const std::string text = pageText(changedPlan(), layer);
    CHECK(text.find("Assumptions changed: Reach of the swirl 30 mm (default 36 mm);") != std::string::npos);
    CHECK(text.find("50 % (default 40 %)") != std::string::npos);
    CHECK(text.find("neck") == std::string::npos);  // typed, but as it is by default
    CHECK(pageText(plan::Plan::fresh(3), layer).find("Assumptions") == std::string::npos);
  }
}

TEST_CASE("the table and the JSON of look name what the plan assumes otherwise", "[command][assumptions]") {
  command::LookReport report;
  report.assumptions = changedPlan().info().assumptions;
  CHECK(command::lookTable(report).find("Reach of the swirl 30 mm (default 36 mm)") != std::string::npos);
  command::JsonOut json;
  command::lookJson(json, report);
  const std::string& text = json.str();
  const auto at = text.find("\"assumptions_changed\"");
  REQUIRE(at != std::string::npos);
  CHECK(text.find("\"fall.whorlReach_mm\"", at) != std::string::npos);
  CHECK(text.find("\"Reach of the swirl\"", at) != std::string::npos);
  CHECK(text.find("fall.lean", at) == std::string::npos);
}

TEST_CASE("grey hair is light as a level in the table too", "[command][readings]") {
  command::LookReport report;
  report.readings.whole.level = 9.7;
  report.readings.whole.lightness = 57;
  report.readings.whole.a = 1.3, report.readings.whole.b = 6;  // dark with white among it
  CHECK(command::lookTable(report).find("light as 9.7") != std::string::npos);
  report.readings.whole.b = 28;  // bare and warm
  CHECK(command::lookTable(report).find("light as") == std::string::npos);
}

TEST_CASE("the strip counts changed assumptions and leads to their card", "[desk][assumptions]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("assumed"));
  QPushButton* button = desk.window->readings().assumptionsButton();
  CHECK(button->text() == QStringLiteral("Assumptions"));
  button->click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Assumptions);
  auto* card = desk.window->cards().assumptionsCard();
  card->showAssumption("fall.lean");
  auto* field = tests::numberNamed(*card, paint::assumptionName("fall.lean"));
  CHECK(QTest::qWaitFor([&] { return field->edit()->hasFocus(); }, 1000));
  CHECK(QTest::qWaitFor([&] { return !field->visibleRegion().isEmpty(); }, 1000));
  tests::typeInto(field->edit(), QStringLiteral("0.1"));
  CHECK(button->text() == QStringLiteral("\u25C6 1 assumption changed"));
}
