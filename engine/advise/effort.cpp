#include "engine/advise/effort.h"

#include <set>

#include "engine/work/speeds.h"

namespace combdraft::advise {

Effort effortOf(const plan::Plan& plan, const plan::ItemId& choice) {
  const Assumptions speeds(plan.info().assumptions);
  Effort effort;
  std::set<std::string> shared;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (!work::isWorked(*piece)) continue;
    ++effort.pieces;
    effort.minutes += work::minutesOf(*piece, speeds).toPlace();
    if (piece->keptIn != plan::KeptIn::OpenAir &&
        (piece->foil.empty() || shared.insert(piece->foil).second))
      ++effort.foils;
  }
  return effort;
}

double placingMinutes(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  const Assumptions speeds(plan.info().assumptions);
  double minutes = 0;
  for (const plan::ItemId& id : pieces)
    if (const auto* piece = plan.find<plan::Piece>(id)) minutes += work::minutesOf(*piece, speeds).toPlace();
  return minutes;
}

}  // namespace combdraft::advise
