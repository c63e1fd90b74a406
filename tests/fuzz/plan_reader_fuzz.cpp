// Any bytes: the reader answers, and what it reads is written and read again
// unchanged. Start with the example plans:
//   plan_reader_fuzz -max_total_time=30 CORPUS examples
#include <cstdint>
#include <cstdlib>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/validate.h"

using namespace combdraft;
using namespace combdraft::plan;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto plan = readPlan({reinterpret_cast<const char*>(data), size});
  if (!plan) {
    if (describe(plan.error()).empty()) std::abort();
    return 0;
  }
  const std::string text = writePlan(*plan);
  const auto again = readPlan(text);
  if (!again || !(*again == *plan) || writePlan(*again) != text) std::abort();
  for (const Issue& issue : validate(*plan))
    if (describe(issue).empty()) std::abort();
  return 0;
}
