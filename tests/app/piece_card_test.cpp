// The piece card with one and with several pieces: mixed values, foils, order,
// note, and where its cautions come from.
#include <catch2/catch.hpp>

#include "app/cards/issue_lines.h"
#include "app/cards/piece_card.h"
#include "app/controls/units.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using document::DocumentController;
using document::Selection;
using tests::buttonNamed;
using tests::numberNamed;
using tests::textNamed;
using tests::typeInto;

namespace {

const plan::Piece& piece(const DocumentController& controller, const char* id) {
  return *controller.document().find<plan::Piece>(id);
}

std::vector<plan::ItemId> order(const DocumentController& controller) {
  std::vector<plan::ItemId> ids;
  for (const auto& entry : controller.document().pieces()) ids.push_back(entry.first);
  return ids;
}

}  // namespace

TEST_CASE("pieces are put into one foil and say with whom they share it", "[cards]") {
  DocumentController controller(tests::demoPlan());
  controller.select(Selection({"piece-1", "piece-2"}));
  cards::PieceCard card(controller);
  card.findChild<QPushButton*>(QStringLiteral("share foil"))->click();
  CHECK(piece(controller, "piece-1").foil == "F1");
  CHECK(piece(controller, "piece-2").foil == "F1");
  CHECK(controller.undoStack().count() == 1);
  controller.select(Selection::one("piece-1"));
  CHECK(card.findChild<QLabel*>(QStringLiteral("sharers"))->text() == QStringLiteral("in one foil with piece 2"));
  typeInto(card.findChild<controls::TextField*>(QStringLiteral("foil"))->edit(), QString());
  CHECK(piece(controller, "piece-1").foil.empty());
  CHECK(card.findChild<QLabel*>(QStringLiteral("sharers"))->isHidden());
  controller.undoStack().undo();
  controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("a place in the order is taken and the others make room", "[cards]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-7"));
  auto* place = numberNamed(card, QStringLiteral("Place in the order"));
  CHECK(place->value() == 7);
  typeInto(place->edit(), QStringLiteral("2"));
  CHECK(order(controller) == std::vector<plan::ItemId>{"piece-1", "piece-7", "piece-2", "piece-3", "piece-4",
                                                       "piece-5", "piece-6", "piece-8"});
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change order of piece 7"));
  CHECK(place->value() == 2);
  controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());

  controller.select(Selection({"piece-1", "piece-3"}));
  CHECK(place->isMixed());
  typeInto(place->edit(), QStringLiteral("99"));  // a run at the end
  CHECK(order(controller) == std::vector<plan::ItemId>{"piece-2", "piece-4", "piece-5", "piece-6", "piece-7",
                                                       "piece-8", "piece-1", "piece-3"});
  CHECK(piece(controller, "piece-3").order == 8);
}

TEST_CASE("a note is kept letter by letter as one entry, and set on several", "[cards]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-1"));
  auto* note = card.findChild<controls::TextBox*>();
  QTest::keyClicks(note->edit(), QStringLiteral("keep it fine"));
  CHECK(piece(controller, "piece-1").note == "keep it fine");
  CHECK(controller.undoStack().count() == 1);
  controller.select(Selection({"piece-1", "piece-2"}));
  CHECK(note->edit()->placeholderText() == QStringLiteral("mixed"));
  CHECK(piece(controller, "piece-1").note == "keep it fine");  // showing is no edit
  QTest::keyClicks(note->edit(), QStringLiteral("both"));
  CHECK(piece(controller, "piece-1").note == "both");
  CHECK(piece(controller, "piece-2").note == "both");
  CHECK(controller.undoStack().count() == 2);
  controller.undoStack().undo();
  controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("what is refused on one piece does not go to the next one selected", "[cards]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-1"));
  auto* thickness = numberNamed(card, QStringLiteral("Thickness"));
  typeInto(thickness->edit(), QStringLiteral("500"));
  CHECK(thickness->problem().contains(QStringLiteral("40 mm")));
  controller.select(Selection::one("piece-2"));
  CHECK(thickness->edit()->text() == QStringLiteral("7"));
  CHECK(controller.undoStack().count() == 0);
}

TEST_CASE("finishing level and tone go into the root's colour", "[cards]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-1"));
  auto* tone = card.findChild<QComboBox*>(QStringLiteral("root tone"));
  CHECK_FALSE(tone->isEnabled());
  typeInto(numberNamed(card, QStringLiteral("Finishes at level"))->edit(), QStringLiteral("8,3"));
  REQUIRE(piece(controller, "piece-1").root.finish);
  CHECK(piece(controller, "piece-1").root.finish->level == 8.3);
  CHECK(tone->isEnabled());
  Q_EMIT tone->activated(static_cast<int>(plan::Tone::Beige));
  CHECK(piece(controller, "piece-1").root.finish->tone == plan::Tone::Beige);
  controller.undoStack().undo();
  controller.undoStack().undo();
  CHECK(controller.document() == tests::demoPlan());
}

TEST_CASE("the card's cautions are those of the plan's own check, no more and no fewer", "[cards][caution]") {
  plan::Plan plan = tests::demoPlan();
  plan::Hair hair = plan.hair();
  hair.condition.fill(plan::Condition::Poor);
  hair.scattered = {{std::nullopt, 0.2, 40, 300, 8.5, {}}};
  plan.put(plan::kHairId, hair);
  for (const double start_mm : {0.0, 10.0, 10.5, 11.0, 12.0, 20.0}) {
    plan::Piece first = *plan.find<plan::Piece>("piece-1");
    first.start_mm = start_mm;
    plan.put("piece-1", first);
    INFO(start_mm);
    QStringList expected;
    for (const plan::Issue& issue : plan::validate(plan))
      if (issue.severity == plan::Severity::Caution &&
          std::find(issue.items.begin(), issue.items.end(), "piece-1") != issue.items.end())
        expected << cards::issueLine(issue);
    CHECK(expected.size() >= 3);
    CHECK(cards::pieceIssues(plan, {"piece-1"}).mid(0, expected.size()) == expected);
  }
}

TEST_CASE("the strand speaks the unit in force", "[cards][units]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-2"));
  CHECK(card.strand()->accessibleDescription().contains(QStringLiteral("starts 20 mm off the scalp")));
  controls::Units::current().setLength(controls::LengthUnit::Centimetres);
  CHECK(card.strand()->accessibleDescription().contains(QStringLiteral("starts 2 cm off the scalp")));
  controls::Units::current().setLength(controls::LengthUnit::Millimetres);
}

TEST_CASE("numbers of a piece say where they stand from", "[cards][provenance]") {
  DocumentController controller(tests::demoPlan());
  cards::PieceCard card(controller);
  controller.select(Selection::one("piece-1"));
  const auto said = [&](const char* label) {
    return numberNamed(card, QLatin1String(label))->edit()->accessibleDescription();
  };
  CHECK(said("Blend length").contains(QStringLiteral("own assumption")));
  CHECK(said("Thickness").contains(QStringLiteral("Typed by you")));
  CHECK(numberNamed(card, QStringLiteral("Thickness"))->edit()->toolTip().contains(QStringLiteral("Typed by you")));
  controller.select(Selection({"piece-1", "piece-2"}));
  CHECK(said("Thickness").contains(QStringLiteral("differ")));
}
