#pragma once
// Strict JSON text: a tree that keeps the order of keys and the numbers as
// they were typed, read with limits and printed the same way each time.
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/result.h"

namespace combdraft::plan {

struct JsonValue {
  enum class Kind { Null, False, True, Number, Text, Array, Object };
  Kind kind = Kind::Null;
  std::string text;                ///< Text: its content; Number: as typed
  std::vector<std::string> keys;   ///< Object: keys[i] names items[i]
  std::vector<JsonValue> items;    ///< Array, Object

  static JsonValue number(std::string typed) { return {Kind::Number, std::move(typed), {}, {}}; }
  static JsonValue string(std::string content) { return {Kind::Text, std::move(content), {}, {}}; }
  static JsonValue array() { return {Kind::Array, {}, {}, {}}; }
  static JsonValue object() { return {Kind::Object, {}, {}, {}}; }

  /// The member of that key, or null.
  const JsonValue* find(std::string_view key) const;
  void add(std::string key, JsonValue value);
};

struct JsonLimits {
  std::size_t depth, values;
};

/// The whole of `text` as JSON (RFC 8259), UTF-8. Errors: FileEmpty, JsonSyntax,
/// JsonNotUtf8 and JsonNotFinite (where = "line 3, column 7"), JsonTooDeep,
/// JsonDuplicateKey and TooManyItems (where = JSON pointer).
Result<JsonValue> parseJson(std::string_view text, const JsonLimits& limits);

/// On one line: `{"a": 1, "b": [2, 3]}`.
std::string inlineText(const JsonValue& value);
/// Indented; an array or object that fits on a line of 96 columns stays on it.
/// Ends with a line feed.
std::string prettyText(const JsonValue& value);

/// "/pieces/3/start_mm" from "/pieces/3" and "start_mm" (RFC 6901).
std::string pointerTo(const std::string& parent, std::string_view key);

}  // namespace combdraft::plan
