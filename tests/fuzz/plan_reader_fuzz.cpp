// Any bytes: the reader answers, an error names a place of the text, and what it reads is
// written and read again unchanged. Start with the example plans:
//   plan_reader_fuzz -max_total_time=30 CORPUS examples
#include <cstdint>
#include <cstdlib>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/validate.h"
#include "tests/fuzz/named_place.h"

using namespace combdraft;
using namespace combdraft::plan;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view given(reinterpret_cast<const char*>(data), size);
  const auto plan = readPlan(given);
  if (!plan) {
    if (!namesAPlace(given, plan.error().where)) std::abort();
    return 0;
  }
  const std::string text = writePlan(*plan);
  const auto again = readPlan(text);
  if (!again || !(*again == *plan) || writePlan(*again) != text) std::abort();
  (void)validate(*plan);
  return 0;
}
