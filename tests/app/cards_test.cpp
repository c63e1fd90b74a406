// The piece card: handles, mixed values, cautions; eight answers to a plan.
#include <catch2/catch.hpp>

#include <QRegularExpression>
#include <QTest>

#include "app/cards/drop_out_text.h"
#include "app/cards/issue_lines.h"
#include "app/cards/piece_card.h"
#include "app/cards/piece_numbers.h"
#include "app/desk/new_plan.h"
#include "app/desk/new_plan_page.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

using namespace combdraft;
using cards::StrandHandle;
using document::DocumentController;
using document::Selection;

namespace {

plan::Plan twoPieces() {
  plan::Plan plan = plan::Plan::fresh(5);
  for (const auto& [id, thickness_mm] : {std::pair("piece-1", 5.0), std::pair("piece-2", 8.0)}) {
    plan::Piece piece;
    piece.choice = "choice-1";
    piece.line = {{150, 85}, {180, 85}, {210, 85}};
    piece.thickness_mm = thickness_mm;
    plan.put(id, piece);
  }
  return plan;
}

std::size_t indexOf(const char* field) {
  const auto table = cards::pieceNumbers();
  for (std::size_t i = 0; i < table.size(); ++i)
    if (QLatin1String(table[i].field) == QLatin1String(field)) return i;
  FAIL("no field " << field);
  return 0;
}

}  // namespace

TEST_CASE("a handle moved to a place stands there", "[cards]") {
  const StrandHandle handle = GENERATE(StrandHandle::Start, StrandHandle::Blend, StrandHandle::BackcombDepth,
                                       StrandHandle::Handover, StrandHandle::Stop);
  plan::Piece piece;
  const double length_mm = 380;
  for (const double place_mm : {30.0, 75.5, 150.0}) {
    const plan::Piece moved = cards::withHandleAt(piece, handle, place_mm, length_mm);
    CHECK(cards::handlePlace_mm(moved, handle, length_mm) == Approx(place_mm));
  }
  // Off both ends it stays on the strand and inside the file's ranges.
  for (const double place_mm : {-50.0, 5000.0}) {
    const plan::Piece moved = cards::withHandleAt(piece, handle, place_mm, length_mm);
    plan::Plan plan = twoPieces();
    plan::Piece placed = moved;
    placed.choice = "choice-1";
    placed.line = {{150, 85}, {210, 85}};
    plan.put("piece-1", placed);
    CHECK(plan::readPlan(plan::writePlan(plan)).ok());
  }
}

TEST_CASE("handover and stop dragged to the ends are taken off", "[cards]") {
  plan::Piece piece;
  piece.stop_mm = 200;
  piece.handover_mm = 150;
  CHECK_FALSE(cards::withHandleAt(piece, StrandHandle::Stop, 380, 380).stop_mm);
  CHECK_FALSE(cards::withHandleAt(piece, StrandHandle::Handover, 400, 380).handover_mm);
}

TEST_CASE("dragging a handle with the mouse previews, and release is one entry, and Escape drops it", "[cards]") {
  DocumentController controller(twoPieces());
  controller.select(Selection::one("piece-1"));
  cards::PieceCard card(controller);
  card.resize(360, 1400);
  card.show();
  REQUIRE(QTest::qWaitForWindowExposed(&card));
  cards::StrandDrawing* strand = card.strand();
  const auto startOf = [&](const plan::Plan& plan) { return plan.find<plan::Piece>("piece-1")->start_mm; };

  const QPoint from = strand->handlePosition(StrandHandle::Start).toPoint();
  QTest::mousePress(strand, Qt::LeftButton, {}, from);
  QTest::mouseMove(strand, from + QPoint(30, 0));
  CHECK(controller.isTentative());
  CHECK(startOf(controller.plan()) > 25);
  CHECK(startOf(controller.document()) == 20);
  CHECK(*card.number(indexOf("piece.start_mm"))->value() == startOf(controller.plan()));
  QTest::keyClick(strand, Qt::Key_Escape);
  CHECK_FALSE(controller.isTentative());
  CHECK(startOf(controller.plan()) == 20);
  QTest::mouseRelease(strand, Qt::LeftButton, {}, from + QPoint(30, 0));
  CHECK(controller.undoStack().count() == 0);

  QTest::mousePress(strand, Qt::LeftButton, {}, from);
  QTest::mouseMove(strand, from + QPoint(20, 0));
  QTest::mouseMove(strand, from + QPoint(40, 0));
  QTest::mouseRelease(strand, Qt::LeftButton, {}, from + QPoint(40, 0));
  CHECK(controller.undoStack().count() == 1);
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change start of piece 1"));
  CHECK(startOf(controller.document()) > 25);
}

