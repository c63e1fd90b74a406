#pragma once
// The hatch that tells a piece's formula apart on paper without colour.
#include <QPainterPath>
#include <QString>

namespace combdraft::paint {

/// Parallel lines of a formula's hatch, those parts of them that lie within the closed
/// outline `area` (its subpaths by the odd-even rule); letters beyond the first six repeat
/// the six patterns. `spacing_mm` and what comes back are in the units of `area`.
QPainterPath hatchLines(const QString& letter, const QPainterPath& area, double spacing_mm);
QPainterPath hatchLines(const QString& letter, const QRectF& area, double spacing_mm);

}  // namespace combdraft::paint
