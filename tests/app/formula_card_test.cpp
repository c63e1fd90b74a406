// The formula card: what it adds, changes and removes, and what it never fills in.
#include <catch2/catch.hpp>

#include <QRegularExpression>

#include "app/cards/formula_card.h"
#include "app/cards/formula_words.h"
#include "app/cards/piece_card.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using document::DocumentController;
using document::Selection;
using tests::buttonNamed;
using tests::textNamed;
using tests::typeInto;

TEST_CASE("a formula is added with a free letter and nothing else filled in", "[cards][formula]") {
  DocumentController controller(plan::Plan::fresh(3));
  cards::FormulaCard card(controller);
  CHECK(card.shown().empty());
  CHECK_FALSE(buttonNamed(card, QStringLiteral("Remove"))->isEnabled());
  buttonNamed(card, QStringLiteral("Add formula"))->click();
  buttonNamed(card, QStringLiteral("Add formula"))->click();
  const auto formulas = cards::formulasOf(controller.document());
  REQUIRE(formulas.size() == 2);
  plan::Formula bare;
  bare.letter = "A";
  CHECK(*formulas[0].second == bare);
  bare.letter = "B";
  CHECK(*formulas[1].second == bare);
  CHECK(card.shown() == formulas[1].first);
  CHECK(controller.undoStack().undoText() == QStringLiteral("Add formula B"));
  controller.undoStack().undo();
  CHECK(cards::formulasOf(controller.document()).size() == 1);
  CHECK(card.shown() == formulas[0].first);
}

TEST_CASE("every field of a formula goes into the document as one entry each, and saves", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  cards::FormulaCard card(controller);
  card.showFormula("formula-1");
  const auto formula = [&] { return *controller.document().find<plan::Formula>("formula-1"); };
  const plan::Formula before = formula();

  typeInto(textNamed(card, QStringLiteral("Letter"))->edit(), QStringLiteral("d"));
  CHECK(formula().letter == "D");
  typeInto(textNamed(card, QStringLiteral("Leaflet"))->edit(), QStringLiteral("leaflet, page 2"));
  CHECK(formula().leaflet.origin == "leaflet, page 2");
  typeInto(textNamed(card, QStringLiteral("Date"))->edit(), QStringLiteral("2026-02-30"));
  CHECK(formula().leaflet.read.empty());
  typeInto(textNamed(card, QStringLiteral("Date"))->edit(), QStringLiteral("2026-02-03"));
  CHECK(formula().leaflet.read == "2026-02-03");
  buttonNamed(card, QStringLiteral("Leaflet allows scalp contact: No"))->click();
  CHECK(formula().leaflet.scalpContact == plan::ScalpContact::No);
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change scalp contact of formula D, lightener"));
  CHECK(controller.undoStack().count() == 4);

  auto* kind = card.findChild<QComboBox*>();
  typeInto(kind->lineEdit(), QStringLiteral("own mixture"));
  CHECK(formula().kind == "own mixture");
  CHECK(controller.undoStack().count() == 5);

  auto* text = card.findChild<controls::TextBox*>()->edit();
  QTest::keyClicks(text, QStringLiteral("1 part powder"));
  CHECK(formula().text == "1 part powder");  // without leaving the field
  CHECK(controller.undoStack().count() == 6);

  const auto back = plan::readPlan(plan::writePlan(controller.document()));
  REQUIRE(back.ok());
  CHECK(*back == controller.document());
  for (int i = 0; i < 6; ++i) controller.undoStack().undo();
  CHECK(formula() == before);
  CHECK(text->toPlainText().isEmpty());
}

TEST_CASE("the formula card names the pieces that use a formula, and removing it frees them", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  cards::FormulaCard card(controller);
  card.showFormula("formula-2");
  auto* users = card.findChild<QLabel*>(QStringLiteral("users"));
  CHECK(users->text() == QStringLiteral("at the root: piece 6"));
  buttonNamed(card, QStringLiteral("Select these pieces"))->click();
  CHECK(controller.selection() == Selection::one("piece-6"));
  buttonNamed(card, QStringLiteral("Remove"))->click();
  CHECK(controller.document().find<plan::Formula>("formula-2") == nullptr);
  CHECK(controller.document().find<plan::Piece>("piece-6")->root.formula.empty());
  CHECK(card.shown() == "formula-1");
  controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("two formulas with one letter are said to look alike", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  cards::FormulaCard card(controller);
  card.show();
  card.showFormula("formula-1");
  const auto said = [&] {
    for (const auto* label : card.findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(QStringLiteral("this letter too"))) return true;
    return false;
  };
  CHECK_FALSE(said());
  typeInto(textNamed(card, QStringLiteral("Letter"))->edit(), QStringLiteral("B"));
  CHECK(said());
}

TEST_CASE("the formula card puts the maker's directions, gloves and air first, and promises nothing", "[cards][caution]") {
  DocumentController controller(plan::Plan::fresh(3));
  cards::FormulaCard card(controller);
  const auto* caution = card.findChild<QLabel*>(QStringLiteral("formulaCaution"));
  REQUIRE(caution);
  CHECK_FALSE(caution->isHidden());
  for (const char* word : {"maker's directions come first", "local rules", "insurer", "Gloves", "air"}) {
    INFO(word);
    CHECK(caution->text().contains(QLatin1String(word)));
  }
  for (const char* word : {"safe", "ready", "done"})
    CHECK_FALSE(caution->text().contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(QLatin1String(word)))));
}

TEST_CASE("a piece names a formula for its root and one for its ends", "[cards][formula]") {
  DocumentController controller(tests::demoPlan());
  controller.select(Selection({"piece-1", "piece-6"}));
  cards::PieceCard card(controller);
  auto* root = card.findChild<QComboBox*>(QStringLiteral("root formula"));
  auto* end = card.findChild<QComboBox*>(QStringLiteral("end formula"));
  REQUIRE(root->count() == 3);
  CHECK(root->currentIndex() == -1);  // they differ
  CHECK(root->itemText(1) == QStringLiteral("A, lightener"));
  const auto choose = [](QComboBox* combo, int index) {
    combo->setCurrentIndex(index);
    Q_EMIT combo->activated(index);
  };
  choose(root, 1);
  for (const char* id : {"piece-1", "piece-6"})
    CHECK(controller.document().find<plan::Piece>(id)->root.formula == "formula-1");
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change formula of 2 pieces"));
  choose(end, 2);
  CHECK(controller.document().find<plan::Piece>("piece-6")->end.formula == "formula-2");
  choose(end, 0);
  CHECK(controller.document().find<plan::Piece>("piece-6")->end.formula.empty());
  for (int i = 0; i < 3; ++i) controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}
