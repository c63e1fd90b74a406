#pragma once
// The numbers of a piece that the card shows: where each stands in the piece,
// and its words. Ranges come from the plan file's own table (field_info.h).
#include <optional>
#include <span>

#include "engine/plan/plan.h"

namespace combdraft::cards {

struct PieceNumber {
  enum class Group { Strand, Strip, RootZone, EndZone, Order } group;
  const char* field;   ///< row of plan::fieldTable()
  const char* label;   ///< on screen
  const char* change;  ///< of the undo entry: "thickness"
  const char* unit;
  double shownPerValue;  ///< 100 for shares
  int decimals;
  const char* emptyText;  ///< for numbers that may be empty; null = must be typed
  std::optional<double> (*get)(const plan::Piece&);
  void (*set)(plan::Piece&, const std::optional<double>&);
};

std::span<const PieceNumber> pieceNumbers();

}  // namespace combdraft::cards
