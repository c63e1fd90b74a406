#pragma once
// Minutes of the hand for one piece, by the user's own numbers (assumptions
// work.*_min). Minutes of work only: never minutes on the hair.
#include "engine/base/assumptions.h"
#include "engine/plan/plan.h"

namespace combdraft::work {

struct PieceMinutes {
  double place = 0;     ///< taking it and putting the product on
  double backcomb = 0;  ///< before it
  double combOut = 0;   ///< opening the backcombed cushion after the rinse
  double toPlace() const { return place + backcomb; }
};
/// All 0 for hair that is left out.
PieceMinutes minutesOf(const plan::Piece& piece, const Assumptions& speeds);

bool isBackcombed(const plan::Piece& piece);
bool isWorked(const plan::Piece& piece);  ///< lightened or deepened

}  // namespace combdraft::work
