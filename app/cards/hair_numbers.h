#pragma once
// The single numbers of the hair that the card shows: where each stands, and its
// words. Ranges come from the plan file's own table (field_info.h).
#include <optional>
#include <span>

#include "engine/plan/plan.h"

namespace combdraft::cards {

struct HairNumber {
  const char* field;   ///< row of plan::fieldTable()
  const char* label;   ///< on screen
  const char* change;  ///< of the undo entry
  const char* unit;
  double shownPerValue;
  int decimals;
  std::optional<double> (*get)(const plan::Hair&);
  void (*set)(plan::Hair&, const std::optional<double>&);
  const char* emptyText;  ///< for a number that may be empty; null = must be typed
};

std::span<const HairNumber> hairNumbers();

}  // namespace combdraft::cards
