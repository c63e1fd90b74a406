#include <iostream>

#include "app/command/commands.h"
#include "app/command/json_out.h"
#include "engine/plan/plan_file.h"
#include "engine/plan/validate.h"

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
    const std::vector<plan::Issue> issues = plan ? plan::validate(*plan) : std::vector<plan::Issue>{};
    bool wrong = !plan;
    for (const plan::Issue& issue : issues) wrong = wrong || issue.severity == plan::Severity::Error;
    if (wrong) outcome = worse(outcome, Outcome::DocumentWrong);
    if (command.form == OutputForm::Table) {
      if (!wrong) std::cout << file << ": the file is fine\n";
      for (const plan::Issue& issue : issues)
        std::cout << "  " << plan::severityWord(issue.severity) << ": " << plan::describe(issue) << '\n';
      continue;
    }
    json.beginObject();
    json.key("plan");
    json.text(file);
    json.key("fine");
    json.boolean(!wrong);
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
    for (const plan::Issue& issue : issues) {
      json.beginObject();
      json.key("severity");
      json.text(std::string(plan::severityWord(issue.severity)));
      json.key("items");
      json.beginList();
      for (const plan::ItemId& item : issue.items) json.text(item);
      json.endList();
      json.key("message");
      json.text(plan::describe(issue));
      json.endObject();
    }
    json.endList();
    json.endObject();
  }
  if (list) json.endList();
  if (command.form == OutputForm::Json) std::cout << json.str() << '\n';
  return outcome;
}

}  // namespace combdraft::command
