#include "app/handout/figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/handout/figure_parts.h"
#include "app/handout/flow.h"
#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "app/paint/marks.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

using head::ViewName;

// Round the head with room for numbers beside it, without shoulders (drawing mm).
constexpr double kHalf_mm = 112, kHalfSide_mm = 134, kAbove_mm = -130, kBelow_mm = 112;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString onPaper(int length_mm) { return Words::tr("%1 mm on paper").arg(length_mm); }
QString timingTitle() { return Words::tr("Minutes for placing, by step"); }
QString barName(const TimedStep& step) {
  return Words::tr("%1, %2 min").arg(step.name, paint::figure(numberText(step.minutes, 0)));
}

QString wordOf(ViewName view) { return QString::fromStdString(std::string(head::viewWord(view))); }

// What is already in place: there, but quiet.
const QColor kPale(0xA6, 0xA6, 0xA6), kPaleLeftOut(0xDE, 0xDD, 0xDB);

void cropTo(paint::Figure& figure, ViewName view) {
  if (view != ViewName::Crown) crop(figure, cropOf(view));
}

paint::DrawingItem wordsAt(const QString& words, const QPointF& at, double size_mm, const QColor& colour,
                           paint::TextRun::Anchor anchor = paint::TextRun::Anchor::Middle) {
  paint::DrawingItem item;
  item.id = QStringLiteral("words");
  item.role = paint::Role::Caption;
  item.layer = paint::Layer::Labels;
  item.text = paint::TextRun{words, at, size_mm, colour, anchor, paint::TextRun::Weight::Plain};
  return item;
}

}  // namespace

QString viewName(ViewName view, Person person) {
  if (view == ViewName::Left && person == Person::Model) return Words::tr("Model's left");
  if (view == ViewName::Right && person == Person::Model) return Words::tr("Model's right");
  if (view == ViewName::Crown) return Words::tr("Crown, close");
  return paint::viewTitle(view);
}

QRectF cropOf(ViewName view) {
  switch (view) {
    case ViewName::Crown: return paint::frameOf(view);
    case ViewName::Top: return QRectF(-kHalf_mm, -kHalf_mm - 14, 2 * kHalf_mm, kBelow_mm - kAbove_mm);
    case ViewName::Left:
    case ViewName::Right: return QRectF(-kHalfSide_mm, kAbove_mm, 2 * kHalfSide_mm, kBelow_mm - kAbove_mm);
    default: return QRectF(-kHalf_mm, kAbove_mm, 2 * kHalf_mm, kBelow_mm - kAbove_mm);
  }
}

paint::Figure viewFigure(const paint::Scene& scene, ViewName view, double scale) {
  paint::Figure figure = paint::diagramFigure(scene, view, {paperPalette(), scale, paint::DiagramStyle::Labels::Shown, nullptr, cropOf(view)});
  cropTo(figure, view);
  return figure;
}

paint::Figure blankFigure(const paint::Scene& scene, ViewName view, double scale) {
  paint::Figure figure = stepFigure(scene, view, scale, {}, {});
  figure.id = wordOf(view) + QStringLiteral("-blank");
  std::erase_if(figure.items, [](const paint::DrawingItem& item) {
    return item.role == paint::Role::Section || item.role == paint::Role::Note || item.layer == paint::Layer::Labels;
  });
  return figure;
}

paint::Figure stepFigure(const paint::Scene& scene, ViewName view, double scale, const std::set<plan::ItemId>& now,
                         const std::vector<plan::ItemId>& before) {
  paint::Figure figure;
  figure.id = wordOf(view) + QStringLiteral("-step");
  figure.frame = paint::frameOf(view);
  const paint::Ink ink(scale);
  figure.items = paint::headArt(scene.head(), view, plan::SkinTone::Paper, paperPalette(), ink, paint::Guides::Shown);
  for (const plan::ItemId& id : before) {
    const paint::PieceShape* piece = scene.find(id);
    if (!piece) continue;
    const QPainterPath& seen = piece->in(scene.head().view(view)).seen;
    if (seen.isEmpty()) continue;
    const bool leftOut = piece->piece->action == plan::Action::LeaveOut;
    paint::DrawingItem item = stroke(seen, leftOut ? QColor() : kPale, ink(0.18));
    item.id = QString::fromStdString(id);
    item.role = paint::Role::Piece;
    item.style.fill = leftOut ? kPaleLeftOut : QColor(Qt::white);
    paint::Items one{std::move(item)};
    paint::clipToView(one, view);
    append(figure.items, std::move(one));
  }
  paint::DiagramStyle bold{paperPalette(), scale, paint::DiagramStyle::Labels::Shown, &now, cropOf(view)};
  std::set<QString> others;  // partings of sections that are not worked on now
  for (const paint::SectionShape& section : scene.sections()) others.insert(QString::fromStdString(section.id));
  for (const plan::ItemId& id : now)
    if (const paint::PieceShape* piece = scene.find(id)) others.erase(QString::fromStdString(piece->piece->section));
  paint::Items own = paint::diagramItems(scene, view, bold);
  std::erase_if(own, [&](const paint::DrawingItem& item) { return others.contains(item.id); });
  append(figure.items, std::move(own));
  std::erase_if(figure.items, [](const paint::DrawingItem& item) { return item.role == paint::Role::Note; });
  if (view == ViewName::Crown) figure.items.push_back(paint::viewRing(view, paperPalette(), ink));
  cropTo(figure, view);
  return figure;
}

