#pragma once
// Plan file text -> Plan. Strict: what is not understood is refused with its
// place and what would be right; keys that this version does not know are kept.
#include <string_view>

#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::plan {

inline constexpr int kFormatVersion = 1;
inline constexpr std::string_view kFormatName = "combdraft plan";

/// Reads a whole plan file. Memory stays within a small multiple of the limits
/// in field_info.h. Errors: as parseJson, FileTooLarge, NotAPlan, VersionTooNew,
/// VersionUnknown, and the Field..., Id..., TooManyItems, TextTooLong and
/// PointOffHead codes with where = JSON pointer. What the items mean together
/// (a choice that does not exist, say) is for validate().
Result<Plan> readPlan(std::string_view text);

}  // namespace combdraft::plan
