// Undo as a property, drags that roll back, and what one signal says.
#include <catch2/catch.hpp>

#include <QSignalSpy>
#include <random>

#include "app/document/document_controller.h"

using namespace combdraft;
using document::DocumentChange;
using document::DocumentController;
using document::Gesture;
using document::Selection;

namespace {

plan::Piece somePiece(double drop_deg) {
  plan::Piece piece;
  piece.choice = "choice-1";
  piece.line = {{150, drop_deg}, {180, drop_deg}, {210, drop_deg}};
  return piece;
}

plan::Plan planWithPieces(int count) {
  plan::Plan plan = plan::Plan::fresh(7);
  for (int i = 1; i <= count; ++i) plan.put("piece-" + std::to_string(i), somePiece(60 + 3 * i));
  return plan;
}

// One random change of one kind; may also change nothing.
plan::Plan randomEdit(const plan::Plan& plan, std::mt19937& random) {
  plan::Plan next = plan;
  std::vector<plan::ItemId> ids;
  for (const auto& [id, piece] : plan.pieces()) ids.push_back(id);
  const auto pick = [&] { return ids[random() % ids.size()]; };
  switch (random() % 6) {
    case 0: next.put(next.freeId("piece"), somePiece(50 + static_cast<double>(random() % 50))); break;
    case 1:
      if (!ids.empty()) next.put(pick(), plan::ItemPtr());
      break;
    case 2:
      if (!ids.empty()) {
        const plan::ItemId id = pick();
        plan::Piece piece = *next.find<plan::Piece>(id);
        piece.thickness_mm = 1 + static_cast<double>(random() % 20);
        next.put(id, piece);
      }
      break;
    case 3: {
      plan::Hair hair = next.hair();
      hair.white_frac = static_cast<double>(random() % 10) / 10;
      next.put(plan::kHairId, hair);
      break;
    }
    case 4: {
      plan::Head head = next.head();
      head.hairline.front_mm = static_cast<double>(random() % 10);
      next.put(plan::kHeadId, head);
      break;
    }
    default: break;  // an edit that changes nothing
  }
  return next;
}

}  // namespace

TEST_CASE("undoing all of 200 random edits gives the first plan, redoing all the last", "[document][property]") {
  const unsigned seed = GENERATE(1u, 2u, 3u);
  INFO("seed " << seed);
  std::mt19937 random(seed);
  const plan::Plan first = planWithPieces(3);
  DocumentController controller(first);
  std::vector<plan::Plan> after;
  std::vector<Selection> selections;
  for (int i = 0; i < 200; ++i) {
    const auto pieces = controller.document().pieces();
    if (!pieces.empty() && random() % 3 == 0)
      controller.select(Selection::one(pieces[random() % pieces.size()].first));
    const int entries = controller.undoStack().count();
    controller.edit(randomEdit(controller.document(), random), QStringLiteral("edit"));
    if (controller.undoStack().count() > entries) after.push_back(controller.document());
  }
  REQUIRE(after.size() > 100);
  const plan::Plan last = controller.document();
  for (std::size_t i = after.size(); i-- > 0;) {
    REQUIRE(controller.document() == after[i]);
    controller.undoStack().undo();
    for (const plan::ItemId& id : controller.selection().ids()) REQUIRE(controller.document().item(id));
  }
  REQUIRE(controller.document() == first);
  CHECK_FALSE(controller.isModified());
  while (controller.undoStack().canRedo()) controller.undoStack().redo();
  CHECK(controller.document() == last);
}

