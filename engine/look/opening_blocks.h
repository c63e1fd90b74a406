#pragma once
// The blocks one opening shows: connected patches, light or dark, wide enough
// not to be a ribbon, that stand out from the hair around them.
#include "engine/base/assumptions.h"
#include "engine/look/opening_view.h"

namespace combdraft::look {

/// L* of the darkest and the lightest colour a plan's hair has: the mean of each
/// piece's lightened (or deepened) hair and of each zone's hair left as it is.
struct PlannedColours {
  double darkest = 0, lightest = 0;
  double difference() const { return lightest - darkest; }
};
PlannedColours plannedColours(const LockColours& colours, const hair::Roots& roots,
                              const hair::Locks& locks);

Ground groundOf(const OpeningView& atRest, const LockColours& colours, const PlannedColours& planned,
                double distance_m, const head::HeadShape& shape, const Assumptions& assumptions);

/// Works out the blocks of a view whose cells are coloured. `assumptions`:
/// the block.* thresholds. About 2 ms.
Opening blocksOf(const OpeningView& view, const LockColours& colours, const PlannedColours& planned, Ground ground,
                 double distance_m, const head::HeadShape& shape, const Assumptions& assumptions);

}  // namespace combdraft::look
