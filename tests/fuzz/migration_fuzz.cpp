// Any bytes as a plan, pattern or clip of an older format: what the reader takes
// after the migration is written and read again unchanged, and an error names a
// place of the file as it was written. The last byte chooses the format; the text
// before it is the file.
#include <cstdint>
#include <cstdlib>
#include <string>

#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/migrations.h"
#include "tests/fuzz/named_place.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

/// Sets the version where there is one; text that is no JSON stays as it is.
std::string asFormat(std::string_view text, int version) {
  auto root = parseJson(text, {limits::kDepth, limits::kValues});
  if (!root || root->kind != JsonValue::Kind::Object) return std::string(text);
  JsonValue value = std::move(root).value();
  for (std::size_t i = 0; i < value.keys.size(); ++i)
    if (value.keys[i] == "version") value.items[i] = JsonValue::number(std::to_string(version));
  return prettyText(value);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const int version = 1 + data[size - 1] % kFormatVersion;
  const std::string text = asFormat({reinterpret_cast<const char*>(data), size - 1}, version);
  const auto read = readPlanAsRead(text);
  if (!read) {
    if (!namesAPlace(text, read.error().where)) std::abort();
    return 0;
  }
  if (read->migration.to != kFormatVersion) std::abort();
  const std::string written = writePlan(read->plan);
  const auto again = readPlanAsRead(written);
  if (!again || !(again->plan == read->plan) || !again->migration.isNone()) std::abort();
  if (writePlan(again->plan) != written) std::abort();
  return 0;
}
