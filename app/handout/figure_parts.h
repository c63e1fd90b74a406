#pragma once
// What the drawings of a handout share: paper's palette, lines, cutting.
#include "app/paint/drawing.h"
#include "app/paint/ink.h"

namespace combdraft::handout {

/// Darker lines than the screen's, so that a copy of a copy still reads.
paint::Palette paperPalette();
/// Cuts a figure to a frame; what lies outside goes.
void crop(paint::Figure& figure, const QRectF& frame);
void append(paint::Items& items, paint::Items more);
/// A line in the figure's mm, of no fill; an invalid colour draws none.
paint::DrawingItem stroke(const QPainterPath& path, const QColor& colour, double width_mm);

}  // namespace combdraft::handout
