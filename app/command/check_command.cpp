#include <iostream>

#include "app/command/commands.h"
#include "app/command/json_out.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {

Outcome runCheck(const CheckCommand& command) {
  Outcome outcome = Outcome::Fine;
  JsonOut json;
  const bool list = command.plans.size() > 1;
  if (list) json.beginList();
  for (const std::string& file : command.plans) {
    const Result<plan::Plan> plan = plan::loadPlan(file);
    std::vector<Error> errors;
    if (!plan) errors.push_back(plan.error());
    for (const Error& error : errors) outcome = worse(outcome, complain(error));
    if (command.form == OutputForm::Table) {
      if (errors.empty()) std::cout << file << ": the file is fine\n";
      continue;
    }
    json.beginObject();
    json.key("plan");
    json.text(file);
    json.key("fine");
    json.boolean(errors.empty());
    json.key("errors");
    json.beginList();
    for (const Error& error : errors) {
      json.beginObject();
      json.key("code");
      json.text(codeName(error.code));
      json.key("where");
      json.text(error.where);
      json.key("message");
      json.text(describe(error));
      json.endObject();
    }
    json.endList();
    json.key("findings");
    json.beginList();
    json.endList();
    json.endObject();
  }
  if (list) json.endList();
  if (command.form == OutputForm::Json) std::cout << json.str() << '\n';
  return outcome;
}

}  // namespace combdraft::command
