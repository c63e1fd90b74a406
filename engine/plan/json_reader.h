#pragma once
// Plan file text -> Plan. Strict: what is not understood is refused with its
// place and what would be right; keys that this version does not know are kept.
#include <string_view>

#include "engine/base/result.h"
#include "engine/plan/migrations.h"
#include "engine/plan/parts.h"

namespace combdraft::plan {

inline constexpr int kFormatVersion = 2;
inline constexpr std::string_view kFormatName = "combdraft plan";

/// Reads a whole plan file. Memory stays within a small multiple of the limits
/// in field_info.h. Errors: as parseJson, FileTooLarge, NotAPlan, VersionTooNew,
/// VersionUnknown, and the Field..., Id..., TooManyItems, TextTooLong and
/// PointOffHead codes with where = JSON pointer. What the items mean together
/// (a choice that does not exist, say) is for validate().
Result<Plan> readPlan(std::string_view text);

/// The same, and what was done to a file of an older format to read it. `where`
/// of an error is a place of the file as it was written.
struct PlanAsRead {
  Plan plan;
  Migration migration;
};
Result<PlanAsRead> readPlanAsRead(std::string_view text);

/// Reads parts of a plan: a file with this `formatName`, the plan's version and
/// its lists of formulas, sections, pieces and placed notes, each as in a plan; `head`
/// may be missing. Errors as readPlan, but for names that lead nowhere: those
/// are dropped (tidyParts).
Result<Parts> readParts(std::string_view text, std::string_view formatName);

}  // namespace combdraft::plan
