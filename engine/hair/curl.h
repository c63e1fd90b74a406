#pragma once
// What a curl class means in millimetres. Eight classes as in
// [DeLaMettrie2007]; the sizes are our own assumption (class cut-offs were not
// readable), scaled by the assumption fall.waveScale.
#include "engine/plan/plan.h"

namespace combdraft::hair {

struct CurlShape {
  double radius_mm;      ///< wave amplitude or coil radius
  double turn_mm;        ///< carrier length of one wave or turn
  double coil_frac;      ///< 0 = wave in one plane .. 1 = coil
  double loft_frac;      ///< 0 = lies on the head .. 1 = stands straight off it
  double volume;         ///< factor on the height that hair piles up to
  double interleave;     ///< factor on fall.interleave_mm
  double clump_mm;       ///< size of the strands that wave together

  /// Carrier length over stretched strand length, 0..1.
  double shrinkage() const;
};

CurlShape curlShape(plan::CurlClass curl, double waveScale);

}  // namespace combdraft::hair
