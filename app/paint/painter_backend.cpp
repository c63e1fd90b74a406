#include "app/paint/painter_backend.h"

#include <algorithm>

namespace combdraft::paint {
namespace {

void paintText(QPainter& painter, const TextRun& text) {
  // Letters are set at 100 pixels and scaled, so that any size in mm is exact
  // and the text stays text in a PDF.
  constexpr int kPixels = 100;
  QFont font;
  font.setFamilies(fontFamilies());
  font.setPixelSize(kPixels);
  font.setHintingPreference(QFont::PreferNoHinting);
  if (text.weight == TextRun::Weight::Bold) font.setWeight(QFont::DemiBold);
  painter.save();
  painter.translate(text.at);
  painter.scale(text.size_mm / kPixels, text.size_mm / kPixels);
  painter.setFont(font);
  painter.setPen(text.colour);
  const double width = QFontMetricsF(font).horizontalAdvance(text.words);
  const double x = text.anchor == TextRun::Anchor::Start    ? 0
                   : text.anchor == TextRun::Anchor::Middle ? -width / 2
                                                            : -width;
  painter.drawText(QPointF(x, 0.36 * kPixels), text.words);
  painter.restore();
}

void paintItem(QPainter& painter, const DrawingItem& item) {
  if (!item.image.isNull()) painter.drawImage(item.imageRect, item.image);
  if (!item.path.isEmpty()) {
    const Style& style = item.style;
    if (style.fill.isValid()) painter.fillPath(item.path, style.fill);
    if (style.stroke.isValid()) {
      QPen pen(style.stroke, style.width_mm, Qt::SolidLine, style.cap, Qt::RoundJoin);
      if (!style.dash_mm.empty() && style.width_mm > 0) {
        QList<qreal> dashes;  // Qt counts dashes in pen widths
        for (const double d : style.dash_mm) dashes << d / style.width_mm;
        pen.setDashPattern(dashes);
      }
      painter.strokePath(item.path, pen);
    }
  }
  if (item.text) paintText(painter, *item.text);
}

/// What lies within one shape is mostly drawn in a row, and a shape costs more than a line.
class Clipping {
 public:
  explicit Clipping(QPainter& painter) : painter_(painter) {}
  ~Clipping() { release(); }
  Clipping(const Clipping&) = delete;
  Clipping& operator=(const Clipping&) = delete;

  void to(const QPainterPath& shape) {
    if (shape == shape_) return;
    release();
    shape_ = shape;
    if (shape.isEmpty()) return;
    painter_.save();
    painter_.setClipPath(shape, Qt::IntersectClip);
  }

 private:
  void release() {
    if (!shape_.isEmpty()) painter_.restore();
    shape_ = {};
  }

  QPainter& painter_;
  QPainterPath shape_;  // empty = none
};

}  // namespace

void paintLayers(QPainter& painter, const Items& items, std::initializer_list<Layer> layers) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform |
                         QPainter::TextAntialiasing);
  {
    Clipping clipping(painter);
    for (const Layer layer : layers)
      for (const DrawingItem& item : items) {
        if (item.layer != layer) continue;
        clipping.to(item.clip);
        paintItem(painter, item);
      }
  }
  painter.restore();
}

void paintItems(QPainter& painter, const Items& items) {
  for (const Layer layer : kLayers) paintLayers(painter, items, {layer});
}

void paintPage(QPainter& painter, const Page& page) {
  painter.save();
  if (page.ground.isValid())
    painter.fillRect(QRectF(QPointF(0, 0), page.size_mm), page.ground);
  for (const PlacedFigure& placed : page.figures) {
    painter.save();
    painter.translate(placed.corner_mm);
    painter.scale(placed.scale, placed.scale);
    painter.translate(-placed.figure.frame.topLeft());
    paintItems(painter, placed.figure.items);
    painter.restore();
  }
  painter.restore();
}

}  // namespace combdraft::paint
