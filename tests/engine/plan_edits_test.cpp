// Edits: undo and redo as a property, twins that follow, moves that stay on the hair.
#include <catch2/catch.hpp>

#include "engine/head/measures.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/twins.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

const Piece& pieceOf(const Plan& plan, const ItemId& id) {
  const Piece* piece = plan.find<Piece>(id);
  REQUIRE(piece);
  return *piece;
}

ItemId somePiece(const Plan& plan, samples::Draws& draw) {
  const auto pieces = plan.pieces();
  if (pieces.empty()) return "none";
  return pieces[static_cast<std::size_t>(draw.whole(0, static_cast<int>(pieces.size()) - 1))]
      .first;
}

ChangeSet randomEdit(const Plan& plan, samples::Draws& draw) {
  const ItemId id = somePiece(plan, draw), other = somePiece(plan, draw);
  const double number = draw.uniform(1, 30);
  switch (draw.whole(0, 12)) {
    case 0:
    case 1: return addPiece(plan, samples::randomPiece(draw, "choice-1", 0));
    case 2: return addTwins(plan, {id, other});
    case 3: return standAlone(plan, {id});
    case 4: return removeItems(plan, {id});
    case 5:
    case 6:
      return changePieces(plan, {id, other}, [&](Piece& p) {
        p.thickness_mm = number;
        p.start_mm = number / 2;
      });
    case 7:
    case 8:
      return movePieces(plan, {id, other}, {20, 40},
                        {20 + draw.uniform(-20, 20), 40 + draw.uniform(-15, 15)});
    case 9: return renumber(plan, "choice-1", {id, other});
    case 10: return shiftPart(plan, draw.uniform(-6, 6));
    case 11: return changeHair(plan, [&](Hair& h) { h.white_frac = number / 30; });
    default: return changeHead(plan, [&](Head& h) { h.hairline.front_mm = number / 10; });
  }
}

}  // namespace

TEST_CASE("two hundred random edits: undo all is the start, redo all the end", "[plan][edits]") {
  for (std::uint64_t seed : {1u, 2u, 3u}) {
    samples::Draws draw(seed);
    const Plan start = samples::randomPlan(seed);
    Plan plan = start;
    std::vector<ChangeSet> history;
    for (int step = 0; step < 200; ++step) {
      const ChangeSet edit = randomEdit(plan, draw);
      const Plan next = applied(plan, edit);
      CAPTURE(seed, step);
      REQUIRE(applied(next, inverse(edit)) == plan);
      const auto saved = readPlan(writePlan(next));
      if (!saved) FAIL(describe(saved.error()));
      REQUIRE(*saved == next);
      plan = next;
      history.push_back(edit);
    }
    const Plan end = plan;
    CHECK_FALSE(end == start);
    for (auto edit = history.rbegin(); edit != history.rend(); ++edit)
      plan = applied(plan, inverse(*edit));
    CHECK(plan == start);
    ChangeSet all;
    for (const ChangeSet& edit : history) {
      plan = applied(plan, edit);
      all = merged(all, edit);
    }
    CHECK(plan == end);
    CHECK(applied(start, all) == end);
    CHECK(applied(end, inverse(all)) == start);
  }
}

TEST_CASE("an edit that changes nothing is empty", "[plan][edits]") {
  const Plan plan = samples::fullPlan();
  CHECK(changePieces(plan, {"piece-1"}, [](Piece&) {}).empty());
  CHECK(changePieces(plan, {"nothing"}, [](Piece& p) { p.start_mm = 1; }).empty());
  CHECK(removeItems(plan, {"plan", "head", "hair", "nothing"}).empty());
  CHECK(addTwins(plan, {"piece-1", "piece-2"}).empty());  // one has a twin, one is one
  CHECK(movePieces(plan, {"piece-1"}, {10, 40}, {10, 40}).empty());
  CHECK(merged(changeHair(plan, [](Hair& h) { h.white_frac = 1; }),
               inverse(changeHair(plan, [](Hair& h) { h.white_frac = 1; })))
            .empty());
}

TEST_CASE("a twin follows its source, in one edit", "[plan][edits]") {
  const Plan plan = samples::fullPlan();
  const ChangeSet edit = changePieces(plan, {"piece-1"}, [](Piece& p) {
    p.start_mm = 42;
    p.line[0] = {44, 58};
    p.root.formula.clear();
    p.foil = "7";
  });
  REQUIRE(edit.changes.size() == 2);
  const Plan after = applied(plan, edit);
  const Piece& twin = pieceOf(after, "piece-2");
  CHECK(twin.start_mm == 42);
  CHECK(twin.line[0] == ScalpPoint{-44, 58});
  CHECK(twin.root.formula.empty());
  CHECK(twin.foil == "7*");
  CHECK(twin.order == 2);
  CHECK(twin.twinOf == "piece-1");
  CHECK(twin.section == "section-2");
}

