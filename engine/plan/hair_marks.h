#pragma once
// What the hair card says of the hair that a piece takes.
#include <set>

#include "engine/plan/plan.h"

namespace combdraft::plan {

/// Zones that the points of a piece's line lie in.
std::set<HairZone> zonesOf(const head::HeadShape& shape, const Piece& piece);

/// Whether the hair of any of these zones is noted to be in that condition.
bool anyIn(const Hair& hair, const std::set<HairZone>& zones, Condition condition);

/// Whether lightener of a piece reaches hair that is noted to be already lighter
/// than its zone's roots, as bands or scattered through.
bool meetsLightHair(const Hair& hair, const std::set<HairZone>& zones, const Piece& piece);

}  // namespace combdraft::plan
