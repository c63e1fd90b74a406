#include "engine/work/log_text.h"

#include <array>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_text.h"

namespace combdraft::work {
namespace {

using plan::JsonValue;
using Kind = JsonValue::Kind;

// 31 years: a plan may see many visits. It keeps sums exact, no more.
constexpr double kLongest_s = 1e9, kLargestWhole = 9007199254740991.0;
constexpr std::array<std::pair<Tap, std::string_view>, 6> kWords{{{Tap::Placed, "placed"},
                                                                  {Tap::BowlMixed, "bowl mixed"},
                                                                  {Tap::Looked, "looked"},
                                                                  {Tap::TakenOut, "taken out"},
                                                                  {Tap::Rinsed, "rinsed"},
                                                                  {Tap::Begun, "begun"}}};

/// One object being read; the first error stops what follows.
class Fields {
 public:
  Fields(const JsonValue& object, std::string place, std::optional<Error>& error)
      : object_(object), place_(std::move(place)), error_(error) {
    if (object.kind != Kind::Object) fail(ErrorCode::FieldWrongType, {}, {"something else", "an object"});
  }

  const JsonValue* take(std::string_view key) {
    seen_.emplace_back(key);
    return error_ || object_.kind != Kind::Object ? nullptr : object_.find(key);
  }
  void need(std::string_view key) {
    if (!error_ && !object_.find(key)) fail(ErrorCode::FieldMissing, {}, {std::string(key)});
  }
  std::optional<double> number(std::string_view key, double low, double high) {
    const JsonValue* found = take(key);
    if (!found) return std::nullopt;
    const auto value = found->kind == Kind::Number ? parseNumber(found->text) : std::nullopt;
    if (!value) return fail(ErrorCode::FieldWrongType, key, {"no number", "a number"}), std::nullopt;
    if (*value < low || *value > high)
      return fail(ErrorCode::FieldOutOfRange, key, {numberText(*value), numberText(low) + " to " + numberText(high)}), std::nullopt;
    return value;
  }
  std::optional<std::int64_t> whole(std::string_view key) {
    const auto value = number(key, -kLargestWhole, kLargestWhole);
    if (value && *value != std::floor(*value)) return fail(ErrorCode::FieldWrongType, key, {numberText(*value), "a whole number"}), std::nullopt;
    return value ? std::optional(static_cast<std::int64_t>(*value)) : std::nullopt;
  }
  std::string text(std::string_view key) {
    const JsonValue* found = take(key);
    if (!found) return {};
    if (found->kind != Kind::Text) return fail(ErrorCode::FieldWrongType, key, {"no text", "text"}), std::string();
    if (found->text.size() > plan::limits::kTextBytes)
      return fail(ErrorCode::TextTooLong, key, {std::to_string(found->text.size()), std::to_string(plan::limits::kTextBytes)}), std::string();
    return found->text;
  }
  std::vector<std::string> texts(std::string_view key) {
    std::vector<std::string> all;
    const JsonValue* found = take(key);
    if (!found) return all;
    if (found->kind != Kind::Array) return fail(ErrorCode::FieldWrongType, key, {"no list", "a list of ids"}), all;
    for (const JsonValue& item : found->items) {
      if (item.kind != Kind::Text) return fail(ErrorCode::FieldWrongType, key, {"no text", "a list of ids"}), all;
      all.push_back(item.text);
    }
    return all;
  }
  bool flag(std::string_view key) {
    const JsonValue* found = take(key);
    if (found && found->kind != Kind::True && found->kind != Kind::False) fail(ErrorCode::FieldWrongType, key, {"something else", "true or false"});
    return found && found->kind == Kind::True;
  }
  /// {"piece-1": [9, 8, 10]}: level, low and high, 1 to 12.
  std::map<plan::ItemId, plan::LiftsTo> lifts(std::string_view key) {
    std::map<plan::ItemId, plan::LiftsTo> all;
    const JsonValue* found = take(key);
    if (!found) return all;
    if (found->kind != Kind::Object) return fail(ErrorCode::FieldWrongType, key, {"something else", "an object"}), all;
    for (std::size_t i = 0; i < found->keys.size(); ++i) {
      const JsonValue& three = found->items[i];
      std::array<double, 3> levels{};
      bool isGood = three.kind == Kind::Array && three.items.size() == levels.size();
      for (std::size_t k = 0; isGood && k < levels.size(); ++k) {
        const auto value = three.items[k].kind == Kind::Number ? parseNumber(three.items[k].text) : std::nullopt;
        isGood = value && *value >= 1 && *value <= 12;
        levels[k] = value.value_or(0);
      }
      if (!isGood) return fail(ErrorCode::FieldWrongType, key, {"something else", "three levels of 1 to 12 for a piece"}), all;
      all[found->keys[i]] = {levels[0], levels[1], levels[2]};
    }
    return all;
  }
  /// {"piece-1": 2700}
  std::map<plan::ItemId, double> numbers(std::string_view key, double low, double high) {
    std::map<plan::ItemId, double> all;
    const JsonValue* found = take(key);
    if (!found) return all;
    if (found->kind != Kind::Object) return fail(ErrorCode::FieldWrongType, key, {"something else", "an object"}), all;
    for (std::size_t i = 0; i < found->keys.size(); ++i) {
      const auto value = found->items[i].kind == Kind::Number ? parseNumber(found->items[i].text) : std::nullopt;
      if (!value || *value < low || *value > high)
        return fail(ErrorCode::FieldWrongType, key, {"something else", numberText(low) + " to " + numberText(high) + " for a piece"}), all;
      all[found->keys[i]] = *value;
    }
    return all;
  }
  plan::Extra others() const {
    plan::Extra rest;
    if (object_.kind != Kind::Object) return rest;
    for (std::size_t i = 0; i < object_.keys.size(); ++i) {
      bool known = false;
      for (const std::string& key : seen_) known = known || key == object_.keys[i];
      if (!known) rest[object_.keys[i]] = plan::inlineText(object_.items[i]);
    }
    return rest;
  }
  void fail(ErrorCode code, std::string_view key, std::vector<std::string> args) {
    if (!error_) error_ = Error{code, key.empty() ? place_ : plan::pointerTo(place_, key), std::move(args), {}};
  }

