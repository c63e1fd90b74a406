// The tools that draw lines, by mouse: what the document holds after.
#include <QTest>
#include <catch2/catch.hpp>

#include "engine/head/landmarks.h"
#include "engine/head/surface_distance.h"
#include "tests/app/drawing_table.h"

namespace combdraft::sheet {
namespace {

using document::Selection;
using document::Tool;
using head::ViewName;
using tests::Table;

TEST_CASE("a section is drawn corner by corner and is one undo entry", "[sheet][tools]") {
  Table t;
  const plan::ItemId id = t.drawSection();
  CHECK(t.plan().find<plan::Section>(id)->outline.size() == 4);
  CHECK(t.document.selection() == Selection::one(id));
  CHECK(t.document.undoStack().count() == 1);
  CHECK(t.document.undoStack().text(0).startsWith(QStringLiteral("Draw section")));
  t.document.undoStack().undo();
  CHECK(t.plan().sections().empty());
}

TEST_CASE("corners catch on lines, and between two on one line the outline follows it", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  const head::Hairline& hairline = t.sheet.scene().head().hairline;
  const Vec3 a = hairline.pointAt(170), b = hairline.pointAt(140);
  t.click(t.at(a) + QPoint(1, -3));
  t.hover(t.at(b) + QPoint(-2, -2));
  CHECK(t.sheet.placeWords().contains(QStringLiteral("on the hairline")));
  t.click(t.at(b) + QPoint(-2, -2));
  t.click(t.at(30, 0), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().sections().size() == 1);
  const auto& outline = t.plan().sections().front().second->outline;
  CHECK(outline.size() > 4);
  int onHairline = 0;
  for (const head::ScalpPoint& p : outline)
    onHairline += std::abs(hairline.above_mm(t.shape().pointAt(p))) < 0.6;
  CHECK(onHairline == static_cast<int>(outline.size()) - 1);
}

TEST_CASE("clicking the first corner closes, Backspace takes back, Escape drops", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  t.click(t.at(8, -20), Qt::ControlModifier);
  t.click(t.at(58, -20), Qt::ControlModifier);
  t.click(t.at(58, 10), Qt::ControlModifier);
  t.key(Qt::Key_Backspace);
  t.click(t.at(50, 40), Qt::ControlModifier);
  t.hover(t.at(8, -20) + QPoint(2, 1));
  INFO(t.sheet.placeWords().toStdString());
  CHECK(t.sheet.placeWords().contains(QStringLiteral("closes the outline")));
  t.click(t.at(8, -20) + QPoint(2, 1));
  REQUIRE(t.plan().sections().size() == 1);
  CHECK(t.plan().sections().front().second->outline.size() == 3);
  t.click(t.at(-20, 0), Qt::ControlModifier);
  t.key(Qt::Key_Escape);
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().size() == 1);
}

TEST_CASE("an outline that crosses itself is refused where it crosses", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  for (const QPoint& p : {t.at(8, -20), t.at(58, 40), t.at(58, -20), t.at(8, 40)}) t.click(p, Qt::ControlModifier);
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().empty());
  CHECK(t.sheet.hint().contains(QStringLiteral("crosses itself")));
  // Nothing is lost: two corners back and on.
  t.key(Qt::Key_Backspace);
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().size() == 1);
}

TEST_CASE("a typed number sets the next corner's distance", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  t.click(t.at(8, 0), Qt::ControlModifier);
  t.hover(t.at(50, 0));
  t.type("35");
  CHECK(t.sheet.hint().contains(QStringLiteral("35 mm")));
  t.click(t.at(50, 0), Qt::ControlModifier);
  t.click(t.at(30, 35), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().sections().size() == 1);
  const auto& outline = t.plan().sections().front().second->outline;
  CHECK(head::surfaceDistance_mm(t.shape(), t.shape().pointAt(outline[0]), t.shape().pointAt(outline[1])) ==
        Approx(35).margin(0.1));
}

