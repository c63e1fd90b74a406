#pragma once
// Where pieces lie, so that a hand finds the place again: the middle of a piece's line from
// what the head itself shows, and for the pieces that go on from it how far each is from the
// one before. Every distance is along the scalp, between the middles of the lines.
#include <QString>
#include <vector>

#include "app/paint/scene.h"

namespace combdraft::handout {

/// Pieces in working order whose places are told in one go.
struct PlaceRun {
  /// One: a single piece. Onward: they go on in one direction, each step within 1 mm of the
  /// step before. Pairs: 1 and 2, 3 and 4 … are each other's mirror within 1 mm, and the
  /// first ones of the pairs go on like that.
  enum class Way { One, Onward, Pairs } way = Way::One;
  std::vector<const paint::PieceShape*> pieces;  ///< at least one
  std::vector<double> steps_mm;                  ///< Onward: one fewer than pieces; Pairs: one fewer than pairs
};

/// Every piece in exactly one run, in the given order. A piece without a line is alone.
std::vector<PlaceRun> placeRuns(const paint::HeadScene& head, const std::vector<const paint::PieceShape*>& pieces);

/// For a row of the record card: "5: back, horizontal, middle 62 mm below the crown, on the
/// centre line; then every 22 mm to 9: …". About 2 ms.
QString placeText(const paint::HeadScene& head, const PlaceRun& run);
/// One sentence for a step of a lesson; of several runs only the first piece is placed and the
/// record card is named. "" without pieces, or where the first has no line.
QString placeSentence(const paint::HeadScene& head, const std::vector<const paint::PieceShape*>& pieces);

}  // namespace combdraft::handout
