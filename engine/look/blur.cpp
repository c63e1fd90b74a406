#include "engine/look/blur.h"

#include <algorithm>
#include <cmath>

namespace combdraft::look {
namespace {

/// Running mean of width 2r + 1 + 2f over a strided line, where the outermost
/// samples count by the fraction f, so that any variance can be met.
void meanLine(const float* in, float* out, int n, std::ptrdiff_t stride, int r, double f) {
  const double scale = 1 / (2 * r + 1 + 2 * f);
  const auto value = [&](int i) { return i < 0 || i >= n ? 0.0 : static_cast<double>(in[i * stride]); };
  double sum = 0;
  for (int i = -r; i <= r; ++i) sum += value(i);
  for (int i = 0; i < n; ++i) {
    out[i * stride] = static_cast<float>(scale * (sum + f * (value(i - r - 1) + value(i + r + 1))));
    sum += value(i + r + 1) - value(i - r);
  }
}

}  // namespace

void blur(std::vector<float>& plane, int width, int height, double sigma) {
  if (sigma <= 0.1) return;
  // Three boxes of variance v each, 3 v = sigma^2. A box of half width r with
  // fractional ends f has variance (sum i^2 + 2 f (r+1)^2) / (2 r + 1 + 2 f).
  const double v = sigma * sigma / 3;
  int r = std::max(0, static_cast<int>((std::sqrt(12 * v + 1) - 1) / 2));
  while (r * (r + 1) / 3.0 > v) --r;
  const double squares = r * (r + 1) * (2 * r + 1) / 3.0;
  const double f = std::clamp((v * (2 * r + 1) - squares) / (2 * ((r + 1.0) * (r + 1) - v)), 0.0, 1.0);
  std::vector<float> other(plane.size());
  for (int pass = 0; pass < 3; ++pass) {
    for (int y = 0; y < height; ++y)
      meanLine(plane.data() + static_cast<std::ptrdiff_t>(y) * width,
               other.data() + static_cast<std::ptrdiff_t>(y) * width, width, 1, r, f);
    for (int x = 0; x < width; ++x)
      meanLine(other.data() + x, plane.data() + x, height, width, r, f);
  }
}

}  // namespace combdraft::look
