// The hair card: every field ends up in the document, one entry each, and undo
// brings back what was.
#include <catch2/catch.hpp>

#include <QDate>

#include "app/cards/hair_card.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using cards::ZonePart;
using document::DocumentController;
using tests::numberNamed;
using tests::textNamed;
using tests::typeInto;

namespace {

struct Bench {
  DocumentController controller{tests::demoPlan()};
  cards::HairCard card{controller};
  const plan::Hair& hair() const { return controller.document().hair(); }
  int entries() const { return controller.undoStack().count(); }
  QString name() const { return controller.undoStack().undoText(); }
  void choose(QComboBox* combo, int row) {
    combo->setCurrentIndex(row);
    Q_EMIT combo->activated(row);
  }
  void undoAll() {
    while (controller.undoStack().canUndo()) controller.undoStack().undo();
    CHECK(controller.document() == tests::demoPlan());
  }
  void checkSaves() const {
    const auto back = plan::readPlan(plan::writePlan(controller.document()));
    REQUIRE(back.ok());
    CHECK(*back == controller.document());
  }
};

}  // namespace

TEST_CASE("all zones the same is the first state, and one row fills six zones", "[cards][hair]") {
  Bench b;
  CHECK(b.card.table()->box(1, ZonePart::Root)->isHidden());
  typeInto(b.card.table()->box(0, ZonePart::Root)->edit(), QStringLiteral("4,3"));  // tenths
  for (const auto& level : b.hair().level) CHECK(level == plan::RootMiddleEnd{4.3, 5, 5});
  CHECK(b.entries() == 1);
  CHECK(b.name() == QStringLiteral("Change level at the root, all zones"));
  // Lengths differ from the start: marked, and typing makes them one.
  CHECK(b.card.table()->box(0, ZonePart::Length)->isMixed());
  typeInto(b.card.table()->box(0, ZonePart::Length)->edit(), QStringLiteral("40 cm"));
  for (const double length_mm : b.hair().length_mm) CHECK(length_mm == 400);
  b.checkSaves();
  b.undoAll();
}

TEST_CASE("a zone of its own is typed in its row, and a plan with such zones opens with all rows", "[cards][hair]") {
  Bench b;
  tests::buttonNamed(b.card, QStringLiteral("Zone by zone"))->click();
  CHECK_FALSE(b.card.table()->box(6, ZonePart::End)->isHidden());
  typeInto(b.card.table()->box(6, ZonePart::End)->edit(), QStringLiteral("7"));
  CHECK(b.hair().level[5] == plan::RootMiddleEnd{5, 5, 7});
  CHECK(b.hair().level[0] == plan::RootMiddleEnd{5, 5, 5});
  CHECK(b.name() == QStringLiteral("Change level at the ends, nape"));
  CHECK(b.card.table()->box(0, ZonePart::End)->isMixed());
  cards::HairCard second(b.controller);
  CHECK_FALSE(second.table()->box(1, ZonePart::Root)->isHidden());
  typeInto(b.card.table()->box(6, ZonePart::Middle)->edit(), QStringLiteral("13"));
  CHECK(b.card.table()->box(6, ZonePart::Middle)->problem().contains(QStringLiteral("1 to 12")));
  CHECK(b.entries() == 1);
  b.undoAll();
}

TEST_CASE("the table of zones is walked by keyboard", "[cards][hair][keyboard]") {
  Bench b;
  b.card.resize(340, 1600);
  b.card.show();
  REQUIRE(QTest::qWaitForWindowActive(&b.card));
  tests::buttonNamed(b.card, QStringLiteral("Zone by zone"))->click();
  auto* table = b.card.table();
  const auto at = [&](std::size_t row, ZonePart part) { return table->box(row, part)->edit(); };
  at(1, ZonePart::Length)->setFocus();
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Tab);
  CHECK(qApp->focusWidget() == at(1, ZonePart::Root));
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Right, Qt::ControlModifier);
  CHECK(qApp->focusWidget() == at(1, ZonePart::Middle));
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Down, Qt::ControlModifier);
  CHECK(qApp->focusWidget() == at(2, ZonePart::Middle));
  QTest::keyClicks(qApp->focusWidget(), QStringLiteral("6"));
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Return);  // takes it and goes down
  QCoreApplication::processEvents();
  CHECK(qApp->focusWidget() == at(3, ZonePart::Middle));
  CHECK(b.hair().level[1].middle != 5);
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Up);  // steps, does not walk
  QTest::keyClick(qApp->focusWidget(), Qt::Key_Up);
  CHECK(b.hair().level[2].middle == 6);
  CHECK(b.entries() == 2);  // a run of steps is one entry
  b.undoAll();
}

