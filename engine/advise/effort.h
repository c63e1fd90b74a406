#pragma once
// How many pieces a choice has and how many minutes placing them takes, by the
// user's own numbers (assumptions work.*).
#include "engine/plan/plan.h"

namespace combdraft::advise {

struct Effort {
  int pieces = 0;      ///< that are worked: lightened or deepened
  int foils = 0;       ///< pieces that share one count once; open air none
  double minutes = 0;  ///< placing only: never minutes on the hair
};
Effort effortOf(const plan::Plan& plan, const plan::ItemId& choice = {});

/// Minutes for placing some pieces; those that are left out and ids of nothing cost none.
double placingMinutes(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces);

}  // namespace combdraft::advise
