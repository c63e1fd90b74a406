#pragma once
// The body's distance on a lattice: cheap to ask, made once per head.
#include <memory>
#include <vector>

#include "engine/hair/body.h"

namespace combdraft::hair {

class BodyGrid {
 public:
  /// Lattice of `cell_mm` over the space hair can reach.
  explicit BodyGrid(const Body& body, double cell_mm = 5);

  struct Sample {
    double distance_mm;
    Vec3 outward;  ///< unit
  };
  /// Trilinear; outside the lattice the nearest lattice place answers.
  Sample at(const Vec3& p) const;
  double distance_mm(const Vec3& p) const;

 private:
  double cell_mm_;
  Vec3 origin_;
  int nx_, ny_, nz_;
  std::vector<float> values_;
};

}  // namespace combdraft::hair
