#pragma once
// Patterns: sections with their rules and pieces, under a name, that can be
// used on any head. A pattern is placement only: it holds no formula and no
// level, and on tight curls it brings no backcomb.
#include <string>
#include <string_view>

#include "engine/plan/parts.h"
#include "engine/plan/validate.h"

namespace combdraft::plan {

inline constexpr std::string_view kPatternFormat = "combdraft pattern";

/// The selected sections with the pieces in them, under a name. Formulas are left
/// out and levels are as for a new piece: they are the client's, not the pattern's.
Parts patternOf(const Plan& plan, const std::vector<ItemId>& ids, const std::string& name,
                const std::string& goodFor, const std::string& notFor);

std::string writePattern(const Parts& pattern);
/// Errors as readParts, and FieldMissing for one without name or sections.
Result<Parts> readPattern(std::string_view text);

/// What using a pattern did.
struct UsedPattern {
  ChangeSet edit;                     ///< `args` as addParts
  bool isBackcombTakenOut = false;    ///< there was some, and the curls are tight
  std::vector<ItemId> withoutPieces;  ///< sections that have no room for a piece on this head
  std::vector<Issue> issues;          ///< of what came: errors, and hair too short for it
};

/// Adds the pattern to the active choice; what is there stays. Error: TooManyItems.
Result<UsedPattern> usePattern(const Plan& plan, const Parts& pattern);

}  // namespace combdraft::plan
