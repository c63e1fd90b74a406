#pragma once
// What was agreed with the client: the placement as it stood, how the look was
// shown, a small picture with its span, and the line that it is no promise.
// It stands in PlanInfo::agreedJson as JSON text, outside undo; here it is
// typed. Keys that this version does not know are kept.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// How the picture is turned: as somebody opposite sees it, or as in a mirror.
enum class Facing { AsOthersSee, AsInMirror };

/// How the agreed look was shown. Words are those of the command line.
struct AgreedView {
  std::string worn = "down";       ///< hair::wornWord
  double partShift_mm = 0;         ///< -60 to 60, + toward the wearer's right
  double weeks = 0;                ///< 0 to 26
  std::string light = "daylight";  ///< colour::lightWord
  std::string lift = "as-planned"; ///< "less", "as-planned", "more"
  std::string view = "front";      ///< head::viewWord
  Facing facing = Facing::AsOthersSee;
  bool operator==(const AgreedView&) const = default;
};

/// How light the whole look is, as levels: planned, and from low to high.
struct AgreedSpan {
  double level = 0, low = 0, high = 0;
  bool operator==(const AgreedSpan&) const = default;
};

struct Agreement {
  std::string date;                ///< ISO; "" = not known
  ItemId choice;                   ///< its id in the plan at that time
  std::string choiceName;
  std::optional<Plan> frozen;      ///< that choice alone with its head and hair (frozenChoice)
  AgreedView view;
  std::optional<AgreedSpan> span;
  std::string promiseLine;         ///< as it stood under the picture
  std::string pictureBase64;       ///< PNG; at most kAgreedPictureBytes long; "" = none
  std::string engineVersion;
  std::vector<std::string> earlier;  ///< agreements before this one, newest first, as JSON text
  Extra extra;
  bool operator==(const Agreement&) const = default;
};

/// Largest `pictureBase64`: it rides along in every save of the plan.
inline constexpr std::size_t kAgreedPictureBytes = 60'000;
/// Agreements before the present one that are kept.
inline constexpr std::size_t kEarlierAgreements = 3;

/// One choice of a plan with head, hair and formulas, as a plan of its own:
/// nothing of other choices, no notes of the plan, nothing agreed or logged.
/// Nothing when there is no such choice.
std::optional<Plan> frozenChoice(const Plan& plan, const ItemId& choice);

/// Reads PlanInfo::agreedJson. Missing keys keep their defaults; what is there
/// and wrong is refused with its place ("/agreed/date"). Errors: FileEmpty for
/// "", those of parseJson, FieldWrongType, FieldOutOfRange, FieldUnknownWord,
/// TextTooLong, and those of readPlan for the frozen choice.
Result<Agreement> readAgreement(std::string_view json);

/// One line of JSON, as the plan's reader gives it back. Errors: as a reader of
/// the text would meet them, so that nothing is written that cannot be read.
Result<std::string> writeAgreement(const Agreement& agreement);

/// `next` with what was agreed before it (a plan's agreedJson, readable or not,
/// "" for none) put first among the earlier ones, without those of its own.
Agreement withEarlier(Agreement next, const std::string& beforeJson);

}  // namespace combdraft::plan