TEST_CASE("an edit of a twin changes its source and itself", "[plan][edits]") {
  const Plan plan = samples::fullPlan();
  const Plan after = applied(plan, changePieces(plan, {"piece-2"}, [](Piece& p) {
                               p.thickness_mm = 7;
                               p.line[2] = {-70, 62};
                             }));
  CHECK(pieceOf(after, "piece-1").thickness_mm == 7);
  CHECK(pieceOf(after, "piece-1").line[2] == ScalpPoint{70, 62});
  CHECK(pieceOf(after, "piece-1").line[0] == pieceOf(plan, "piece-1").line[0]);
  CHECK(pieceOf(after, "piece-1").section == "section-1");
  CHECK(pieceOf(after, "piece-1").foil == "3");
  CHECK(pieceOf(after, "piece-1").order == 1);
  CHECK(followsSource(after, pieceOf(after, "piece-2")));
  // Named together they are changed once.
  const Plan once = applied(plan, changePieces(plan, {"piece-2", "piece-1"},
                                               [](Piece& p) { p.thickness_mm += 1; }));
  CHECK(pieceOf(once, "piece-1").thickness_mm == Approx(4.2));
  CHECK(pieceOf(once, "piece-2").thickness_mm == Approx(4.2));
}

TEST_CASE("a twin stands on its own when told or when its source goes", "[plan][edits]") {
  const Plan plan = samples::fullPlan();
  Piece expected = pieceOf(plan, "piece-2");
  expected.twinOf.clear();
  CHECK(pieceOf(applied(plan, standAlone(plan, {"piece-2"})), "piece-2") == expected);
  const Plan removed = applied(plan, removeItems(plan, {"piece-1"}));
  CHECK(pieceOf(removed, "piece-2") == expected);
  CHECK_FALSE(removed.item("piece-1"));
  // Removing the twin leaves the source alone.
  const Plan other = applied(plan, removeItems(plan, {"piece-2"}));
  CHECK(pieceOf(other, "piece-1") == pieceOf(plan, "piece-1"));
  // A section's twin too.
  const Plan noSource = applied(plan, removeItems(plan, {"section-1"}));
  CHECK(noSource.find<Section>("section-2")->twinOf.empty());
  CHECK_FALSE(noSource.item("piece-1"));  // its rule made it
  CHECK(pieceOf(noSource, "piece-2").twinOf.empty());
  Plan byHand = plan;
  Piece drawn = pieceOf(plan, "piece-1");
  drawn.laidOut.reset();
  byHand.put("piece-1", drawn);
  CHECK(pieceOf(applied(byHand, removeItems(byHand, {"section-1"})), "piece-1").section.empty());
}

TEST_CASE("a piece on the centre line is its own mirror", "[plan][edits]") {
  Plan plan = Plan::fresh(1);
  Piece centre;
  centre.choice = "choice-1";
  centre.line = {{0, 50}, {0.1, 30}, {180, 20}};
  plan = applied(plan, addPiece(plan, centre));
  CHECK(addTwins(plan, {"piece-1"}).empty());
  const Plan nudged = applied(plan, changePieces(plan, {"piece-1"}, [](Piece& p) {
                                p.line[0] = {1, 50};  // 1.2 mm off
                              }));
  CHECK(addTwins(nudged, {"piece-1"}).changes.size() == 1);
}

TEST_CASE("a new twin comes right after its source and the rest moves up", "[plan][edits]") {
  samples::Draws draw(5);
  Plan plan = Plan::fresh(1);
  for (int i = 0; i < 3; ++i)
    plan = applied(plan, addPiece(plan, samples::randomPiece(draw, "choice-1", 0)));
  plan = applied(plan, addTwins(plan, {"piece-1", "piece-2"}));
  std::vector<ItemId> order;
  for (const auto& [id, piece] : plan.pieces()) order.push_back(id);
  CHECK(order == std::vector<ItemId>{"piece-1", "piece-4", "piece-2", "piece-5", "piece-3"});
  int number = 1;
  for (const auto& entry : plan.pieces()) CHECK(entry.second->order == number++);

  plan = applied(plan, renumber(plan, "choice-1", {"piece-3", "piece-2"}));
  order.clear();
  for (const auto& [id, piece] : plan.pieces()) order.push_back(id);
  CHECK(order == std::vector<ItemId>{"piece-3", "piece-2", "piece-5", "piece-1", "piece-4"});
  CHECK(followsSource(plan, pieceOf(plan, "piece-5")));
}

