#pragma once
// A plan whose log says which levels came.
#include <vector>

#include "engine/work/log_text.h"
#include "tests/app/demo_plans.h"

namespace combdraft::appointment {

struct Seen {
  std::string piece;
  double level;
};

/// The plan with a log in which these pieces were placed, rinsed and looked at.
inline plan::Plan withLevels(plan::Plan plan, const std::vector<Seen>& seen) {
  work::AppointmentLog log;
  std::int64_t ms = 0;
  const auto tap = [&](work::Tap which, const Seen& of) {
    work::LogEvent event;
    event.tap = which;
    event.pieces = {of.piece};
    if (which == work::Tap::Looked) event.level = of.level;
    ms += 120'000;
    log = work::appended(log, event, {1'700'000'000'000 + ms, ms, "test"});
  };
  for (const Seen& one : seen) tap(work::Tap::Placed, one);
  for (const Seen& one : seen) tap(work::Tap::Rinsed, one);
  for (const Seen& one : seen) tap(work::Tap::Looked, one);
  plan::PlanInfo info = plan.info();
  info.logJson = work::writeLog(log);
  plan.put(plan::kPlanId, info);
  return plan;
}

}  // namespace combdraft::appointment