TEST_CASE("lay out fills a section that is clicked into", "[sheet][tools]") {
  Table t;
  t.take(Tool::LayOut);
  t.click(t.at(30, 10));
  CHECK(t.sheet.hint().contains(QStringLiteral("Draw a section first")));
  const plan::ItemId id = t.layOut();
  CHECK(t.plan().find<plan::Section>(id)->layout.has_value());
  CHECK(t.plan().pieces().size() >= 3);
  CHECK(t.document.undoStack().count() == 2);
  // In a section that is laid out the click only selects it.
  t.document.select(Selection());
  t.click(t.at(30, 10));
  CHECK(t.document.selection() == Selection::one(id));
  CHECK(t.document.undoStack().count() == 2);
}

TEST_CASE("a parting splits a section, one that does not reach says so", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.take(Tool::Parting);
  t.click(t.at(20, 10), Qt::ControlModifier);
  t.click(t.at(40, 10), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().size() == 1);
  CHECK(t.sheet.hint().contains(QStringLiteral("edge to edge")));
  t.key(Qt::Key_Escape);
  t.click(t.at(9, 10), Qt::ControlModifier);
  t.click(t.at(53, 12), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().size() == 2);
  CHECK(t.document.undoStack().undoText() == QStringLiteral("Split a section"));
  t.click(t.at(-40, 10), Qt::ControlModifier);
  t.click(t.at(-20, 10), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  CHECK(t.sheet.hint().contains(QStringLiteral("no section under")));
}

TEST_CASE("a corner is dragged and the run flows with it", "[sheet][tools]") {
  Table t;
  const plan::ItemId id = t.layOut();
  const std::size_t before = t.plan().pieces().size();
  t.take(Tool::Select);
  t.document.select(Selection::one(id));
  t.sheet.grab();
  t.drag(t.at(52, 40), t.at(30, -12), Qt::ControlModifier);
  CHECK(t.plan().pieces().size() < before);
  CHECK(t.document.undoStack().undoText().startsWith(QStringLiteral("Shape of section")));
  t.document.undoStack().undo();
  CHECK(t.plan().pieces().size() == before);
}

TEST_CASE("a section is moved with all in it, deleted and brought back", "[sheet][tools]") {
  Table t;
  const plan::ItemId id = t.layOut();
  t.take(Tool::Select);
  t.document.select(Selection::one(id));
  const plan::Plan before = t.plan();
  QTest::keyClick(&t.sheet, Qt::Key_Up, Qt::ShiftModifier);
  CHECK_FALSE(t.plan().find<plan::Section>(id)->outline == before.find<plan::Section>(id)->outline);
  CHECK_FALSE(t.plan().pieces().front().second->line == before.pieces().front().second->line);
  const plan::Plan moved = t.plan();
  t.key(Qt::Key_Delete);
  CHECK(t.plan().sections().empty());
  CHECK(t.plan().pieces().empty());
  t.document.undoStack().undo();
  CHECK(t.plan() == moved);
  CHECK(t.document.selection() == Selection::one(id));
}

TEST_CASE("a left-out is drawn with a typed thickness", "[sheet][tools]") {
  Table t;
  t.take(Tool::LeftOut);
  t.click(t.at(10, 0), Qt::ControlModifier);
  t.click(t.at(50, 0), Qt::ControlModifier);
  t.type("1");
  t.type("2");
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().pieces().size() == 1);
  CHECK(t.plan().pieces().front().second->action == plan::Action::LeaveOut);
  CHECK(t.plan().pieces().front().second->thickness_mm == 12);
}

TEST_CASE("corners on the hairline's own marks are taken", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  const head::HeadShape& shape = t.shape();
  const head::Landmarks marks = head::landmarksOf(shape, t.sheet.scene().head().hairline);
  t.click(t.at(marks.nape) + QPoint(1, -2));
  t.click(t.at(40, 0), Qt::ControlModifier);
  t.click(t.at(10, 0), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().sections().size() == 1);
  CHECK((shape.pointAt(t.plan().sections().front().second->outline.front()) - marks.nape).norm() < 0.1);
}

