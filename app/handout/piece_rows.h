#pragma once
// The pieces of a record card in rows: pieces that follow each other in working order, are
// worked the same way and lie so that one sentence places them all share one.
#include <QString>
#include <vector>

#include "app/handout/piece_words.h"

namespace combdraft::handout {

/// What is printed of one piece or of several. Distances are mm, as piece_measures.h has them.
struct PieceRow {
  Pieces pieces;    ///< of one section, their numbers without a gap
  QString numbers;  ///< "7", "12–27"; "–" for a piece without a number
  QString where;    ///< section, place (piece_places.h) and length: "hem; back, horizontal, …; 82 to 118 mm long"
  QString takenAs, thick, start, backcomb, colour, keptIn;  ///< the same for every piece of the row
};

/// In working order, every piece of the scene in exactly one row.
std::vector<PieceRow> pieceRows(const paint::Scene& scene);

}  // namespace combdraft::handout
