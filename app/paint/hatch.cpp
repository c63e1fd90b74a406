#include "app/paint/hatch.h"

#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/base/vec.h"

namespace combdraft::paint {
namespace {

/// Adds what lies inside of the line at the distance `d` from the origin along `across`.
void addWithin(QPainterPath& path, const QList<QPolygonF>& outlines, const QPointF& along, const QPointF& across, double d) {
  std::vector<double> crossings;
  for (const QPolygonF& outline : outlines)
    for (qsizetype i = 0; i < outline.size(); ++i) {
      const QPointF &p = outline[i], &q = outline[(i + 1) % outline.size()];
      const double from = QPointF::dotProduct(p, across) - d, to = QPointF::dotProduct(q, across) - d;
      if ((from <= 0) != (to <= 0)) crossings.push_back(QPointF::dotProduct(p + (q - p) * (from / (from - to)), along));
    }
  std::sort(crossings.begin(), crossings.end());
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
    path.moveTo(across * d + along * crossings[i]);
    path.lineTo(across * d + along * crossings[i + 1]);
  }
}

}  // namespace

QPainterPath hatchLines(const QString& letter, const QPainterPath& area, double spacing_mm) {
  const int pattern = letter.isEmpty() ? 0 : (letter.at(0).toUpper().unicode() - 'A' + 600) % 6;
  const QList<QPolygonF> outlines = area.toSubpathPolygons();
  const QRectF box = area.boundingRect();
  const double reach = std::hypot(box.width(), box.height()) / 2 + spacing_mm;
  QPainterPath path;
  const auto run = [&](double angle_deg, double gap_mm) {
    const QPointF along(std::cos(radians(angle_deg)), -std::sin(radians(angle_deg)));
    const QPointF across(-along.y(), along.x());
    // Lines hang on a fixed grid, so that a dragged piece keeps its hatch still.
    const double middle = QPointF::dotProduct(box.center(), across);
    for (double d = std::floor((middle - reach) / gap_mm) * gap_mm; d <= middle + reach; d += gap_mm)
      addWithin(path, outlines, along, across, d);
  };
  switch (pattern) {
    case 0: run(45, spacing_mm); break;
    case 1: run(135, spacing_mm); break;
    case 2: run(45, spacing_mm * 1.3), run(135, spacing_mm * 1.3); break;
    case 3: run(90, spacing_mm); break;
    case 4: run(0, spacing_mm); break;
    default: run(0, spacing_mm * 1.3), run(90, spacing_mm * 1.3); break;
  }
  return path;
}

QPainterPath hatchLines(const QString& letter, const QRectF& area, double spacing_mm) {
  QPainterPath box;
  box.addRect(area);
  return hatchLines(letter, box, spacing_mm);
}

}  // namespace combdraft::paint
