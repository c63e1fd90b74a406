#pragma once
// The reading walker of plan_fields.h: one JSON object with its place. The
// first error stops everything that follows.
#include <optional>
#include <set>
#include <string>

#include "engine/head/hairline.h"
#include "engine/plan/json_text.h"
#include "engine/plan/plan_fields.h"
#include "engine/plan/plan_words.h"

namespace combdraft::plan {

/// What all objects of one file share.
struct ReadState {
  std::optional<Error> error;
  std::size_t points = 0;
  std::optional<head::HeadShape> shape;
  std::optional<head::Hairline> hairline, lowestHairline;

  bool failed() const { return error.has_value(); }
  void fail(ErrorCode code, std::string where, std::vector<std::string> args) {
    if (!error) error = Error{code, std::move(where), std::move(args), {}};
  }
};

/// "a number", "text", "a list" ... with the value where it is short.
std::string kindText(const JsonValue& value);
/// The id when it is one: 1 to 64 bytes of letters, digits, '-', '_' or '.'.
bool isId(std::string_view text);
/// Whether it is a day such as "2024-05-31".
bool isDate(std::string_view text);

class ObjectReader {
 public:
  /// `kind` is the first part of field names in field_info.h.
  ObjectReader(ReadState& state, const JsonValue& object, std::string place, std::string kind);

  void number(std::string_view key, double& value);
  void number(std::string_view key, std::optional<double>& value);
  void whole(std::string_view key, int& value);
  void planNumber(std::string_view key, std::uint64_t& value);
  void flag(std::string_view key, bool& value);
  void line(std::string_view key, std::string& value);
  void text(std::string_view key, std::string& value);
  void date(std::string_view key, std::string& value);
  void id(std::string_view key, ItemId& value);
  /// What an item is called: there, and none of the names that a plan has of its own.
  void ownId(std::string_view key, ItemId& value);
  void point(std::string_view key, ScalpPoint& value);
  void point(std::string_view key, std::optional<ScalpPoint>& value);
  void points(std::string_view key, std::vector<ScalpPoint>& value, std::size_t least,
              std::size_t most);
  void stretches(std::string_view key, std::vector<Stretch>& value);
  void numbersByName(std::string_view key, std::map<std::string, double>& value);
  void kept(std::string_view key, std::string& json);
  void extra(Extra& rest);

  template <class E>
  void word(std::string_view key, E& value) {
    const JsonValue* found = take(key);
    if (!found) return;
    const auto known = found->kind == JsonValue::Kind::Text ? fromWord<E>(found->text)
                                                            : std::optional<E>{};
    if (known)
      value = *known;
    else if (found->kind == JsonValue::Kind::Text)
      fail(ErrorCode::FieldUnknownWord, key, {shortened(found->text), allWords<E>()});
    else
      fail(ErrorCode::FieldWrongType, key, {kindText(*found), "one of " + allWords<E>()});
  }
  /// A list of different words, kept in the order of the enum.
  template <class E>
  void words(std::string_view key, std::vector<E>& value) {
    const JsonValue* found = takeList(key, 0, plan::words<E>().size());
    if (!found) return;
    std::set<E> known;
    for (std::size_t i = 0; i < found->items.size(); ++i) {
      const JsonValue& entry = found->items[i];
      const auto one = entry.kind == JsonValue::Kind::Text ? fromWord<E>(entry.text)
                                                           : std::optional<E>{};
      if (!one || !known.insert(*one).second)
        return state_.fail(ErrorCode::FieldUnknownWord,
                           pointerTo(place_, key) + "/" + std::to_string(i),
                           {shortened(kindText(entry)), "each once of " + allWords<E>()});
    }
    value.assign(known.begin(), known.end());
  }
  template <class E>
  void word(std::string_view key, std::optional<E>& value) {
    if (!find(key)) return;
    E known{};
    word(key, known);
    value = known;
  }

