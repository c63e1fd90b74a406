// `work`: the work list of a plan.
#include <iostream>

#include "app/command/commands.h"
#include "app/command/json_out.h"
#include "app/command/work_output.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {

Outcome runWork(const WorkCommand& command) {
  const Result<plan::Plan> plan = plan::loadPlan(command.plan);
  if (!plan) return complain(plan.error());
  LookOptions look;
  look.choice = command.choice;
  const Result<look::LookSettings> which = settingsFor(*plan, look, command.plan);
  if (!which) return complain(which.error());
  work::WorkSettings settings = command.settings;
  settings.choice = which->choice;
  settings.locks = static_cast<int>(command.locks);
  if (command.pairs != 1 && command.pairs != 2) {
    complain("--hands: 1 or 2 pairs of hands");
    return Outcome::WrongUsage;
  }
  settings.pairs = static_cast<int>(command.pairs);
  const Result<work::WorkList> list = work::workListOf(*plan, settings);
  if (!list) {
    Error error = list.error();
    error.file = command.plan;
    return complain(error);
  }
  const auto savings = work::savingsOf(*plan, settings, *list);
  const WorkShown shown{command.plan, choiceName(*plan, *which), *plan, settings, *list, savings};
  if (command.form == OutputForm::Json) {
    JsonOut out;
    workJson(out, shown);
    std::cout << out.str() << '\n';
  } else {
    workTable(std::cout, shown);
  }
  return Outcome::Fine;
}

}  // namespace combdraft::command
