// The head sheet under mouse, keyboard and touchpad.
#include <QAccessible>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <catch2/catch.hpp>
#include <set>

#include "app/sheet/head_sheet.h"
#include "tests/app/demo_plans.h"

namespace combdraft::sheet {
namespace {

using document::DocumentController;
using document::Selection;
using document::Tool;
using document::ViewState;

struct Bench {
  DocumentController document{tests::demoPlan()};
  ViewState view;
  HeadSheet sheet{document, view};

  Bench() {
    view.setLayer(document::Layer::Diagram);
    sheet.resize(900, 700);
    sheet.show();
    REQUIRE(QTest::qWaitForWindowExposed(&sheet));
    sheet.activateWindow();
    sheet.setFocus();
    sheet.grab();
  }
  QPoint at(const plan::ItemId& id) const {
    const auto middle = sheet.middleOf(id);
    REQUIRE(middle);
    return middle->toPoint();
  }
  QPoint at(head::ViewName name, double u_mm, double v_mm) const {
    return sheet.placeOf(name)->toWidget(QPointF(u_mm, v_mm)).toPoint();
  }
  const plan::Piece& piece(const plan::ItemId& id) const {
    return *document.plan().find<plan::Piece>(id);
  }
  void drag(const QPoint& from, const QPoint& to) {
    QTest::mousePress(&sheet, Qt::LeftButton, {}, from);
    for (int i = 1; i <= 10; ++i) QTest::mouseMove(&sheet, from + (to - from) * i / 10);
  }
  QPoint handle(HandleKind kind, head::ViewName name, int which = 0) const {
    const auto* shape = sheet.scene().find(document.selection().lead());
    for (const Handle& one : handlesOf(sheet.scene(), *shape, name))
      if (one.kind == kind && which-- == 0) return sheet.placeOf(name)->toWidget(one.at_mm).toPoint();
    FAIL("no such handle");
    return {};
  }
};

TEST_CASE("a click selects the piece under it, a click beside drops the selection", "[sheet]") {
  Bench b;
  QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at("piece-1"));
  CHECK(b.document.selection() == Selection::one("piece-1"));
  QTest::mouseClick(&b.sheet, Qt::LeftButton, Qt::ControlModifier, b.at("piece-7"));
  CHECK(b.document.selection().size() == 2);
  QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 0, 180));
  CHECK(b.document.selection().isEmpty());
  CHECK(b.document.undoStack().count() == 0);
}

TEST_CASE("a frame drawn around pieces selects them", "[sheet]") {
  Bench b;
  b.drag(b.at(head::ViewName::Back, -64, 60), b.at(head::ViewName::Back, 64, -38));
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 64, -38));
  for (const char* id : {"piece-1", "piece-2", "piece-3", "piece-5", "piece-7"})
    CHECK(b.document.selection().contains(id));
  CHECK_FALSE(b.document.selection().contains("piece-6"));
}

TEST_CASE("dragging moves a piece in every view and is one undo entry", "[sheet]") {
  Bench b;
  const plan::Plan before = b.document.document();
  const QPoint from = b.at("piece-1");
  const double scale = b.sheet.placeOf(head::ViewName::Back)->scale;
  const QPointF crownBefore = *b.sheet.middleOf("piece-1");
  const QPoint to = from - QPoint(0, static_cast<int>(12 * scale));
  b.drag(from, to);
  CHECK(b.document.isTentative());
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, to);
  CHECK_FALSE(b.document.isTentative());
  REQUIRE(b.document.undoStack().count() == 1);
  CHECK(b.document.undoStack().text(0) == QStringLiteral("Move piece 1"));
  // The middle followed the hand within the arc's foreshortening.
  CHECK((*b.sheet.middleOf("piece-1") - crownBefore).y() == Approx(to.y() - from.y()).margin(3));
  CHECK(b.piece("piece-2") == *before.find<plan::Piece>("piece-2"));
  b.document.undoStack().undo();
  CHECK(b.document.document() == before);
}

