// What the head sheet puts on the screen: kept layers first, then what moves.
#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/paint/marks.h"
#include "app/sheet/head_sheet.h"
#include "app/sheet/screen_palette.h"
#include "engine/head/surface_distance.h"

namespace combdraft::sheet {
namespace {

QPointF project(const head::SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}

QPen pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
  return QPen(colour, width, style, Qt::RoundCap, Qt::RoundJoin);
}

void paintTag(QPainter& painter, const QPointF& at, const QString& words) {
  const QFontMetricsF metrics(painter.font());
  const QRectF box(at.x(), at.y() - metrics.height() / 2 - 2,
                   metrics.horizontalAdvance(words) + 10, metrics.height() + 4);
  painter.setPen(Qt::NoPen);
  painter.setBrush(screenPalette().ink);
  painter.drawRoundedRect(box, 4, 4);
  painter.setPen(screenPalette().ground);
  painter.drawText(box, Qt::AlignCenter, words);
}

}  // namespace

QPainterPath HeadSheet::toWidget(const ViewPlace& place, const QPainterPath& path_mm) const {
  QTransform transform;
  transform.translate(place.origin.x(), place.origin.y());
  transform.scale(place.scale, place.scale);
  return transform.map(path_mm);
}

void HeadSheet::paintEvent(QPaintEvent*) {
  refreshLayers();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), screenPalette().ground);
  const std::optional<DrawnSketch> sketch = drawnSketch();
  for (const ViewPlace& place : places_) paintView(painter, place, sketch ? &*sketch : nullptr);
  if (hold_ == Hold::Band) {
    painter.setPen(pen(screenPalette().accent, 1, Qt::DashLine));
    QColor tint = screenPalette().accent;
    tint.setAlpha(28);
    painter.setBrush(tint);
    painter.drawRect(QRectF(press_, now_).normalized());
  }
  paintFoot(painter);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(screenPalette().accent, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 5, 5);
  }
}

void HeadSheet::paintView(QPainter& painter, const ViewPlace& place, const DrawnSketch* sketch) const {
  const ViewLayers& layers = layers_[static_cast<std::size_t>(place.view)];
  const document::Layer layer = layerOf(place);
  const double divider = layer == document::Layer::Diagram ? place.rect.right() + 1
                         : layer == document::Layer::Look  ? place.rect.left()
                                                           : dividerX(place);
  painter.save();
  painter.setClipRect(place.rect);
  const double title = kTitleLines * QFontMetricsF(font()).height();
  const QRectF drawn = toWidget(place, paint::viewClip(place.view)).boundingRect() &
                       place.rect.adjusted(0, title, 0, 0);
  if (layer != document::Layer::Look) {
    painter.save();
    painter.setClipRect(QRectF(place.rect.left(), place.rect.top(), divider - place.rect.left(),
                               place.rect.height()), Qt::IntersectClip);
    painter.drawPixmap(place.rect.topLeft(), layers.diagramArt());
    painter.drawPixmap(place.rect.topLeft(), layers.diagram());
    painter.restore();
  }
  if (layer != document::Layer::Diagram) {
    painter.save();
    painter.setClipRect(QRectF(divider, place.rect.top(), place.rect.right() - divider + 1,
                               place.rect.height()), Qt::IntersectClip);
    const paint::Palette paper;
    // White paper in a dark window would outshine the hair.
    const bool grey = view_.surround() == document::Surround::MidGrey ||
                      controls::currentTheme().name == controls::ThemeName::Dark;
    painter.fillPath(toWidget(place, paint::viewClip(place.view)), grey ? paper.midGrey : paper.ground);
    painter.drawPixmap(place.rect.topLeft(), layers.look());
    painter.restore();
  }
  if (layer == document::Layer::Both) {
    painter.setPen(pen(screenPalette().softInk, 1));
    painter.drawLine(QPointF(divider, drawn.top()), QPointF(divider, drawn.bottom()));
    if (place.large || !view_.largeView()) paintComb(painter, QPointF(divider, drawn.bottom()));
  }
  if (layer != document::Layer::Diagram &&
      !pictures_[static_cast<std::size_t>(place.view)] && (place.large || !view_.largeView())) {
    const QString words = tr("Working out the look …");
    const double width = QFontMetricsF(font()).horizontalAdvance(words) + 14;
    paintTag(painter, drawn.bottomRight() - QPointF(width, title), words);
  }
  painter.save();
  if (place.view == head::ViewName::Crown)
    painter.setClipPath(toWidget(place, paint::viewClip(place.view)), Qt::IntersectClip);
  paintOverlay(painter, place, sketch);
  painter.restore();
  painter.setPen(place.large ? screenPalette().ink : screenPalette().softInk);
  const int number = static_cast<int>(place.view) + 1;
  QString words = QStringLiteral("%1  %2").arg(number).arg(paint::viewTitle(place.view));
  const QFontMetricsF metrics(font());
  if (metrics.horizontalAdvance(words) > place.rect.width()) words = paint::viewTitle(place.view);
  painter.drawText(place.rect, Qt::AlignTop | Qt::AlignHCenter,
                   metrics.elidedText(words, Qt::ElideRight, place.rect.width()));
  painter.restore();
}

