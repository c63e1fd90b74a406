// The divider: a tail comb, as hair is divided with. Its tail runs up between the
// pictures, its back and teeth are below, where a hand does not cover the heads.
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/chair/pair_picture.h"
#include "app/controls/theme.h"

namespace combdraft::chair {
namespace {

// Half widths of tip, tail and back; the rest as it is seen.
constexpr double kTip_px = 0.4, kTail_px = 1.4, kBack_px = 4.5, kShoulder_px = 10;
constexpr double kTooth_px = 20, kTeethApart_px = 5, kComb_px = 138, kShortestComb_px = 70;
constexpr double kHalo_px = 5, kUnder_px = 8;

// In ink of the accent on a seam of paper, so that it is seen on any hair and any ground.
void strokeOnPaper(QPainter& painter, const QPainterPath& path) {
  const controls::Theme& light = controls::theme(controls::ThemeName::Light);
  for (const auto& [colour, width] : {std::pair(light.card, kHalo_px), std::pair(light.accent, 2.0)})
    painter.strokePath(path, QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

// Tail and back in one piece, from its tip down.
QPainterPath combBack(double x, double top, double shoulder, double foot) {
  QPainterPath path(QPointF(x - kTip_px, top));
  path.lineTo(x - kTail_px, shoulder - kShoulder_px);
  path.cubicTo(x - kTail_px, shoulder, x - kBack_px, shoulder, x - kBack_px, shoulder + kShoulder_px);
  path.lineTo(x - kBack_px, foot - kBack_px);
  path.quadTo(x - kBack_px, foot, x, foot);
  path.quadTo(x + kBack_px, foot, x + kBack_px, foot - kBack_px);
  path.lineTo(x + kBack_px, shoulder + kShoulder_px);
  path.cubicTo(x + kBack_px, shoulder, x + kTail_px, shoulder, x + kTail_px, shoulder - kShoulder_px);
  path.lineTo(x + kTip_px, top);
  path.closeSubpath();
  return path;
}

// Open arrows on either side: it can be pulled both ways.
QPainterPath arrowsBeside(const QRectF& comb) {
  QPainterPath arrows;
  for (const double side : {-1.0, 1.0}) {
    const double at = (side < 0 ? comb.left() : comb.right()) + side * 9;
    arrows.moveTo(at, comb.center().y() - 6);
    arrows.lineTo(at + side * 5, comb.center().y());
    arrows.lineTo(at, comb.center().y() + 6);
  }
  return arrows;
}

}  // namespace

// Its teeth point to the right picture, but where they would leave the window.
double PairPicture::teethWay() const { return dividerX() + kBack_px + kTooth_px > width() ? -1 : 1; }

QRectF PairPicture::combRect() const {
  const double x = dividerX(), top = titleHeight(), foot = height() - lineHeight() - kUnder_px;
  const double high = std::clamp((foot - top) / 3, kShortestComb_px, kComb_px);
  const double tips = x + teethWay() * (kBack_px + kTooth_px), back = x - teethWay() * kBack_px;
  return QRectF(QPointF(std::min(back, tips), std::round(foot - high)), QPointF(std::max(back, tips), foot));
}

void PairPicture::drawDivider(QPainter& painter) {
  const controls::Theme& light = controls::theme(controls::ThemeName::Light);
  const QRectF comb = combRect();
  const double x = dividerX(), way = teethWay(), from = x + way * kBack_px, tips = from + way * kTooth_px;
  const double first = comb.top() + kShoulder_px + 2;
  const int gaps = static_cast<int>((comb.bottom() - kBack_px - first) / kTeethApart_px);
  QPainterPath teeth;
  for (int i = 0; i <= gaps; ++i) {
    teeth.moveTo(from, first + i * kTeethApart_px);
    teeth.lineTo(tips, first + i * kTeethApart_px);
  }
  // Paper between the teeth: they are told apart on any hair.
  painter.setPen(Qt::NoPen);
  painter.setBrush(light.card);
  painter.drawRoundedRect(QRectF(QPointF(from, first - 4), QPointF(tips + way * 3, first + gaps * kTeethApart_px + 4)).normalized(), 4, 4);
  const QPainterPath back = combBack(x, titleHeight(), comb.top(), comb.bottom());
  strokeOnPaper(painter, back);
  painter.fillPath(back, light.accent);
  painter.strokePath(teeth, QPen(light.accent, 2, Qt::SolidLine, Qt::RoundCap));
  strokeOnPaper(painter, arrowsBeside(comb));
}

// Round the whole, and round what the arrow keys pull.
void PairPicture::drawFocus(QPainter& painter) {
  QPainterPath frames;
  frames.addRect(QRectF(rect()).adjusted(2.5, 2.5, -2.5, -2.5));
  frames.addRoundedRect(combRect().adjusted(-19, -4, 19, 4), 8, 8);
  strokeOnPaper(painter, frames);
}

}  // namespace combdraft::chair
