#include "app/paint/key.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <set>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/paint/diagram_labels.h"
#include "app/paint/hatch.h"

namespace combdraft::paint {
namespace {

constexpr double kRow_mm = 5.4, kText_mm = 2.5, kGap_mm = 2;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Key)
};

DrawingItem stroke(const QPainterPath& path, const QColor& colour, double width_mm,
                   std::vector<double> dash = {}) {
  DrawingItem item;
  item.role = Role::Key;
  item.layer = Layer::Key;
  item.path = path;
  item.style.stroke = colour;
  item.style.width_mm = width_mm;
  item.style.dash_mm = std::move(dash);
  if (!item.style.dash_mm.empty()) item.style.cap = Qt::FlatCap;
  return item;
}

QPainterPath segment(double x0, double y0, double x1, double y1) {
  QPainterPath path;
  path.moveTo(x0, y0);
  path.lineTo(x1, y1);
  return path;
}

QPainterPath box(double x, double width) {
  QPainterPath path;
  path.addRect(QRectF(x, -1.2, width, 2.4));
  return path;
}

DrawingItem filled(const QPainterPath& path, const QColor& fill, const QColor& line) {
  DrawingItem item = stroke(path, line, 0.28);
  if (!line.isValid()) item.style.width_mm = 0;
  item.style.fill = fill;
  return item;
}

}  // namespace

std::vector<KeyEntry> keyEntries(const Scene& scene, const Palette& palette) {
  std::vector<KeyEntry> entries;
  bool slice = false, weave = false, brush = false, leftOut = false, deepen = false, drop = false,
       comb = false;
  std::set<plan::ItemId> formulas;
  for (const auto& shape : scene.pieces()) {
    const plan::Piece& piece = *shape->piece;
    if (piece.action == plan::Action::LeaveOut) {
      leftOut = true;
      continue;
    }
    deepen = deepen || piece.action == plan::Action::Deepen;
    slice = slice || piece.taking == plan::Taking::Slice;
    weave = weave || piece.taking == plan::Taking::Weave;
    brush = brush || piece.taking == plan::Taking::Paint;
    drop = drop || !piece.dropOuts.empty();
    comb = comb || (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0);
    formulas.insert(piece.root.formula);
    if (piece.handover_mm) formulas.insert(piece.end.formula);
  }
  const QColor ink = palette.ink;
  if (!scene.sections().empty() || !scene.plan().head().part.empty())
    entries.push_back({Words::tr("parting"), {stroke(segment(0, 0, 12, 0), ink, 0.4)}});
  if (slice) entries.push_back({Words::tr("slice, at its true thickness"),
                                {filled(box(0, 12), palette.taken, ink)}});
  if (weave) {
    QPainterPath teeth;
    for (int i = 0; i < 4; ++i) teeth.addPath(box(3.2 * i, 1.6));
    Items sample{stroke(box(0, 11.2), palette.softInk, 0.12), filled(teeth, palette.taken, ink)};
    entries.push_back({Words::tr("weave with its teeth"), std::move(sample)});
    QPainterPath zigzag;
    zigzag.moveTo(0, -1.2);
    for (int i = 1; i <= 15; ++i) zigzag.lineTo(0.8 * i, i % 2 ? 1.2 : -1.2);
    entries.push_back({Words::tr("fine weave"), {stroke(zigzag, ink, 0.25)}});
  }
  if (brush) {
    QPainterPath edges = segment(0, -1.2, 12, -1.2);
    edges.addPath(segment(0, 1.2, 12, 1.2));
    for (const double y : {-0.7, 0.0, 0.7}) {
      edges.addPath(segment(-0.5, y, 0.6, y));
      edges.addPath(segment(11.4, y, 12.5, y));
    }
    entries.push_back({Words::tr("painted with the brush"),
                       {filled(box(0, 12), palette.taken, QColor()), stroke(edges, ink, 0.25)}});
  }
  if (deepen) entries.push_back({Words::tr("deepened"), {filled(box(0, 12), palette.deepen, ink)}});
  if (leftOut)
    entries.push_back({Words::tr("left out"), {filled(box(0, 12), palette.leftOut, QColor())}});
  if (drop) {
    QPainterPath ticks;
    for (const double x : {4.0, 4.6, 7.4, 8.0}) ticks.addPath(segment(x, -1.9, x, 1.9));
    entries.push_back({Words::tr("drop-out: stays dark between the ticks"),
                       {filled(box(0, 4), palette.taken, ink), filled(box(8, 4), palette.taken, ink),
                        stroke(ticks, ink, 0.28)}});
  }
  if (comb) {
    QPainterPath bumps;
    bumps.moveTo(0, 0.6);
    for (int i = 0; i < 8; ++i) bumps.quadTo(1.5 * i + 0.75, 2.9, 1.5 * (i + 1), 0.6);
    QPainterPath bar;
    bar.addRect(QRectF(0, -1.2, 12, 1.8));
    entries.push_back({Words::tr("backcombed; the figure is the backcomb depth in mm"),
                       {filled(bar, palette.taken, ink), stroke(bumps, ink, 0.25)}});
  }
  if (!scene.pieces().empty()) {
    entries.push_back({Words::tr("behind the head"),
                       {stroke(segment(0, 0, 12, 0), palette.softInk, 0.2, {0.9, 0.8})}});
    QString letter;
    for (const plan::ItemId& id : formulas)
      if (const auto* formula = scene.plan().find<plan::Formula>(id); formula && letter.isEmpty())
        letter = QString::fromStdString(formula->letter);
    const double width_mm = numberLabelSize(letter, 1.75).width() + 0.5;
    Items number;
    addNumberLabel(number, {}, QStringLiteral("1"), letter, QPointF(width_mm / 2, 0), 1.75, palette);
    for (DrawingItem& item : number) item.layer = Layer::Key;
    entries.push_back({letter.isEmpty() ? Words::tr("order of work")
                                        : Words::tr("order of work, with the formula's letter"),
                       std::move(number), width_mm});
  }
  if (!scene.plan().head().whorls.empty()) {
    QPainterPath spiral;
    for (int i = 0; i <= 40; ++i) {
      const QPointF p(2 + (0.25 + 0.05 * i) * std::cos(0.22 * i), (0.25 + 0.05 * i) * std::sin(0.22 * i));
      i == 0 ? spiral.moveTo(p) : spiral.lineTo(p);
    }
    entries.push_back({Words::tr("swirl"), {stroke(spiral, palette.softInk, 0.28)}, 4});
  }
  for (const plan::ItemId& id : formulas) {
    const auto* formula = scene.plan().find<plan::Formula>(id);
    if (!formula) continue;
    const QString letter = QString::fromStdString(formula->letter);
    DrawingItem hatch = stroke(hatchLines(letter, box(0, 12), 1.1), ink, 0.14);
    const QString kind = QString::fromStdString(formula->kind);
    entries.push_back({kind.isEmpty() ? Words::tr("formula %1").arg(letter)
                                      : Words::tr("formula %1: %2").arg(letter, kind),
                       {filled(box(0, 12), palette.taken, ink), std::move(hatch)}});
  }
  return entries;
}

