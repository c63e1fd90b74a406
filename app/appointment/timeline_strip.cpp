#include "app/appointment/timeline_strip.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/controls/theme.h"
#include "app/paint/hatch.h"
#include "app/paint/work_words.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

constexpr int kMargin_px = 10;
constexpr double kTick_min = 5;

}  // namespace

TimelineStrip::TimelineStrip(QWidget* parent) : QWidget(parent) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Appointment in minutes"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TimelineStrip::show(const plan::Plan& plan, const work::Timeline& timeline, int pairs) {
  plan_ = plan;
  timeline_ = timeline;
  pairs_ = pairs;
  updateGeometry();
  setMoment(std::min(moment_min_, end_min()));
  describe();
  update();
}

double TimelineStrip::end_min() const { return std::max(1.0, timeline_.looked_min); }
int TimelineStrip::rowHeight() const { return fontMetrics().height() + 10; }

QSize TimelineStrip::sizeHint() const { return {480, rowHeight() * (pairs_ + 1) + fontMetrics().height() + 2 * kMargin_px}; }

double TimelineStrip::xOf(double at_min) const { return kMargin_px + (width() - 2 * kMargin_px) * at_min / end_min(); }

void TimelineStrip::setMoment(double at_min) {
  moment_min_ = std::clamp(at_min, 0.0, end_min());
  describe();
  update();
  Q_EMIT momentChanged();
}

QString TimelineStrip::momentText() const {
  const work::OldestNow oldest = work::oldestAt(timeline_, moment_min_);
  const QString piece = oldest.pieceAge_min ? tr("oldest on the hair: %1, %2 min").arg(pieceName(plan_, oldest.piece), minutes(*oldest.pieceAge_min))
                                            : tr("nothing is on the hair yet");
  const QString product = oldest.productAge_min
                              ? tr("oldest product in use: %1, %2 min").arg(bowlName(plan_, timeline_.bowls[*oldest.bowl]), minutes(*oldest.productAge_min))
                              : tr("no bowl is in use");
  return tr("At %1 min: %2; %3.").arg(minutes(moment_min_), piece, product);
}

void TimelineStrip::describe() { setAccessibleDescription(momentText()); }

void TimelineStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& theme = controls::currentTheme();
  painter.fillRect(rect(), theme.card);
  const int row = rowHeight();
  const auto rowTop = [&](int index) { return kMargin_px + index * row; };
  const auto hatched = [&](const QRectF& box, const plan::ItemId& formula) {
    painter.setPen(QPen(theme.edge, 1));
    painter.setBrush(theme.raised);
    painter.drawRect(box);
    const auto* known = plan_.find<plan::Formula>(formula);
    if (!known || known->letter.empty()) return;
    painter.setPen(QPen(theme.softInk, 0.8));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(paint::hatchLines(QString::fromStdString(known->letter), box, 6));
  };
  for (const work::Step& step : timeline_.steps) {
    if (step.kind == work::StepKind::CombOut) continue;
    const QRectF box(xOf(step.from_min), rowTop(step.pair) + 2, std::max(1.0, xOf(step.to_min) - xOf(step.from_min)), row - 6);
    switch (step.kind) {
      case work::StepKind::Mix:
        painter.setPen(QPen(theme.ink, 1));
        painter.setBrush(theme.ink);
        painter.drawRect(box);
        break;
      case work::StepKind::Place: hatched(box, timeline_.bowls[*step.bowl].formula); break;
      case work::StepKind::Backcomb:
      case work::StepKind::Look:
      case work::StepKind::CombOut:
        painter.setPen(QPen(theme.edge, 1, step.kind == work::StepKind::Look ? Qt::DashLine : Qt::SolidLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
        break;
    }
  }
  painter.setFont(font());
  for (const work::Bowl& bowl : timeline_.bowls) {
    const QRectF box(xOf(bowl.mixFrom_min), rowTop(pairs_) + 2, std::max(2.0, xOf(bowl.lastUse_min) - xOf(bowl.mixFrom_min)), row - 6);
    hatched(box, bowl.formula);
    const auto* formula = plan_.find<plan::Formula>(bowl.formula);
    const QString name = (formula ? QString::fromStdString(formula->letter) : QString()) + QString::number(bowl.number);
    const QRectF plate(box.left() + 2, box.top() + 1, fontMetrics().horizontalAdvance(name) + 6, box.height() - 2);
    if (plate.width() < box.width()) {
      painter.fillRect(plate, theme.card);
      painter.setPen(theme.ink);
      painter.drawText(plate, Qt::AlignCenter, name);
    }
  }
  painter.setPen(theme.softInk);
  const double step_min = end_min() > 90 ? 3 * kTick_min : kTick_min;
  for (double at = 0; at <= end_min(); at += step_min) {
    painter.drawLine(QPointF(xOf(at), rowTop(pairs_ + 1)), QPointF(xOf(at), rowTop(pairs_ + 1) + 4));
    painter.drawText(QRectF(xOf(at) - 20, rowTop(pairs_ + 1) + 4, 40, fontMetrics().height()), Qt::AlignHCenter, QString::number(at));
  }
  painter.setPen(QPen(theme.accent, 2));
  painter.drawLine(QPointF(xOf(moment_min_), kMargin_px - 4), QPointF(xOf(moment_min_), rowTop(pairs_ + 1)));
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

void TimelineStrip::mouseMoveEvent(QMouseEvent* event) {
  setMoment((event->position().x() - kMargin_px) / std::max(1, width() - 2 * kMargin_px) * end_min());
}

void TimelineStrip::keyPressEvent(QKeyEvent* event) {
  const double step = event->modifiers() & Qt::ShiftModifier ? 5 : 1;
  switch (event->key()) {
    case Qt::Key_Left: return setMoment(moment_min_ - step);
    case Qt::Key_Right: return setMoment(moment_min_ + step);
    case Qt::Key_Home: return setMoment(0);
    case Qt::Key_End: return setMoment(end_min());
    default: QWidget::keyPressEvent(event);
  }
}

void TimelineStrip::focusInEvent(QFocusEvent*) { update(); }
void TimelineStrip::focusOutEvent(QFocusEvent*) { update(); }

}  // namespace combdraft::appointment
