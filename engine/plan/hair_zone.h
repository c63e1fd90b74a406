#pragma once
// Which of the six hair zones a scalp point lies in.
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// A function of the place only; heights scale with c/90, depths with b/94.9.
/// Front: ahead of the ear-to-ear line above the ridge's front; top, crown:
/// above the ridge; nape: below the occipital line; sides and back between.
HairZone zoneAt(const head::HeadShape& shape, const Vec3& surfacePoint);

}  // namespace combdraft::plan
