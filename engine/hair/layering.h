#pragma once
// How high a lock lies: hair rooted further up the stream lies on top, and how
// thick that layer is follows from how much hair really passes there. A coarse
// lattice counts hair (by arc length) along the flow of a fixed sample of
// locks, so the height knows about whorl, tie and shoulder.
#include <cstdint>
#include <vector>

#include "engine/base/vec.h"

namespace combdraft::hair {

class PassingHair {
 public:
  PassingHair();
  /// A piece of hair of `length_mm` passes at `p`, `arc_mm` from its scalp.
  void add(const Vec3& p, double arc_mm, double length_mm, double hairs);
  /// Turns counts into running sums; call once after the last `add`.
  void finish();
  /// Hairs per mm of width that pass at `p` and are rooted nearer than
  /// `arc_mm`: what lies underneath. Uniform flow of density d gives d * arc.
  double beneath(const Vec3& p, double arc_mm) const;

 private:
  static constexpr int kBins = 33;
  static constexpr double kCell_mm = 9, kBin_mm = 20;
  struct Corner {
    std::size_t cell;
    double weight;
  };
  void corners(const Vec3& p, Corner (&out)[8]) const;
  int nx_, ny_, nz_;
  Vec3 origin_;
  std::uint64_t added_ = 0;
  std::vector<float> sums_;
};

}  // namespace combdraft::hair
