#pragma once
// A new plan from at most eight answers; each may be skipped.
#include <optional>

#include "app/cards/head_edits.h"
#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::desk {

enum class Strand { Fine, Medium, Coarse };
enum class Amount { Little, Medium, Much };
enum class Length { Short, Chin, Shoulder, Long, VeryLong };

struct NewPlanAnswers {
  std::optional<head::HeadSize> size;
  std::optional<double> circumference_mm;  ///< one tape measure; goes before the size
  std::optional<plan::CurlClass> curl;
  std::optional<Strand> strand;
  std::optional<Amount> amount;
  std::optional<Length> length;
  std::optional<double> rootLevel, middleLevel, endLevel;
  std::optional<cards::PartPlace> part;
  std::optional<cards::WhorlPlace> swirl;
};

/// Everything not answered is as in Plan::fresh. Errors: OutOfRange for a
/// circumference no head has.
Result<plan::Plan> newPlan(const NewPlanAnswers& answers, std::uint64_t number);

}  // namespace combdraft::desk
