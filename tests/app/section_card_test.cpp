// The section card: what the document holds after each change of the rule.
#include <QComboBox>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

#include "app/cards/section_card.h"
#include "engine/plan/edits.h"

namespace combdraft::cards {
namespace {

struct Desk {
  document::DocumentController controller{plan::Plan::fresh(4)};
  SectionCard card{controller};

  Desk() {
    plan::Section section;
    section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
    section.label = "back right";
    const plan::ChangeSet edit = plan::addSection(controller.document(), section);
    controller.edit(plan::applied(controller.document(), edit), QStringLiteral("Draw"),
                    document::Selection::one(edit.args.front()));
    card.show();
  }
  const plan::Section& section() const { return *controller.document().sections().front().second; }
  std::size_t pieces() const { return controller.document().pieces().size(); }
  controls::NumberField* field(const char* label) {
    for (auto* one : card.findChildren<controls::NumberField*>())
      if (one->spec().label == QLatin1String(label)) return one;
    FAIL("no field " << label);
    return nullptr;
  }
  void type(const char* label, const char* text) {
    QLineEdit* edit = field(label)->edit();
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QLatin1String(text));
    QTest::keyClick(edit, Qt::Key_Return);
  }
  void press(const char* text) {
    for (auto* button : card.findChildren<QPushButton*>())
      if (button->text().startsWith(QLatin1String(text)) && button->isVisible()) {
        button->click();
        return;
      }
    FAIL("no button " << text);
  }
};

TEST_CASE("a section is laid out and its rule changed on the card", "[cards][section-card]") {
  Desk d;
  d.press("Lay out");
  REQUIRE(d.section().layout);
  const std::size_t plain = d.pieces();
  CHECK(plain >= 3);
  d.type("Thickness, first piece", "3");
  CHECK(d.section().layout->thickness_mm == plan::Ramp{3, 3});  // flat stays flat
  d.type("Thickness, last piece", "2,5+3");
  CHECK(d.section().layout->thickness_mm == plan::Ramp{3, 5.5});
  d.type("Left out between, first piece", "4");
  CHECK(d.pieces() > plain);
  d.type("How much is pushed back, last piece", "60");
  CHECK(d.section().layout->pushed_frac.to == Approx(0.6));
  d.type("Foil width; a longer row becomes columns", "45");
  CHECK(d.section().layout->foil_mm == 45);
  d.type("Last piece, beside where it opens", "1.5");
  CHECK(d.section().layout->lastThickness_mm == 1.5);
  const int done = d.controller.undoStack().count();
  CHECK(done == 8);
  while (d.controller.undoStack().index() > 2) d.controller.undoStack().undo();
  CHECK(d.pieces() == plain);
}

TEST_CASE("what a section cannot be is refused with the reason", "[cards][section-card]") {
  Desk d;
  d.press("Lay out");
  const plan::Plan before = d.controller.document();
  d.type("Thickness, first piece", "abc");
  CHECK(d.controller.document() == before);
  CHECK_FALSE(d.field("Thickness, first piece")->problem().isEmpty());
  d.type("Thickness, first piece", "41");
  CHECK(d.controller.document() == before);
  CHECK(d.field("Thickness, first piece")->edit()->text() == QStringLiteral("41"));
}

TEST_CASE("pieces edited by hand follow again when told, and stay when the rule goes", "[cards][section-card]") {
  Desk d;
  d.press("Lay out");
  const plan::ItemId id = d.controller.document().pieces()[1].first;
  const plan::Plan& plan = d.controller.document();
  d.controller.edit(plan::applied(plan, plan::changePieces(plan, {id}, [](plan::Piece& p) { p.start_mm = 77; })),
                    QStringLiteral("Start"));
  d.type("Starts at, off the scalp, first piece", "10");
  CHECK(d.controller.document().find<plan::Piece>(id)->start_mm == 77);
  d.press("All pieces follow");
  CHECK(d.controller.document().find<plan::Piece>(id)->start_mm == 10);
  const std::size_t count = d.pieces();
  d.press("Take the rule away");
  CHECK_FALSE(d.section().layout);
  CHECK(d.pieces() == count);
  for (const auto& [pieceId, piece] : d.controller.document().pieces()) CHECK_FALSE(piece->laidOut);
}

}  // namespace
}  // namespace combdraft::cards
