#pragma once
// Readings of one way of wearing, without pictures and contrast, at little
// memory: what lies under the look as it is usually worn.
#include "engine/look/head_hair.h"
#include "engine/look/lock_colours.h"
#include "engine/look/region_sums.h"

namespace combdraft::advise {

class WornReadings {
 public:
  WornReadings(hair::Worn worn, int locks, double pixel_mm, double step_mm);

  /// Traces when head or hair changed, then only colours. `ground` is taken
  /// when it fits, and left filled. Errors: Cancelled, OutOfRange (measures).
  Result<look::Readings> update(const plan::Plan& plan, look::LookSettings settings,
                                std::shared_ptr<const look::HeadGround>& ground,
                                std::stop_token stop);

 private:
  hair::Worn worn_;
  int locks_;
  double pixel_mm_, step_mm_;
  std::uint64_t key_ = 0;
  std::shared_ptr<const look::HeadHair> hair_;
  look::LockColours colours_;
  look::RegionSums sums_;
};

}  // namespace combdraft::advise
