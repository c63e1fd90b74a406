// The drawing tools, by mouse and by keyboard: what the document holds after.
#include <QApplication>
#include <QLineEdit>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

#include "app/sheet/head_sheet.h"
#include "engine/head/landmarks.h"
#include "engine/head/scalp_outline.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"
#include "tests/app/demo_plans.h"

namespace combdraft::sheet {
namespace {

using document::DocumentController;
using document::Selection;
using document::Tool;
using document::ViewState;
using head::ViewName;

struct Table {
  DocumentController document{plan::Plan::fresh(7)};
  ViewState view;
  HeadSheet sheet{document, view};

  Table() {
    view.setLayer(document::Layer::Diagram);
    view.setLargeView(ViewName::Back);
    sheet.resize(1000, 760);
    sheet.show();
    REQUIRE(QTest::qWaitForWindowExposed(&sheet));
    sheet.activateWindow();
    sheet.setFocus();
    sheet.grab();
  }
  QPoint at(double u_mm, double v_mm, ViewName name = ViewName::Back) const {
    return sheet.placeOf(name)->toWidget(QPointF(u_mm, v_mm)).toPoint();
  }
  QPoint at(const Vec3& p, ViewName name = ViewName::Back) const {
    const head::ViewPoint q = sheet.scene().head().view(name).project(p);
    return at(q.u_mm, q.v_mm, name);
  }
  void take(Tool tool) { view.setTool(tool); }
  // QTest's own move may carry the modifiers of the click before.
  void hover(const QPoint& p) {
    QMouseEvent move(QEvent::MouseMove, p, sheet.mapToGlobal(p), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(&sheet, &move);
  }
  void click(const QPoint& p, Qt::KeyboardModifiers keys = {}) {
    hover(p);
    QTest::mouseClick(&sheet, Qt::LeftButton, keys, p);
  }
  void key(int key) { QTest::keyClick(&sheet, static_cast<Qt::Key>(key)); }
  void type(const char* text) { QTest::keyClicks(&sheet, QLatin1String(text)); }
  void drag(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(&sheet, Qt::LeftButton, keys, from);
    for (int i = 1; i <= 10; ++i) QTest::mouseMove(&sheet, from + (to - from) * i / 10);
    QTest::mouseRelease(&sheet, Qt::LeftButton, keys, to);
  }
  const plan::Plan& plan() const { return document.document(); }
  /// A section across the right half of the back, drawn freely.
  plan::ItemId drawSection() {
    take(Tool::Section);
    for (const QPoint& p : {at(8, -20), at(58, -20), at(52, 40), at(8, 45)}) click(p, Qt::ControlModifier);
    key(Qt::Key_Return);
    REQUIRE(plan().sections().size() == 1);
    return plan().sections().front().first;
  }
  plan::ItemId layOut() {
    const plan::ItemId id = drawSection();
    take(Tool::LayOut);
    click(at(30, 10));
    REQUIRE(!plan().pieces().empty());
    return id;
  }
  const head::HeadShape& shape() const { return sheet.scene().head().shape; }
};

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

TEST_CASE("the left-outs of a run are pulled wider on the sheet", "[sheet][tools]") {
  Table t;
  const plan::ItemId id = t.layOut();
  const std::size_t before = t.plan().pieces().size();
  t.take(Tool::Select);
  t.document.select(Selection::one(id));
  t.sheet.grab();
  std::optional<Handle> spacing;
  for (const Handle& one : sectionHandles(t.sheet.scene(), id, ViewName::Back))
    if (one.kind == HandleKind::Spacing) spacing = one;
  REQUIRE(spacing);
  const QPointF out = spacing->at_mm + spacing->outward * 14;
  t.drag(t.at(spacing->at_mm.x(), spacing->at_mm.y()), t.at(out.x(), out.y()));
  const plan::Layout& layout = *t.plan().find<plan::Section>(id)->layout;
  CHECK(layout.leftOut_mm.from == Approx(24).margin(3));
  CHECK(layout.leftOut_mm.from == layout.leftOut_mm.to);
  CHECK(t.plan().pieces().size() < before);
  CHECK(t.document.undoStack().undoText().startsWith(QStringLiteral("Left-outs of section")));
  t.document.undoStack().undo();
  CHECK(t.plan().pieces().size() == before);
}

TEST_CASE("two fingers zoom, one draws", "[sheet][tools][touch]") {
  Table t;
  std::unique_ptr<QPointingDevice> screen(QTest::createTouchDevice());
  const QPoint a = t.at(-20, 0), b = t.at(20, 0);
  QTest::touchEvent(&t.sheet, screen.get()).press(0, a).press(1, b);
  for (int i = 1; i <= 8; ++i)
    QTest::touchEvent(&t.sheet, screen.get()).move(0, a - QPoint(6 * i, 0)).move(1, b + QPoint(6 * i, 0));
  QTest::touchEvent(&t.sheet, screen.get()).release(0, a - QPoint(48, 0)).release(1, b + QPoint(48, 0));
  CHECK(t.view.zoom() > 1.2);
  CHECK(t.document.undoStack().count() == 0);
  t.view.setZoom(1);
  t.sheet.grab();
  t.take(Tool::Section);
  for (const QPoint& p : {t.at(12, -20), t.at(56, -16), t.at(50, 34)}) {
    QTest::touchEvent(&t.sheet, screen.get()).press(0, p);
    QTest::touchEvent(&t.sheet, screen.get()).release(0, p);
  }
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().sections().size() == 1);
  CHECK(t.plan().sections().front().second->outline.size() >= 3);
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

TEST_CASE("a drop-out is drawn along a piece, exactly when typed, and taken away", "[sheet][tools]") {
  Table t;
  t.take(Tool::Piece);
  t.click(t.at(10, 0), Qt::ControlModifier);
  t.click(t.at(60, 0), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  t.sheet.grab();
  const auto dropOuts = [&] { return t.plan().pieces().front().second->dropOuts; };
  t.take(Tool::DropOut);
  t.drag(t.at(20, 0), t.at(35, 0));
  REQUIRE(dropOuts().size() == 1);
  CHECK(dropOuts()[0].to_mm - dropOuts()[0].from_mm == Approx(16).margin(3));
  t.click(t.at(28, 0));
  CHECK(dropOuts().empty());
  QTest::mousePress(&t.sheet, Qt::LeftButton, {}, t.at(20, 0));
  for (int i = 1; i <= 6; ++i) QTest::mouseMove(&t.sheet, t.at(20 + i, 0));
  t.type("8");
  QTest::mouseRelease(&t.sheet, Qt::LeftButton, {}, t.at(26, 0));
  REQUIRE(dropOuts().size() == 1);
  CHECK(dropOuts()[0].to_mm - dropOuts()[0].from_mm == Approx(8).margin(0.11));
  t.click(t.at(0, 40));
  CHECK(t.sheet.hint().contains(QStringLiteral("Press on a piece")));
}

TEST_CASE("the part is drawn, the swirl moved, added, turned and removed", "[sheet][tools]") {
  Table t;
  t.view.setLargeView(ViewName::Top);
  t.sheet.grab();
  t.take(Tool::PartLine);
  const auto top = [&](double x_mm, double y_mm) { return t.at(t.shape().pointAlong(Vec3(x_mm, y_mm, 90)), ViewName::Top); };
  t.click(top(20, -20), Qt::ControlModifier);  // from the back: turned round
  t.click(top(20, 50), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  const auto& part = t.plan().head().part;
  REQUIRE(part.size() == 2);
  CHECK(t.shape().pointAt(part[0]).y() > t.shape().pointAt(part[1]).y());
  t.take(Tool::Whorl);
  t.click(top(5, -40));
  REQUIRE(t.plan().head().whorls.size() == 1);
  CHECK((t.shape().pointAt(t.plan().head().whorls[0].at) - t.shape().pointAlong(Vec3(5, -40, 90))).norm() < 2);
  t.click(top(-40, -20), Qt::ShiftModifier);
  REQUIRE(t.plan().head().whorls.size() == 2);
  t.click(top(-40, -20), Qt::AltModifier);
  CHECK(t.plan().head().whorls[1].turn == plan::Turn::Counterclockwise);
  t.hover(top(-40, -20));
  t.key(Qt::Key_Delete);
  CHECK(t.plan().head().whorls.size() == 1);
}

TEST_CASE("a note is written where the hand clicks, changed and kept when left", "[sheet][tools]") {
  Table t;
  t.take(Tool::Note);
  t.click(t.at(30, 10), Qt::ControlModifier);
  auto* field = t.sheet.findChild<QLineEdit*>(QStringLiteral("noteText"));
  REQUIRE(field);
  CHECK(field->isVisible());
  QTest::keyClicks(field, QStringLiteral("mind the scar"));
  QTest::keyClick(field, Qt::Key_Return);
  const auto notes = [&] {
    std::vector<const plan::Note*> found;
    for (const auto& [id, item] : t.plan().items())
      if (const auto* note = std::get_if<plan::Note>(item.get())) found.push_back(note);
    return found;
  };
  REQUIRE(notes().size() == 1);
  CHECK(notes()[0]->text == "mind the scar");
  t.click(t.at(-30, 10), Qt::ControlModifier);
  QTest::keyClicks(field, QStringLiteral("dropped"));
  QTest::keyClick(field, Qt::Key_Escape);
  CHECK(notes().size() == 1);
  t.click(t.at(-30, 10), Qt::ControlModifier);
  QTest::keyClicks(field, QStringLiteral("left"));
  t.sheet.setFocus();
  CHECK(notes().size() == 2);
}

TEST_CASE("a piece that goes under the drop-out tool takes nothing along", "[sheet][tools]") {
  Table t;
  t.take(Tool::Piece);
  t.click(t.at(10, 0), Qt::ControlModifier);
  t.click(t.at(60, 0), Qt::ControlModifier);
  t.key(Qt::Key_Return);
  t.sheet.grab();
  t.take(Tool::DropOut);
  QTest::mousePress(&t.sheet, Qt::LeftButton, {}, t.at(20, 0));
  t.document.undoStack().undo();
  QTest::mouseMove(&t.sheet, t.at(30, 0));
  QTest::mouseRelease(&t.sheet, Qt::LeftButton, {}, t.at(30, 0));
  CHECK(t.plan().pieces().empty());
  CHECK_FALSE(t.document.isTentative());
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

TEST_CASE("a view is dragged out by its title", "[sheet][tools]") {
  Table t;
  QSignalSpy dragged(&t.sheet, &HeadSheet::viewDraggedOut);
  const QPoint title = t.sheet.placeOf(ViewName::Back)->rect.topLeft().toPoint() + QPoint(60, 8);
  t.drag(title, title + QPoint(40, 60));
  REQUIRE(dragged.count() == 1);
  CHECK(dragged.first().first().value<ViewName>() == ViewName::Back);
  CHECK(t.document.undoStack().count() == 0);
}

TEST_CASE("taps that were undone are forgotten", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.sheet.grab();
  const auto order = [&] {
    std::vector<plan::ItemId> ids;
    for (const auto& [id, piece] : t.plan().pieces()) ids.push_back(id);
    return ids;
  };
  const std::vector<plan::ItemId> before = order();
  t.take(Tool::Number);
  t.click(t.sheet.middleOf(before[2])->toPoint());
  t.document.undoStack().undo();
  REQUIRE(order() == before);
  t.sheet.grab();
  t.click(t.sheet.middleOf(before[1])->toPoint());
  CHECK(order()[0] == before[1]);
  CHECK(order()[1] == before[0]);
  CHECK(order()[2] == before[2]);
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

TEST_CASE("typing is kept when the tool changes, dropped with another document", "[sheet][tools]") {
  Table t;
  t.take(Tool::Note);
  t.click(t.at(30, 10), Qt::ControlModifier);
  auto* field = t.sheet.findChild<QLineEdit*>(QStringLiteral("noteText"));
  QTest::keyClicks(field, QStringLiteral("kept"));
  t.take(Tool::Section);
  const auto notes = [&] {
    return std::count_if(t.plan().items().begin(), t.plan().items().end(),
                         [](const auto& entry) { return std::holds_alternative<plan::Note>(*entry.second); });
  };
  CHECK(notes() == 1);
  CHECK_FALSE(field->isVisible());
  // A section half drawn is closed by the change of tool; two corners are not one.
  for (const QPoint& p : {t.at(8, -20), t.at(58, -20), t.at(50, 40)}) t.click(p, Qt::ControlModifier);
  t.take(Tool::Piece);
  CHECK(t.plan().sections().size() == 1);
  t.take(Tool::Section);
  t.click(t.at(-20, 0), Qt::ControlModifier);
  t.document.replace(plan::Plan::fresh(8), {});
  t.key(Qt::Key_Return);
  CHECK(t.plan().sections().empty());
  t.take(Tool::Note);
  t.click(t.at(30, 10), Qt::ControlModifier);
  QTest::keyClicks(field, QStringLiteral("of the other plan"));
  t.document.replace(plan::Plan::fresh(9), {});
  t.sheet.setFocus();
  CHECK(notes() == 0);
}

TEST_CASE("pieces are numbered by tapping, and by dragging one onto another", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.sheet.grab();
  const auto order = [&] {
    std::vector<plan::ItemId> ids;
    for (const auto& [id, piece] : t.plan().pieces()) ids.push_back(id);
    return ids;
  };
  const std::vector<plan::ItemId> before = order();
  REQUIRE(before.size() >= 3);
  t.take(Tool::Number);
  t.click(t.sheet.middleOf(before[2])->toPoint());
  t.sheet.grab();
  t.click(t.sheet.middleOf(before[0])->toPoint());
  CHECK(order()[0] == before[2]);
  CHECK(order()[1] == before[0]);
  CHECK(order()[2] == before[1]);
  CHECK(t.document.undoStack().count() == 3);  // section, lay out, one entry for the taps
  t.key(Qt::Key_Return);
  t.sheet.grab();
  t.drag(t.sheet.middleOf(before[1])->toPoint(), t.sheet.middleOf(before[2])->toPoint());
  CHECK(order()[0] == before[1]);
  t.document.undoStack().undo();
  t.document.undoStack().undo();
  CHECK(order() == before);
}

TEST_CASE("everything is drawn by keyboard alone", "[sheet][tools]") {
  Table t;
  t.take(Tool::Section);
  const auto arrows = [&](int key, int count) {
    for (int i = 0; i < count; ++i) QTest::keyClick(&t.sheet, static_cast<Qt::Key>(key), Qt::ShiftModifier);
  };
  arrows(Qt::Key_Down, 2);
  t.key(Qt::Key_Space);
  arrows(Qt::Key_Right, 4);
  t.key(Qt::Key_Space);
  arrows(Qt::Key_Down, 4);
  t.key(Qt::Key_Space);
  arrows(Qt::Key_Left, 4);
  t.key(Qt::Key_Space);
  t.key(Qt::Key_Return);
  REQUIRE(t.plan().sections().size() == 1);
  t.take(Tool::LayOut);
  arrows(Qt::Key_Up, 2);
  arrows(Qt::Key_Right, 2);
  t.key(Qt::Key_Space);
  CHECK(t.plan().pieces().size() >= 2);
  // Tab walks pieces and the section.
  t.take(Tool::Select);
  t.document.select(Selection());
  std::set<plan::ItemId> met;
  for (std::size_t i = 0; i < t.sheet.items().size(); ++i) {
    t.key(Qt::Key_Tab);
    met.insert(t.document.selection().lead());
  }
  CHECK(met.size() == t.plan().pieces().size() + 1);
}

}  // namespace
}  // namespace combdraft::sheet
