#pragma once
// What a choice wants and how its look stands to it, for people and programs.
#include <map>
#include <string>

#include "app/command/json_out.h"
#include "engine/look/look.h"

namespace combdraft::command {

using Targets = std::map<std::string, plan::Target>;

/// `tolerance_levels`: look::targetTolerance_levels of the plan.
/// A line for each region with a target, whole head first; "" without targets.
std::string targetLines(const Targets& targets, const look::Readings& readings, double tolerance_levels);
/// A list of objects; docs/command-line.md lists their fields.
void targetJson(JsonOut& out, const Targets& targets, const look::Readings& readings,
                double tolerance_levels);

}  // namespace combdraft::command
