#pragma once
// A small drawing of a whole plan: its diagram from behind, from the client's
// left and from above.
#include <QPixmap>

#include "app/paint/ink.h"
#include "engine/plan/plan.h"

namespace combdraft::desk {

/// Fits into `size`, device independent pixels.
QPixmap planDrawing(const plan::Plan& plan, const QSize& size, double pixelRatio, const paint::Palette& palette);

}  // namespace combdraft::desk
