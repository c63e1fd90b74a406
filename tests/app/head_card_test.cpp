// The head card: measures, what follows from them, hairline, part, swirls, skin.
#include <catch2/catch.hpp>

#include "app/cards/head_card.h"
#include "app/cards/head_edits.h"
#include "app/controls/units.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using document::DocumentController;
using tests::buttonNamed;
using tests::numberNamed;
using tests::typeInto;

namespace {

struct Bench {
  DocumentController controller{tests::demoPlan()};
  cards::HeadCard card{controller};
  const plan::Head& head() const { return controller.document().head(); }
  int entries() const { return controller.undoStack().count(); }
  void undoAll() {
    while (controller.undoStack().canUndo()) controller.undoStack().undo();
    CHECK(controller.document() == tests::demoPlan());
  }
};

}  // namespace

TEST_CASE("a tape measure goes into the document and the other measures follow it", "[cards][head]") {
  Bench b;
  auto* length = numberNamed(b.card, QStringLiteral("Forehead to back"));
  const QString before = length->edit()->placeholderText();
  typeInto(numberNamed(b.card, QStringLiteral("Round the head"))->edit(), QStringLiteral("58,5 cm"));
  CHECK(b.head().measures.circumference_mm == 585.0);
  CHECK_FALSE(b.head().measures.length_mm);
  CHECK(length->edit()->placeholderText() != before);
  const auto fitted = head::fitHead(b.head().measures);
  REQUIRE(fitted.ok());
  CHECK(length->edit()->placeholderText() ==
        QStringLiteral("about %1").arg(controls::lengthNumber(fitted->length_mm, controls::LengthUnit::Millimetres, 0)));
  CHECK(length->edit()->accessibleDescription().contains(QStringLiteral("[ANSUR2]")));
  typeInto(numberNamed(b.card, QStringLiteral("Round the head"))->edit(), QString());
  CHECK_FALSE(b.head().measures.circumference_mm);
  CHECK(b.entries() == 2);
  b.undoAll();
}

TEST_CASE("measures no head has are refused at the field with the reason, and the text stays", "[cards][head]") {
  Bench b;
  auto* round = numberNamed(b.card, QStringLiteral("Round the head"));
  typeInto(round->edit(), QStringLiteral("900"));
  CHECK(round->problem().contains(QStringLiteral("400 to 700 mm")));
  CHECK(round->edit()->text() == QStringLiteral("900"));
  typeInto(numberNamed(b.card, QStringLiteral("Forehead to back"))->edit(), QStringLiteral("130"));
  auto* breadth = numberNamed(b.card, QStringLiteral("Breadth"));
  typeInto(breadth->edit(), QStringLiteral("200"));  // much broader than long
  CHECK_FALSE(breadth->problem().isEmpty());
  CHECK_FALSE(b.head().measures.breadth_mm);
  CHECK(b.entries() == 1);
  b.undoAll();
}

TEST_CASE("hairline, skin, swirls and how they turn, and the part drawn anew", "[cards][head]") {
  Bench b;
  typeInto(numberNamed(b.card, QStringLiteral("Temples"))->edit(), QStringLiteral("-4"));
  CHECK(b.head().hairline.temples_mm == -4);
  auto* skin = b.card.findChild<QComboBox*>();
  Q_EMIT skin->activated(3);
  CHECK(b.head().skin == plan::SkinTone::Tan);
  buttonNamed(b.card, QStringLiteral("Swirls at the crown: Two"))->click();
  REQUIRE(b.head().whorls.size() == 2);
  buttonNamed(b.card, QStringLiteral("The second turns: Clockwise"))->click();
  CHECK(b.head().whorls[1].turn == plan::Turn::Clockwise);
  CHECK(b.controller.undoStack().undoText() == QStringLiteral("Change how a swirl turns"));
  auto* reset = buttonNamed(b.card, QStringLiteral("Draw the part anew there"));
  REQUIRE(reset->isEnabled());
  reset->click();
  CHECK(b.head().part == cards::partLine(b.head(), cards::PartPlace::Middle));
  CHECK_FALSE(reset->isEnabled());
  CHECK(b.entries() == 5);
  const auto back = plan::readPlan(plan::writePlan(b.controller.document()));
  REQUIRE(back.ok());
  CHECK(*back == b.controller.document());
  b.undoAll();
}
