#pragma once
// The colours of one strand along its length, mixed from the hair as it is and
// the treated hair: for the drawing on the piece card only; the look has its
// own, strand by strand.
#include <QColor>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::cards {

/// One colour at each of `xs_mm` (rising, from the scalp). `light` = share of
/// treated hair at each, 0..1. Daylight, dry, the middle of the typed span.
std::vector<QColor> strandColours(const plan::Piece& piece, const plan::Hair& hair,
                                  plan::HairZone zone, double length_mm, const std::vector<double>& xs_mm,
                                  const std::vector<double>& light);

}  // namespace combdraft::cards
