#include "engine/hair/layering.h"

#include <algorithm>
#include <cmath>

#include "engine/base/random.h"

namespace combdraft::hair {
namespace {
// Each count is scattered by up to half a cell before the trilinear splat, so
// that splat and trilinear gather of a sheet join to the quartic B-spline: the
// areal density is cell * gathered volume density / B4(0), B4(0) = 115/192
// [deBoor1978], with a ripple under 2 % as the sheet drifts through the cells
// (plain trilinear would ripple by a third).
constexpr double kSheet = 192.0 / 115.0;
}  // namespace

PassingHair::PassingHair()
    : nx_(static_cast<int>(420 / kCell_mm) + 2),
      ny_(static_cast<int>(330 / kCell_mm) + 2),
      nz_(static_cast<int>(450 / kCell_mm) + 2),
      origin_(-210, -165, -330),
      sums_(static_cast<std::size_t>(nx_) * ny_ * nz_ * kBins, 0.0f) {}

void PassingHair::corners(const Vec3& p, Corner (&out)[8]) const {
  const Vec3 q = (p - origin_) / kCell_mm;
  const double x = std::clamp(q.x(), 0.0, nx_ - 1.001), y = std::clamp(q.y(), 0.0, ny_ - 1.001),
               z = std::clamp(q.z(), 0.0, nz_ - 1.001);
  const int i = static_cast<int>(x), j = static_cast<int>(y), k = static_cast<int>(z);
  const double u[2] = {1 - (x - i), x - i}, v[2] = {1 - (y - j), y - j}, w[2] = {1 - (z - k), z - k};
  int n = 0;
  for (int c = 0; c < 2; ++c)
    for (int b = 0; b < 2; ++b)
      for (int a = 0; a < 2; ++a)
        out[n++] = {((static_cast<std::size_t>(k + c) * ny_ + j + b) * nx_ + i + a) * kBins,
                    u[a] * v[b] * w[c]};
}

void PassingHair::add(const Vec3& p, double arc_mm, double length_mm, double hairs) {
  Corner corner[8];
  const Vec3 scatter(randomUniform(0, added_, 0) - 0.5, randomUniform(0, added_, 1) - 0.5,
                     randomUniform(0, added_, 2) - 0.5);
  ++added_;
  corners(p + kCell_mm * scatter, corner);
  const auto bin = static_cast<std::size_t>(std::clamp(arc_mm / kBin_mm, 0.0, kBins - 2.0)) + 1;
  const double amount = length_mm * hairs * kSheet / (kCell_mm * kCell_mm);
  for (const Corner& c : corner) sums_[c.cell + bin] += static_cast<float>(amount * c.weight);
}

void PassingHair::finish() {
  for (std::size_t cell = 0; cell < sums_.size(); cell += kBins)
    for (std::size_t b = 1; b < kBins; ++b) sums_[cell + b] += sums_[cell + b - 1];
}

double PassingHair::beneath(const Vec3& p, double arc_mm) const {
  Corner corner[8];
  corners(p, corner);
  const double at = std::clamp(arc_mm / kBin_mm, 0.0, kBins - 1.001);
  const auto bin = static_cast<std::size_t>(at);
  const double t = at - static_cast<double>(bin);
  double sum = 0;
  for (const Corner& c : corner)
    sum += c.weight * (sums_[c.cell + bin] * (1 - t) + sums_[c.cell + bin + 1] * t);
  return sum;
}

}  // namespace combdraft::hair