TEST_CASE("Escape drops a drag as if nothing had happened", "[sheet]") {
  Bench b;
  const plan::Plan before = b.document.document();
  b.drag(b.at("piece-1"), b.at("piece-1") - QPoint(10, 40));
  CHECK_FALSE(b.document.plan() == before);
  QTest::keyClick(&b.sheet, Qt::Key_Escape);
  CHECK(b.document.plan() == before);
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, b.at("piece-1") - QPoint(10, 40));
  CHECK(b.document.plan() == before);
  CHECK(b.document.undoStack().count() == 0);
}

TEST_CASE("the edges set the thickness, the start handle the start", "[sheet]") {
  Bench b;
  b.document.select(Selection::one("piece-3"));
  b.sheet.grab();
  const double scale = b.sheet.placeOf(head::ViewName::Back)->scale;
  const QPoint edge = b.handle(HandleKind::Thickness, head::ViewName::Back);
  const QPoint out = edge - QPoint(0, static_cast<int>(std::lround(3 * scale)));
  const double before = b.piece("piece-3").thickness_mm;
  b.drag(edge, out);
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, out);
  // 3 mm on one side is 6 mm of thickness; the scalp leans a little there.
  CHECK(b.piece("piece-3").thickness_mm == Approx(before + 6).margin(1.5));
  CHECK(b.document.undoStack().text(0) == QStringLiteral("Thickness of piece 3"));

  b.sheet.grab();
  const double start = b.piece("piece-3").start_mm;
  const QPoint diamond = b.handle(HandleKind::Start, head::ViewName::Back);
  const QPoint lower = diamond + QPoint(0, static_cast<int>(std::lround(25 * scale)));
  b.drag(diamond, lower);
  CHECK(b.sheet.hint().startsWith(QStringLiteral("Starts ")));
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, lower);
  CHECK(b.piece("piece-3").start_mm == Approx(start + 25).margin(1.5));
  CHECK(b.document.undoStack().text(1) == QStringLiteral("Start of piece 3"));
  CHECK(b.document.undoStack().count() == 2);
}

TEST_CASE("Tab walks every piece in order and then leaves", "[sheet][keyboard]") {
  Bench b;
  std::vector<plan::ItemId> walked;
  for (int i = 0; i < 8; ++i) {
    QTest::keyClick(&b.sheet, Qt::Key_Tab);
    REQUIRE(b.document.selection().size() == 1);
    walked.push_back(b.document.selection().lead());
  }
  std::vector<plan::ItemId> expected;
  for (const auto& [id, piece] : b.document.plan().pieces()) expected.push_back(id);
  CHECK(walked == expected);
  QTest::keyClick(&b.sheet, Qt::Key_Backtab);
  CHECK(b.document.selection().lead() == expected[6]);
}

TEST_CASE("arrows nudge by 1, 10 and 0.1 mm", "[sheet][keyboard]") {
  Bench b;
  b.document.select(Selection::one("piece-1"));
  const head::HeadShape& shape = b.sheet.scene().head().shape;
  const auto moved = [&](Qt::KeyboardModifiers keys) {
    const Vec3 from = shape.pointAt(b.piece("piece-1").line[1]);
    QTest::keyClick(&b.sheet, Qt::Key_Up, keys);
    const Vec3 to = shape.pointAt(b.piece("piece-1").line[1]);
    CHECK(to.z() > from.z());
    return (to - from).norm();
  };
  CHECK(moved({}) == Approx(1).margin(0.1));
  CHECK(moved(Qt::ShiftModifier) == Approx(10).margin(0.6));
  CHECK(moved(Qt::AltModifier) == Approx(0.1).margin(0.02));
  CHECK(b.document.undoStack().count() == 3);
  for (int i = 0; i < 3; ++i) b.document.undoStack().undo();
  CHECK(b.document.document() == tests::demoPlan());
}

