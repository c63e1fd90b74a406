#pragma once
// Drop-outs as people type them: "40-60, 110-125" in mm along the piece.
#include <QString>
#include <optional>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::cards {

QString dropOutText(const std::vector<plan::Stretch>& dropOuts);
/// Nothing for text that is not such a list, or with a stretch that runs
/// backwards. Empty text = no drop-outs.
std::optional<std::vector<plan::Stretch>> dropOutsFrom(const QString& text);

}  // namespace combdraft::cards
