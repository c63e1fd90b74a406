#pragma once
// A head sheet on an empty head, worked on by a hand: what the tests of the
// drawing tools share.
#include <QApplication>
#include <QMouseEvent>
#include <QTest>
#include <catch2/catch.hpp>

#include "app/sheet/head_sheet.h"
#include "engine/plan/edits.h"

namespace combdraft::tests {

using document::DocumentController;
using document::Tool;
using document::ViewState;
using head::ViewName;
using sheet::HeadSheet;

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
  /// Pieces in working order.
  std::vector<plan::ItemId> order() const {
    std::vector<plan::ItemId> ids;
    for (const auto& [id, piece] : plan().pieces()) ids.push_back(id);
    return ids;
  }
  const head::HeadShape& shape() const { return sheet.scene().head().shape; }
};

}  // namespace combdraft::tests
