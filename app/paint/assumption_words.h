#pragma once
// Assumptions in plain words: what each is called, in which group it stands,
// how its value is written, and what a plan has changed. For cards, prints and
// the command line alike.
#include <QString>
#include <map>
#include <vector>

#include "engine/base/assumptions.h"

namespace combdraft::paint {

/// What an assumption moves, as people see it.
enum class AssumptionGroup { Fall, Start, Colour, Line, Speed, Amount };
inline constexpr AssumptionGroup kAssumptionGroups[] = {AssumptionGroup::Fall, AssumptionGroup::Start,
                                                        AssumptionGroup::Colour, AssumptionGroup::Line,
                                                        AssumptionGroup::Speed, AssumptionGroup::Amount};
AssumptionGroup groupOf(const Assumption& assumption);
/// "How hair falls", "Where a line is drawn"
QString groupTitle(AssumptionGroup group);

/// "Reach of the swirl"; the entry's own sentence when it has no name here, and
/// the key itself when it is no assumption.
QString assumptionName(std::string_view key);
bool hasPlainName(std::string_view key);
/// "published [Loussouarn2005]", "own assumption"
QString assumptionOrigin(const Assumption& assumption);

/// How a value is shown: 0.4 "of the planned difference" as 40 %.
struct AssumptionUnit {
  QString text;  ///< "mm", "cm²", "%"; may be ""
  double shownPerValue = 1;
};
AssumptionUnit assumptionUnit(const Assumption& assumption);
/// "36 mm", "40 %"
QString assumptionValue(const Assumption& assumption, double value);

struct ChangedAssumption {
  const Assumption* assumption;
  double value;
};
/// Overrides that differ from the default, in the order of the table. Unknown
/// names and values equal to the default do not count.
std::vector<ChangedAssumption> changedAssumptions(const std::map<std::string, double>& overrides);
/// "Reach of the swirl 30 mm (default 36 mm)"
QString changedText(const ChangedAssumption& changed);
/// All of them in one sentence; "" when there are none.
QString changedText(const std::map<std::string, double>& overrides);

}  // namespace combdraft::paint
