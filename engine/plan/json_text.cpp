#include "engine/plan/json_text.h"

#include <algorithm>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <unordered_set>

#include "engine/plan/utf8.h"

namespace combdraft::plan {
namespace {

std::string placeText(std::string_view text, std::size_t offset) {
  std::size_t line = 1, column = 1;
  for (std::size_t i = 0; i < std::min(offset, text.size()); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if (byte == '\n') {
      ++line;
      column = 1;
    } else if ((byte & 0xC0) != 0x80) {
      ++column;
    }
  }
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

// From the library's message only what is plain ASCII and helps: what stands
// there and what was expected.
std::string syntaxText(const std::string& message) {
  const auto part = [&](const std::string& from, const std::string& until) -> std::string {
    const std::size_t begin = message.find(from);
    if (begin == std::string::npos) return {};
    const std::size_t start = begin + from.size();
    const std::size_t end = until.empty() ? message.size() : message.find(until, start);
    return message.substr(start, (end == std::string::npos ? message.size() : end) - start);
  };
  std::string found = part(" - ", ";");
  const std::string expected = part("; expected ", "");
  if (!expected.empty()) found += ", expected " + expected;
  const bool plain = std::all_of(found.begin(), found.end(),
                                 [](char c) { return c >= ' ' && c <= '~'; });
  return plain && !found.empty() ? found : "unexpected text";
}

/// Builds the tree from the library's events and stops at the first error.
class TreeBuilder {
 public:
  using number_integer_t = nlohmann::json::number_integer_t;
  using number_unsigned_t = nlohmann::json::number_unsigned_t;
  using number_float_t = nlohmann::json::number_float_t;
  using string_t = nlohmann::json::string_t;
  using binary_t = nlohmann::json::binary_t;

  TreeBuilder(std::string_view text, const JsonLimits& limits) : text_(text), limits_(limits) {}

  bool null() { return place({}); }
  bool boolean(bool value) {
    return place({value ? JsonValue::Kind::True : JsonValue::Kind::False, {}, {}, {}});
  }
  bool number_integer(number_integer_t value) {
    return place(JsonValue::number(std::to_string(value)));
  }
  bool number_unsigned(number_unsigned_t value) {
    return place(JsonValue::number(std::to_string(value)));
  }
  bool number_float(number_float_t, const string_t& typed) {
    std::string text = typed;  // the lexer puts the C locale's decimal mark in
    for (char& c : text)
      if (std::string_view("0123456789+-eE.").find(c) == std::string_view::npos) c = '.';
    return place(JsonValue::number(std::move(text)));
  }
  bool string(string_t& content) { return place(JsonValue::string(std::move(content))); }
  bool binary(binary_t&) { return false; }
  bool start_object(std::size_t) { return open(JsonValue::object()); }
  bool start_array(std::size_t) { return open(JsonValue::array()); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }
  bool key(string_t& name) {
    Level& level = levels_.back();
    if (!level.seen.insert(name).second)
      return fail({ErrorCode::JsonDuplicateKey, pointerTo(pointerHere(), name), {name}, {}});
    level.value.keys.push_back(std::move(name));
    return true;
  }
  bool parse_error(std::size_t position, const std::string&,
                   const nlohmann::detail::exception& problem) {
    const std::size_t offset = position > 0 ? position - 1 : 0;
    if (problem.id == 406) {  // number overflow
      std::size_t begin = std::min(offset, text_.size());
      while (begin > 0 && std::string_view("0123456789+-eE.").find(text_[begin - 1]) !=
                              std::string_view::npos)
        --begin;
      return fail({ErrorCode::JsonNotFinite, placeText(text_, begin),
                   {std::string(text_.substr(begin, std::min<std::size_t>(offset - begin, 40)))},
                   {}});
    }
    if (const auto word = notFiniteWord(offset))
      return fail({ErrorCode::JsonNotFinite, placeText(text_, word->first),
                   {std::string(word->second)}, {}});
    return fail({ErrorCode::JsonSyntax, placeText(text_, offset), {syntaxText(problem.what())}, {}});
  }

  Result<JsonValue> take() && {
    if (error_) return *std::move(error_);
    return std::move(root_);
  }

 private:
  struct Level {
    JsonValue value;
    std::unordered_set<std::string> seen{};
  };

  bool fail(Error error) {
    if (!error_) error_ = std::move(error);
    return false;
  }
  bool count() {
    if (++values_ > limits_.values)
      return fail({ErrorCode::TooManyItems, pointerHere(),
                   {"more than " + std::to_string(limits_.values) + " values",
                    std::to_string(limits_.values)}, {}});
    return true;
  }
  bool place(JsonValue value) {
    if (!count()) return false;
    if (levels_.empty())
      root_ = std::move(value);
    else
      levels_.back().value.items.push_back(std::move(value));
    return true;
  }
  bool open(JsonValue value) {
    if (!count()) return false;
    if (levels_.size() >= limits_.depth)
      return fail({ErrorCode::JsonTooDeep, pointerHere(), {std::to_string(limits_.depth)}, {}});
    levels_.push_back({std::move(value)});
    return true;
  }
  bool close() {
    JsonValue done = std::move(levels_.back().value);
    levels_.pop_back();
    if (levels_.empty())
      root_ = std::move(done);
    else
      levels_.back().value.items.push_back(std::move(done));
    return true;
  }
  // The place of the value that is being read.
  std::string pointerHere() const {
    std::string pointer;
    for (const Level& level : levels_) {
      const JsonValue& v = level.value;
      if (v.kind == JsonValue::Kind::Array)
        pointer += "/" + std::to_string(v.items.size());
      else if (v.keys.size() > v.items.size())
        pointer = pointerTo(pointer, v.keys.back());
    }
    return pointer;
  }
  // NaN and Infinity are no JSON, but people's programs write them.
  std::optional<std::pair<std::size_t, std::string_view>> notFiniteWord(std::size_t offset) const {
    for (const std::string_view word : {"NaN", "nan", "-Infinity", "Infinity", "-inf", "inf"})
      for (std::size_t back = 0; back < word.size() && back <= offset; ++back)
        if (text_.substr(offset - back, word.size()) == word)
          return std::make_pair(offset - back, word);
    return std::nullopt;
  }

  std::string_view text_;
  JsonLimits limits_;
  std::size_t values_ = 0;
  std::vector<Level> levels_;
  JsonValue root_;
  std::optional<Error> error_;
};

void appendText(std::string& out, std::string_view content) {
  constexpr char kHex[] = "0123456789abcdef";
  out += '"';
  for (const char c : content) {
    const auto byte = static_cast<unsigned char>(c);
    switch (c) {
      case '"': out += "\\\""; break;
      case '\\': out += "\\\\"; break;
      case '\n': out += "\\n"; break;
      case '\r': out += "\\r"; break;
      case '\t': out += "\\t"; break;
      default:
        if (byte < 0x20) {
          out += "\\u00";
          out += kHex[byte >> 4];
          out += kHex[byte & 15];
        } else {
          out += c;
        }
    }
  }
  out += '"';
}

void appendInline(std::string& out, const JsonValue& value) {
  switch (value.kind) {
    case JsonValue::Kind::Null: out += "null"; return;
    case JsonValue::Kind::False: out += "false"; return;
    case JsonValue::Kind::True: out += "true"; return;
    case JsonValue::Kind::Number: out += value.text; return;
    case JsonValue::Kind::Text: appendText(out, value.text); return;
    case JsonValue::Kind::Array:
    case JsonValue::Kind::Object: break;
  }
  const bool object = value.kind == JsonValue::Kind::Object;
  out += object ? '{' : '[';
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    if (i) out += ", ";
    if (object) {
      appendText(out, value.keys[i]);
      out += ": ";
    }
    appendInline(out, value.items[i]);
  }
  out += object ? '}' : ']';
}

constexpr std::size_t kLineWidth = 96;

// How wide the value is on one line, counted no further than `most`.
std::size_t inlineWidth(const JsonValue& value, std::size_t most) {
  std::size_t width = value.text.size() + 5 + 2 * value.items.size();
  for (const std::string& key : value.keys) width += key.size() + 4;
  for (const JsonValue& item : value.items) {
    if (width > most) break;
    width += inlineWidth(item, most);
  }
  return width;
}

void appendPretty(std::string& out, const JsonValue& value, std::size_t indent,
                  std::size_t column) {
  const bool object = value.kind == JsonValue::Kind::Object;
  if (!object && value.kind != JsonValue::Kind::Array) return appendInline(out, value);
  if (value.items.empty()) return appendInline(out, value);
  if (indent > 0 && inlineWidth(value, 4 * kLineWidth) <= 4 * kLineWidth) {
    std::string line;
    appendInline(line, value);
    if (column + line.size() < kLineWidth) {
      out += line;
      return;
    }
  }
  const std::string inside(indent + 2, ' ');
  out += object ? "{" : "[";
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    out += i ? ",\n" : "\n";
    const std::size_t lineStart = out.size();
    out += inside;
    if (object) {
      appendText(out, value.keys[i]);
      out += ": ";
    }
    appendPretty(out, value.items[i], indent + 2, out.size() - lineStart);
  }
  out += "\n" + std::string(indent, ' ') + (object ? "}" : "]");
}

}  // namespace