TEST_CASE("the strand is moved by keys, and a run of keys is one entry", "[cards]") {
  DocumentController controller(twoPieces());
  controller.select(Selection::one("piece-1"));
  cards::PieceCard card(controller);
  cards::StrandDrawing* strand = card.strand();
  CHECK(strand->activeHandle() == StrandHandle::Start);
  QTest::keyClick(strand, Qt::Key_Right);
  QTest::keyClick(strand, Qt::Key_Right, Qt::ShiftModifier);
  CHECK(controller.document().find<plan::Piece>("piece-1")->start_mm == 31);
  CHECK(controller.undoStack().count() == 1);
  QTest::keyClick(strand, Qt::Key_Up);
  CHECK(strand->activeHandle() == StrandHandle::BackcombDepth);
  CHECK(strand->accessibleDescription().contains(QStringLiteral("backcomb")));
}

TEST_CASE("several pieces: shared values are shown, others marked, typing sets all in one entry", "[cards]") {
  DocumentController controller(twoPieces());
  controller.select(Selection({"piece-1", "piece-2"}));
  cards::PieceCard card(controller);
  CHECK(card.title() == QStringLiteral("2 pieces"));
  auto* thickness = card.number(indexOf("piece.thickness_mm"));
  auto* start = card.number(indexOf("piece.start_mm"));
  CHECK(thickness->isMixed());
  CHECK_FALSE(start->isMixed());
  CHECK(start->value() == 20);
  thickness->edit()->setFocus();
  QTest::keyClicks(thickness->edit(), QStringLiteral("6"));
  QTest::keyClick(thickness->edit(), Qt::Key_Return);
  for (const char* id : {"piece-1", "piece-2"})
    CHECK(controller.document().find<plan::Piece>(id)->thickness_mm == 6);
  CHECK(controller.undoStack().count() == 1);
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change thickness of 2 pieces"));
}

TEST_CASE("every number of the piece card reads what it writes", "[cards]") {
  for (const cards::PieceNumber& number : cards::pieceNumbers()) {
    INFO(number.label);
    plan::Piece piece;
    piece.handover_mm = 100;
    const std::optional<double> value = QLatin1String(number.field) == QLatin1String("lifts.low")  ? 8.5
                                        : QLatin1String(number.field) == QLatin1String("lifts.high") ? 9.5
                                        : number.shownPerValue == 100                                ? 0.3
                                                                                                     : 7;
    number.set(piece, value);
    CHECK(number.get(piece) == value);
    if (number.emptyText) {
      number.set(piece, std::nullopt);
      CHECK_FALSE(number.get(piece));
    }
  }
}

TEST_CASE("the lift's span always holds its level", "[cards]") {
  plan::Piece piece;
  const auto table = cards::pieceNumbers();
  const auto at = [&](const char* field) -> const cards::PieceNumber& { return table[indexOf(field)]; };
  for (const double level : {1.0, 4.5, 12.0}) {
    at("lifts.level").set(piece, level);
    CHECK(piece.root.lifts.low <= level);
    CHECK(piece.root.lifts.high >= level);
  }
  at("lifts.low").set(piece, 12.0);
  CHECK(piece.root.lifts.low <= piece.root.lifts.level);
}

TEST_CASE("drop-outs as people type them", "[cards]") {
  CHECK(cards::dropOutsFrom({})->empty());
  const auto two = cards::dropOutsFrom(QStringLiteral("40-60, 110,5 to 125"));
  REQUIRE(two);
  CHECK(*two == std::vector<plan::Stretch>{{40, 60}, {110.5, 125}});
  CHECK(cards::dropOutsFrom(cards::dropOutText(*two)) == two);
  for (const char* wrong : {"40", "60-40", "a-b", "10-20-30", "-5-10", "10-9000"}) {
    INFO(wrong);
    CHECK_FALSE(cards::dropOutsFrom(QString::fromLatin1(wrong)));
  }
}

