#include "app/cards/strand_drawing.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "app/cards/strand_colours.h"
#include "app/controls/theme.h"
#include "app/controls/units.h"
#include "engine/placement/light_along.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

using controls::LengthUnit;
using controls::Units;

constexpr double kScaleBend = 0.6;   // 1 = even scale; smaller = wider at the root
constexpr int kCurvePoints = 96;
constexpr double kGrab_px = 15;      // half of a 30 px target
constexpr double kPushedAtFirst_frac = 0.5;  // when depth is dragged out of nothing

QString length(double value_mm) { return controls::lengthText(value_mm, Units::current().length()); }

double clampTo(const char* field, double value) {
  const plan::FieldInfo& info = plan::fieldInfo(field);
  return std::clamp(value, info.low, info.high);
}

}  // namespace

double handlePlace_mm(const plan::Piece& piece, StrandHandle handle, double length_mm) {
  switch (handle) {
    case StrandHandle::Start: return piece.start_mm;
    case StrandHandle::Blend: return piece.start_mm + piece.blend_mm / 2;
    case StrandHandle::BackcombDepth: return piece.backcomb.depth_mm;
    case StrandHandle::Handover: return piece.handover_mm.value_or(length_mm);
    case StrandHandle::Stop: return piece.stop_mm.value_or(length_mm);
  }
  return 0;
}

plan::Piece withHandleAt(plan::Piece piece, StrandHandle handle, double place_mm, double length_mm) {
  const double place = std::clamp(place_mm, 0.0, length_mm);
  const bool atEnds = place >= length_mm - 0.5;
  switch (handle) {
    case StrandHandle::Start:
      piece.start_mm = clampTo("piece.start_mm", place);
      break;
    case StrandHandle::Blend:
      piece.blend_mm = clampTo("piece.blend_mm", 2 * (place - piece.start_mm));
      break;
    case StrandHandle::BackcombDepth:
      piece.backcomb.depth_mm = clampTo("backcomb.depth_mm", place);
      if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac == 0)
        piece.backcomb.pushed_frac = kPushedAtFirst_frac;
      break;
    case StrandHandle::Handover:
      piece.handover_mm = atEnds ? std::nullopt : std::optional(place);
      break;
    case StrandHandle::Stop:
      piece.stop_mm = atEnds ? std::nullopt : std::optional(std::max(place, piece.start_mm));
      break;
  }
  return piece;
}

QString handleText(const plan::Piece& piece, StrandHandle handle) {
  switch (handle) {
    case StrandHandle::Start:
      return piece.start_mm == 0 ? StrandDrawing::tr("starts from the scalp")
                                 : StrandDrawing::tr("starts %1 off the scalp").arg(length(piece.start_mm));
    case StrandHandle::Blend:
      return StrandDrawing::tr("blends over %1").arg(length(piece.blend_mm));
    case StrandHandle::BackcombDepth:
      return piece.backcomb.depth_mm == 0
                 ? StrandDrawing::tr("no backcomb")
                 : StrandDrawing::tr("backcomb depth %1").arg(length(piece.backcomb.depth_mm));
    case StrandHandle::Handover:
      return piece.handover_mm ? StrandDrawing::tr("end formula from %1").arg(length(*piece.handover_mm))
                               : StrandDrawing::tr("one formula throughout");
    case StrandHandle::Stop:
      return piece.stop_mm ? StrandDrawing::tr("stops at %1").arg(length(*piece.stop_mm))
                           : StrandDrawing::tr("through the ends");
  }
  return {};
}

StrandDrawing::StrandDrawing(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setSizePolicy(policy);
  connect(&Units::current(), &Units::changed, this, [this] {
    describe();
    update();
  });
  describe();
}

QSize StrandDrawing::sizeHint() const {
  const int line = fontMetrics().height();
  return {line * 20, line * 14};
}

QSize StrandDrawing::minimumSizeHint() const {
  const int line = fontMetrics().height();
  return {line * 15, line * 14};
}

