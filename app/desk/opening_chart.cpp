#include "app/desk/opening_chart.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "app/desk/worn_bar.h"

namespace combdraft::desk {
namespace {

constexpr double kFarthest_mm = 40;
constexpr look::OpeningWay kOthers[] = {look::OpeningWay::CrownOpened, look::OpeningWay::Blown, look::OpeningWay::TiedBack};

QString shortName(look::OpeningWay way) {
  switch (way) {
    case look::OpeningWay::Part: return OpeningChart::tr("part");
    case look::OpeningWay::CrownOpened: return OpeningChart::tr("crown");
    case look::OpeningWay::Blown: return OpeningChart::tr("wind");
    case look::OpeningWay::TiedBack: return OpeningChart::tr("tied");
  }
  return {};
}

QString openingName(const look::Opening& opening) {
  switch (opening.way) {
    case look::OpeningWay::Part:
      if (opening.shift_mm == 0) return OpeningChart::tr("with the part at its usual place");
      return opening.shift_mm > 0 ? OpeningChart::tr("with the part %1 mm to client's right").arg(controls::shownNumber(opening.shift_mm, 0))
                                  : OpeningChart::tr("with the part %1 mm to client's left").arg(controls::shownNumber(-opening.shift_mm, 0));
    case look::OpeningWay::CrownOpened: return OpeningChart::tr("with the crown opened");
    case look::OpeningWay::Blown: return OpeningChart::tr("in the wind");
    case look::OpeningWay::TiedBack: return OpeningChart::tr("tied back");
  }
  return {};
}

}  // namespace

OpeningChart::OpeningChart(document::ViewState& view, QWidget* parent) : QWidget(parent), view_(view) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Blocks where the hair opens"));
  setToolTip(tr("The largest light and the largest dark patch where the hair opens, in cm² of hair. Drag to wear the part there; "
                "left and right keys move it"));
  setCursor(Qt::SizeHorCursor);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(&view_, &document::ViewState::changed, this, [this](document::ViewState::Aspects aspects) {
    if (aspects.testFlag(document::ViewState::Aspect::Look)) update();
  });
}

QSize OpeningChart::sizeHint() const { return {fontMetrics().averageCharWidth() * 40, fontMetrics().height() * 7}; }
QSize OpeningChart::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 26, fontMetrics().height() * 6}; }

void OpeningChart::set(std::optional<look::Openings> openings, double lightLine_cm2, double darkLine_cm2) {
  openings_ = std::move(openings);
  lightLine_ = lightLine_cm2, darkLine_ = darkLine_cm2;
  highest_ = 1.6 * std::max(lightLine_, darkLine_);
  for (const auto* some : {&openings_, &before_})
    if (*some)
      for (const look::Opening& o : (*some)->all) highest_ = std::max({highest_, 1.1 * o.light.area_cm2, 1.1 * o.dark.area_cm2});
  setAccessibleDescription(words());
  update();
}

void OpeningChart::setBefore(std::optional<look::Openings> before) {
  before_ = std::move(before);
  set(openings_, lightLine_, darkLine_);
}

QString OpeningChart::words() const {
  if (!openings_) return tr("Being worked out");
  QStringList parts;
  if (const look::Opening* worst = openings_->worstLight())
    parts << tr("Largest light patch %1 cm², %2").arg(controls::shownNumber(worst->light.area_cm2, 1), openingName(*worst));
  if (const look::Opening* worst = openings_->worstDark())
    parts << tr("Largest dark patch %1 cm², %2").arg(controls::shownNumber(worst->dark.area_cm2, 1), openingName(*worst));
  if (parts.isEmpty()) parts << tr("No patch stands out where the hair opens");
  if (!openings_->offHair_mm.empty())
    parts << tr("Left out: part positions where there is no hair (%1 of 17)").arg(openings_->offHair_mm.size());
  return parts.join(QStringLiteral(". "));
}

