#include "engine/plan/object_reader.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/plan/utf8.h"

namespace combdraft::plan {

using Kind = JsonValue::Kind;

bool isDate(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  int parts[3] = {0, 0, 0};
  for (std::size_t i = 0, part = 0; i < text.size(); ++i) {
    if (i == 4 || i == 7) {
      ++part;
      continue;
    }
    if (text[i] < '0' || text[i] > '9') return false;
    parts[part] = parts[part] * 10 + (text[i] - '0');
  }
  constexpr int kDays[] = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return parts[1] >= 1 && parts[1] <= 12 && parts[2] >= 1 && parts[2] <= kDays[parts[1] - 1];
}

std::string kindText(const JsonValue& value) {
  switch (value.kind) {
    case Kind::Null: return "null";
    case Kind::False: return "false";
    case Kind::True: return "true";
    case Kind::Number: return "the number " + value.text.substr(0, 40);
    case Kind::Text: return "text";
    case Kind::Array: return "a list";
    case Kind::Object: return "an object";
  }
  return "";
}

bool isId(std::string_view text) {
  return !text.empty() && text.size() <= limits::kIdBytes &&
         std::all_of(text.begin(), text.end(), [](char c) {
           return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                  c == '-' || c == '_' || c == '.';
         });
}

ObjectReader::ObjectReader(ReadState& state, const JsonValue& object, std::string place,
                           std::string kind)
    : state_(state), object_(object), place_(std::move(place)), kind_(std::move(kind)) {}

std::string ObjectReader::shortened(const std::string& text) {
  if (text.size() <= 40) return text;
  std::size_t end = 40;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  return text.substr(0, end) + "...";
}

const JsonValue* ObjectReader::take(std::string_view key) {
  const JsonValue* found = find(key);
  if (found) seen_.emplace(key);
  return found;
}

const JsonValue* ObjectReader::take(std::string_view key, Kind kind, const char* needs) {
  const JsonValue* found = take(key);
  if (found && found->kind != kind) {
    fail(ErrorCode::FieldWrongType, key, {kindText(*found), needs});
    return nullptr;
  }
  return found;
}

const JsonValue* ObjectReader::takeList(std::string_view key, std::size_t least,
                                        std::size_t most) {
  const JsonValue* found = take(key, Kind::Array, "a list");
  if (!found) return nullptr;
  const std::string count = std::to_string(found->items.size());
  if (found->items.size() > most) {
    fail(ErrorCode::TooManyItems, key, {count, std::to_string(most)});
    return nullptr;
  }
  if (found->items.size() < least) {
    fail(ErrorCode::FieldOutOfRange, key,
         {count + (found->items.size() == 1 ? " entry" : " entries"),
          std::to_string(least) + " to " + std::to_string(most) + " entries"});
    return nullptr;
  }
  return found;
}

const JsonValue* ObjectReader::takeText(std::string_view key, std::size_t most) {
  const JsonValue* found = take(key, Kind::Text, "text");
  if (found && found->text.size() > most) {
    fail(ErrorCode::TextTooLong, key, {std::to_string(found->text.size()), std::to_string(most)});
    return nullptr;
  }
  return found;
}

void ObjectReader::need(std::string_view key) {
  if (!state_.failed() && !object_.find(key))
    state_.fail(ErrorCode::FieldMissing, place_, {std::string(key)});
}

double ObjectReader::numberIn(const JsonValue& value, const std::string& place,
                              const FieldInfo& field) {
  const auto typed = parseNumber(value.kind == Kind::Number ? value.text : "");
  if (!typed)
    state_.fail(ErrorCode::FieldWrongType, place,
                {kindText(value), "a number, " + rangeText(field)});
  else if (!(*typed >= field.low && *typed <= field.high))
    state_.fail(ErrorCode::FieldOutOfRange, place,
                {value.text.substr(0, 40), rangeText(field)});
  else
    return *typed;
  return field.low;
}

void ObjectReader::number(std::string_view key, double& value) {
  if (const JsonValue* found = take(key))
    value = numberIn(*found, pointerTo(place_, key), fieldInfo(kind_ + "." + std::string(key)));
}

void ObjectReader::number(std::string_view key, std::optional<double>& value) {
  if (!find(key)) return;
  number(key, value.emplace());
}

void ObjectReader::whole(std::string_view key, int& value) {
  double typed = value;
  number(key, typed);
  if (!state_.failed() && typed != std::floor(typed))
    fail(ErrorCode::FieldOutOfRange, key, {numberText(typed), "a whole number"});
  else
    value = static_cast<int>(typed);
}

void ObjectReader::planNumber(std::string_view key, std::uint64_t& value) {
  const JsonValue* found = take(key);
  if (!found) return;
  const auto typed = parseNumber(found->kind == Kind::Number ? found->text : "");
  const std::string needs = "a whole number, 1 to " + std::to_string(kLargestPlanNumber);
  if (!typed)
    fail(ErrorCode::FieldWrongType, key, {kindText(*found), needs});
  else if (!(*typed >= 1 && *typed <= static_cast<double>(kLargestPlanNumber)) ||
           *typed != std::floor(*typed))
    fail(ErrorCode::FieldOutOfRange, key, {found->text.substr(0, 40), needs});
  else
    value = static_cast<std::uint64_t>(*typed);
}

void ObjectReader::flag(std::string_view key, bool& value) {
  const JsonValue* found = take(key);
  if (!found) return;
  if (found->kind != Kind::True && found->kind != Kind::False)
    return fail(ErrorCode::FieldWrongType, key, {kindText(*found), "true or false"});
  value = found->kind == Kind::True;
}

void ObjectReader::line(std::string_view key, std::string& value) {
  const JsonValue* found = takeText(key, limits::kLineBytes);
  if (!found) return;
  if (hasLineBreakOrControl(found->text))
    return fail(ErrorCode::FieldWrongType, key,
                {"text with a line break or control character", "one line of plain text"});
  value = found->text;
}

void ObjectReader::text(std::string_view key, std::string& value) {
  const JsonValue* found = takeText(key, limits::kTextBytes);
  if (!found) return;
  if (hasControlBesideLines(found->text))
    return fail(ErrorCode::FieldWrongType, key,
                {"text with a control character", "plain text; lines end with a line feed"});
  value = found->text;
}

void ObjectReader::date(std::string_view key, std::string& value) {
  const JsonValue* found = takeText(key, limits::kLineBytes);
  if (!found) return;
  if (!found->text.empty() && !isDate(found->text))
    return fail(ErrorCode::FieldWrongType, key,
                {"\"" + shortened(found->text) + "\"", "a date such as \"2024-05-31\", or \"\""});
  value = found->text;
}

void ObjectReader::id(std::string_view key, ItemId& value) {
  const JsonValue* found = take(key, Kind::Text, "an id");
  if (!found) return;
  if (!found->text.empty() && !isId(found->text))
    return fail(ErrorCode::FieldWrongType, key,
                {"\"" + shortened(found->text) + "\"",
                 "an id: 1 to 64 letters, digits, '-', '_' or '.'"});
  value = found->text;
}

void ObjectReader::ownId(std::string_view key, ItemId& value) {
  need(key);
  id(key, value);
  if (state_.failed()) return;
  if (value.empty()) return fail(ErrorCode::FieldWrongType, key, {"\"\"", "an id: 1 to 64 letters, digits, '-', '_' or '.'"});
  if (value == kPlanId || value == kHeadId || value == kHairId || value == kHandoutId) fail(ErrorCode::IdDuplicate, key, {value});
}

std::optional<ScalpPoint> ObjectReader::pointIn(const JsonValue& value, const std::string& place) {
  if (value.kind != Kind::Array || value.items.size() != 2) {
    state_.fail(ErrorCode::FieldWrongType, place,
                {kindText(value), "a point [bearing, drop] in degrees"});
    return std::nullopt;
  }
  const ScalpPoint point{
      numberIn(value.items[0], place + "/0", fieldInfo("point.bearing_deg")),
      numberIn(value.items[1], place + "/1", fieldInfo("point.drop_deg"))};
  if (state_.failed()) return std::nullopt;
  if (state_.hairline) {
    const Vec3 at = state_.shape->pointAt(point);
    if (state_.lowestHairline->above_mm(at) < -limits::kOffHair_mm)
      state_.fail(ErrorCode::PointOffHead, place,
                  {numberText(-state_.hairline->above_mm(at), 0) + " mm below the hairline",
                   "the hair-bearing part of the head"});
  }
  return point;
}

void ObjectReader::point(std::string_view key, ScalpPoint& value) {
  need(key);
  const JsonValue* found = take(key);
  if (!found) return;
  if (const auto point = pointIn(*found, pointerTo(place_, key))) value = *point;
}

void ObjectReader::point(std::string_view key, std::optional<ScalpPoint>& value) {
  if (!find(key)) return;
  value.emplace();
  point(key, *value);
}

void ObjectReader::points(std::string_view key, std::vector<ScalpPoint>& value, std::size_t least,
                          std::size_t most) {
  if (least > 0) need(key);
  const JsonValue* found = takeList(key, least, most);
  if (!found) return;
  state_.points += found->items.size();
  if (state_.points > limits::kPoints)
    return fail(ErrorCode::TooManyItems, key,
                {"more than " + std::to_string(limits::kPoints) + " points in all",
                 std::to_string(limits::kPoints)});
  value.clear();
  for (std::size_t i = 0; i < found->items.size(); ++i) {
    const auto point = pointIn(found->items[i], pointerTo(place_, key) + "/" + std::to_string(i));
    if (!point) return;
    value.push_back(*point);
  }
}

void ObjectReader::stretches(std::string_view key, std::vector<Stretch>& value) {
  const JsonValue* found = takeList(key, 0, limits::kSmallList);
  if (!found) return;
  value.clear();
  const FieldInfo& field = fieldInfo(kind_ + "." + std::string(key));
  for (std::size_t i = 0; i < found->items.size(); ++i) {
    const std::string place = pointerTo(place_, key) + "/" + std::to_string(i);
    const JsonValue& pair = found->items[i];
    if (pair.kind != Kind::Array || pair.items.size() != 2)
      return state_.fail(ErrorCode::FieldWrongType, place,
                         {kindText(pair), "a stretch [from, to] in mm"});
    const Stretch stretch{numberIn(pair.items[0], place + "/0", field),
                          numberIn(pair.items[1], place + "/1", field)};
    if (state_.failed()) return;
    if (!(stretch.from_mm < stretch.to_mm))
      return state_.fail(ErrorCode::FieldOutOfRange, place,
                         {inlineText(pair), "a stretch that ends after it begins"});
    value.push_back(stretch);
  }
}

void ObjectReader::numbersByName(std::string_view key, std::map<std::string, double>& value) {
  const JsonValue* found = take(key, Kind::Object, "an object of numbers");
  if (!found) return;
  if (found->items.size() > limits::kSmallList)
    return fail(ErrorCode::TooManyItems, key,
                {std::to_string(found->items.size()), std::to_string(limits::kSmallList)});
  for (std::size_t i = 0; i < found->items.size(); ++i) {
    const std::string place = pointerTo(pointerTo(place_, key), found->keys[i]);
    const JsonValue& item = found->items[i];
    const auto typed = parseNumber(item.kind == Kind::Number ? item.text : "");
    if (!typed) return state_.fail(ErrorCode::FieldWrongType, place, {kindText(item), "a number"});
    if (!isId(found->keys[i]))
      return state_.fail(ErrorCode::FieldWrongType, pointerTo(place_, key),
                         {"\"" + shortened(found->keys[i]) + "\"", "the name of an assumption"});
    value[found->keys[i]] = *typed;
  }
}

void ObjectReader::kept(std::string_view key, std::string& json) {
  if (const JsonValue* found = take(key)) json = inlineText(*found);
}

void ObjectReader::extra(Extra& rest) {
  if (state_.failed()) return;
  for (std::size_t i = 0; i < object_.items.size(); ++i)
    if (!seen_.count(object_.keys[i])) rest[object_.keys[i]] = inlineText(object_.items[i]);
}

void ObjectReader::zoneValue(std::string_view zone, const std::string& key, double& value) {
  if (const JsonValue* found = take(zone))
    value = numberIn(*found, pointerTo(place_, zone), fieldInfo(kind_ + "." + key));
}

void ObjectReader::zoneValue(std::string_view zone, const std::string& key,
                             RootMiddleEnd& value) {
  const JsonValue* found = take(zone);
  if (!found) return;
  if (found->kind != Kind::Array || found->items.size() != 3)
    return fail(ErrorCode::FieldWrongType, zone,
                {kindText(*found), "three levels [root, middle, end]"});
  double* const parts[] = {&value.root, &value.middle, &value.end};
  for (std::size_t i = 0; i < 3; ++i)
    *parts[i] = numberIn(found->items[i], pointerTo(place_, zone) + "/" + std::to_string(i),
                         fieldInfo(kind_ + "." + key));
}

void ObjectReader::refuseOthers(const std::string& allowed) {
  if (state_.failed()) return;
  for (const std::string& key : object_.keys)
    if (!seen_.count(key))
      return state_.fail(ErrorCode::FieldUnknownWord, place_, {shortened(key), allowed});
}

}  // namespace combdraft::plan
