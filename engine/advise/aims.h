#pragma once
// What is wanted of the look, and how far a look is from it.
#include <map>
#include <string>

#include "engine/look/look.h"

namespace combdraft::advise {

/// By look::regionWord; "whole" = the whole look.
using Aims = std::map<std::string, plan::Target>;

/// Root of the mean square over all wishes that can be judged, levels. A
/// contrast one class off counts as one level; a region that is not seen, or too
/// little hair to say, counts for nothing.
double missOf(const look::Readings& readings, const Aims& aims);

/// The levels as they look now, as aims: for a wish without any.
Aims aimsToKeep(const look::Readings& readings);

}  // namespace combdraft::advise