// The divider is a tail comb, as on the client's screen: its tail is the line, its teeth
// are what a hand takes.
void HeadSheet::paintComb(QPainter& painter, const QPointF& foot) const {
  constexpr double kComb_px = 36, kBack_px = 2.5, kTooth_px = 9, kTeethApart_px = 4.5;
  const QRectF comb(foot.x() - kBack_px, foot.y() - kComb_px, 2 * kBack_px + kTooth_px, kComb_px);
  painter.setPen(Qt::NoPen);
  painter.setBrush(screenPalette().ground);
  painter.drawRoundedRect(comb.adjusted(-1.5, -1.5, 3, 1.5), 3, 3);
  painter.setBrush(screenPalette().softInk);
  painter.drawRoundedRect(QRectF(comb.topLeft(), QSizeF(2 * kBack_px, kComb_px)), kBack_px, kBack_px);
  painter.setPen(pen(screenPalette().softInk, 1.5));
  for (double y = comb.top() + kTeethApart_px; y < comb.bottom() - 2; y += kTeethApart_px)
    painter.drawLine(QPointF(foot.x() + kBack_px, y), QPointF(comb.right(), y));
}

void HeadSheet::paintOverlay(QPainter& painter, const ViewPlace& place, const DrawnSketch* sketch) const {
  const head::SheetView view = scene_->head().view(place.view);
  if (const document::Marks& marks = view_.marks(); !marks.places.empty()) {
    const QPainterPath outline =
        toWidget(place, paint::marksOutline(scene_->head(), place.view, marks.places, marks.cell_mm));
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush(screenPalette().accent, Qt::FDiagPattern));
    painter.drawPath(outline);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(screenPalette().ground, 3.6));
    painter.drawPath(outline);
    painter.setPen(pen(screenPalette().accent, 1.8));
    painter.drawPath(outline);
  }
  painter.setBrush(Qt::NoBrush);
  // What is hidden is dashed where hair is seen, never across the face.
  const auto overHair = [&](const QPainterPath& lines_mm) {
    if (lines_mm.isEmpty()) return;
    painter.save();
    painter.setClipPath(toWidget(place, scene_->head().lines(place.view).scalp), Qt::IntersectClip);
    painter.drawPath(toWidget(place, lines_mm));
    painter.restore();
  };
  const auto outline = [&](const std::vector<plan::ItemId>& ids, double width) {
    QPainterPath seen, hidden;  // drawn at once: a choice may hold hundreds of pieces
    for (const plan::ItemId& id : ids)
      if (const paint::PieceShape* piece = scene_->find(id)) {
        seen.addPath(piece->in(view).seen);
        hidden.addPath(piece->in(view).hidden);
      }
    seen = toWidget(place, seen);
    if (controls::currentTheme().name == controls::ThemeName::Dark) {  // stands out from mid grey
      painter.setPen(pen(screenPalette().ground, width + 2));
      painter.drawPath(seen);
    }
    painter.setPen(pen(screenPalette().accent, width));
    painter.drawPath(seen);
    painter.setPen(pen(screenPalette().accent, width, Qt::DashLine));
    overHair(hidden);
  };
  if (view_.layer() == document::Layer::Look && view_.tool() == document::Tool::Select &&
      document_.selection().isEmpty() && view_.hoverItem().empty()) {
    // The look alone stays undisturbed.
  } else {
    // Many at once are marked lightly, so that the diagram stays to be seen.
    const double width = document_.selection().size() > 8 ? 1 : 2;
    outline(document_.selection().ids(), width);
    if (!document_.selection().contains(view_.hoverItem())) outline({view_.hoverItem()}, 1);
  }
  for (const paint::SectionShape& section : scene_->sections()) {
    const bool selected = document_.selection().contains(section.id);
    if (!selected && view_.hoverItem() != section.id) continue;
    for (const paint::LineRun& run :
         paint::splitBySight(scene_->head().shape, view, section.outline)) {
      QPolygonF points_mm;
      for (const Vec3& p : run.points) points_mm << project(view, p);
      QPainterPath line_mm;
      line_mm.addPolygon(points_mm);
      const bool seen = run.sight == paint::Sight::Seen;
      painter.setPen(pen(screenPalette().accent, selected ? 2 : 1, seen ? Qt::SolidLine : Qt::DashLine));
      seen ? painter.drawPath(toWidget(place, line_mm)) : overHair(line_mm);
    }
  }
  paintHandles(painter, place);
  if (sketch) paintSketch(painter, place, *sketch);
  paintCaught(painter, place);
  if (view_.hoverPoint() && hold_ != Hold::Divider) {
    const Vec3 p = scene_->head().shape.pointAt(*view_.hoverPoint());
    const QPointF at = project(view, p);
    if (paint::viewClip(place.view).contains(at)) {
      const QPointF w = place.toWidget(at);
      const bool seen = view.faces(scene_->head().shape, p);
      painter.setBrush(Qt::NoBrush);
      painter.setPen(pen(Qt::white, 3.2));
      painter.drawEllipse(w, 4.5, 4.5);
      painter.setPen(pen(screenPalette().accent, 1.6, seen ? Qt::SolidLine : Qt::DotLine));
      painter.drawEllipse(w, 4.5, 4.5);
    }
  }
}