TEST_CASE("old colour bands are added, edited and removed", "[cards][hair]") {
  Bench b;
  b.card.bands()->addButton()->click();
  b.card.bands()->addButton()->click();
  REQUIRE(b.hair().bands.size() == 2);
  CHECK(b.name() == QStringLiteral("Add colour band"));
  b.choose(b.card.bands()->zone(1), 6);
  typeInto(b.card.bands()->box(1, 0)->edit(), QStringLiteral("30+12"));
  typeInto(b.card.bands()->box(1, 1)->edit(), QStringLiteral("90"));
  typeInto(b.card.bands()->box(1, 2)->edit(), QStringLiteral("6.7"));
  CHECK(b.hair().bands[1] == plan::Band{plan::HairZone::Nape, 42, 90, 6.7, {}});
  CHECK(b.name() == QStringLiteral("Change colour band 2"));
  b.card.bands()->removeButton(0)->click();
  REQUIRE(b.hair().bands.size() == 1);
  CHECK(b.hair().bands[0].zone == plan::HairZone::Nape);
  CHECK(b.card.bands()->size() == 1);
  CHECK(b.card.bands()->box(0, 0)->value() == 42);
  CHECK(b.entries() == 7);
  b.checkSaves();
  b.undoAll();
  CHECK(b.card.bands()->size() == 0);
}

TEST_CASE("a band that ends before it begins is said, not refused", "[cards][hair]") {
  Bench b;
  b.card.bands()->addButton()->click();
  typeInto(b.card.bands()->box(0, 1)->edit(), QStringLiteral("20"));
  CHECK(b.hair().bands[0].to_mm == 20);
  bool said = false;
  for (const auto* label : b.card.findChildren<QLabel*>())
    said = said || label->text().contains(QStringLiteral("entry 1, ends before it begins"));
  CHECK(said);
}

TEST_CASE("hair that is already light is added, edited and removed", "[cards][hair]") {
  Bench b;
  b.card.scattered()->addButton()->click();
  b.choose(b.card.scattered()->zone(0), 1);
  const char* typed[] = {"25", "30", "300", "8.5"};
  for (std::size_t i = 0; i < 4; ++i)
    typeInto(b.card.scattered()->box(0, i)->edit(), QLatin1String(typed[i]));
  REQUIRE(b.hair().scattered.size() == 1);
  CHECK(b.hair().scattered[0] == plan::ScatteredLight{plan::HairZone::Front, 0.25, 30, 300, 8.5, {}});
  typeInto(b.card.scattered()->box(0, 0)->edit(), QStringLiteral("120"));
  CHECK(b.card.scattered()->box(0, 0)->problem().contains(QStringLiteral("0 to 100 %")));
  b.checkSaves();
  b.card.scattered()->removeButton(0)->click();
  CHECK(b.hair().scattered.empty());
  b.undoAll();
}

TEST_CASE("condition is recorded per zone or for all, with its day", "[cards][hair]") {
  Bench b;
  b.choose(b.card.condition(plan::HairZone::Crown), 3);
  CHECK(b.hair().condition[2] == plan::Condition::Poor);
  CHECK(b.hair().condition[0] == plan::Condition::NotChecked);
  CHECK(b.hair().conditionDate == QDate::currentDate().toString(Qt::ISODate).toStdString());
  CHECK(b.card.condition(std::nullopt)->currentIndex() == -1);
  typeInto(textNamed(b.card, QStringLiteral("Checked on"))->edit(), QStringLiteral("2026-03-14"));
  CHECK(b.hair().conditionDate == "2026-03-14");
  b.choose(b.card.condition(std::nullopt), 1);
  for (const plan::Condition condition : b.hair().condition) CHECK(condition == plan::Condition::Good);
  CHECK(b.hair().conditionDate == "2026-03-14");
  CHECK(b.entries() == 3);
  b.checkSaves();
  b.undoAll();
}

TEST_CASE("the single numbers of the hair go into the document and say where they stand from", "[cards][hair][provenance]") {
  Bench b;
  const auto said = [&](const char* label) { return numberNamed(b.card, QLatin1String(label))->edit()->accessibleDescription(); };
  CHECK(said("Hairs on a square").contains(QStringLiteral("[Loussouarn2005]")));
  CHECK(said("Layering").contains(QStringLiteral("own assumption")));
  const std::pair<const char*, const char*> typed[] = {{"Hairs on a square", "180"}, {"Thickness of one hair", "65,5"},
                                                       {"Layering", "40"},           {"Cut line", "120"},
                                                       {"Natural tone", "0.4"},      {"White hair", "12"}};
  for (const auto& [label, text] : typed) typeInto(numberNamed(b.card, QLatin1String(label))->edit(), QLatin1String(text));
  CHECK(b.hair().density_per_cm2 == 180);
  CHECK(b.hair().fibre_um == 65.5);
  CHECK(b.hair().layering_frac == 0.4);
  CHECK(b.hair().cutLine_mm == 120.0);
  CHECK(b.hair().toneWarmth == 0.4);
  CHECK(b.hair().white_frac == 0.12);
  CHECK(b.entries() == 6);
  CHECK(said("Hairs on a square").contains(QStringLiteral("Typed by you")));
  typeInto(numberNamed(b.card, QStringLiteral("Cut line"))->edit(), QString());
  CHECK_FALSE(b.hair().cutLine_mm);
  b.checkSaves();
  b.undoAll();
}
