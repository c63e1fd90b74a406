#include "app/desk/plan_drawing.h"

#include <QPainter>

#include "app/desk/pattern_drawing.h"

namespace combdraft::desk {
namespace {

constexpr head::ViewName kDrawnViews[] = {head::ViewName::Back, head::ViewName::Left, head::ViewName::Top};

}  // namespace

QImage sidesDrawing(const paint::Scene& scene, const QSize& size, double pixelRatio, const paint::Palette& palette) {
  const QSize cell(size.width() / static_cast<int>(std::size(kDrawnViews)), size.height());
  QImage all(size * pixelRatio, QImage::Format_ARGB32_Premultiplied);
  all.setDevicePixelRatio(pixelRatio);
  all.fill(Qt::transparent);
  QPainter painter(&all);
  int x = 0;
  for (const head::ViewName view : kDrawnViews) {
    painter.drawImage(x, 0, patternDrawing(scene, view, cell, pixelRatio, palette));
    x += cell.width();
  }
  return all;
}

QImage planDrawing(const plan::Plan& plan, const QSize& size, double pixelRatio, const paint::Palette& palette) {
  return sidesDrawing(paint::Scene(plan, {}, nullptr), size, pixelRatio, palette);
}

}  // namespace combdraft::desk
