#include "engine/placement/light_along.h"

#include <algorithm>
#include <cmath>

namespace combdraft::placement {
namespace {

// Scatter is cut at 1.9 standard deviations and never more than half of the
// distance it scatters, so that an earlier typed start is earlier on every lock.
constexpr double kCut = 1.9;

double scattered(double typed_mm, double scatter_mm, double z) {
  const double sd = std::min(scatter_mm, typed_mm / 2);
  return std::max(0.0, typed_mm + sd * std::clamp(z, -kCut, kCut));
}

/// Integral of smoothstep from -infinity to t.
double smoothstepIntegral(double t) {
  if (t <= 0) return 0;
  if (t >= 1) return t - 0.5;
  return t * t * t * (1 - t / 2);
}

/// Blend that keeps S at 0 on the scalp.
double blendOf(const LockStart& start) { return std::min(start.blend_mm, 2 * start.at_mm); }

}  // namespace

LockStart lockStart(const plan::Piece& piece, double z, bool pushed,
                    const Assumptions& assumptions) {
  const double near = scattered(piece.start_mm, assumptions["start.scatter_mm"], z);
  if (!pushed || piece.backcomb.depth_mm <= 0) return {near, piece.blend_mm};
  const double far =
      scattered(piece.backcomb.depth_mm, assumptions["start.pushedScatter_mm"], z);
  return {std::max(near, far), piece.backcomb.blend_mm};
}

double lightAt(const LockStart& start, double x_mm) {
  const double w = blendOf(start);
  if (w <= 0) return x_mm >= start.at_mm ? 1 : 0;
  return smoothstep((x_mm - start.at_mm) / w + 0.5);
}

double meanLight(const LockStart& start, double from_mm, double to_mm) {
  if (to_mm <= from_mm) return lightAt(start, from_mm);
  const double w = blendOf(start);
  if (w <= 0) return std::clamp((to_mm - start.at_mm) / (to_mm - from_mm), 0.0, 1.0);
  const double a = (from_mm - start.at_mm) / w + 0.5, b = (to_mm - start.at_mm) / w + 0.5;
  return std::clamp((smoothstepIntegral(b) - smoothstepIntegral(a)) * w / (to_mm - from_mm), 0.0,
                    1.0);
}

std::vector<double> lightCurve(const plan::Piece& piece, const std::vector<double>& xs_mm,
                               const Assumptions& assumptions) {
  // Mean over the cut normal scatter: midpoints of 64 equal-probability strata.
  constexpr int kStrata = 64;
  const auto quantile = [](double p) {
    // Rational approximation of the normal quantile, 4.5e-4 [Abramowitz1964, 26.2.23].
    const double q = p < 0.5 ? p : 1 - p;
    const double t = std::sqrt(-2 * std::log(q));
    const double x = t - (2.515517 + 0.802853 * t + 0.010328 * t * t) /
                             (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t * t * t);
    return p < 0.5 ? -x : x;
  };
  const double share = piece.backcomb.depth_mm > 0 ? piece.backcomb.pushed_frac : 0;
  std::vector<double> result(xs_mm.size(), 0);
  for (int k = 0; k < kStrata; ++k) {
    const double z = quantile((k + 0.5) / kStrata);
    const LockStart kept = lockStart(piece, z, false, assumptions);
    const LockStart pushed = lockStart(piece, z, true, assumptions);
    for (std::size_t i = 0; i < xs_mm.size(); ++i)
      result[i] += ((1 - share) * lightAt(kept, xs_mm[i]) + share * lightAt(pushed, xs_mm[i])) /
                   kStrata;
  }
  return result;
}

}  // namespace combdraft::placement
