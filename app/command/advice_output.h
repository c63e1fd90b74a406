#pragma once
// Openings and findings as text for people and as JSON for programs.
#include <string>

#include "app/command/json_out.h"
#include "engine/advise/advisor.h"

namespace combdraft::command {

std::string adviceText(const advise::Advice& advice);
/// The fields `openings` and `findings` of `look --json`.
void adviceJson(JsonOut& out, const advise::Advice& advice);

}  // namespace combdraft::command