 private:
  const JsonValue& object_;
  std::string place_;
  std::optional<Error>& error_;
  std::vector<std::string> seen_;
};

LogEvent eventIn(Fields& fields) {
  LogEvent event;
  for (const char* key : {"number", "tap", "at_s", "utc_ms"}) fields.need(key);
  event.number = static_cast<int>(fields.number("number", 1, 1e9).value_or(0));
  const std::string tap = fields.text("tap");
  bool known = false;
  for (const auto& [value, word] : kWords)
    if (word == tap) event.tap = value, known = true;
  if (!known) fields.fail(ErrorCode::FieldUnknownWord, "tap", {tap.substr(0, 40), "placed, bowl mixed, looked, taken out, rinsed, begun"});
  event.at_s = fields.number("at_s", 0, kLongest_s).value_or(0);
  event.utc_ms = fields.whole("utc_ms").value_or(0);
  event.steady_ms = fields.whole("steady_ms");
  event.run = fields.text("run");
  event.pieces = fields.texts("pieces");
  event.planned = fields.lifts("planned");
  event.limits_s = fields.numbers("limits_s", 0, kLongest_s);
  event.formula = fields.text("formula");
  event.level = fields.number("level", 1, 12);
  event.pigment = fields.text("pigment");
  event.who = fields.text("who");
  event.note = fields.text("note");
  event.takenBack = fields.flag("takenBack");
  event.extra = fields.others();
  return event;
}

JsonValue kept(const std::string& json) {
  auto parsed = plan::parseJson(json, {plan::limits::kDepth, plan::limits::kValues});
  return parsed ? std::move(parsed).value() : JsonValue::string(json);
}

JsonValue valueOf(const LogEvent& event) {
  JsonValue object = JsonValue::object();
  const auto text = [&](const char* key, const std::string& value) {
    if (!value.empty()) object.add(key, JsonValue::string(value));
  };
  object.add("number", JsonValue::number(std::to_string(event.number)));
  object.add("tap", JsonValue::string(std::string(wordOf(event.tap))));
  object.add("at_s", JsonValue::number(numberText(event.at_s)));
  object.add("utc_ms", JsonValue::number(std::to_string(event.utc_ms)));
  if (event.steady_ms) object.add("steady_ms", JsonValue::number(std::to_string(*event.steady_ms)));
  text("run", event.run);
  if (!event.pieces.empty()) {
    JsonValue list = JsonValue::array();
    for (const plan::ItemId& id : event.pieces) list.items.push_back(JsonValue::string(id));
    object.add("pieces", std::move(list));
  }
  if (!event.planned.empty()) {
    JsonValue planned = JsonValue::object();
    for (const auto& [id, lifts] : event.planned) {
      JsonValue three = JsonValue::array();
      for (const double level : {lifts.level, lifts.low, lifts.high}) three.items.push_back(JsonValue::number(numberText(level)));
      planned.add(id, std::move(three));
    }
    object.add("planned", std::move(planned));
  }
  if (!event.limits_s.empty()) {
    JsonValue limits = JsonValue::object();
    for (const auto& [id, limit_s] : event.limits_s) limits.add(id, JsonValue::number(numberText(limit_s)));
    object.add("limits_s", std::move(limits));
  }
  text("formula", event.formula);
  if (event.level) object.add("level", JsonValue::number(numberText(*event.level)));
  text("pigment", event.pigment);
  text("who", event.who);
  text("note", event.note);
  if (event.takenBack) object.add("takenBack", {Kind::True, {}, {}, {}});
  for (const auto& [key, json] : event.extra) object.add(key, kept(json));
  return object;
}

}  // namespace

std::string_view wordOf(Tap tap) {
  for (const auto& [value, word] : kWords)
    if (value == tap) return word;
  return {};
}

Result<AppointmentLog> readLog(std::string_view json) {
  AppointmentLog log;
  if (json.empty()) return log;
  const auto parsed = plan::parseJson(json, {plan::limits::kDepth, plan::limits::kValues});
  if (!parsed) return parsed.error();
  std::optional<Error> error;
  Fields top(*parsed, "", error);
  const JsonValue* events = top.take("events");
  if (events && events->kind != Kind::Array) top.fail(ErrorCode::FieldWrongType, "events", {"no list", "a list of taps"});
  if (events && !error && events->items.size() > kMostTaps)
    top.fail(ErrorCode::TooManyItems, "events", {std::to_string(events->items.size()), std::to_string(kMostTaps)});
  if (events && !error)
    for (std::size_t i = 0; i < events->items.size() && !error; ++i) {
      Fields fields(events->items[i], "/events/" + std::to_string(i), error);
      log.events.push_back(eventIn(fields));
    }
  log.extra = top.others();
  if (error) return *error;
  return log;
}

std::string writeLog(const AppointmentLog& log) {
  if (log == AppointmentLog{}) return {};
  JsonValue top = JsonValue::object(), events = JsonValue::array();
  for (const LogEvent& event : log.events) events.items.push_back(valueOf(event));
  top.add("events", std::move(events));
  for (const auto& [key, json] : log.extra) top.add(key, kept(json));
  return plan::inlineText(top);
}

std::optional<OnHair> onHair(const plan::Plan& plan) {
  const Result<AppointmentLog> log = readLog(plan.info().logJson);
  return log ? onHair(*log) : std::nullopt;
}

}  // namespace combdraft::work
