#include "app/desk/plan_drawing.h"

#include <QPainter>

#include "app/desk/pattern_drawing.h"

namespace combdraft::desk {
namespace {

constexpr head::ViewName kDrawnViews[] = {head::ViewName::Back, head::ViewName::Left, head::ViewName::Top};

}  // namespace

QPixmap planDrawing(const plan::Plan& plan, const QSize& size, double pixelRatio, const paint::Palette& palette) {
  const paint::Scene scene(plan, {}, nullptr);
  const QSize cell(size.width() / static_cast<int>(std::size(kDrawnViews)), size.height());
  QPixmap all(size * pixelRatio);
  all.setDevicePixelRatio(pixelRatio);
  all.fill(Qt::transparent);
  QPainter painter(&all);
  int x = 0;
  for (const head::ViewName view : kDrawnViews) {
    painter.drawPixmap(x, 0, patternDrawing(scene, view, cell, pixelRatio, palette));
    x += cell.width();
  }
  return all;
}

}  // namespace combdraft::desk
