#include "app/chair/hold_button.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "app/controls/theme.h"

namespace combdraft::chair {
namespace {

constexpr int kFrame_ms = 30, kSide_px = 18, kRing_px = 18, kLeast_px = 48;

bool isPressKey(const QKeyEvent* event) {
  return event->key() == Qt::Key_Space || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
}

}  // namespace

HoldButton::HoldButton(const QString& text, QWidget* parent) : QAbstractButton(parent) {
  setText(text);
  setAccessibleName(text);
  setFocusPolicy(Qt::StrongFocus);
  timer_.setSingleShot(true);
  timer_.setInterval(kHold_ms);
  paint_.setInterval(kFrame_ms);
  connect(&timer_, &QTimer::timeout, this, [this] {
    paint_.stop();
    setDown(false);
    update();
    Q_EMIT held();
  });
  connect(&paint_, &QTimer::timeout, this, [this] { update(); });
}

double HoldButton::held_frac() const {
  return timer_.isActive() ? std::min(1.0, static_cast<double>(since_.elapsed()) / kHold_ms) : 0.0;
}

void HoldButton::beginHold() {
  if (timer_.isActive()) return;
  setDown(true);
  since_.start();
  timer_.start();
  paint_.start();
  update();
}

void HoldButton::endHold() {
  const bool early = timer_.isActive();
  timer_.stop();
  paint_.stop();
  setDown(false);
  update();
  if (early) Q_EMIT letGo();
}

QSize HoldButton::sizeHint() const {
  const QFontMetrics metrics(font());
  return {metrics.horizontalAdvance(text()) + 3 * kSide_px + kRing_px, std::max(kLeast_px, metrics.height() + 2 * kSide_px / 2)};
}

void HoldButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& t = controls::currentTheme();
  const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
  painter.setPen(QPen(hasFocus() ? t.accent : t.edge, hasFocus() ? 2 : 1));
  painter.setBrush(isDown() ? t.line : t.raised);
  painter.drawRoundedRect(box, 6, 6);
  const bool mirrored = layoutDirection() == Qt::RightToLeft;
  const double x = mirrored ? box.right() - kSide_px - kRing_px : box.left() + kSide_px;
  const QRectF ring(x, box.center().y() - kRing_px / 2.0, kRing_px, kRing_px);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(t.edge, 2));
  painter.drawEllipse(ring);
  painter.setPen(QPen(t.accent, 4, Qt::SolidLine, Qt::FlatCap));
  if (held_frac() > 0) painter.drawArc(ring, 90 * 16, static_cast<int>(-held_frac() * 360 * 16));
  painter.setPen(t.ink);
  const QRectF words = mirrored ? box.adjusted(kSide_px, 0, -2 * kSide_px - kRing_px + 8, 0)
                                : box.adjusted(2 * kSide_px + kRing_px - 8, 0, -kSide_px + 8, 0);
  painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeading | Qt::TextSingleLine, text());
}

void HoldButton::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) beginHold();
}

void HoldButton::mouseReleaseEvent(QMouseEvent*) { endHold(); }

void HoldButton::keyPressEvent(QKeyEvent* event) {
  if (!isPressKey(event)) return QAbstractButton::keyPressEvent(event);
  if (!event->isAutoRepeat()) beginHold();
}

void HoldButton::keyReleaseEvent(QKeyEvent* event) {
  if (!isPressKey(event)) return QAbstractButton::keyReleaseEvent(event);
  if (!event->isAutoRepeat()) endHold();
}

void HoldButton::focusOutEvent(QFocusEvent* event) {
  if (timer_.isActive()) endHold();
  QAbstractButton::focusOutEvent(event);
}

}  // namespace combdraft::chair