paint::Figure lookFigure(const paint::Scene& scene, ViewName view, const look::LookFrame* look, double scale) {
  paint::Figure figure = paint::lookFigure(scene, view, look, paperPalette(), scale, paint::Ground::Paper);
  return figure;
}

paint::Figure scaleFigure(int length_mm) {
  const Inks inks;
  paint::Figure figure;
  figure.id = QStringLiteral("scale-%1").arg(length_mm);
  figure.title = onPaper(length_mm);
  figure.frame = QRectF(-6, -3, length_mm + 12, 9);
  // The bar itself is one item of exactly its length, so that it can be measured.
  paint::DrawingItem bar = stroke({}, inks.ink, 0.3);
  bar.id = QStringLiteral("scale-bar");
  bar.name = figure.title;
  bar.path.moveTo(0, 0);
  bar.path.lineTo(length_mm, 0);
  figure.items.push_back(std::move(bar));
  QPainterPath ticks;
  for (int mm = 0; mm <= length_mm; mm += 5) {
    const double long_mm = mm % 10 == 0 ? 2.2 : 1.2;
    const double x = std::clamp<double>(mm, 0.1, length_mm - 0.1);  // the outer edges are the ends
    ticks.moveTo(x, -long_mm);
    ticks.lineTo(x, 0.15);
    if (mm % 50 == 0)
      figure.items.push_back(wordsAt(QString::number(mm), QPointF(mm, 3), type::kFoot, inks.ink));
  }
  figure.items.push_back(stroke(ticks, inks.ink, 0.2));
  return figure;
}

double axisStep_min(double whole_min) {
  for (const double step : {5.0, 10.0, 15.0, 30.0, 60.0, 120.0})
    if (whole_min / step <= 12) return step;
  return 240;
}

paint::Figure timingFigure(const std::vector<TimedStep>& steps, double width_mm) {
  const Inks inks;
  constexpr double kBar_mm = 7, kAxis_mm = 9;
  paint::Figure figure;
  figure.id = QStringLiteral("timing");
  figure.title = timingTitle();
  figure.frame = QRectF(0, 0, width_mm, kBar_mm + kAxis_mm);
  double whole = 0;
  for (const TimedStep& step : steps) whole += step.minutes;
  if (!(whole > 0)) return figure;
  const double perMinute = width_mm / whole;
  double at = 0;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const QRectF rect(at * perMinute, 0, steps[i].minutes * perMinute, kBar_mm);
    QPainterPath path;
    path.addRect(rect);
    paint::DrawingItem bar = stroke(path, inks.ink, 0.2);
    bar.id = QStringLiteral("timing-%1").arg(i + 1);
    bar.name = barName(steps[i]);
    bar.style.fill = i % 2 == 0 ? QColor(Qt::white) : inks.tint;
    figure.items.push_back(std::move(bar));
    const QString number = QString::number(i + 1);
    if (widthOf(number, type::kSmall) + 0.8 < rect.width())
      figure.items.push_back(wordsAt(number, rect.center(), type::kSmall, inks.ink));
    at += steps[i].minutes;
  }
  QPainterPath ticks;
  const double step = axisStep_min(whole);
  double last = -1e9;
  for (double minute = 0; minute <= whole + 1e-9; minute += step) {
    const double x = minute * perMinute;
    ticks.moveTo(x, kBar_mm);
    ticks.lineTo(x, kBar_mm + 1.6);
    const QString words = paint::figure(numberText(minute, 0));
    const double half = widthOf(words, type::kFoot) / 2;
    const double middle = std::clamp(x, half, width_mm - half);
    if (middle - half < last + 2) continue;
    last = middle + half;
    figure.items.push_back(wordsAt(words, QPointF(middle, kBar_mm + 4.2), type::kFoot, inks.soft));
  }
  figure.items.push_back(stroke(ticks, inks.ink, 0.2));
  return figure;
}

ViewName bestView(const paint::Scene& scene, const std::vector<plan::ItemId>& pieces) {
  // Pieces on both sides are seen on one; half as far out as its pieces, a mean lies between.
  constexpr double kBetween = 0.6;
  std::vector<Vec3> centres;
  for (const plan::ItemId& id : pieces)
    if (const paint::PieceShape* piece = scene.find(id); piece && !piece->strip.empty())
      centres.push_back(piece->strip[piece->strip.size() / 2].centre);
  if (centres.empty()) return ViewName::Back;
  Vec3 sum = Vec3::Zero();
  double out = 0;
  for (const Vec3& centre : centres) sum += centre, out += centre.norm();
  if (sum.norm() < kBetween * out) {
    sum = Vec3::Zero();
    for (const Vec3& centre : centres)
      if (centre.x() * centres.front().x() >= 0) sum += centre;
  }
  if (sum.norm() < 1e-6) return ViewName::Back;
  return paint::viewFacing(scene.head(), scene.head().shape.pointAlong(unitOr(sum, Vec3::UnitZ())));
}

}  // namespace combdraft::handout
