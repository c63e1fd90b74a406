#pragma once
// What is wrong with the appointment log of a plan: it cannot be read, or what it says does
// not fit together. Nothing of it keeps a plan from being used.
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::command {

struct LogFinding {
  std::string kind;     ///< "log-field-out-of-range", "log-clock-set-back"
  std::string where;    ///< place in the file: "/log/events/3/at_s"
  std::string message;  ///< what was found and what would be right
  std::vector<plan::ItemId> items;
};

/// Empty for a log without trouble, and for none.
std::vector<LogFinding> checkLog(const plan::Plan& plan);

}  // namespace combdraft::command
