#pragma once
// Where hair grows: N roots spread by density with a low-discrepancy sequence,
// each standing for the same number of hairs. A root depends on the head, the
// hairline and its own index only, so nothing else moves it.
#include <cstdint>
#include <vector>

#include "engine/hair/hair_zone.h"
#include "engine/head/hairline.h"

namespace combdraft::hair {

struct Root {
  Vec3 at;       ///< on the scalp, mm
  Vec3 normal;   ///< outward unit
  HairZone zone;
};

struct Roots {
  std::vector<Root> roots;
  double hairsPerLock = 0;
  double area_cm2 = 0;          ///< hair-bearing scalp
  double totalHairs() const { return hairsPerLock * static_cast<double>(roots.size()); }
  /// Mean distance between neighbouring roots, mm.
  double spacing_mm() const;
};

/// Relative density at a place: 1 at the vertex, 0.95 at the occiput, 0.75 at
/// the temples [Loussouarn2016: only the order vertex >= occipital > temporal].
double siteFactor(const head::HeadShape& shape, const Vec3& surfacePoint);

/// `density_per_cm2` at the vertex. Low-discrepancy R2 sequence [Roberts2018]
/// through the exact area-times-density distribution on a 0.5 degree grid.
Roots spreadRoots(const head::HeadShape& shape, const head::Hairline& hairline,
                  double density_per_cm2, int count, std::uint64_t seed);

/// Roots near a place, found without looking at all of them.
class RootGrid {
 public:
  explicit RootGrid(const Roots& roots, double cell_mm = 10);
  /// Calls `visit(index)` for every root within the box of half size `reach_mm`
  /// around `centre` (and a few beyond it), in ascending cell order.
  template <class Visit>
  void near(const Vec3& centre, double reach_mm, Visit visit) const {
    const auto lo = cellOf(centre - Vec3::Constant(reach_mm));
    const auto hi = cellOf(centre + Vec3::Constant(reach_mm));
    for (int z = lo[2]; z <= hi[2]; ++z)
      for (int y = lo[1]; y <= hi[1]; ++y)
        for (int x = lo[0]; x <= hi[0]; ++x) {
          const std::size_t cell = cellIndex(x, y, z);
          for (std::uint32_t k = begin_[cell]; k < begin_[cell + 1]; ++k) visit(members_[k]);
        }
  }

 private:
  std::array<int, 3> cellOf(const Vec3& p) const;
  std::size_t cellIndex(int x, int y, int z) const {
    return static_cast<std::size_t>((z * size_[1] + y) * size_[0] + x);
  }
  double cell_mm_;
  Vec3 origin_;
  std::array<int, 3> size_{};
  std::vector<std::uint32_t> begin_, members_;
};

}  // namespace combdraft::hair
