#pragma once
// The measures of the head and the moves of its hairline that the card shows.
#include <optional>
#include <span>

#include "engine/plan/plan.h"

namespace combdraft::cards {

struct HeadNumber {
  const char* field;   ///< row of plan::fieldTable()
  const char* label;   ///< on screen
  const char* change;  ///< of the undo entry
  std::optional<double> (*get)(const plan::Head&);
  void (*set)(plan::Head&, const std::optional<double>&);
  /// What a measure that is not typed follows to; null = always has a value.
  double (*followed_mm)(const head::FittedHead&);
};

std::span<const HeadNumber> headMeasures();
std::span<const HeadNumber> hairlineMoves();

}  // namespace combdraft::cards
