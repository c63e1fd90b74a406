#pragma once
// Older formats, brought forward step by step in memory before they are read.
// The file itself is left alone until it is saved. One step per version: a new
// format adds a step and samples (DEVELOPERS.md, "A format version").
#include <string>
#include <vector>

#include "engine/plan/json_text.h"

namespace combdraft::plan {

/// A place that has another name since: JSON pointers before and after.
struct MovedPlace {
  std::string from, to;
  bool operator==(const MovedPlace&) const = default;
};

/// What was done to bring a file forward.
struct Migration {
  int from = 0, to = 0;            ///< formats; equal = nothing was done
  std::vector<MovedPlace> moved;
  bool isNone() const { return from == to; }
  bool operator==(const Migration&) const = default;
};

/// Brings `root`, the object of a plan, pattern or clip in format `from`, to the
/// format of this program. What has not the shape of format `from` is left for the
/// reader to refuse. `from`: 1 to kFormatVersion.
Migration migrate(JsonValue& root, int from);

/// A place of the file as it was written: `where` is a pointer after migration.
std::string placeBefore(const Migration& migration, const std::string& where);

/// "1 to 2: what was read in a leaflet stands together (3 places)".
std::string describe(const Migration& migration);

}  // namespace combdraft::plan
