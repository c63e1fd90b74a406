// What fingers, mouse, touchpad and keys do on the pair of pictures.
#include <QFocusEvent>
#include <QKeyEvent>
#include <QLineF>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QTouchEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/chair/pair_picture.h"

namespace combdraft::chair {
namespace {

constexpr double kNearDivider_px = 36, kKeyPull_frac = 0.02, kKeyZoom = 1.25, kKeyMove_px = 24, kWheelStep = 480;

}  // namespace

bool PairPicture::event(QEvent* event) {
  switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TouchCancel: return touch(*static_cast<QTouchEvent*>(event));
    case QEvent::NativeGesture: {
      auto& native = *static_cast<QNativeGestureEvent*>(event);
      if (native.gestureType() == Qt::ZoomNativeGesture) return zoomAt(native.position(), 1 + native.value()), true;
      if (native.gestureType() == Qt::PanNativeGesture) return moveBy(native.delta()), true;
      break;
    }
    case QEvent::FontChange:
    case QEvent::StyleChange:
      drawn_ = {};
      changed();
      break;
    default: break;
  }
  return QWidget::event(event);
}

bool PairPicture::touch(QTouchEvent& event) {
  QList<QEventPoint> down;
  for (const QEventPoint& point : event.points())
    if (point.state() != QEventPoint::Released) down << point;
  if (event.type() == QEvent::TouchCancel) {
    setDivider(hand_ == Hand::Divider ? dividerBefore_ : divider_frac_);
    letGoHand();
    pinching_ = false;
    return true;
  }
  if (down.size() >= 2) {
    if (!pinching_) {  // the first finger did not mean the divider
      if (hand_ == Hand::Divider) setDivider(dividerBefore_);
      letGoHand();
      pinching_ = true;
      pinchCentre_ = (down[0].position() + down[1].position()) / 2;
      pinchDistance_ = std::max(1.0, QLineF(down[0].position(), down[1].position()).length());
    }
    pinch(down[0].position(), down[1].position());
  } else if (down.size() == 1 && !pinching_) {
    if (event.type() == QEvent::TouchBegin) pressHand(down[0].position());
    else moveHand(down[0].position());
  } else if (down.isEmpty()) {
    letGoHand();
    pinching_ = false;
  }
  event.accept();
  return true;
}

void PairPicture::pinch(const QPointF& a, const QPointF& b) {
  const QPointF centre = (a + b) / 2;
  const double distance = std::max(1.0, QLineF(a, b).length());
  moved_ += centre - pinchCentre_;
  zoomAt(centre, distance / pinchDistance_);
  pinchCentre_ = centre;
  pinchDistance_ = distance;
}

void PairPicture::pressHand(const QPointF& at) {
  dividerBefore_ = divider_frac_;
  last_ = at;
  const bool onDivider = std::abs(at.x() - dividerX()) <= kNearDivider_px;
  hand_ = onDivider || zoom_ == 1 ? Hand::Divider : Hand::Move;
  if (hand_ == Hand::Divider && !onDivider) setDivider(at.x() / width());
}

void PairPicture::moveHand(const QPointF& at) {
  if (hand_ == Hand::Divider) setDivider(at.x() / width());
  if (hand_ == Hand::Move) {
    settle_.start();
    moveBy(at - last_);
  }
  last_ = at;
}

void PairPicture::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) pressHand(event->position());
}
void PairPicture::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) moveHand(event->position());
}
void PairPicture::mouseReleaseEvent(QMouseEvent*) { letGoHand(); }
void PairPicture::mouseDoubleClickEvent(QMouseEvent*) { resetZoom(); }

void PairPicture::wheelEvent(QWheelEvent* event) {
  if (event->device() && event->device()->type() == QInputDevice::DeviceType::TouchPad && !(event->modifiers() & Qt::ControlModifier))
    moveBy(event->pixelDelta());
  else
    zoomAt(event->position(), std::exp2(event->angleDelta().y() / kWheelStep));
  event->accept();
}

void PairPicture::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  showsFocus_ = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
  update();
}

void PairPicture::keyPressEvent(QKeyEvent* event) {
  showsFocus_ = true;
  update();
  const bool moves = event->modifiers() & Qt::ShiftModifier;
  QPointF way;
  switch (event->key()) {
    case Qt::Key_Left: way = {-1, 0}; break;
    case Qt::Key_Right: way = {1, 0}; break;
    case Qt::Key_Up: way = {0, -1}; break;
    case Qt::Key_Down: way = {0, 1}; break;
    case Qt::Key_Plus:
    case Qt::Key_Equal: return zoomAt(QRectF(rect()).center(), kKeyZoom);
    case Qt::Key_Minus: return zoomAt(QRectF(rect()).center(), 1 / kKeyZoom);
    case Qt::Key_0: return resetZoom();
    default: return QWidget::keyPressEvent(event);
  }
  if (moves) return moveBy(-way * kKeyMove_px);
  if (way.x() == 0) return QWidget::keyPressEvent(event);
  setDivider(divider_frac_ + way.x() * kKeyPull_frac);
}

}  // namespace combdraft::chair