QRectF OpeningChart::plot() const {
  const double line = fontMetrics().height();
  return QRectF(rect()).adjusted(fontMetrics().horizontalAdvance(QStringLiteral("000")) + 6, line * 1.2,
                                 -fontMetrics().averageCharWidth() * 13, -line * 1.3);
}

QRectF OpeningChart::others() const {
  const QRectF p = plot();
  return QRectF(p.right() + fontMetrics().averageCharWidth() * 1.2, p.top(), rect().right() - p.right() - fontMetrics().averageCharWidth() * 1.5, p.height());
}

double OpeningChart::xOf(double shift_mm) const {
  // As in the picture from above: the client's right is drawn right.
  const QRectF p = plot();
  return p.left() + (shift_mm + kFarthest_mm) / (2 * kFarthest_mm) * p.width();
}
double OpeningChart::yOf(double area_cm2) const {
  const QRectF p = plot();
  return p.bottom() - area_cm2 / highest_ * p.height();
}

QPolygonF OpeningChart::curve(const look::Openings& openings, look::Patch look::Opening::*patch) const {
  QPolygonF line;
  for (const look::Opening& o : openings.all)
    if (o.way == look::OpeningWay::Part) line << QPointF(xOf(o.shift_mm), yOf((o.*patch).area_cm2));
  return line;
}

void OpeningChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& t = controls::currentTheme();
  const QRectF p = plot(), o = others();
  const QFontMetricsF metrics(font());
  painter.setPen(t.softInk);
  painter.drawText(QRectF(p.left(), 0, p.width(), metrics.height()), Qt::AlignLeft, tr("cm² light ▬, dark ▨"));
  painter.drawText(QRectF(p.left(), p.bottom() + 3, p.width(), metrics.height()), Qt::AlignLeft, tr("left"));
  painter.drawText(QRectF(p.left(), p.bottom() + 3, p.width(), metrics.height()), Qt::AlignHCenter, tr("part"));
  painter.drawText(QRectF(p.left(), p.bottom() + 3, p.width(), metrics.height()), Qt::AlignRight, tr("right"));
  painter.setPen(QPen(t.edge, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawLine(p.bottomLeft(), p.bottomRight());
  painter.drawLine(QPointF(xOf(0), p.top()), QPointF(xOf(0), p.bottom()));
  // Where a block begins: light solid, dark dotted, each with its figure.
  const auto line = [&](double area, Qt::PenStyle style) {
    painter.setPen(QPen(t.softInk, 1, style));
    painter.drawLine(QPointF(p.left(), yOf(area)), QPointF(o.right(), yOf(area)));
    painter.drawText(QRectF(0, yOf(area) - metrics.height() / 2, p.left() - 4, metrics.height()), Qt::AlignRight,
                     controls::shownNumber(area, 0));
  };
  line(lightLine_, Qt::DashLine);
  if (std::abs(yOf(darkLine_) - yOf(lightLine_)) > metrics.height() * 0.8) line(darkLine_, Qt::DotLine);
  painter.setPen(t.softInk);
  painter.drawText(QRectF(0, p.top() - metrics.height() / 2, p.left() - 4, metrics.height()), Qt::AlignRight, controls::shownNumber(highest_, 0));

  if (openings_) {
    const auto filled = [&](QPolygonF top, const QBrush& brush, const QPen& pen) {
      if (top.isEmpty()) return;
      painter.setPen(pen);
      painter.setBrush(Qt::NoBrush);
      painter.drawPolyline(top);
      top << QPointF(top.last().x(), p.bottom()) << QPointF(top.first().x(), p.bottom());
      painter.setPen(Qt::NoPen);
      painter.setBrush(brush);
      painter.drawPolygon(top);
    };
    QColor tint = t.accent;
    tint.setAlpha(70);
    filled(curve(*openings_, &look::Opening::dark), QBrush(t.softInk, Qt::BDiagPattern), QPen(t.softInk, 1.4, Qt::DotLine));
    filled(curve(*openings_, &look::Opening::light), tint, QPen(t.accent, 1.8));
    if (before_) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(t.ink, 1.2, Qt::DashDotLine));
      painter.drawPolyline(curve(*before_, &look::Opening::light));
      painter.drawPolyline(curve(*before_, &look::Opening::dark));
    }
    // The other ways to open: two bars each.
    const double slot = o.width() / 3;
    for (int i = 0; i < 3; ++i) {
      const QRectF place(o.left() + i * slot, p.top(), slot, p.height());
      painter.setPen(t.softInk);
      painter.drawText(QRectF(place.left() - slot, p.bottom() + 3, 3 * slot, metrics.height()),
                       Qt::AlignHCenter, i == 1 ? QString() : shortName(kOthers[i]));
      if (i == 1) painter.drawText(QRectF(place.left() - slot, 0, 3 * slot, metrics.height()), Qt::AlignHCenter, shortName(kOthers[i]));
      for (const look::Opening& opening : openings_->all) {
        if (opening.way != kOthers[i]) continue;
        const double width = slot * 0.3;
        painter.setPen(QPen(t.accent, 1.2));
        painter.setBrush(tint);
        painter.drawRect(QRectF(QPointF(place.center().x() - width, yOf(opening.light.area_cm2)), QPointF(place.center().x(), p.bottom())));
        painter.setPen(QPen(t.softInk, 1.2));
        painter.setBrush(QBrush(t.softInk, Qt::BDiagPattern));
        painter.drawRect(QRectF(QPointF(place.center().x(), yOf(opening.dark.area_cm2)), QPointF(place.center().x() + width, p.bottom())));
      }
    }
  } else {
    painter.setPen(t.softInk);
    painter.drawText(p, Qt::AlignCenter, tr("being worked out …"));
  }

  // Where the part is worn now.
  const double here = xOf(std::clamp(view_.lookSettings().worn.partShift_mm, -kFarthest_mm, kFarthest_mm));
  painter.setPen(QPen(t.ink, 1.6));
  painter.drawLine(QPointF(here, p.top() - 4), QPointF(here, p.bottom()));
  QPainterPath handle;
  handle.addEllipse(QPointF(here, p.bottom()), 5, 5);
  painter.setBrush(t.ground);
  painter.drawPath(handle);
  if (hasFocus()) {
    painter.setPen(QPen(t.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 5, 5);
  }
}

