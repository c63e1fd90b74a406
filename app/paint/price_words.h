#pragma once
// What a choice comes to by the work list's estimate and the user's own rates: minutes of
// work and grams mixed, never the time on the hair, never the reserve.
#include <QString>
#include <optional>

#include "app/store/settings.h"
#include "engine/plan/plan.h"
#include "engine/work/work_list.h"

namespace combdraft::paint {

struct WorkedOut {
  double work_min = 0, mixed_g = 0;
  bool operator==(const WorkedOut&) const = default;
};
/// Of a work list.
WorkedOut workedOut(const work::WorkList& list);
/// As the work list shows it first: as numbered, one pair of hands, by the assumptions.
/// Nothing where no piece of the choice is worked, or the head's measures do not fit. 0.1 s.
std::optional<WorkedOut> workedOut(const plan::Plan& plan, const plan::ItemId& choice);

/// "154.2 EUR"; the number alone without a word for the currency. Precondition: a rate is typed.
QString sumText(const store::Rates& rates, const WorkedOut& worked);
/// "62.5 min of work and 41 g mixed": of what a rate is typed for.
QString workedText(const store::Rates& rates, const WorkedOut& worked);

}  // namespace combdraft::paint