TEST_CASE("a drag is shown at once, leaves one entry on release and nothing on Escape", "[document]") {
  DocumentController controller(planWithPieces(2));
  const plan::Plan before = controller.document();
  const auto thicker = [&](double mm) {
    plan::Plan next = controller.document();
    plan::Piece piece = *next.find<plan::Piece>("piece-1");
    piece.thickness_mm = mm;
    next.put("piece-1", piece);
    return next;
  };
  std::vector<DocumentChange::Kind> kinds;
  std::uint64_t lastRevision = 0;
  QObject::connect(&controller, &DocumentController::changed, &controller,
                   [&](const DocumentChange& change) {
                     kinds.push_back(change.kind);
                     CHECK(change.revision > lastRevision);
                     lastRevision = change.revision;
                     CHECK(change.ids == std::set<plan::ItemId>{"piece-1"});
                   });

  for (double mm : {6.0, 7.0, 8.0}) controller.setTentative(thicker(mm));
  CHECK(controller.plan().find<plan::Piece>("piece-1")->thickness_mm == 8);
  CHECK(controller.document() == before);
  CHECK(controller.undoStack().count() == 0);

  controller.dropTentative();
  CHECK(controller.plan() == before);
  CHECK(controller.undoStack().count() == 0);
  CHECK_FALSE(controller.isModified());

  controller.setTentative(thicker(9));
  controller.commitTentative(QStringLiteral("Change thickness of piece 1"));
  CHECK(controller.document().find<plan::Piece>("piece-1")->thickness_mm == 9);
  CHECK(controller.undoStack().count() == 1);
  CHECK(controller.undoStack().undoText() == QStringLiteral("Change thickness of piece 1"));
  controller.undoStack().undo();
  CHECK(controller.plan() == before);
  CHECK(kinds.size() == 7);  // three moves, Escape, one move, release, undo
}

TEST_CASE("a drag back to where it began leaves no entry", "[document]") {
  DocumentController controller(planWithPieces(1));
  controller.setTentative(controller.document());
  controller.commitTentative(QStringLiteral("Move piece 1"));
  CHECK(controller.undoStack().count() == 0);
  CHECK_FALSE(controller.isTentative());
}

TEST_CASE("steps of one gesture become one entry, of two gestures two", "[document]") {
  DocumentController controller(planWithPieces(1));
  const auto step = [&](double mm, Gesture gesture) {
    plan::Plan next = controller.document();
    plan::Piece piece = *next.find<plan::Piece>("piece-1");
    piece.start_mm += mm;
    next.put("piece-1", piece);
    controller.edit(next, QStringLiteral("Change start"), gesture);
  };
  const Gesture one = Gesture::begin(), two = Gesture::begin();
  step(1, one);
  step(1, one);
  CHECK(controller.undoStack().count() == 1);
  step(1, two);
  CHECK(controller.undoStack().count() == 2);
  step(-1, two);  // back to where this gesture began
  CHECK(controller.undoStack().count() == 1);
  controller.undoStack().undo();
  CHECK(controller.document().find<plan::Piece>("piece-1")->start_mm == 20);
}

TEST_CASE("undo brings the selection back without making it an edit of its own", "[document]") {
  DocumentController controller(planWithPieces(2));
  controller.select(Selection::one("piece-1"));
  CHECK_FALSE(controller.isModified());
  plan::Plan without = controller.document();
  without.put("piece-1", plan::ItemPtr());
  controller.edit(without, QStringLiteral("Remove piece 1"));
  CHECK(controller.selection().isEmpty());
  controller.undoStack().undo();
  CHECK(controller.selection() == Selection::one("piece-1"));
}

TEST_CASE("saving marks the state that was saved, also across undo", "[document]") {
  DocumentController controller(planWithPieces(1));
  plan::Plan next = controller.document();
  next.put("piece-9", somePiece(80));
  controller.edit(next, QStringLiteral("Add a piece"));
  CHECK(controller.isModified());
  controller.markSaved({QStringLiteral("/somewhere/plan.json"), 5});
  CHECK_FALSE(controller.isModified());
  controller.undoStack().undo();
  CHECK(controller.isModified());
  controller.undoStack().redo();
  CHECK_FALSE(controller.isModified());
  controller.replaceModified(planWithPieces(1), {});
  CHECK(controller.isModified());
  CHECK(controller.undoStack().count() == 0);
}
