#include "app/chair/blank_sheet.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QTabletEvent>
#include <QTouchEvent>
#include <algorithm>

#include "app/controls/theme.h"
#include "app/paint/painter_backend.h"

namespace combdraft::chair {
namespace {

constexpr double kPen_px = 3.5, kLeast_px = 1.5, kDot_mm = 0.01;
constexpr int kMouse = -1, kPen = -2;
constexpr std::size_t kMostStrokes = 4000;

}  // namespace

BlankSheet::BlankSheet(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_AcceptTouchEvents);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::CrossCursor);
  setMinimumSize(280, 260);
  setAccessibleName(tr("Blank head to draw on"));
  setAccessibleDescription(tr("Backspace takes the last line back, Delete wipes the sheet"));
}

void BlankSheet::show(std::shared_ptr<const paint::Scene> scene, head::ViewName view) {
  scene_ = std::move(scene);
  view_ = view;
  art_ = {};
  underWay_.clear();
  update();
}

const std::vector<QPolygonF>& BlankSheet::strokes() const {
  static const std::vector<QPolygonF> kNone;
  const auto found = strokes_.find(view_);
  return found == strokes_.end() ? kNone : found->second;
}

void BlankSheet::takeBack() {
  auto& mine = strokes_[view_];
  if (!mine.empty()) mine.pop_back();
  update();
  Q_EMIT drawn();
}

void BlankSheet::wipe() {
  strokes_[view_].clear();
  underWay_.clear();
  update();
  Q_EMIT drawn();
}

void BlankSheet::forget() {
  strokes_.clear();
  underWay_.clear();
  update();
  Q_EMIT drawn();
}

QTransform BlankSheet::toScreen() const {
  const QRectF frame = paint::frameOf(view_);
  const double scale = std::min(width() / frame.width(), height() / frame.height());
  return QTransform().translate(width() / 2.0, height() / 2.0).scale(scale, scale).translate(-frame.center().x(), -frame.center().y());
}

void BlankSheet::begin(int finger, const QPointF& at) {
  underWay_[finger] = QPolygonF{toScreen().inverted().map(at)};
  update();
}

void BlankSheet::go(int finger, const QPointF& at) {
  const auto found = underWay_.find(finger);
  if (found == underWay_.end()) return;
  const QTransform way = toScreen();
  if ((way.map(found->second.back()) - at).manhattanLength() < kLeast_px) return;
  found->second << way.inverted().map(at);
  update();
}

void BlankSheet::finish(int finger) {
  const auto found = underWay_.find(finger);
  if (found == underWay_.end()) return;
  auto& mine = strokes_[view_];
  if (found->second.size() == 1) found->second << found->second.front() + QPointF(kDot_mm, 0);  // a tap is a dot
  if (mine.size() < kMostStrokes) mine.push_back(found->second);
  underWay_.erase(found);
  update();
  Q_EMIT drawn();
}

bool BlankSheet::event(QEvent* event) {
  switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
      for (const QEventPoint& point : static_cast<QTouchEvent*>(event)->points()) {
        if (point.state() == QEventPoint::Pressed) begin(point.id(), point.position());
        else if (point.state() == QEventPoint::Released) finish(point.id());
        else go(point.id(), point.position());
      }
      event->accept();
      return true;
    case QEvent::TouchCancel:
      underWay_.clear();
      update();
      return true;
    default: return QWidget::event(event);
  }
}

void BlankSheet::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) begin(kMouse, event->position());
}
void BlankSheet::mouseMoveEvent(QMouseEvent* event) { go(kMouse, event->position()); }
void BlankSheet::mouseReleaseEvent(QMouseEvent*) { finish(kMouse); }

void BlankSheet::tabletEvent(QTabletEvent* event) {
  if (event->type() == QEvent::TabletPress) begin(kPen, event->position());
  if (event->type() == QEvent::TabletMove) go(kPen, event->position());
  if (event->type() == QEvent::TabletRelease) finish(kPen);
  event->accept();
}

void BlankSheet::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Backspace) return takeBack();
  if (event->key() == Qt::Key_Delete) return wipe();
  QWidget::keyPressEvent(event);
}

void BlankSheet::resizeEvent(QResizeEvent*) { art_ = {}; }

void BlankSheet::paintEvent(QPaintEvent*) {
  const paint::Palette palette;
  const double ratio = devicePixelRatioF();
  if (art_.isNull() && scene_) {
    art_ = QImage(size() * ratio, QImage::Format_RGB32);
    art_.setDevicePixelRatio(ratio);
    art_.fill(controls::theme(controls::ThemeName::Light).card);
    QPainter painter(&art_);
    painter.setRenderHint(QPainter::Antialiasing);
    const QTransform way = toScreen();
    painter.setTransform(way, true);
    paint::paintItems(painter, paint::headArt(scene_->head(), view_, plan::SkinTone::Paper, palette,
                                              paint::Ink(way.m11() * 25.4 / 96), paint::Guides::Shown));
  }
  QPainter painter(this);
  art_.isNull() ? painter.fillRect(rect(), palette.ground) : painter.drawImage(0, 0, art_);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette.accent, kPen_px, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const QTransform way = toScreen();
  for (const QPolygonF& stroke : strokes()) painter.drawPolyline(way.map(stroke));
  for (const auto& [finger, stroke] : underWay_) painter.drawPolyline(way.map(stroke));
  if (hasFocus()) {
    painter.setPen(QPen(palette.accent, 2));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

}  // namespace combdraft::chair
