#pragma once
// Readings as a table for people and as JSON for programs.
#include <map>
#include <string>

#include "app/command/json_out.h"
#include "app/command/target_output.h"
#include "engine/advise/advisor.h"
#include "engine/look/look.h"

namespace combdraft::command {

struct LookReport {
  std::string file, title, choice;
  look::LookSettings settings;
  look::Readings readings;
  Targets targets;  ///< of the choice
  std::map<std::string, double> assumptions;  ///< the plan's overrides
  std::optional<advise::Advice> advice;  ///< nothing: not asked for
};

std::string lookTable(const LookReport& report);
/// One object; its fields are listed in docs/command-line.md and only ever grow.
void lookJson(JsonOut& out, const LookReport& report);

}  // namespace combdraft::command
