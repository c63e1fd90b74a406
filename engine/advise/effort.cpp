#include "engine/advise/effort.h"

#include <set>

#include "engine/base/assumptions.h"

namespace combdraft::advise {
namespace {

double minutesOf(const plan::Piece& piece, const Assumptions& speed) {
  double minutes = piece.taking == plan::Taking::Slice   ? speed["work.slice_min"]
                   : piece.taking == plan::Taking::Weave ? speed["work.weave_min"]
                                                         : speed["work.paint_min"];
  if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0) minutes += speed["work.backcomb_min"];
  return minutes;
}

}  // namespace

Effort effortOf(const plan::Plan& plan, const plan::ItemId& choice) {
  const Assumptions speed(plan.info().assumptions);
  Effort effort;
  std::set<std::string> shared;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (piece->action == plan::Action::LeaveOut) continue;
    ++effort.pieces;
    effort.minutes += minutesOf(*piece, speed);
    if (piece->keptIn != plan::KeptIn::OpenAir &&
        (piece->foil.empty() || shared.insert(piece->foil).second))
      ++effort.foils;
  }
  return effort;
}

double placingMinutes(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  const Assumptions speed(plan.info().assumptions);
  double minutes = 0;
  for (const plan::ItemId& id : pieces)
    if (const auto* piece = plan.find<plan::Piece>(id); piece && piece->action != plan::Action::LeaveOut)
      minutes += minutesOf(*piece, speed);
  return minutes;
}

}  // namespace combdraft::advise
