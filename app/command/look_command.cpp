#include <iostream>

#include "app/command/commands.h"
#include "app/command/look_output.h"
#include "app/command/progress.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {
namespace {

Result<LookReport> lookAt(const std::string& file, const LookCommand& command) {
  const Result<plan::Plan> plan = plan::loadPlan(file);
  if (!plan) return plan.error();
  const Result<look::LookSettings> settings = settingsFor(*plan, command.look, file);
  if (!settings) return settings.error();
  const int locks = static_cast<int>(command.look.locks);
  const Progress progress(file + ": working out the hair, " + std::to_string(locks) + " locks");
  look::LookEngine engine(locks);
  const Result<look::LookFrame> frame = engine.update(*plan, *settings, {}, {});
  if (!frame) {
    Error error = frame.error();
    error.file = file;
    return error;
  }
  return LookReport{file, plan->info().title, choiceName(*plan, *settings), *settings,
                    *frame->readings};
}

}  // namespace

Outcome runLook(const LookCommand& command) {
  Outcome outcome = Outcome::Fine;
  JsonOut json;
  const bool list = command.plans.size() > 1;
  if (list) json.beginList();
  for (const std::string& file : command.plans) {
    const Result<LookReport> report = lookAt(file, command);
    if (!report) {
      outcome = worse(outcome, complain(report.error()));
      continue;
    }
    if (command.form == OutputForm::Json)
      lookJson(json, *report);
    else
      std::cout << lookTable(*report) << (list ? "\n" : "") << std::flush;
  }
  if (list) json.endList();
  if (command.form == OutputForm::Json && !json.str().empty()) std::cout << json.str() << '\n';
  return outcome;
}

}  // namespace combdraft::command
