#pragma once
// What the worker hands to the window: one look, and what it belongs to.
#include <cstdint>
#include <memory>

#include "engine/look/look.h"

namespace combdraft::live {

enum class Pass { Quick, Full };  ///< few locks at once, or all of them

struct LookResult {
  std::uint64_t revision = 0;     ///< of the document it was made from
  look::LookSettings settings;
  look::LookFrame frame;
  Pass pass = Pass::Full;
};

}  // namespace combdraft::live