  template <class T>
  void object(std::string_view key, std::string kind, T& value) {
    const JsonValue* found = take(key, JsonValue::Kind::Object, "an object");
    if (!found) return;
    ObjectReader inside(state_, *found, pointerTo(place_, key), std::move(kind));
    walk(inside, value);
  }
  template <class T>
  void object(std::string_view key, std::string kind, std::optional<T>& value) {
    if (!find(key)) return;
    value.emplace();
    object(key, std::move(kind), *value);
  }
  template <class T>
  void list(std::string_view key, const std::string& kind, std::vector<T>& value,
            std::size_t least, std::size_t most) {
    const JsonValue* found = takeList(key, least, most);
    if (!found) return;
    value.clear();
    for (std::size_t i = 0; i < found->items.size() && !state_.failed(); ++i) {
      const std::string place = pointerTo(place_, key) + "/" + std::to_string(i);
      if (found->items[i].kind != JsonValue::Kind::Object)
        return state_.fail(ErrorCode::FieldWrongType, place,
                           {kindText(found->items[i]), "an object"});
      ObjectReader inside(state_, found->items[i], place, kind);
      walk(inside, value.emplace_back());
    }
  }
  /// An object with an object for each of `names`; other keys are kept as found.
  template <class T>
  void byName(std::string_view key, const std::string& kind,
              std::span<const std::string_view> names, std::map<std::string, T>& value, Extra& others) {
    const JsonValue* found = take(key, JsonValue::Kind::Object, "an object");
    if (!found) return;
    if (found->items.size() > limits::kSmallList)
      return fail(ErrorCode::TooManyItems, key,
                  {std::to_string(found->items.size()), std::to_string(limits::kSmallList)});
    ObjectReader inside(state_, *found, pointerTo(place_, key), kind_);
    for (const std::string_view name : names)
      if (inside.has(name)) inside.object(name, kind, value[std::string(name)]);
    inside.extra(others);
  }
  /// An object with one key per hair zone; zones that are missing keep their value.
  template <class T>
  void perZone(std::string_view key, std::array<T, kHairZones>& value) {
    const JsonValue* found = take(key, JsonValue::Kind::Object, "an object with hair zones");
    if (!found) return;
    ObjectReader zones(state_, *found, pointerTo(place_, key), kind_);
    for (const auto& zone : plan::words<HairZone>())
      zones.zoneValue(zone.word, std::string(key), value[static_cast<std::size_t>(zone.value)]);
    zones.refuseOthers(allWords<HairZone>());
  }

  template <class E>
  void foundPerZone(std::string_view key, std::array<E, kHairZones>& value) {
    perZone(key, value);
  }

  /// Keys that were asked for and found.
  const std::set<std::string, std::less<>>& seen() const { return seen_; }
  /// Marks keys as dealt with, so that `extra` leaves them out.
  void skip(std::string_view key) { seen_.emplace(key); }
  bool has(std::string_view key) const { return object_.find(key) != nullptr; }
  /// An error when the key is missing.
  void need(std::string_view key);
  void fail(ErrorCode code, std::string_view key, std::vector<std::string> args) {
    state_.fail(code, pointerTo(place_, key), std::move(args));
  }
  const std::string& place() const { return place_; }

 private:
  const JsonValue* find(std::string_view key) const {
    return state_.failed() ? nullptr : object_.find(key);
  }
  const JsonValue* take(std::string_view key);
  const JsonValue* take(std::string_view key, JsonValue::Kind kind, const char* needs);
  const JsonValue* takeList(std::string_view key, std::size_t least, std::size_t most);
  const JsonValue* takeText(std::string_view key, std::size_t most);
  /// The number, or an error and the field's low end.
  double numberIn(const JsonValue& value, const std::string& place, const FieldInfo& field);
  std::optional<ScalpPoint> pointIn(const JsonValue& value, const std::string& place);
  void zoneValue(std::string_view zone, const std::string& key, double& value);
  void zoneValue(std::string_view zone, const std::string& key, RootMiddleEnd& value);
  template <class E>
    requires std::is_enum_v<E>
  void zoneValue(std::string_view zone, const std::string&, E& value) {
    word(zone, value);
  }
  void refuseOthers(const std::string& allowed);
  static std::string shortened(const std::string& text);

  ReadState& state_;
  const JsonValue& object_;
  std::string place_, kind_;
  std::set<std::string, std::less<>> seen_;
};

}  // namespace combdraft::plan
