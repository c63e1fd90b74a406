#include "app/handout/figure_parts.h"

#include "app/paint/head_art.h"

namespace combdraft::handout {

paint::Palette paperPalette() {
  paint::Palette palette;
  palette.ground = QColor(Qt::white);
  palette.ink = QColor(0x1F, 0x22, 0x25);
  palette.softInk = QColor(0x50, 0x50, 0x50);
  palette.skin = QColor(Qt::white);
  palette.scalp = QColor(0xF0, 0xEF, 0xED);
  palette.guide = QColor(0x9A, 0x9E, 0xA2);
  return palette;
}

void crop(paint::Figure& figure, const QRectF& frame) {
  QPainterPath shape;
  shape.addRect(frame);
  std::erase_if(figure.items, [&](const paint::DrawingItem& item) {
    const QRectF bounds = item.path.boundingRect().adjusted(-0.01, -0.01, 0.01, 0.01);
    return !item.path.isEmpty() && item.image.isNull() && !bounds.intersects(frame);
  });
  paint::clipItems(figure.items, shape);
  figure.frame = frame;
}

void append(paint::Items& items, paint::Items more) {
  std::move(more.begin(), more.end(), std::back_inserter(items));
}

paint::DrawingItem stroke(const QPainterPath& path, const QColor& colour, double width_mm) {
  paint::DrawingItem item;
  item.id = QStringLiteral("scale");
  item.role = paint::Role::Guide;
  item.layer = paint::Layer::Diagram;
  item.path = path;
  item.style.stroke = colour;
  item.style.width_mm = width_mm;
  item.style.cap = Qt::FlatCap;
  return item;
}

}  // namespace combdraft::handout