void StrandDrawing::setStrand(const std::optional<Strand>& strand) {
  if (strand == strand_) return;
  strand_ = strand;
  xs_mm_.clear();
  if (strand_) {
    for (int i = 0; i <= kCurvePoints; ++i)
      xs_mm_.push_back(strand_->length_mm * std::pow(double(i) / kCurvePoints, 1 / kScaleBend));
    light_ = placement::lightCurve(strand_->piece, xs_mm_, Assumptions(strand_->assumptions));
    colours_ = strandColours(strand_->piece, strand_->hair, strand_->zone, strand_->length_mm, xs_mm_, light_);
  }
  describe();
  update();
}

StrandDrawing::Frame StrandDrawing::frame() const {
  const double line = fontMetrics().height();
  Frame f{};
  f.left = line * 1.9;
  f.right = width() - line * 0.9;
  f.bandTop = line * 2.6;
  f.bandBottom = f.bandTop + line * 2.4;
  f.chartTop = f.bandBottom + line * 3.1;
  f.chartBottom = height() - line * 1.9;
  return f;
}

double StrandDrawing::xOf(double mm) const {
  const Frame f = frame();
  if (!strand_) return f.left;
  const double t = std::pow(std::clamp(mm / strand_->length_mm, 0.0, 1.0), kScaleBend);
  return f.left + t * (f.right - f.left);
}

double StrandDrawing::mmOf(double x) const {
  const Frame f = frame();
  if (!strand_) return 0;
  const double t = std::clamp((x - f.left) / (f.right - f.left), 0.0, 1.0);
  return strand_->length_mm * std::pow(t, 1 / kScaleBend);
}

QPointF StrandDrawing::handlePosition(StrandHandle handle) const {
  const Frame f = frame();
  const double line = fontMetrics().height();
  if (!strand_) return {};
  const double x = xOf(handlePlace_mm(strand_->piece, handle, strand_->length_mm));
  switch (handle) {
    case StrandHandle::BackcombDepth: return {x, f.bandTop - line * 0.55};
    case StrandHandle::Start: return {x, f.bandBottom + line * 0.55};
    case StrandHandle::Blend: return {x, f.bandBottom + line * 1.5};
    case StrandHandle::Handover: return {x, f.bandTop + (f.bandBottom - f.bandTop) * 0.3};
    case StrandHandle::Stop: return {x, f.bandTop + (f.bandBottom - f.bandTop) * 0.8};
  }
  return {};
}

bool StrandDrawing::isUsed(StrandHandle handle) const {
  if (!strand_) return false;
  switch (handle) {
    case StrandHandle::BackcombDepth: return strand_->piece.backcomb.depth_mm > 0;
    case StrandHandle::Handover: return strand_->piece.handover_mm.has_value();
    case StrandHandle::Stop: return strand_->piece.stop_mm.has_value();
    case StrandHandle::Start:
    case StrandHandle::Blend: return true;
  }
  return true;
}

std::optional<StrandHandle> StrandDrawing::handleAt(const QPointF& position) const {
  std::optional<StrandHandle> best;
  double bestDistance = kGrab_px;
  for (const StrandHandle handle : kStrandHandles) {
    const QPointF d = handlePosition(handle) - position;
    const double distance = std::hypot(d.x(), d.y());
    if (distance < bestDistance) {
      best = handle;
      bestDistance = distance;
    }
  }
  return best;
}

void StrandDrawing::activate(StrandHandle handle) {
  active_ = handle;
  describe();
  update();
}

void StrandDrawing::describe() {
  setAccessibleName(tr("Strand from root to ends"));
  if (!strand_) {
    setAccessibleDescription(tr("no piece selected"));
    return;
  }
  QStringList parts;
  parts << tr("handle: %1").arg(handleText(strand_->piece, active_));
  for (const StrandHandle handle : kStrandHandles)
    if (handle != active_) parts << handleText(strand_->piece, handle);
  parts << tr("up and down choose a handle, left and right move it");
  setAccessibleDescription(parts.join(QStringLiteral("; ")));
}

void StrandDrawing::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !strand_) return;
  if (const std::optional<StrandHandle> handle = handleAt(event->position())) {
    activate(*handle);
    dragging_ = true;
    grab_mm_ = mmOf(event->position().x()) -
               handlePlace_mm(strand_->piece, *handle, strand_->length_mm);
  }
}

