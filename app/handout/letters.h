#pragma once
// Words set in lines by the font's own widths, so that nothing runs over its place
// in any language. Lengths are paper mm, sizes are heights of letters (em).
#include <QStringList>

#include "app/paint/drawing.h"

namespace combdraft::handout {

using Weight = paint::TextRun::Weight;

double widthOf(const QString& text, double size_mm, Weight weight = Weight::Plain);
/// Breaks at words, inside a word only when it alone is too long; a line break
/// stays one. Empty text: no line.
QStringList linesOf(const QString& text, double size_mm, double width_mm, Weight weight = Weight::Plain);
/// The text with an ellipsis where it had to be cut.
QString cutTo(const QString& text, double size_mm, double width_mm, Weight weight = Weight::Plain);

}  // namespace combdraft::handout
