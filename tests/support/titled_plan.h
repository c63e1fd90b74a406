#pragma once
// A plan told apart by its title and its white hair.
#include "engine/plan/plan.h"

namespace combdraft::tests {

inline plan::Plan titled(const char* title, double white_frac) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::PlanInfo info = plan.info();
  info.title = title;
  plan.put(plan::kPlanId, info);
  plan::Hair hair = plan.hair();
  hair.white_frac = white_frac;
  plan.put(plan::kHairId, hair);
  return plan;
}

}  // namespace combdraft::tests
