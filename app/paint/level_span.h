#pragma once
// Levels from ... to ... as they are told to a client: no finer than an eye can tell.
#include <algorithm>
#include <cmath>

namespace combdraft::paint {

struct LevelEnds {
  double low = 0, high = 0;
};

/// Both ends moved outwards to half levels, and at least half a level apart: 6.6 to 6.9
/// becomes 6.5 to 7, 7 to 7 becomes 6.5 to 7.5. Not below 0. Precondition: low <= high.
inline LevelEnds outwards(double low, double high) {
  constexpr double kBit = 1e-6;  // what is a half but for its last digits stays it
  LevelEnds ends{std::floor(2 * (low + kBit)) / 2, std::ceil(2 * (high - kBit)) / 2};
  if (ends.high - ends.low < 0.5) ends = {ends.low - 0.5, ends.low + 0.5};
  ends.low = std::max(ends.low, 0.0);
  return ends;
}

}  // namespace combdraft::paint
