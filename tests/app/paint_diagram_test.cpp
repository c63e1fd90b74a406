// The diagram as a list of items: nothing is forgotten in any view.
#include <catch2/catch.hpp>
#include <set>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/paint/hatch.h"
#include "app/paint/head_art.h"
#include "app/paint/outline_reader.h"
#include "tests/app/demo_plans.h"

namespace combdraft::paint {
namespace {

std::set<QString> idsIn(const Items& items) {
  std::set<QString> ids;
  for (const DrawingItem& item : items) ids.insert(item.id);
  return ids;
}

int count(const Items& items, const char* id, Role role) {
  int n = 0;
  for (const DrawingItem& item : items) n += item.id == QLatin1String(id) && item.role == role;
  return n;
}

TEST_CASE("every piece is drawn in every view", "[paint]") {
  for (const plan::Plan& plan : {tests::demoPlan(), tests::sixtyPlan()}) {
    const Scene scene(plan, {}, nullptr);
    for (const head::ViewName view :
         {head::ViewName::Front, head::ViewName::Back, head::ViewName::Left,
          head::ViewName::Right, head::ViewName::Top}) {
      const std::set<QString> ids = idsIn(diagramItems(scene, view, {}));
      for (const auto& piece : scene.pieces()) {
        INFO(piece->id << " in " << head::viewWord(view));
        CHECK(ids.count(QString::fromStdString(piece->id)) == 1);
      }
    }
  }
}

TEST_CASE("what lies behind the head is dashed, what is seen is not", "[paint]") {
  const Scene scene(tests::demoPlan(), {}, nullptr);
  const Items front = diagramItems(scene, head::ViewName::Front, {});
  const Items back = diagramItems(scene, head::ViewName::Back, {});
  CHECK(count(front, "piece-1", Role::Hidden) == 1);
  CHECK(count(front, "piece-1", Role::Piece) == 0);
  CHECK(count(back, "piece-1", Role::Hidden) == 0);
  CHECK(count(back, "piece-1", Role::Piece) == 1);
  for (const Items* items : {&front, &back})
    for (const DrawingItem& item : *items)
      if (item.layer == Layer::Diagram)
        CHECK(item.style.dash_mm.empty() == (item.role != Role::Hidden));
}

TEST_CASE("each way of taking hair has its own mark", "[paint]") {
  const Scene scene(tests::demoPlan(), {}, nullptr);
  const Items back = diagramItems(scene, head::ViewName::Back, {});
  CHECK(count(back, "piece-1", Role::Backcomb) == 1);
  CHECK(count(back, "piece-1", Role::Hatch) == 1);
  CHECK(count(back, "piece-2", Role::Teeth) == 1);
  CHECK(count(back, "piece-5", Role::LeftOut) == 1);
  CHECK(count(back, "piece-7", Role::DropOut) == 1);
  CHECK(count(back, "piece-7", Role::Piece) == 2);  // on both sides of the drop-out
  const Items left = diagramItems(scene, head::ViewName::Left, {});
  CHECK(count(left, "piece-6", Role::Deepen) == 1);
  const Items right = diagramItems(scene, head::ViewName::Right, {});
  CHECK(count(right, "piece-4", Role::Paint) == 2);  // ground and brush edges
}

TEST_CASE("hatch stands for a formula and for nothing else", "[paint]") {
  plan::Plan plan = tests::demoPlan();
  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.root.formula.clear();
  plan.put("piece-1", piece);
  const Items back = diagramItems(Scene(plan, {}, nullptr), head::ViewName::Back, {});
  CHECK(count(back, "piece-1", Role::Hatch) == 0);
  CHECK(count(back, "piece-3", Role::Hatch) == 1);
}

TEST_CASE("hatch lies within what it fills, at its own distance", "[paint]") {
  // A ring with a hole: lines stop at both outlines. Length times distance is the area, as
  // in any fine enough set of parallel chords.
  QPainterPath ring;
  ring.addEllipse(QPointF(7, -3), 20, 14);
  ring.addEllipse(QPointF(9, -3), 8, 8);
  constexpr double kArea = kPi * (20 * 14 - 8 * 8), kSpacing = 0.25;
  for (const char16_t letter : {u'A', u'B', u'D', u'E', u'G'}) {
    const QPainterPath lines = hatchLines(QString(QChar(letter)), ring, kSpacing);
    INFO(static_cast<char>(letter));
    REQUIRE(lines.elementCount() > 100);
    double length = 0;
    int outside = 0;
    for (int i = 0; i + 1 < lines.elementCount(); i += 2) {
      const QPointF from = lines.elementAt(i), to = lines.elementAt(i + 1);
      REQUIRE(lines.elementAt(i).isMoveTo());
      length += QLineF(from, to).length();
      if (QLineF(from, to).length() < 1) continue;  // grazes: the outline is flattened to chords itself
      for (const double t : {0.1, 0.5, 0.9}) outside += !ring.contains(from + (to - from) * t);
    }
    CHECK(length * kSpacing == Approx(kArea).epsilon(0.01));
    CHECK(outside == 0);
  }
  // Crossed hatch: both directions at 1.3 times the distance.
  double crossed = 0;
  const QPainterPath lines = hatchLines(QStringLiteral("C"), ring, kSpacing);
  for (int i = 0; i + 1 < lines.elementCount(); i += 2) crossed += QLineF(lines.elementAt(i), lines.elementAt(i + 1)).length();
  CHECK(crossed * kSpacing * 1.3 / 2 == Approx(kArea).epsilon(0.01));
  CHECK(hatchLines(QStringLiteral("A"), QPainterPath(), 1).isEmpty());
}

TEST_CASE("teeth narrower than 1 mm on paper become a zigzag", "[paint]") {
  const Scene scene(tests::demoPlan(), {}, nullptr);
  const auto teethPath = [&](double scale) {
    for (const DrawingItem& item : diagramItems(scene, head::ViewName::Back, {{}, scale}))
      if (item.id == QLatin1String("piece-3") && item.role == Role::Teeth) return item;
    return DrawingItem();
  };
  // 1.5 mm teeth: 0.9 mm on paper at 0.6, 1.5 mm at 1.
  CHECK_FALSE(teethPath(0.6).style.fill.isValid());
  CHECK(teethPath(1.0).style.fill.isValid());
}

TEST_CASE("a strip is as wide on the scalp as its piece is thick", "[paint]") {
  // On a sphere-like top the two edges of a 20 mm strip lie 20 mm apart along
  // the surface; straight through they are nearer by less than 2 %.
  const HeadScene scene{plan::Head{}};
  const Strip strip = makeStrip(scene.shape, {{0, 30}, {0, 5}, {180, 30}}, 20);
  REQUIRE(strip.size() > 10);
  for (const StripSample& s : strip) {
    CHECK((s.a - s.b).norm() == Approx(20).epsilon(0.02));
    CHECK(std::abs(scene.shape.implicit(s.a)) < 1e-5);
  }
}

TEST_CASE("drop-outs and teeth cut a line into the stretches that are taken", "[paint]") {
  plan::Piece piece;
  piece.taking = plan::Taking::Weave;
  piece.tooth_mm = 6, piece.gap_mm = 4;
  piece.dropOuts = {{12, 22}};
  const std::vector<plan::Stretch> taken = takenStretches(piece, 30);
  // Teeth 0-6, 10-16, 20-26; the drop-out leaves 10-12 and 22-26.
  const std::vector<plan::Stretch> expected{{0, 6}, {10, 12}, {22, 26}};
  CHECK(taken == expected);
}

TEST_CASE("strips of pieces that did not change are kept", "[paint]") {
  plan::Plan plan = tests::demoPlan();
  const Scene before(plan, {}, nullptr);
  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.start_mm = 33;
  plan.put("piece-1", piece);
  const Scene after(plan, {}, &before);
  for (std::size_t i = 0; i < after.pieces().size(); ++i) {
    const bool same = after.pieces()[i] == before.pieces()[i];
    CHECK(same == (after.pieces()[i]->id != "piece-1"));
  }
  CHECK(after.find("piece-1")->piece->start_mm == 33);
}

TEST_CASE("the art follows the head's measures", "[paint]") {
  plan::Head wide;
  wide.measures.breadth_mm = 165;
  wide.measures.length_mm = 205;
  const HeadScene large(wide);
  const Palette palette;
  for (const head::ViewName view :
       {head::ViewName::Front, head::ViewName::Left, head::ViewName::Top}) {
    const Items art = headArt(large, view, plan::SkinTone::Paper, palette, Ink(1), Guides::Shown);
    QRectF scalp;
    for (const DrawingItem& item : art)
      if (item.role == Role::Scalp) scalp = item.path.boundingRect();
    const double half = view == head::ViewName::Left ? large.shape.axes().b_mm
                                                     : large.shape.axes().a_mm;
    INFO(head::viewWord(view));
    CHECK(scalp.right() == Approx(half).margin(1.0));
  }
}

TEST_CASE("the scalp drawn from the model lies on the bundled line art", "[paint]") {
  // resources/outlines was drawn for the standard axes; its own scalp path is
  // the independent drawing.
  const HeadScene scene{plan::Head{}};
  const head::HeadAxes standard;
  REQUIRE(scene.shape.axes().a_mm == Approx(standard.a_mm).margin(0.5));
  for (const head::ViewName view :
       {head::ViewName::Front, head::ViewName::Back, head::ViewName::Left, head::ViewName::Right,
        head::ViewName::Top}) {
    for (const OutlinePath& art : bundledOutline(view)) {
      if (art.kind != QLatin1String("scalp")) continue;
      const QRectF drawn = art.path.boundingRect(), ours = scene.lines(view).scalp.boundingRect();
      INFO(head::viewWord(view));
      CHECK(ours.left() == Approx(drawn.left()).margin(1.2));
      CHECK(ours.right() == Approx(drawn.right()).margin(1.2));
      CHECK(ours.top() == Approx(drawn.top()).margin(1.2));
      CHECK(ours.bottom() == Approx(drawn.bottom()).margin(1.2));
    }
  }
}

TEST_CASE("a moved hairline moves in the drawing", "[paint]") {
  plan::Head head;
  head.hairline.front_mm = 10;
  const double plain = HeadScene{plan::Head{}}.lines(head::ViewName::Front).scalp.boundingRect().top();
  const auto lowest = [](const HeadScene& scene) {
    return scene.hairline.pointAt(0).z();
  };
  CHECK(lowest(HeadScene(head)) == Approx(lowest(HeadScene(plan::Head{})) + 10).margin(0.01));
  const QPainterPath moved = HeadScene(head).lines(head::ViewName::Front).scalp;
  CHECK(moved.boundingRect().top() == Approx(plain));
  CHECK_FALSE(moved.contains(QPointF(0, -52)));  // bare forehead now
  CHECK(HeadScene{plan::Head{}}.lines(head::ViewName::Front).scalp.contains(QPointF(0, -52)));
}

TEST_CASE("a piece is described in salon words", "[paint]") {
  const plan::Plan plan = tests::demoPlan();
  const HeadScene scene(plan.head());
  plan::Piece piece = *plan.find<plan::Piece>("piece-2");
  piece.start_mm = 60;
  piece.thickness_mm = 8;
  CHECK(describePiece(piece, placeWords(scene, piece)).startsWith(QStringLiteral("Piece 2, ")));
  CHECK(describePiece(piece, placeWords(scene, piece))
            .endsWith(QStringLiteral("left, 8 mm, starts 60 mm off the scalp")));
  piece.start_mm = 0;
  CHECK(describePiece(piece, placeWords(scene, piece)).endsWith(QStringLiteral("starts at the scalp")));
}

}  // namespace
}  // namespace combdraft::paint