void HeadSheet::paintHandles(QPainter& painter, const ViewPlace& place) const {
  for (const Handle& handle : shownHandles(place)) {
    const QPointF at = place.toWidget(handle.at_mm), base = place.toWidget(handle.base_mm);
    painter.setPen(pen(screenPalette().accent, 1.6));
    painter.setBrush(Qt::white);
    switch (handle.kind) {
      case HandleKind::Thickness: painter.drawRect(QRectF(at.x() - 4, at.y() - 4, 8, 8)); break;
      case HandleKind::Point:
      case HandleKind::Corner: painter.drawEllipse(at, 4, 4); break;
      case HandleKind::Spacing: {
        painter.drawLine(base, at);
        painter.setBrush(screenPalette().accent);
        painter.drawRoundedRect(QRectF(at.x() - 7, at.y() - 3.5, 14, 7), 3, 3);
        const auto* section = document_.plan().find<plan::Section>(document_.selection().lead());
        if (section && section->layout)
          paintTag(painter, at + QPointF(12, 0),
                   tr("%1 left out").arg(paint::millimetres(section->layout->leftOut_mm.from)));
        break;
      }
      case HandleKind::Start: {
        painter.drawLine(base, at);
        const QPolygonF diamond{at + QPointF(0, -6), at + QPointF(6, 0), at + QPointF(0, 6),
                                at + QPointF(-6, 0)};
        painter.setBrush(screenPalette().accent);
        painter.drawPolygon(diamond);
        const auto* piece = document_.plan().find<plan::Piece>(document_.selection().lead());
        if (piece) paintTag(painter, at + QPointF(11, 0), paint::millimetres(piece->start_mm));
        break;
      }
    }
  }
}

std::optional<HeadSheet::DrawnSketch> HeadSheet::drawnSketch() const {
  if (!tool_) return std::nullopt;
  const head::HeadShape& shape = scene_->head().shape;
  DrawnSketch drawn{tool_->sketch(hold_ == Hold::Tool ? std::nullopt : snap_), {}, {}, {}};
  const ToolSketch& sketch = drawn.sketch;
  if (sketch.thickness_mm > 0) {
    drawn.strip = paint::makeStrip(shape, sketch.line, sketch.thickness_mm);
  } else if (sketch.line.size() > 1) {
    drawn.line = paint::surfaceLine(shape, sketch.line);
    if (sketch.closed) drawn.closing = paint::surfaceLine(shape, {sketch.line.back(), sketch.line.front()});
  }
  return drawn;
}

