#pragma once
// The appointment log as JSON text, as it stands in a plan's "log"
// (plan::PlanInfo::logJson). Fields that are not known ride along.
#include <string>
#include <string_view>

#include "engine/base/result.h"
#include "engine/work/appointment_log.h"

namespace combdraft::work {

/// "placed", "bowl mixed", "looked", "taken out", "rinsed", "begun"
std::string_view wordOf(Tap tap);

/// An empty text is an empty log. Errors name the place ("/events/3/at_s"): JSON
/// errors, FieldMissing, FieldWrongType, FieldOutOfRange, FieldUnknownWord,
/// TooManyItems (kMostTaps), TextTooLong.
Result<AppointmentLog> readLog(std::string_view json);
/// On one line; readLog gives the same log again. "" for an empty log.
std::string writeLog(const AppointmentLog& log);
/// What the plan's log says is still under product; nothing where it cannot be read.
std::optional<OnHair> onHair(const plan::Plan& plan);

}  // namespace combdraft::work
