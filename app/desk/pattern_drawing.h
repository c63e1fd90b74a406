#pragma once
// A small drawing of a pattern: the hair of a head from one side.
#include <QImage>
#include <QTransform>

#include "app/paint/ink.h"
#include "app/paint/scene.h"
#include "engine/plan/parts.h"

namespace combdraft::desk {

/// The pattern on this head, without anything else that is placed there; null
/// when it cannot be used.
std::shared_ptr<const paint::Scene> patternScene(const plan::Plan& head, const plan::Parts& pattern);
/// Fits into `size`, device independent pixels. Any thread.
QImage patternDrawing(const paint::Scene& scene, head::ViewName view, const QSize& size, double pixelRatio,
                       const paint::Palette& palette);

/// From view mm to the pixels of such a drawing.
QTransform patternTransform(const paint::Scene& scene, head::ViewName view, const QSize& size);

}  // namespace combdraft::desk
