#include "engine/work/speeds.h"

namespace combdraft::work {

bool isBackcombed(const plan::Piece& piece) {
  return piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0;
}

bool isWorked(const plan::Piece& piece) { return piece.action != plan::Action::LeaveOut; }

PieceMinutes minutesOf(const plan::Piece& piece, const Assumptions& speeds) {
  if (!isWorked(piece)) return {};
  PieceMinutes minutes;
  switch (piece.taking) {
    case plan::Taking::Slice: minutes.place = speeds["work.slice_min"]; break;
    case plan::Taking::Weave: minutes.place = speeds["work.weave_min"]; break;
    case plan::Taking::Paint: minutes.place = speeds["work.paint_min"]; break;
  }
  if (isBackcombed(piece)) {
    minutes.backcomb = speeds["work.backcomb_min"];
    minutes.combOut = speeds["work.combOut_min"];
  }
  return minutes;
}

}  // namespace combdraft::work