void StrandDrawing::mouseMoveEvent(QMouseEvent* event) {
  if (!strand_) return;
  if (!dragging_) {
    setCursor(handleAt(event->position()) ? Qt::SizeHorCursor : Qt::ArrowCursor);
    return;
  }
  // Whole millimetres under the hand; Alt gives tenths.
  const double grain = event->modifiers() & Qt::AltModifier ? 0.1 : 1.0;
  const double place = std::round((mmOf(event->position().x()) - grab_mm_) / grain) * grain;
  Q_EMIT moving(active_, std::clamp(place, 0.0, strand_->length_mm));
}

void StrandDrawing::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !dragging_) return;
  dragging_ = false;
  Q_EMIT released(active_);
}

void StrandDrawing::keyPressEvent(QKeyEvent* event) {
  if (!strand_) return QWidget::keyPressEvent(event);
  if (event->key() == Qt::Key_Escape && dragging_) {
    dragging_ = false;
    Q_EMIT dropped();
    return;
  }
  const auto at = std::find(kStrandHandles.begin(), kStrandHandles.end(), active_);
  if (event->key() == Qt::Key_Up && at != kStrandHandles.begin()) return activate(*(at - 1));
  if (event->key() == Qt::Key_Down && at + 1 != kStrandHandles.end()) return activate(*(at + 1));
  if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) {
    const double step = event->modifiers() & Qt::ShiftModifier ? 10
                        : event->modifiers() & Qt::AltModifier ? 0.1
                                                               : 1;
    const double from = handlePlace_mm(strand_->piece, active_, strand_->length_mm);
    const double to = from + (event->key() == Qt::Key_Right ? step : -step);
    Q_EMIT stepped(active_, std::clamp(std::round(to * 10) / 10, 0.0, strand_->length_mm));
    return;
  }
  QWidget::keyPressEvent(event);
}

bool StrandDrawing::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && strand_) {
    const auto* help = static_cast<QHelpEvent*>(event);
    if (const auto handle = handleAt(help->pos()))
      QToolTip::showText(help->globalPos(), handleText(strand_->piece, *handle), this);
    else
      QToolTip::hideText();
    return true;
  }
  return QWidget::event(event);
}

void StrandDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& t = controls::currentTheme();
  if (!strand_) {
    painter.setPen(t.softInk);
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, tr("Select a piece to see its strand."));
    return;
  }
  const Frame f = frame();
  paintStrand(painter, f);
  paintCurve(painter, f);
  paintHandles(painter, f);
  if (hasFocus()) {
    painter.setPen(QPen(t.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 5, 5);
  }
}

