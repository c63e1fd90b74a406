#pragma once
// The zones of engine/plan/hair_zone.h, under the names of this module.
#include "engine/plan/hair_zone.h"

namespace combdraft::hair {

using plan::HairZone;
using plan::zoneAt;

}  // namespace combdraft::hair
