#pragma once
// A work list as a table for people, and as JSON (docs/command-line.md).
#include <ostream>
#include <string>
#include <vector>

#include "app/command/json_out.h"
#include "engine/plan/plan.h"
#include "engine/work/work_list.h"

namespace combdraft::command {

struct WorkShown {
  std::string file, choice;  ///< as given; the choice's name
  const plan::Plan& plan;
  const work::WorkSettings& settings;
  const work::WorkList& list;
  const std::vector<work::Saving>& savings;
};
void workTable(std::ostream& out, const WorkShown& shown);
void workJson(JsonOut& out, const WorkShown& shown);

}  // namespace combdraft::command