void OpeningChart::partTo(double shift_mm) {
  look::LookSettings settings = view_.lookSettings();
  if (!hair::showsPart(settings.worn.way)) settings.worn.way = hair::WornWay::Down;
  settings.worn.partShift_mm = std::clamp(std::round(shift_mm), -kFarthest_mm, kFarthest_mm);
  view_.setLookSettings(settings);
}

void OpeningChart::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const QRectF o = others();
  if (event->position().x() > plot().right() + 4) {
    const int i = std::clamp(static_cast<int>((event->position().x() - o.left()) / (o.width() / 3)), 0, 2);
    constexpr hair::WornWay kWays[] = {hair::WornWay::CrownOpened, hair::WornWay::Blown, hair::WornWay::TiedBack};
    look::LookSettings settings = view_.lookSettings();
    settings.worn.way = kWays[i];
    view_.setLookSettings(settings);
    return;
  }
  mouseMoveEvent(event);
}

void OpeningChart::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton)) return;
  const QRectF p = plot();
  if (event->position().x() > p.right() + 4) return;
  partTo((event->position().x() - p.left()) / p.width() * 2 * kFarthest_mm - kFarthest_mm);
}

void OpeningChart::keyPressEvent(QKeyEvent* event) {
  const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1;
  const double now = view_.lookSettings().worn.partShift_mm;
  switch (event->key()) {
    case Qt::Key_Left: return partTo(now - step);
    case Qt::Key_Right: return partTo(now + step);
    case Qt::Key_Home: return partTo(0);
    default: QWidget::keyPressEvent(event);
  }
}

}  // namespace combdraft::desk