TEST_CASE("Delete removes, Escape drops the selection", "[sheet][keyboard]") {
  Bench b;
  b.document.select(Selection::one("piece-4"));
  QTest::keyClick(&b.sheet, Qt::Key_Escape);
  CHECK(b.document.selection().isEmpty());
  b.document.select(Selection::one("piece-4"));
  QTest::keyClick(&b.sheet, Qt::Key_Delete);
  CHECK(b.document.plan().find<plan::Piece>("piece-4") == nullptr);
  CHECK(b.document.undoStack().text(0) == QStringLiteral("Remove piece 4"));
}

TEST_CASE("keys and double clicks choose the large view", "[sheet]") {
  Bench b;
  QTest::keyClick(&b.sheet, Qt::Key_3);
  CHECK(b.view.largeView() == head::ViewName::Left);
  CHECK(b.sheet.placeOf(head::ViewName::Left)->large);
  QTest::keyClick(&b.sheet, Qt::Key_0);
  CHECK_FALSE(b.view.largeView());
  QTest::mouseDClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Top, 0, 100));
  CHECK(b.view.largeView() == head::ViewName::Top);
}

TEST_CASE("views never overlap and stay on the sheet", "[sheet]") {
  for (const QSizeF size : {QSizeF(996, 360), QSizeF(900, 700), QSizeF(500, 900), QSizeF(260, 240)})
    for (const auto& large :
         {std::optional<head::ViewName>(), std::optional(head::ViewName::Crown)}) {
      const QRectF area(QPointF(0, 0), size);
      const std::vector<ViewPlace> places = layoutViews({area, large, 1, {}, 18});
      REQUIRE(places.size() == 6);
      for (std::size_t i = 0; i < 6; ++i) {
        CHECK(area.adjusted(-1, -1, 1, 1).contains(places[i].rect));
        for (std::size_t k = i + 1; k < 6; ++k)
          CHECK_FALSE(places[i].rect.adjusted(1, 1, -1, -1).intersects(places[k].rect));
      }
    }
}

TEST_CASE("a flat wide sheet shows the small views in several columns", "[sheet]") {
  const std::vector<ViewPlace> places =
      layoutViews({QRectF(0, 0, 996, 360), head::ViewName::Back, 1, {}, 22});
  REQUIRE(places.size() == 6);
  for (const ViewPlace& place : places) {
    CHECK(place.rect.width() > 100);
    CHECK(place.scale > 0.3);
  }
}

TEST_CASE("the pointer marks one place of the scalp in all views", "[sheet]") {
  Bench b;
  QTest::mouseMove(&b.sheet, b.at(head::ViewName::Back, 22, -20));
  REQUIRE(b.view.hoverPoint());
  const Vec3 p = b.sheet.scene().head().shape.pointAt(*b.view.hoverPoint());
  CHECK(p.x() == Approx(22).margin(1));
  CHECK(p.z() == Approx(20).margin(1));
  CHECK(p.y() < -50);
  CHECK(b.sheet.placeWords().contains(QStringLiteral("right of centre")));
  QTest::mouseMove(&b.sheet, b.at(head::ViewName::Back, 0, 180));  // the neck
  CHECK_FALSE(b.view.hoverPoint());
}

TEST_CASE("hovering draws no layer anew", "[sheet]") {
  Bench b;
  b.view.setLayer(document::Layer::Both);
  b.sheet.grab();
  const auto before = b.sheet.layers(head::ViewName::Back).drawn();
  for (int i = 0; i < 30; ++i) {
    QTest::mouseMove(&b.sheet, b.at(head::ViewName::Back, -30 + 2 * i, 10));
    b.sheet.grab();
  }
  const auto after = b.sheet.layers(head::ViewName::Back).drawn();
  CHECK(after.look == before.look);
  CHECK(after.art == before.art);
  CHECK(after.diagram == before.diagram);
  CHECK(before.look > 0);
}

