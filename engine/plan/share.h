#pragma once
// A copy of a plan to hand on: the drawing without what belongs to a client or to
// an appointment.
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// The plan without notes (its own and those on the head, on sections and pieces),
/// agreed picture, visits and log; fields this program does not know stay out too,
/// since nobody can tell what they hold. `number` becomes its random number, so that
/// nothing ties the copy to a client's data; single hairs fall a little differently
/// with it, and readings stay within their sampling error. The title stays as typed.
Plan sharedCopy(const Plan& plan, std::uint64_t number);

}  // namespace combdraft::plan
