#include "engine/hair/body_grid.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::hair {

BodyGrid::BodyGrid(const Body& body, double cell_mm)
    : cell_mm_(cell_mm),
      origin_(-230, -170, -340),
      nx_(static_cast<int>(460 / cell_mm) + 1),
      ny_(static_cast<int>(340 / cell_mm) + 1),
      nz_(static_cast<int>(480 / cell_mm) + 1),
      values_(static_cast<std::size_t>(nx_) * ny_ * nz_) {
  parallelFor(static_cast<std::size_t>(nz_), [&](std::size_t k) {
    for (int j = 0; j < ny_; ++j)
      for (int i = 0; i < nx_; ++i)
        values_[(k * ny_ + j) * nx_ + i] = static_cast<float>(body.distance_mm(
            origin_ + cell_mm_ * Vec3(i, j, static_cast<double>(k))));
  });
}

BodyGrid::Sample BodyGrid::at(const Vec3& p) const {
  const Vec3 q = (p - origin_) / cell_mm_;
  const double x = std::clamp(q.x(), 0.0, nx_ - 1.001), y = std::clamp(q.y(), 0.0, ny_ - 1.001),
               z = std::clamp(q.z(), 0.0, nz_ - 1.001);
  const int i = static_cast<int>(x), j = static_cast<int>(y), k = static_cast<int>(z);
  const double u = x - i, v = y - j, w = z - k;
  const float* base = values_.data() + (static_cast<std::size_t>(k) * ny_ + j) * nx_ + i;
  const std::ptrdiff_t row = nx_, layer = static_cast<std::ptrdiff_t>(nx_) * ny_;
  const double c000 = base[0], c100 = base[1], c010 = base[row], c110 = base[row + 1],
               c001 = base[layer], c101 = base[layer + 1], c011 = base[layer + row],
               c111 = base[layer + row + 1];
  const double x00 = c000 + u * (c100 - c000), x10 = c010 + u * (c110 - c010),
               x01 = c001 + u * (c101 - c001), x11 = c011 + u * (c111 - c011);
  const double y0 = x00 + v * (x10 - x00), y1 = x01 + v * (x11 - x01);
  const double gx0 = (c100 - c000) + v * ((c110 - c010) - (c100 - c000));
  const double gx1 = (c101 - c001) + v * ((c111 - c011) - (c101 - c001));
  const Vec3 g(gx0 + w * (gx1 - gx0), (x10 - x00) + w * ((x11 - x01) - (x10 - x00)), y1 - y0);
  return {y0 + w * (y1 - y0), unitOr(g, Vec3::UnitZ())};
}

double BodyGrid::distance_mm(const Vec3& p) const { return at(p).distance_mm; }

}  // namespace combdraft::hair