TEST_CASE("an edit draws the diagram anew but not the look", "[sheet]") {
  Bench b;
  b.view.setLayer(document::Layer::Both);
  b.sheet.grab();
  const auto before = b.sheet.layers(head::ViewName::Back).drawn();
  b.document.select(Selection::one("piece-1"));
  QTest::keyClick(&b.sheet, Qt::Key_Up);
  b.sheet.grab();
  const auto after = b.sheet.layers(head::ViewName::Back).drawn();
  CHECK(after.diagram == before.diagram + 1);
  CHECK(after.look == before.look);
}

TEST_CASE("the divider is pulled across every view", "[sheet]") {
  Bench b;
  b.view.setLayer(document::Layer::Both);
  const ViewPlace* place = b.sheet.placeOf(head::ViewName::Back);
  const QPoint from = place->toWidget(QPointF(0, 100)).toPoint();
  const QPoint to = place->toWidget(QPointF(65, 100)).toPoint();
  b.drag(from, to);
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, to);
  CHECK(b.view.divider_frac() == Approx(0.75).margin(0.02));
  QTest::keyClick(&b.sheet, Qt::Key_Left, Qt::ControlModifier);
  CHECK(b.view.divider_frac() == Approx(0.70).margin(0.02));
}

TEST_CASE("the sheet asks for the pictures that it shows", "[sheet]") {
  Bench b;
  CHECK(b.sheet.wantedPictures().empty());
  QSignalSpy asked(&b.sheet, &HeadSheet::wantedPicturesChanged);
  b.view.setLayer(document::Layer::Look);
  CHECK(asked.count() == 1);
  CHECK(b.sheet.wantedPictures().size() == 6);
  std::set<double> sizes;
  for (const look::PictureRequest& request : b.sheet.wantedPictures()) {
    CHECK(request.pixel_mm >= 0.1);
    CHECK(request.pixel_mm <= 2);
    sizes.insert(request.pixel_mm);
  }
  CHECK(sizes.size() > 1);  // the large view is finer
  b.view.setDivider(0.3);
  CHECK(asked.count() == 1);
}

TEST_CASE("the wheel zooms in proportion and keeps the place under the hand", "[sheet]") {
  Bench b;
  const QPoint at = b.at(head::ViewName::Back, 20, -30);
  const auto wheel = [&](int delta) {
    QWheelEvent event(at, b.sheet.mapToGlobal(at), QPoint(), QPoint(0, delta), Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&b.sheet, &event);
  };
  wheel(120);
  const double notch = b.view.zoom();
  CHECK(notch > 1.05);
  CHECK((b.at(head::ViewName::Back, 20, -30) - at).manhattanLength() <= 2);
  wheel(-120);
  CHECK(b.view.zoom() == Approx(1));
  for (int i = 0; i < 8; ++i) wheel(15);
  CHECK(b.view.zoom() == Approx(notch));
}

TEST_CASE("a touchpad pinch zooms", "[sheet]") {
  Bench b;
  const QPointF at = b.at(head::ViewName::Back, 0, 0);
  QNativeGestureEvent pinch(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2, at,
                            at, b.sheet.mapToGlobal(at), 0.25, QPointF());
  QApplication::sendEvent(&b.sheet, &pinch);
  CHECK(b.view.zoom() == Approx(1.25));
}

TEST_CASE("a piece is drawn by clicks, a typed thickness and Enter", "[sheet][tool]") {
  Bench b;
  b.view.setTool(Tool::Piece);
  for (const double u : {-30.0, 0.0, 30.0})
    QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, u, -55));
  for (const char c : {'7', '.', '5'}) QTest::keyClick(&b.sheet, c);
  CHECK(b.document.document() == tests::demoPlan());
  QTest::keyClick(&b.sheet, Qt::Key_Return);
  REQUIRE(b.document.selection().size() == 1);
  const plan::Piece& drawn = b.piece(b.document.selection().lead());
  CHECK(drawn.line.size() == 3);
  CHECK(drawn.thickness_mm == 7.5);
  CHECK(drawn.order == 9);
  CHECK(b.document.undoStack().count() == 1);
  CHECK(b.document.undoStack().text(0) == QStringLiteral("Draw piece 9"));
}

