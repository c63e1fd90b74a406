#pragma once
#include <algorithm>
#include <string>
#include <string_view>

#include "engine/plan/field_info.h"
#include "engine/plan/json_text.h"

namespace combdraft::plan {

/// Whether the place that an error names (a JSON pointer, "" = the whole) is one of this
/// text; what is missing may be its last step. Text that is no JSON has lines instead.
inline bool namesAPlace(std::string_view text, const std::string& where) {
  const auto root = parseJson(text, {limits::kDepth, limits::kValues});
  if (!root || where.empty()) return true;
  const JsonValue* at = &*root;
  for (std::size_t from = 0; from < where.size();) {
    if (where[from] != '/' || !at) return false;
    const std::size_t end = std::min(where.find('/', from + 1), where.size());
    const JsonValue* next = nullptr;
    for (std::size_t i = 0; i < at->items.size() && !next; ++i) {
      const std::string step = at->kind == JsonValue::Kind::Object ? pointerTo("", at->keys[i]) : '/' + std::to_string(i);
      if (where.compare(from, end - from, step) == 0) next = &at->items[i];
    }
    at = next;
    from = end;
  }
  return true;
}

}  // namespace combdraft::plan