TEST_CASE("a second button during a drag changes nothing", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.take(Tool::Select);
  t.sheet.grab();
  const plan::ItemId id = t.plan().pieces().front().first;
  const plan::Plan before = t.plan();
  const QPoint from = t.sheet.middleOf(id)->toPoint(), to = from - QPoint(0, 30);
  QTest::mousePress(&t.sheet, Qt::LeftButton, {}, from);
  for (int i = 1; i <= 6; ++i) QTest::mouseMove(&t.sheet, from + (to - from) * i / 6);
  QTest::mouseClick(&t.sheet, Qt::MiddleButton, {}, to);
  QTest::mouseRelease(&t.sheet, Qt::LeftButton, {}, to);
  CHECK_FALSE(t.document.isTentative());
  CHECK_FALSE(t.plan() == before);
}

TEST_CASE("a crossed outline stays in hand when another tool is taken", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  for (const QPoint& p : {t.at(8, -20), t.at(58, 40), t.at(58, -20), t.at(8, 40)}) t.click(p, Qt::ControlModifier);
  t.take(Tool::Piece);
  CHECK(t.view.tool() == Tool::Section);
  CHECK(t.sheet.hint().contains(QStringLiteral("crosses itself")));
  t.key(Qt::Key_Escape);
  t.take(Tool::Piece);
  CHECK(t.view.tool() == Tool::Piece);
}

TEST_CASE("a drawing that the plan does not take stays in hand", "[sheet][tools]") {
  Table t;
  t.document.setAccess(document::DocumentController::Access::ReadOnly);
  t.take(Tool::Piece);
  t.click(t.at(10, 0));
  t.click(t.at(50, 5));
  t.key(Qt::Key_Return);
  CHECK(t.plan().pieces().empty());
  t.document.setAccess(document::DocumentController::Access::Full);
  t.key(Qt::Key_Return);  // nothing had to be drawn again
  REQUIRE(t.plan().pieces().size() == 1);
  CHECK(t.plan().pieces().front().second->line.size() >= 2);
}

TEST_CASE("Escape drops what is tried, and a drag without its button ends", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.take(Tool::Select);
  t.sheet.grab();
  const plan::ItemId id = t.plan().pieces().front().first;
  plan::Plan tried = t.plan();
  plan::Hair hair = tried.hair();
  hair.white_frac = 0.5;
  tried.put(plan::kHairId, hair);
  t.document.select(Selection::one(id));
  t.document.setTentative(tried);
  t.key(Qt::Key_Escape);
  CHECK_FALSE(t.document.isTentative());
  CHECK(t.document.selection().contains(id));
  t.key(Qt::Key_Escape);
  CHECK(t.document.selection().ids().empty());

  const plan::Plan before = t.plan();
  const QPoint from = t.sheet.middleOf(id)->toPoint(), to = from - QPoint(0, 30);
  QTest::mousePress(&t.sheet, Qt::LeftButton, {}, from);
  for (int i = 1; i <= 6; ++i) QTest::mouseMove(&t.sheet, from + (to - from) * i / 6);
  REQUIRE(t.document.isTentative());
  t.hover(to);  // the release went elsewhere
  CHECK_FALSE(t.document.isTentative());
  QTest::mouseRelease(&t.sheet, Qt::LeftButton, {}, to);
  CHECK(t.plan() == before);
}

TEST_CASE("another large view is seen whole, by whatever way it came", "[sheet][tools]") {
  Table t;
  t.view.setZoom(6);
  t.view.setLargeView(ViewName::Front);
  CHECK(t.view.zoom() == 1);
  t.view.setZoom(4);
  t.view.setLargeView(ViewName::Front);
  CHECK(t.view.zoom() == 4);
}

TEST_CASE("a note of another choice is not on the sheet", "[sheet][tools]") {
  Table t;
  plan::Plan plan = t.plan();
  plan::Note note;
  note.at = {180, 50};
  note.text = "stop here";
  note.choice = plan.info().activeChoice;
  plan.put("note-1", note);
  note.choice = "choice-2";
  plan.put("note-2", note);
  plan.put("choice-2", plan::Choice{});
  t.document.edit(plan, QStringLiteral("Notes"));
  CHECK(t.sheet.items() == std::vector<plan::ItemId>{"note-1"});
  CHECK(t.sheet.scene().notes().size() == 1);
}

}  // namespace
}  // namespace combdraft::sheet