Figure keyFigure(const Scene& scene, const Palette& palette, double width_mm) {
  Figure figure;
  figure.id = QStringLiteral("key");
  figure.title = Words::tr("Key");
  const std::vector<KeyEntry> entries = keyEntries(scene, palette);
  // Rows run to the right; an entry takes what its words need.
  double x = 0, y = kRow_mm / 2;
  for (const KeyEntry& entry : entries) {
    const double need =
        entry.width_mm + kGap_mm + 0.52 * kText_mm * static_cast<double>(entry.words.size()) + 5;
    if (x > 0 && x + need > width_mm) x = 0, y += kRow_mm;
    for (DrawingItem item : entry.sample) {
      item.id = QStringLiteral("key-sample");
      item.role = Role::Key;
      item.path.translate(x, y);
      item.clip.translate(x, y);
      if (item.text) item.text->at += QPointF(x, y);
      figure.items.push_back(std::move(item));
    }
    DrawingItem words;
    words.id = QStringLiteral("key-words");
    words.role = Role::Key;
    words.layer = Layer::Key;
    words.text = TextRun{entry.words, QPointF(x + entry.width_mm + kGap_mm, y), kText_mm, palette.ink,
                         TextRun::Anchor::Start};
    figure.items.push_back(std::move(words));
    x += need;
  }
  figure.frame = QRectF(0, 0, width_mm, entries.empty() ? 0 : y + kRow_mm / 2);
  return figure;
}

}  // namespace combdraft::paint
