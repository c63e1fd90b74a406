#include "engine/hair/roots.h"

#include <algorithm>
#include <cmath>

#include "engine/base/random.h"

namespace combdraft::hair {

double Roots::spacing_mm() const {
  return roots.empty() ? 0 : std::sqrt(area_cm2 * 100 / static_cast<double>(roots.size()));
}

double siteFactor(const head::HeadShape& shape, const Vec3& p) {
  const double z = p.z() * 90 / shape.axes().c_mm;
  const double azimuth = std::abs(degrees(std::atan2(p.x(), p.y())));
  const double da = (azimuth - 55) / 26, dz = (z - 12) / 30;
  const double temple = std::exp(-da * da - dz * dz);
  return 1 - 0.25 * temple - 0.05 * smoothstep(-5, -35, z);
}

Roots spreadRoots(const head::HeadShape& shape, const head::Hairline& hairline,
                  double density_per_cm2, int count, std::uint64_t seed) {
  // Cells of bearing x drop; a column's share first, then the place inside it.
  constexpr int kBearings = 720, kDrops = 300;
  constexpr double kLargestDrop_deg = 150;  // the nape lies at about 139
  const auto pointAt = [&](double bearing, double drop) {
    return shape.pointAt({bearing * 360.0 / kBearings - 180.0, drop * kLargestDrop_deg / kDrops});
  };
  std::vector<double> columnEnd(kBearings), cellEnd(static_cast<std::size_t>(kBearings) * kDrops);
  std::vector<Vec3> before(kDrops + 1), here(kDrops + 1);
  for (int d = 0; d <= kDrops; ++d) before[static_cast<std::size_t>(d)] = pointAt(0, d);
  double total = 0, area = 0;
  for (int b = 0; b < kBearings; ++b) {
    for (int d = 0; d <= kDrops; ++d) here[static_cast<std::size_t>(d)] = pointAt(b + 1, d);
    double column = 0;
    for (std::size_t d = 0; d < kDrops; ++d) {
      const Vec3 middle = pointAt(b + 0.5, static_cast<double>(d) + 0.5);
      const double above = hairline.above_mm(middle);
      const double inside = std::clamp(above / 0.8 + 0.5, 0.0, 1.0);  // soft over a cell
      const double cell = ((here[d + 1] - before[d]).cross(here[d] - before[d + 1])).norm() / 2;
      column += cell * inside * siteFactor(shape, middle);
      area += cell * inside;
      cellEnd[static_cast<std::size_t>(b) * kDrops + d] = column;
    }
    total += column;
    columnEnd[static_cast<std::size_t>(b)] = total;
    std::swap(before, here);
  }

  Roots result;
  result.area_cm2 = area / 100;
  result.hairsPerLock = density_per_cm2 * total / 100 / count;
  result.roots.resize(static_cast<std::size_t>(count));
  const double shiftU = randomUniform(seed, 0, 90), shiftV = randomUniform(seed, 0, 91);
  for (std::size_t i = 0; i < result.roots.size(); ++i) {
    const double n = static_cast<double>(i) + 1;
    const double u = std::fmod(shiftU + n * 0.7548776662466927, 1.0) * total;
    const double v = std::fmod(shiftV + n * 0.5698402909980532, 1.0);
    const auto column = std::min<std::size_t>(
        static_cast<std::size_t>(std::upper_bound(columnEnd.begin(), columnEnd.end(), u) -
                                 columnEnd.begin()),
        kBearings - 1);
    const double columnStart = column ? columnEnd[column - 1] : 0;
    const double along = (u - columnStart) / std::max(columnEnd[column] - columnStart, 1e-12);
    const auto first = cellEnd.begin() + static_cast<std::ptrdiff_t>(column * kDrops);
    const double target = v * first[kDrops - 1];
    const auto row = std::min<std::size_t>(
        static_cast<std::size_t>(std::upper_bound(first, first + kDrops, target) - first),
        kDrops - 1);
    const double rowStart = row ? first[static_cast<std::ptrdiff_t>(row) - 1] : 0;
    const double rowEnd = first[static_cast<std::ptrdiff_t>(row)];
    const double down = (target - rowStart) / std::max(rowEnd - rowStart, 1e-12);
    Root& root = result.roots[i];
    root.at = pointAt(static_cast<double>(column) + std::clamp(along, 0.0, 1.0),
                      static_cast<double>(row) + std::clamp(down, 0.0, 1.0));
    root.normal = shape.normalAt(root.at);
    root.zone = zoneAt(shape, root.at);
  }
  return result;
}

RootGrid::RootGrid(const Roots& roots, double cell_mm) : cell_mm_(cell_mm) {
  Vec3 lo = Vec3::Constant(1e9), hi = Vec3::Constant(-1e9);
  for (const Root& r : roots.roots) lo = lo.cwiseMin(r.at), hi = hi.cwiseMax(r.at);
  if (roots.roots.empty()) lo = hi = Vec3::Zero();
  origin_ = lo;
  for (int k = 0; k < 3; ++k)
    size_[static_cast<std::size_t>(k)] = static_cast<int>((hi[k] - lo[k]) / cell_mm_) + 1;
  begin_.assign(static_cast<std::size_t>(size_[0] * size_[1] * size_[2]) + 1, 0);
  std::vector<std::uint32_t> cells(roots.roots.size());
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const auto c = cellOf(roots.roots[i].at);
    cells[i] = static_cast<std::uint32_t>(cellIndex(c[0], c[1], c[2]));
    ++begin_[cells[i] + 1];
  }
  for (std::size_t k = 1; k < begin_.size(); ++k) begin_[k] += begin_[k - 1];
  members_.resize(cells.size());
  std::vector<std::uint32_t> next(begin_.begin(), begin_.end() - 1);
  for (std::size_t i = 0; i < cells.size(); ++i)
    members_[next[cells[i]]++] = static_cast<std::uint32_t>(i);
}

std::array<int, 3> RootGrid::cellOf(const Vec3& p) const {
  std::array<int, 3> cell{};
  for (int k = 0; k < 3; ++k)
    cell[static_cast<std::size_t>(k)] =
        std::clamp(static_cast<int>(std::floor((p[k] - origin_[k]) / cell_mm_)), 0,
                   size_[static_cast<std::size_t>(k)] - 1);
  return cell;
}

}  // namespace combdraft::hair