const JsonValue* JsonValue::find(std::string_view key) const {
  const auto it = std::find(keys.begin(), keys.end(), key);
  return it == keys.end() ? nullptr : &items[static_cast<std::size_t>(it - keys.begin())];
}

void JsonValue::add(std::string key, JsonValue value) {
  keys.push_back(std::move(key));
  items.push_back(std::move(value));
}

Result<JsonValue> parseJson(std::string_view text, const JsonLimits& limits) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return Error{ErrorCode::FileEmpty, {}, {}, {}};
  if (const auto bad = firstBadUtf8(text))
    return Error{ErrorCode::JsonNotUtf8, placeText(text, *bad), {}, {}};
  TreeBuilder builder(text, limits);
  nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
  return std::move(builder).take();
}

std::string inlineText(const JsonValue& value) {
  std::string out;
  appendInline(out, value);
  return out;
}

std::string prettyText(const JsonValue& value) {
  std::string out;
  appendPretty(out, value, 0, 0);
  out += '\n';
  return out;
}

std::string pointerTo(const std::string& parent, std::string_view key) {
  std::string pointer = parent + "/";
  for (const char c : key) {
    if (c == '~')
      pointer += "~0";
    else if (c == '/')
      pointer += "~1";
    else
      pointer += c;
  }
  return pointer;
}

}  // namespace combdraft::plan
