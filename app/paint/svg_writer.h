#pragma once
// Writes a page as SVG with named groups, clips kept and text as text. The
// same page always gives the same bytes.
#include <QByteArray>

#include "app/paint/drawing.h"

namespace combdraft::paint {

QByteArray svgText(const Page& page);
/// The path in SVG's own notation, coordinates to 0.001.
QString svgPath(const QPainterPath& path);

}  // namespace combdraft::paint
