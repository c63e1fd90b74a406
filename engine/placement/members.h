#pragma once
// Which locks a piece takes. Depends on the piece's geometry and the roots;
// found through the root grid.
#include <cstdint>
#include <vector>

#include "engine/hair/roots.h"
#include "engine/head/strip_frame.h"
#include "engine/plan/plan.h"

namespace combdraft::placement {

struct Member {
  std::uint32_t lock;
  float share;   ///< of the lock's hairs that are taken, 0..1
  float depth;   ///< Paint: 0 = on top of the strip .. 1 = underneath
};

/// A lock's own fixed numbers in [0, 1), keyed by head seed and root index only.
struct LockNumbers {
  double taken, pushed, white, scattered;
  double startNormal;
};
LockNumbers lockNumbers(std::uint64_t seed, std::uint32_t lock);

/// Locks of a piece in ascending order. A lock is a member when its root lies in
/// the strip, outside the drop-outs and gaps, and its own number is under the
/// taken share; teeth finer than kFinestTooth_mm cannot be told apart by locks
/// and give every lock its expected share.
std::vector<Member> membersOf(const plan::Piece& piece, const head::HeadShape& shape,
                              const hair::Roots& roots, const hair::RootGrid& grid,
                              std::uint64_t seed);
constexpr double kFinestTooth_mm = 1.5;

}  // namespace combdraft::placement