TEST_CASE("cautions stand on the piece card where the risk is", "[cards][caution]") {
  plan::Plan plan = twoPieces();
  const auto cautions = [&] { return cards::pieceIssues(plan, {"piece-1"}).join(u'\n'); };
  const auto change = [&](auto edit) {
    plan::Piece piece = *plan.find<plan::Piece>("piece-1");
    edit(piece);
    plan.put("piece-1", piece);
  };
  CHECK(cautions().isEmpty());

  change([](plan::Piece& p) { p.start_mm = 3; });
  CHECK(cautions().contains(QStringLiteral("leaflet")));
  plan::Formula formula;
  formula.letter = "A";
  plan.put("formula-1", formula);
  change([](plan::Piece& p) { p.root.formula = "formula-1"; });
  CHECK(cautions().contains(QStringLiteral("leaflet")));  // not stated
  formula.leaflet.scalpContact = plan::ScalpContact::Yes;
  plan.put("formula-1", formula);
  CHECK_FALSE(cautions().contains(QStringLiteral("leaflet")));

  change([](plan::Piece& p) { p.backcomb = {60, 0.6, 28}; });
  CHECK(cautions().contains(QStringLiteral("elasticity")));  // not recorded
  plan::Hair hair = plan.hair();
  hair.condition.fill(plan::Condition::Good);
  plan.put(plan::kHairId, hair);
  CHECK_FALSE(cautions().contains(QStringLiteral("elasticity")));
  hair.condition.fill(plan::Condition::Poor);
  plan.put(plan::kHairId, hair);
  CHECK(cautions().contains(QStringLiteral("elasticity")));

  hair.scattered = {{std::nullopt, 0.2, 40, 300, 8.5}};
  plan.put(plan::kHairId, hair);
  CHECK(cautions().contains(QStringLiteral("test a strand")));
  // They say look, check, test, refer; never ready, done or safe.
  for (const char* word : {"safe", "ready", "done"})
    CHECK_FALSE(cautions().contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(QLatin1String(word)))));
}

TEST_CASE("a new plan asks about age, reactions, scalp and tests, and refers", "[cards][caution]") {
  desk::NewPlanPage page;
  const auto* caution = page.findChild<QLabel*>(QStringLiteral("newPlanCaution"));
  REQUIRE(caution);
  for (const char* word : {"how old", "reaction", "scalp", "tests", "refer", "maker's directions"}) {
    INFO(word);
    CHECK(caution->text().contains(QLatin1String(word)));
  }
}

TEST_CASE("eight answers make a plan that saves and opens, and skipping all makes the usual head", "[desk]") {
  const auto none = desk::newPlan({}, 42);
  REQUIRE(none.ok());
  CHECK(*none == plan::Plan::fresh(42));

  desk::NewPlanAnswers all;
  all.circumference_mm = 575;
  all.curl = plan::CurlClass::Wave;
  all.strand = desk::Strand::Coarse;
  all.amount = desk::Amount::Much;
  all.length = desk::Length::Long;
  all.rootLevel = 4;
  all.middleLevel = 5;
  all.part = cards::PartPlace::Left;
  all.swirl = cards::WhorlPlace::Two;
  const auto plan = desk::newPlan(all, 42);
  REQUIRE(plan.ok());
  const auto back = plan::readPlan(plan::writePlan(*plan));
  REQUIRE(back.ok());
  CHECK(*back == *plan);
  CHECK(plan->hair().level[0] == plan::RootMiddleEnd{4, 5, 5});
  CHECK(plan->head().whorls.size() == 2);
  CHECK(cards::partPlace(plan->head()) == cards::PartPlace::Left);
  CHECK(cards::whorlPlace(plan->head()) == cards::WhorlPlace::Two);

  all.circumference_mm = 2000;
  CHECK_FALSE(desk::newPlan(all, 1).ok());
}

TEST_CASE("part and swirl words come back from the head they made", "[cards]") {
  for (const auto place : {cards::PartPlace::None, cards::PartPlace::Left, cards::PartPlace::Middle, cards::PartPlace::Right}) {
    plan::Head head;
    head.part = cards::partLine(head, place);
    CHECK(cards::partPlace(head) == place);
  }
  for (const auto place : {cards::WhorlPlace::Left, cards::WhorlPlace::Middle, cards::WhorlPlace::Right, cards::WhorlPlace::Two}) {
    plan::Head head;
    head.whorls = cards::whorlsAt(head, place);
    CHECK(cards::whorlPlace(head) == place);
  }
}
