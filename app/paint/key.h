#pragma once
// The key of a diagram: a sample and words for each notation that the drawing
// uses, and the formulas by hatch and letter. Notation is not standardised, so
// a key always stands on paper.
#include "app/paint/drawing.h"
#include "app/paint/ink.h"
#include "app/paint/scene.h"

namespace combdraft::paint {

struct KeyEntry {
  QString words;
  Items sample;  ///< drawn in a box 5 paper mm high, origin at its left middle
  double width_mm = 12;
};

/// Entries for what this plan's diagram shows.
std::vector<KeyEntry> keyEntries(const Scene& scene, const Palette& palette);
/// The key laid out in columns within a width; frame in paper mm.
Figure keyFigure(const Scene& scene, const Palette& palette, double width_mm);

}  // namespace combdraft::paint