void StrandDrawing::paintStrand(QPainter& painter, const Frame& f) const {
  const controls::Theme& t = controls::currentTheme();
  const double middle = (f.bandTop + f.bandBottom) / 2, half = (f.bandBottom - f.bandTop) / 2;
  // Gathered at the root, fuller in the middle, thinning at the ends.
  const auto halfAt = [&](double s) { return half * (0.55 + 0.45 * std::sin(3.14159 * std::min(1.0, s * 0.9 + 0.15))) * (s > 0.85 ? 1 - (s - 0.85) * 2.2 : 1); };
  QPainterPath band;
  constexpr int kSteps = 40;
  for (int i = 0; i <= kSteps; ++i) {
    const double s = double(i) / kSteps;
    const QPointF p(f.left + s * (f.right - f.left), middle - halfAt(s));
    i == 0 ? band.moveTo(p) : band.lineTo(p);
  }
  for (int i = kSteps; i >= 0; --i) {
    const double s = double(i) / kSteps;
    band.lineTo(f.left + s * (f.right - f.left), middle + halfAt(s));
  }
  band.closeSubpath();

  QLinearGradient gradient(f.left, 0, f.right, 0);
  for (std::size_t i = 0; i < colours_.size(); i += 2)
    gradient.setColorAt(double(i) / double(colours_.size() - 1), colours_[i]);
  painter.fillPath(band, gradient);
  painter.save();
  painter.setClipPath(band);
  for (int k = -3; k <= 3; ++k) {  // a few hairs
    QPainterPath hair;
    for (int i = 0; i <= kSteps; ++i) {
      const double s = double(i) / kSteps;
      const QPointF p(f.left + s * (f.right - f.left), middle + halfAt(s) * k / 3.6);
      i == 0 ? hair.moveTo(p) : hair.lineTo(p);
    }
    painter.strokePath(hair, QPen(QColor(20, 16, 12, 46), 1));
    painter.strokePath(hair.translated(0, 2), QPen(QColor(255, 250, 240, 30), 1));
  }
  painter.restore();
  painter.strokePath(band, QPen(t.edge, 1));

  // The scalp at the root.
  painter.setPen(QPen(t.ink, 1.6));
  QPainterPath scalp;
  scalp.moveTo(f.left - 3, f.bandTop - half * 0.5);
  scalp.quadTo(f.left + 1, middle, f.left - 3, f.bandBottom + half * 0.5);
  painter.drawPath(scalp);

  // Backcomb: a scalloped edge over the pushed stretch.
  const plan::Piece& piece = strand_->piece;
  if (piece.backcomb.depth_mm > 0) {
    const double end = xOf(piece.backcomb.depth_mm);
    const double y = f.bandTop - fontMetrics().height() * 0.55;
    const int bumps = std::max(2, static_cast<int>((end - f.left) / 9));
    QPainterPath scallops(QPointF(f.left, y));
    for (int i = 0; i < bumps; ++i) {
      const double a = f.left + (end - f.left) * i / bumps, b = f.left + (end - f.left) * (i + 1) / bumps;
      scallops.quadTo((a + b) / 2, y - 8, b, y);
    }
    painter.setBrush(Qt::NoBrush);
    painter.strokePath(scallops, QPen(t.ink, 1.3));
  }
}

void StrandDrawing::paintCurve(QPainter& painter, const Frame& f) const {
  const controls::Theme& t = controls::currentTheme();
  QFont small = font();
  small.setPointSizeF(font().pointSizeF() * 0.85);
  painter.setFont(small);
  const double lineHeight = QFontMetricsF(small).height();
  const double h = f.chartBottom - f.chartTop;

  painter.setPen(QPen(t.line, 1));
  for (const double share : {0.0, 0.5, 1.0})
    painter.drawLine(QPointF(f.left, f.chartBottom - share * h), QPointF(f.right, f.chartBottom - share * h));
  painter.setPen(t.softInk);
  for (const int percent : {0, 50, 100})
    painter.drawText(QRectF(0, f.chartBottom - percent / 100.0 * h - lineHeight / 2, f.left - 4, lineHeight),
                     Qt::AlignRight | Qt::AlignVCenter, QString::number(percent));
  painter.drawText(QRectF(f.left, f.chartTop - lineHeight * 1.35, f.right - f.left, lineHeight),
                   Qt::AlignLeft | Qt::AlignVCenter, tr("share of light hair, %"));

  QPainterPath curve(QPointF(f.left, f.chartBottom));
  for (std::size_t i = 0; i < xs_mm_.size(); ++i)
    curve.lineTo(xOf(xs_mm_[i]), f.chartBottom - std::clamp(light_[i], 0.0, 1.0) * h);
  QPainterPath area = curve;
  area.lineTo(f.right, f.chartBottom);
  area.closeSubpath();
  QColor fill = t.accent;
  fill.setAlpha(44);
  painter.fillPath(area, fill);
  painter.strokePath(curve, QPen(t.accent, 1.8));

  painter.setPen(t.softInk);
  double lastRight = -1;
  const double length_mm = strand_->length_mm;
  const LengthUnit unit = Units::current().length();
  // Round marks of the unit in force.
  const std::vector<double> marks =
      unit == LengthUnit::Inches
          ? std::vector{0.0, 6.35, 12.7, 25.4, 50.8, 101.6, 152.4, 254.0, 406.4, 609.6, 914.4}
          : std::vector{0.0, 10.0, 20.0, 40.0, 80.0, 150.0, 250.0, 400.0, 600.0, 900.0};
  const QString ends = controls::lengthText(length_mm, unit, 0);
  const double endsWidth = QFontMetricsF(small).horizontalAdvance(ends), endsLeft = std::min(f.right - endsWidth / 2, width() - endsWidth - 1);
  for (const double mm : marks) {
    if (mm >= length_mm) break;
    const QString text = controls::lengthNumber(mm, unit, 0);
    const double x = xOf(mm), w = QFontMetricsF(small).horizontalAdvance(text);
    painter.drawLine(QPointF(x, f.chartBottom), QPointF(x, f.chartBottom + 4));
    if (x - w / 2 < lastRight + 4 || x + w / 2 > endsLeft - 4) continue;
    painter.drawText(QRectF(x - w, f.chartBottom + 4, 2 * w, lineHeight), Qt::AlignHCenter, text);
    lastRight = x + w / 2;
  }
  painter.drawText(QRectF(endsLeft, f.chartBottom + 4, endsWidth + 2, lineHeight), Qt::AlignLeft, ends);
}

