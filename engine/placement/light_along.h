#pragma once
// How the share of light hair grows along a taken strand: the curve that the
// piece card draws and the engine colours with (engine notes, "Start").
//
//   F(x) = (1-p) S((x-d0)/w0) + p S((x-d1)/w1),   S(t) = smoothstep(t + 1/2)
//
// averaged over each lock's own scatter of d0 and d1. x is measured along the
// stretched hair from the scalp, mm.
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/plan/plan.h"

namespace combdraft::placement {

/// Where light starts on one lock, and over which length it comes in.
struct LockStart {
  double at_mm = 0;     ///< half-light point
  double blend_mm = 0;  ///< length from none to full
};

/// The start of one lock. `startNormal` is its own standard normal number,
/// `pushed` whether backcombing moved it. An earlier typed start or a shallower
/// backcomb never gives a later lock start.
LockStart lockStart(const plan::Piece& piece, double startNormal, bool pushed,
                    const Assumptions& assumptions);

/// Light share of a lock at x, 0..1: 0 at the scalp unless the start is 0.
double lightAt(const LockStart& start, double x_mm);
/// Mean of `lightAt` over [from, to], exact.
double meanLight(const LockStart& start, double from_mm, double to_mm);

/// F(x) for the whole piece at each of `xs_mm`: the mean over scatter and
/// pushed share; times nothing (taken share is not included).
std::vector<double> lightCurve(const plan::Piece& piece, const std::vector<double>& xs_mm,
                               const Assumptions& assumptions);

}  // namespace combdraft::placement
