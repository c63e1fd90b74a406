#pragma once
// Smooth interpolation of a small table without overshoot.
#include <cmath>
#include <cstddef>

namespace combdraft::head {

/// Monotone piecewise cubic (Fritsch and Carlson 1980, harmonic slopes) through
/// rows[i].*x -> rows[i].*y, x strictly falling or rising; flat beyond the ends.
template <class Row, std::size_t N>
double monotoneCurve(const Row (&rows)[N], double Row::*x, double Row::*y, double at) {
  static_assert(N >= 2);
  const double turn = rows[N - 1].*x > rows[0].*x ? 1 : -1;
  if (turn * (at - rows[0].*x) <= 0) return rows[0].*y;
  if (turn * (at - rows[N - 1].*x) >= 0) return rows[N - 1].*y;
  std::size_t i = 0;
  while (turn * (at - rows[i + 1].*x) > 0) ++i;
  const auto slope = [&](std::size_t k) {
    return (rows[k + 1].*y - rows[k].*y) / (rows[k + 1].*x - rows[k].*x);
  };
  const auto tangent = [&](std::size_t k) {
    if (k == 0) return slope(0);
    if (k + 1 == N) return slope(N - 2);
    const double s0 = slope(k - 1), s1 = slope(k);
    return s0 * s1 <= 0 ? 0.0 : 2 * s0 * s1 / (s0 + s1);
  };
  const double w = rows[i + 1].*x - rows[i].*x, t = (at - rows[i].*x) / w;
  const double t2 = t * t, t3 = t2 * t;
  return (2 * t3 - 3 * t2 + 1) * (rows[i].*y) + (t3 - 2 * t2 + t) * w * tangent(i) +
         (3 * t2 - 2 * t3) * (rows[i + 1].*y) + (t3 - t2) * w * tangent(i + 1);
}

}  // namespace combdraft::head