void StrandDrawing::paintHandles(QPainter& painter, const Frame& f) const {
  const controls::Theme& t = controls::currentTheme();
  const plan::Piece& piece = strand_->piece;
  QFont small = font();
  small.setPointSizeF(font().pointSizeF() * 0.88);
  painter.setFont(small);
  const QFontMetricsF metrics(small);

  for (const StrandHandle handle : kStrandHandles) {
    const QPointF p = handlePosition(handle);
    const bool used = isUsed(handle), active = handle == active_;
    painter.setPen(QPen(t.ink, active ? 2 : 1.4));
    painter.setBrush(used ? (active ? t.accent : t.card) : Qt::NoBrush);
    constexpr double r = 5.5;
    switch (handle) {
      case StrandHandle::Start:
        painter.drawLine(QPointF(p.x(), f.bandTop), QPointF(p.x(), f.bandBottom));
        painter.drawPolygon(QPolygonF({{p.x(), p.y() - r - 1}, {p.x() - r, p.y() + r}, {p.x() + r, p.y() + r}}));
        break;
      case StrandHandle::Blend: {
        const double from = xOf(std::max(0.0, piece.start_mm - piece.blend_mm / 2));
        painter.drawLine(QPointF(from, p.y()), p);
        painter.drawLine(QPointF(from, p.y() - 4), QPointF(from, p.y() + 4));
        painter.drawRect(QRectF(p.x() - 3, p.y() - r, 6, 2 * r));
        break;
      }
      case StrandHandle::BackcombDepth: painter.drawEllipse(p, r, r); break;
      case StrandHandle::Handover:
        if (used) {
          painter.setPen(QPen(t.ink, 1.4, Qt::DashLine));
          painter.drawLine(QPointF(p.x(), f.bandTop - 4), QPointF(p.x(), f.bandBottom + 4));
          painter.setPen(QPen(t.ink, active ? 2 : 1.4));
        }
        painter.drawPolygon(QPolygonF({{p.x(), p.y() - r - 1}, {p.x() + r + 1, p.y()}, {p.x(), p.y() + r + 1}, {p.x() - r - 1, p.y()}}));
        break;
      case StrandHandle::Stop:
        if (used) painter.drawLine(QPointF(p.x(), f.bandTop - 4), QPointF(p.x(), f.bandBottom + 4));
        painter.drawRect(QRectF(p.x() - r, p.y() - r, 2 * r, 2 * r));
        break;
    }
  }
  // The words of the handle in hand, at the top: never over the drawing.
  painter.setPen(t.ink);
  QFont strong = small;
  strong.setWeight(QFont::DemiBold);
  painter.setFont(strong);
  painter.drawText(QRectF(f.left, 1, f.right - f.left, metrics.height() + 3),
                   Qt::AlignLeft | Qt::AlignVCenter, handleText(piece, active_));
  painter.setFont(small);
  painter.setPen(t.softInk);
  painter.drawText(QRectF(0, f.bandTop, f.left - 7, f.bandBottom - f.bandTop),
                   Qt::AlignRight | Qt::AlignVCenter | Qt::TextWordWrap, tr("root"));
}

}  // namespace combdraft::cards
