#include "engine/advise/effort.h"

#include <set>

#include "engine/base/assumptions.h"

namespace combdraft::advise {

Effort effortOf(const plan::Plan& plan, const plan::ItemId& choice) {
  const Assumptions speed(plan.info().assumptions);
  Effort effort;
  std::set<std::string> shared;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (piece->action == plan::Action::LeaveOut) continue;
    ++effort.pieces;
    switch (piece->taking) {
      case plan::Taking::Slice: effort.minutes += speed["work.slice_min"]; break;
      case plan::Taking::Weave: effort.minutes += speed["work.weave_min"]; break;
      case plan::Taking::Paint: effort.minutes += speed["work.paint_min"]; break;
    }
    if (piece->backcomb.depth_mm > 0 && piece->backcomb.pushed_frac > 0)
      effort.minutes += speed["work.backcomb_min"];
    if (piece->keptIn != plan::KeptIn::OpenAir &&
        (piece->foil.empty() || shared.insert(piece->foil).second))
      ++effort.foils;
  }
  return effort;
}

}  // namespace combdraft::advise
