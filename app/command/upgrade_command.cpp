#include <iostream>

#include "app/command/commands.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {

Outcome runUpgrade(const UpgradeCommand& command) {
  const Result<plan::PlanAsRead> read = plan::loadPlanAsRead(command.plan);
  if (!read) return complain(read.error());
  if (const Result<void> saved = plan::savePlan(command.out, read->plan); !saved) return complain(saved.error());
  std::cout << command.out << ": "
            << (read->migration.isNone() ? "written; the plan was in the newest format already" : plan::describe(read->migration))
            << '\n';
  return Outcome::Fine;
}

}  // namespace combdraft::command
