#pragma once
#include "engine/work/appointment_log.h"

namespace combdraft::work {

/// Every tap of two logs that went on from one, numbered anew. The taps of each keep their
/// order, whatever the clock did meanwhile; between those of the other they stand by their
/// seconds since the first tap where both have that one, else by the wall clock. A tap that
/// either takes back is taken back, but for Placed, which stands where either lets it stand.
AppointmentLog joined(const AppointmentLog& a, const AppointmentLog& b);

}  // namespace combdraft::work