TEST_CASE("with both sides of pairs taken, all follow the hand on its side", "[plan][edits]") {
  Plan plan = Plan::fresh(1);
  for (int i = 0; i < 3; ++i) {
    Piece piece;
    piece.choice = "choice-1";
    piece.line = {{150, 50. + 8 * i}, {165, 50. + 8 * i}};
    plan = applied(plan, addPiece(plan, piece));
  }
  plan = applied(plan, addTwins(plan, {"piece-1", "piece-2", "piece-3"}));
  REQUIRE(plan.pieces().size() == 6);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  const auto middle = [&](const Plan& of, const ItemId& id) {
    const auto& line = pieceOf(of, id).line;
    return Vec3((shape.pointAt(line.front()) + shape.pointAt(line.back())) / 2);
  };
  for (const auto& [lead, unused] : plan.pieces()) {
    CAPTURE(lead);
    std::vector<ItemId> ids{lead};
    for (const auto& [id, piece] : plan.pieces())
      if (id != lead) ids.push_back(id);
    const ScalpPoint from = pieceOf(plan, lead).line.front();
    const Plan after = applied(plan, movePieces(plan, ids, from, {from.bearing_deg, from.drop_deg + 5}));
    const ScalpPoint side{from.bearing_deg + (middle(plan, lead).x() > 0 ? -6 : 6), from.drop_deg};
    const Plan aside = applied(plan, movePieces(plan, ids, from, side));
    const double step = middle(aside, lead).x() - middle(plan, lead).x();
    REQUIRE(std::abs(step) > 1);
    for (const auto& [id, piece] : plan.pieces()) {
      CAPTURE(id);
      const bool sameSide = middle(plan, id).x() * middle(plan, lead).x() > 0;
      const double moved = middle(aside, id).x() - middle(plan, id).x();
      CHECK(moved * step * (sameSide ? 1 : -1) > 0);  // the other side mirrors it
      CHECK(middle(after, id).z() < middle(plan, id).z());
    }
  }
}

TEST_CASE("moving turns all points by the same step and stays on the hair", "[plan][edits]") {
  Plan plan = Plan::fresh(1);
  Piece piece;
  piece.choice = "choice-1";
  piece.line = {{150, 60}, {170, 60}, {190, 60}};
  plan = applied(plan, addPiece(plan, piece));
  const head::HeadShape shape(head::fitHead({})->axes);
  const ScalpPoint from{170, 60}, to = stepped(shape, from, 4, -6);
  CHECK(head::surfaceDistance_mm(shape, shape.pointAt(from), shape.pointAt(to)) ==
        Approx(std::hypot(4, 6)).margin(0.01));
  CHECK(to.bearing_deg > from.bearing_deg - 360 * (from.bearing_deg - to.bearing_deg > 180));
  CHECK(to.drop_deg < from.drop_deg);
  const Plan moved = applied(plan, movePieces(plan, {"piece-1"}, from, to));
  const Piece& now = pieceOf(moved, "piece-1");
  const auto angle = [](const ScalpPoint& a, const ScalpPoint& b) {
    return std::acos(std::min(1.0, head::directionOf(a).dot(head::directionOf(b))));
  };
  for (std::size_t i = 1; i < now.line.size(); ++i)  // a rigid turn keeps angles
    CHECK(angle(now.line[i - 1], now.line[i]) ==
          Approx(angle(piece.line[i - 1], piece.line[i])).margin(1e-4));
  CHECK(shape.pointAt(now.line[1]).isApprox(shape.pointAt(to), 1e-4));

  // Toward the nape it stops at the hairline instead of leaving the hair.
  const head::Hairline hairline(shape);
  const Plan low = applied(plan, movePieces(plan, {"piece-1"}, {180, 60}, {180, 175}));
  double lowest = 1e9;
  for (const ScalpPoint& point : pieceOf(low, "piece-1").line)
    lowest = std::min(lowest, hairline.above_mm(shape.pointAt(point)));
  CHECK(lowest >= -0.01);
  CHECK(lowest < 0.5);
}

TEST_CASE("the part moves square to itself", "[plan][edits]") {
  const Plan plan = Plan::fresh(1);
  const Plan moved = applied(plan, shiftPart(plan, 15));
  const head::HeadShape shape(head::fitHead({})->axes);
  REQUIRE(moved.head().part.size() >= 2);
  for (const ScalpPoint& point : moved.head().part) {
    const double x = shape.pointAt(point).x();
    CHECK(x > 10);
    CHECK(x < 16);
  }
  CHECK(applied(plan, setPart(plan, {})).head().part.empty());
}

TEST_CASE("removing a choice or a formula takes care of what uses it", "[plan][edits]") {
  Plan plan = samples::fullPlan();
  Piece other = pieceOf(plan, "piece-1");
  other.choice = "choice-2";
  other.section.clear();
  plan.put("piece-9", other);
  const Plan noFormula = applied(plan, removeItems(plan, {"formula-1"}));
  for (const ItemId id : {"piece-1", "piece-2", "piece-9"}) {
    CHECK(pieceOf(noFormula, id).root.formula.empty());
    CHECK(pieceOf(noFormula, id).end.formula.empty());
  }
  CHECK(noFormula.find<Treatment>("treatment-1")->formula.empty());
  const Plan noA = applied(plan, removeItems(plan, {"choice-1"}));
  CHECK(noA.info().activeChoice == "choice-2");
  CHECK(noA.pieces().size() == 1);
  CHECK(noA.items().size() == 7);  // plan, head, hair, handout, choice-2, formula-1, piece-9
  // The last choice stays.
  CHECK(removeItems(noA, {"choice-2"}).empty());
}
