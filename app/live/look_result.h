#pragma once
// What the worker hands to the window: a look or an advice, and what it belongs to.
#include <cstdint>
#include <memory>

#include "engine/advise/advisor.h"
#include "engine/look/look.h"

namespace combdraft::live {

enum class Pass { Quick, Full };  ///< few locks at once, or all of them

struct LookResult {
  std::uint64_t revision = 0;     ///< of the document it was made from
  look::LookSettings settings;
  look::LookFrame frame;
  Pass pass = Pass::Full;
};

/// What needs a look, and the plan it belongs to.
struct AdviceResult {
  std::uint64_t revision = 0;
  look::LookSettings settings;
  advise::Advice advice;
};

}  // namespace combdraft::live
