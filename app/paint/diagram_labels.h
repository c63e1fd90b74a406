#pragma once
// Circled order numbers, formula letters, backcomb depths, section names and
// notes of one view, placed so that they do not cover each other.
#include "app/paint/diagram.h"

namespace combdraft::paint {

/// Appends items of layer Labels for what `shape`, the cut of the view, shows. Numbers stand in the views where a piece is
/// seen for a quarter of its length or more. When not every number fits, the
/// first, the last and each fifth come first.
void addLabels(Items& items, const Scene& scene, const head::SheetView& view, const QPainterPath& shape,
               const DiagramStyle& style);

/// A circle with a number in it.
void addCircledNumber(Items& items, const QString& id, const QString& words, const QPointF& centre,
                      double radius_mm, const Palette& palette);

}  // namespace combdraft::paint