TEST_CASE("a piece is drawn along a parting with the button down", "[sheet][tool]") {
  Bench b;
  b.view.setTool(Tool::Piece);
  b.drag(b.at(head::ViewName::Back, -40, -55), b.at(head::ViewName::Back, 40, -55));
  QTest::mouseRelease(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 40, -55));
  QTest::keyClick(&b.sheet, Qt::Key_Return);
  REQUIRE(b.document.selection().size() == 1);
  CHECK(b.piece(b.document.selection().lead()).line.size() >= 5);
}

TEST_CASE("Escape drops a drawing, and a drawing outside the hair is none", "[sheet][tool]") {
  Bench b;
  b.view.setTool(Tool::Piece);
  QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 0, -55));
  QTest::keyClick(&b.sheet, Qt::Key_Escape);
  QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 0, 150));
  QTest::mouseClick(&b.sheet, Qt::LeftButton, {}, b.at(head::ViewName::Back, 20, 150));
  QTest::keyClick(&b.sheet, Qt::Key_Return);
  CHECK(b.document.document() == tests::demoPlan());
}

TEST_CASE("a piece can be drawn with keys alone", "[sheet][tool][keyboard]") {
  Bench b;
  b.view.setTool(Tool::Piece);
  b.view.setHover(std::nullopt);
  for (int i = 0; i < 3; ++i) {
    QTest::keyClick(&b.sheet, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&b.sheet, Qt::Key_Space);
  }
  QTest::keyClick(&b.sheet, Qt::Key_Return);
  REQUIRE(b.document.selection().size() == 1);
  CHECK(b.piece(b.document.selection().lead()).line.size() == 3);
}

TEST_CASE("each piece is an accessible child with role, name and state", "[sheet][accessible]") {
  Bench b;
  QAccessibleInterface* sheet = QAccessible::queryAccessibleInterface(&b.sheet);
  REQUIRE(sheet);
  CHECK(sheet->text(QAccessible::Name) == QStringLiteral("Head sheet"));
  REQUIRE(sheet->childCount() == 9);  // eight pieces and a section
  QAccessibleInterface* seventh = sheet->child(6);
  REQUIRE(seventh);
  CHECK(seventh->role() == QAccessible::ListItem);
  CHECK(seventh->text(QAccessible::Name).startsWith(QStringLiteral("Piece 7, ")));
  CHECK(seventh->text(QAccessible::Name)
            .endsWith(QStringLiteral("5 mm, starts 60 mm off the scalp")));
  CHECK_FALSE(seventh->rect().isEmpty());
  CHECK(sheet->indexOfChild(seventh) == 6);
  CHECK_FALSE(seventh->state().selected);
  seventh->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  CHECK(b.document.selection() == Selection::one("piece-7"));
  CHECK(seventh->state().selected);
  b.document.edit([&] {
    plan::Plan plan = b.document.document();
    plan.put("piece-7", plan::ItemPtr());
    return plan;
  }(), QStringLiteral("Remove"));
  CHECK_FALSE(seventh->isValid());
  CHECK(sheet->childCount() == 8);
}

TEST_CASE("an empty plan says what to do", "[sheet]") {
  DocumentController document(plan::Plan::fresh(3));
  ViewState view;
  HeadSheet sheet(document, view);
  sheet.resize(700, 600);
  sheet.grab();
  CHECK(sheet.hint() == QStringLiteral("No pieces yet. Draw a section and lay it out, or draw a piece."));
  QTest::keyClick(&sheet, Qt::Key_Tab);
  QTest::keyClick(&sheet, Qt::Key_Up);
  QTest::keyClick(&sheet, Qt::Key_Delete);
  CHECK(document.undoStack().count() == 0);
}

}  // namespace
}  // namespace combdraft::sheet