// A caught point wears a square.
void HeadSheet::paintCaught(QPainter& painter, const ViewPlace& place) const {
  if (!tool_ || !snap_ || !snap_->isCaught()) return;
  const head::SheetView view = scene_->head().view(place.view);
  const Vec3 p = scene_->head().shape.pointAt(snap_->at);
  if (!view.faces(scene_->head().shape, p)) return;
  const QPointF at = place.toWidget(project(view, p));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(pen(screenPalette().ground, 3.6));
  painter.drawRect(QRectF(at - QPointF(5, 5), QSizeF(10, 10)));
  painter.setPen(pen(screenPalette().accent, 1.8));
  painter.drawRect(QRectF(at - QPointF(5, 5), QSizeF(10, 10)));
}

void HeadSheet::paintSketch(QPainter& painter, const ViewPlace& place, const DrawnSketch& drawn) const {
  const ToolSketch& sketch = drawn.sketch;
  const head::SheetView view = scene_->head().view(place.view);
  const head::HeadShape& shape = scene_->head().shape;
  const QColor accent = screenPalette().accent;
  if (sketch.thickness_mm > 0) {
    for (const paint::StripRun& run : paint::splitBySight(view, drawn.strip)) {
      QPolygonF around, centre;
      for (const paint::StripSample& s : run.strip) around << place.toWidget(project(view, s.a));
      for (auto s = run.strip.rbegin(); s != run.strip.rend(); ++s)
        around << place.toWidget(project(view, s->b));
      for (const paint::StripSample& s : run.strip) centre << place.toWidget(project(view, s.centre));
      if (run.sight == paint::Sight::Seen) {
        QColor tint = accent;
        tint.setAlpha(60);
        painter.setBrush(tint);
        painter.setPen(pen(accent, 1.6));
        painter.drawPolygon(around);
      } else {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(pen(accent, 1.4, Qt::DashLine));
        painter.drawPolyline(centre);
      }
    }
  } else {
    const auto draw = [&](const std::vector<Vec3>& points, double width) {
      painter.setBrush(Qt::NoBrush);
      for (const paint::LineRun& run : paint::splitBySight(shape, view, points)) {
        QPolygonF line;
        for (const Vec3& p : run.points) line << place.toWidget(project(view, p));
        painter.setPen(pen(accent, width, run.sight == paint::Sight::Seen ? Qt::SolidLine : Qt::DashLine));
        painter.drawPolyline(line);
      }
    };
    draw(drawn.line, 1.8);
    draw(drawn.closing, 0.9);
  }
  painter.setBrush(screenPalette().ground);
  painter.setPen(pen(accent, 1.6));
  for (const head::ScalpPoint& point : sketch.corners) {
    const Vec3 p = shape.pointAt(point);
    if (view.faces(shape, p)) painter.drawEllipse(place.toWidget(project(view, p)), 3, 3);
  }
  const bool shown = place.large || !view_.largeView();
  if (sketch.trouble) {
    const Vec3 p = shape.pointAt(*sketch.trouble);
    if (view.faces(shape, p)) {
      const QPointF at = place.toWidget(project(view, p));
      painter.setBrush(Qt::NoBrush);
      painter.setPen(pen(screenPalette().trouble, 2.4));
      painter.drawEllipse(at, 9, 9);
      painter.drawLine(at + QPointF(-5, -5), at + QPointF(5, 5));
      painter.drawLine(at + QPointF(-5, 5), at + QPointF(5, -5));
    }
  }
  if (!sketch.tag.isEmpty() && view_.hoverPoint() && shown) {
    const Vec3 p = shape.pointAt(snap_ ? snap_->at : *view_.hoverPoint());
    if (view.faces(shape, p))
      paintTag(painter, place.toWidget(project(view, p)) + QPointF(14, -14), sketch.tag);
  }
}

void HeadSheet::paintFoot(QPainter& painter) const {
  const QFontMetricsF metrics(font());
  const double line = metrics.height();
  const QRectF first(12, height() - kFootLines * line - 6, width() - 24, line);
  const QRectF second = first.translated(0, 1.2 * line);
  painter.setFont(font());
  painter.setPen(screenPalette().ink);
  painter.drawText(first, Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(hint(), Qt::ElideRight, first.width()));
  painter.setPen(screenPalette().softInk);
  painter.drawText(second, Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(placeWords(), Qt::ElideRight, second.width()));
}

}  // namespace combdraft::sheet
