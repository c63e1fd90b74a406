#include <algorithm>
#include <iostream>

#include "app/command/commands.h"
#include "app/command/json_out.h"
#include "app/command/log_check.h"
#include "engine/plan/plan_file.h"
#include "engine/plan/placement_check.h"

namespace combdraft::command {
namespace {

constexpr std::size_t kMostOfLog = 20;  // lines of the table

struct Checked {
  std::string file;
  std::vector<Error> errors;         ///< the file cannot be read as a plan
  std::vector<plan::Issue> issues;   ///< what its items mean together
  plan::Migration migration{};       ///< from an older format
  std::vector<LogFinding> log{};     ///< of its appointment log; never an error
};

Checked checked(const std::string& file) {
  const Result<plan::PlanAsRead> read = plan::loadPlanAsRead(file);
  if (!read) return {file, {read.error()}, {}};
  std::vector<plan::Issue> issues = plan::validate(read->plan);
  for (plan::Issue& issue : plan::checkPlacement(read->plan)) issues.push_back(std::move(issue));
  return {file, {}, std::move(issues), read->migration, checkLog(read->plan)};
}

bool isFine(const Checked& c) { return c.errors.empty() && !plan::hasErrors(c.issues); }

Outcome complainAbout(const Checked& c) {
  Outcome outcome = Outcome::Fine;
  for (const Error& error : c.errors) outcome = worse(outcome, complain(error));
  for (const plan::Issue& issue : c.issues) {
    if (issue.severity != plan::Severity::Error) continue;
    complain(c.file + ": " + plan::describe(issue));
    outcome = worse(outcome, Outcome::DocumentWrong);
  }
  return outcome;
}

void table(const Checked& c) {
  if (isFine(c)) std::cout << c.file << ": the file is fine\n";
  if (!c.migration.isNone()) std::cout << "  read from " << plan::describe(c.migration) << "; saving writes the newer format\n";
  for (const plan::Issue& issue : c.issues)
    if (issue.severity != plan::Severity::Error)
      std::cout << "  " << plan::severityWord(issue.severity) << ": " << plan::describe(issue)
                << '\n';
  for (std::size_t i = 0; i < std::min(c.log.size(), kMostOfLog); ++i)
    std::cout << "  " << plan::severityWord(plan::Severity::Caution) << ": " << c.file << ": " << c.log[i].where << ": " << c.log[i].message << '\n';
  if (c.log.size() > kMostOfLog) std::cout << "  and " << c.log.size() - kMostOfLog << " more of the log; --json lists all\n";
}

void json(JsonOut& out, const Checked& c) {
  const auto text = [&](const char* name, std::string_view value) {
    out.key(name);
    out.text(value);
  };
  out.beginObject();
  text("plan", c.file);
  out.key("fine");
  out.boolean(isFine(c));
  out.key("format");
  c.errors.empty() ? out.number(c.migration.from, 0) : out.null();
  out.key("errors");
  out.beginList();
  for (const Error& error : c.errors) {
    out.beginObject();
    text("code", codeName(error.code));
    text("where", error.where);
    text("message", describe(error));
    out.endObject();
  }
  for (const plan::Issue& issue : c.issues) {
    if (issue.severity != plan::Severity::Error) continue;
    out.beginObject();
    text("code", plan::codeName(issue.code));
    text("where", issue.items.empty() ? std::string() : issue.items.front());
    text("message", plan::describe(issue));
    out.endObject();
  }
  out.endList();
  out.key("findings");
  out.beginList();
  for (const plan::Issue& issue : c.issues) {
    if (issue.severity == plan::Severity::Error) continue;
    out.beginObject();
    text("kind", plan::codeName(issue.code));
    text("severity", plan::severityWord(issue.severity));
    out.key("items");
    out.beginList();
    for (const plan::ItemId& id : issue.items) out.text(id);
    out.endList();
    text("where", "");
    text("message", plan::describe(issue));
    out.endObject();
  }
  for (const LogFinding& finding : c.log) {
    out.beginObject();
    text("kind", finding.kind);
    text("severity", plan::severityWord(plan::Severity::Caution));
    out.key("items");
    out.beginList();
    for (const plan::ItemId& id : finding.items) out.text(id);
    out.endList();
    text("where", finding.where);
    text("message", finding.message);
    out.endObject();
  }
  out.endList();
  out.endObject();
}

}  // namespace

Outcome runCheck(const CheckCommand& command) {
  Outcome outcome = Outcome::Fine;
  JsonOut out;
  const bool list = command.plans.size() > 1;
  if (list) out.beginList();
  for (const std::string& file : command.plans) {
    const Checked result = checked(file);
    outcome = worse(outcome, complainAbout(result));
    command.form == OutputForm::Table ? table(result) : json(out, result);
  }
  if (list) out.endList();
  if (command.form == OutputForm::Json) std::cout << out.str() << '\n';
  return outcome;
}

}  // namespace combdraft::command
