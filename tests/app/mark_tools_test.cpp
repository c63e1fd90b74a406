// The tools that act where the hand points, and the sheet under keyboard and touch.
#include <QLineEdit>
#include <QPointingDevice>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>
#include <set>

#include "app/sheet/handles.h"
#include "tests/app/drawing_table.h"

namespace combdraft::sheet {
namespace {

using document::Selection;
using document::Tool;
using head::ViewName;
using tests::Table;

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
  const std::vector<plan::ItemId> before = t.order();
  t.take(Tool::Number);
  t.click(t.sheet.middleOf(before[2])->toPoint());
  t.document.undoStack().undo();
  REQUIRE(t.order() == before);
  t.sheet.grab();
  t.click(t.sheet.middleOf(before[1])->toPoint());
  CHECK(t.order()[0] == before[1]);
  CHECK(t.order()[1] == before[0]);
  CHECK(t.order()[2] == before[2]);
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
  const std::vector<plan::ItemId> before = t.order();
  REQUIRE(before.size() >= 3);
  t.take(Tool::Number);
  t.click(t.sheet.middleOf(before[2])->toPoint());
  t.sheet.grab();
  t.click(t.sheet.middleOf(before[0])->toPoint());
  CHECK(t.order()[0] == before[2]);
  CHECK(t.order()[1] == before[0]);
  CHECK(t.order()[2] == before[1]);
  CHECK(t.document.undoStack().count() == 3);  // section, lay out, one entry for the taps
  t.key(Qt::Key_Return);
  t.sheet.grab();
  t.drag(t.sheet.middleOf(before[1])->toPoint(), t.sheet.middleOf(before[2])->toPoint());
  CHECK(t.order()[0] == before[1]);
  t.document.undoStack().undo();
  t.document.undoStack().undo();
  CHECK(t.order() == before);
}

TEST_CASE("the number tool gives no number beyond the last piece", "[sheet][tools]") {
  Table t;
  t.layOut();
  t.sheet.grab();
  const std::vector<plan::ItemId> before = t.order();
  const QString last = QString::number(before.size());
  REQUIRE(before.size() >= 3);
  t.take(Tool::Number);
  t.type("90");
  CHECK(t.sheet.hint().contains(QStringLiteral("number %1.").arg(last)));
  t.click(t.sheet.middleOf(before[0])->toPoint());
  CHECK(t.order().back() == before[0]);
  // The next one comes behind it, and the first moves up one.
  CHECK(t.sheet.hint().contains(QStringLiteral("number %1.").arg(last)));
  t.sheet.grab();
  t.click(t.sheet.middleOf(before[1])->toPoint());
  CHECK(t.order().back() == before[1]);
  CHECK(t.order()[before.size() - 2] == before[0]);
  CHECK(t.document.undoStack().count() == 3);  // section, lay out, one entry for the taps
}

TEST_CASE("a piece whose thickness is typed wrong stays in hand when another tool is taken", "[sheet][tools]") {
  Table t;
  t.take(Tool::Piece);
  t.click(t.at(-30, 0), Qt::ControlModifier);
  t.click(t.at(30, 0), Qt::ControlModifier);
  t.type("999");
  t.take(Tool::Measure);
  CHECK(t.view.tool() == Tool::Piece);
  CHECK(t.plan().pieces().empty());
  CHECK(t.sheet.hint().contains(QStringLiteral("999")));
  for (int i = 0; i < 2; ++i) t.key(Qt::Key_Backspace);
  t.take(Tool::Measure);
  CHECK(t.view.tool() == Tool::Measure);
  REQUIRE(t.plan().pieces().size() == 1);
  CHECK(t.plan().pieces().front().second->thickness_mm == 9);
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
