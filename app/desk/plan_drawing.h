#pragma once
// A small drawing of a whole plan: its diagram from behind, from the client's
// left and from above.
#include <QImage>

#include "app/paint/ink.h"
#include "app/paint/scene.h"
#include "engine/plan/plan.h"

namespace combdraft::desk {

/// Fits into `size`, device independent pixels. Any thread.
QImage sidesDrawing(const paint::Scene& scene, const QSize& size, double pixelRatio, const paint::Palette& palette);
QImage planDrawing(const plan::Plan& plan, const QSize& size, double pixelRatio, const paint::Palette& palette);

}  // namespace combdraft::desk
