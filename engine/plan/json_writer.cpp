#include "engine/plan/json_writer.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_text.h"
#include "engine/plan/plan_fields.h"
#include "engine/plan/plan_words.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

JsonValue numberValue(double value) {
  return JsonValue::number(numberText(value == 0 ? 0.0 : value));  // no "-0"
}

JsonValue pointValue(const ScalpPoint& point) {
  JsonValue pair = JsonValue::array();
  pair.items = {numberValue(point.bearing_deg), numberValue(point.drop_deg)};
  return pair;
}

// JSON of others. Text that is no JSON (our own fault) is still not lost: it is
// written as a string, and the read-back of a save then says that it differs.
JsonValue keptValue(const std::string& json) {
  auto parsed = parseJson(json, {limits::kDepth, limits::kValues});
  return parsed ? std::move(parsed).value() : JsonValue::string(json);
}

/// The writing walker of plan_fields.h.
class ObjectWriter {
 public:
  JsonValue take() && { return std::move(object_); }

  void put(std::string_view key, JsonValue value) {
    object_.add(std::string(key), std::move(value));
  }
  void number(std::string_view key, double value) { put(key, numberValue(value)); }
  void number(std::string_view key, const std::optional<double>& value) {
    if (value) number(key, *value);
  }
  void whole(std::string_view key, int value) {
    put(key, JsonValue::number(std::to_string(value)));
  }
  void planNumber(std::string_view key, std::uint64_t value) {
    put(key, JsonValue::number(std::to_string(value)));
  }
  void flag(std::string_view key, bool value) {
    if (value) put(key, {JsonValue::Kind::True, {}, {}, {}});
  }
  void line(std::string_view key, const std::string& value) {
    if (!value.empty()) put(key, JsonValue::string(value));
  }
  void text(std::string_view key, const std::string& value) { line(key, value); }
  void date(std::string_view key, const std::string& value) { line(key, value); }
  void id(std::string_view key, const ItemId& value) { line(key, value); }
  void ownId(std::string_view key, const ItemId& value) { line(key, value); }
  template <class E>
  void word(std::string_view key, const E& value) {
    put(key, JsonValue::string(std::string(wordOf(value))));
  }
  template <class E>
  void words(std::string_view key, const std::vector<E>& value) {
    if (value.empty()) return;
    JsonValue list = JsonValue::array();
    for (const E entry : value) list.items.push_back(JsonValue::string(std::string(wordOf(entry))));
    put(key, std::move(list));
  }
  template <class E>
  void word(std::string_view key, const std::optional<E>& value) {
    if (value) word(key, *value);
  }
  void point(std::string_view key, const ScalpPoint& value) { put(key, pointValue(value)); }
  void point(std::string_view key, const std::optional<ScalpPoint>& value) {
    if (value) point(key, *value);
  }
  void points(std::string_view key, const std::vector<ScalpPoint>& value, std::size_t,
              std::size_t) {
    JsonValue list = JsonValue::array();
    for (const ScalpPoint& point : value) list.items.push_back(pointValue(point));
    put(key, std::move(list));
  }
  void stretches(std::string_view key, const std::vector<Stretch>& value) {
    if (value.empty()) return;
    JsonValue list = JsonValue::array();
    for (const Stretch& stretch : value) {
      JsonValue pair = JsonValue::array();
      pair.items = {numberValue(stretch.from_mm), numberValue(stretch.to_mm)};
      list.items.push_back(std::move(pair));
    }
    put(key, std::move(list));
  }
  void numbersByName(std::string_view key, const std::map<std::string, double>& value) {
    if (value.empty()) return;
    ObjectWriter inside;
    for (const auto& [name, number] : value) inside.number(name, number);
    put(key, std::move(inside).take());
  }
  void kept(std::string_view key, const std::string& json) {
    if (!json.empty()) put(key, keptValue(json));
  }
  template <class T>
  void byName(std::string_view key, const std::string& kind, std::span<const std::string_view>,
              std::map<std::string, T>& value, const Extra& others) {
    ObjectWriter inside;
    for (auto& [name, entry] : value) inside.object(name, kind, entry);
    inside.extra(others);
    if (!inside.object_.items.empty()) put(key, std::move(inside).take());
  }
  void extra(const Extra& rest) {
    for (const auto& [key, json] : rest) kept(key, json);
  }
  template <class T>
  void object(std::string_view key, const std::string&, T& value) {
    put(key, objectValue(value));
  }
  template <class T>
  void object(std::string_view key, const std::string& kind, std::optional<T>& value) {
    if (value) object(key, kind, *value);
  }
  template <class T>
  void list(std::string_view key, const std::string&, std::vector<T>& value, std::size_t least,
            std::size_t) {
    if (value.empty() && least == 0) return;
    JsonValue items = JsonValue::array();
    for (T& entry : value) items.items.push_back(objectValue(entry));
    put(key, std::move(items));
  }
  template <class T>
  void perZone(std::string_view key, const std::array<T, kHairZones>& value) {
    ObjectWriter zones;
    for (const auto& zone : plan::words<HairZone>())
      zones.zoneValue(zone.word, value[static_cast<std::size_t>(zone.value)]);
    put(key, std::move(zones).take());
  }
  template <class E>
  void foundPerZone(std::string_view key, const std::array<E, kHairZones>& value) {
    ObjectWriter zones;
    for (const auto& zone : plan::words<HairZone>())
      if (const E found = value[static_cast<std::size_t>(zone.value)]; found != E{}) zones.word(zone.word, found);
    if (!zones.object_.items.empty()) put(key, std::move(zones).take());
  }

 private:
  template <class T>
  static JsonValue objectValue(T& value) {
    ObjectWriter inside;
    walk(inside, value);
    return std::move(inside).take();
  }
  void zoneValue(std::string_view zone, double value) { number(zone, value); }
  template <class E>
    requires std::is_enum_v<E>
  void zoneValue(std::string_view zone, E value) {
    word(zone, value);
  }
  void zoneValue(std::string_view zone, const RootMiddleEnd& value) {
    JsonValue levels = JsonValue::array();
    levels.items = {numberValue(value.root), numberValue(value.middle), numberValue(value.end)};
    put(zone, std::move(levels));
  }

  JsonValue object_ = JsonValue::object();
};

template <class T>
JsonValue itemValue(const Plan& plan, const ItemId& id, T item) {
  ObjectWriter writer;
  writer.put("id", JsonValue::string(id));
  if constexpr (std::is_same_v<T, Piece> || std::is_same_v<T, Section>) {
    if (followsSource(plan, item)) {
      writer.id("twinOf", item.twinOf);
      writer.whole("order", item.order);
      writer.extra(item.extra);
      return std::move(writer).take();
    }
  }
  walk(writer, item);
  return std::move(writer).take();
}

// Pieces and sections by choice, then as they are placed; the rest by id.
template <class T>
bool standsBefore(const std::pair<ItemId, const T*>& a, const std::pair<ItemId, const T*>& b) {
  if constexpr (std::is_same_v<T, Piece> || std::is_same_v<T, Section>) {
    if (a.second->choice != b.second->choice) return idLess(a.second->choice, b.second->choice);
    if (a.second->order != b.second->order) return a.second->order < b.second->order;
  }
  return idLess(a.first, b.first);
}

template <class T>
void putList(ObjectWriter& top, std::string_view key, const Plan& plan) {
  std::vector<std::pair<ItemId, const T*>> found;
  for (const auto& [id, item] : plan.items())
    if (const T* value = std::get_if<T>(item.get())) found.emplace_back(id, value);
  if (found.empty()) return;
  std::sort(found.begin(), found.end(), standsBefore<T>);
  JsonValue list = JsonValue::array();
  for (const auto& [id, value] : found) list.items.push_back(itemValue(plan, id, *value));
  top.put(key, std::move(list));
}

}  // namespace

std::string writePlan(const Plan& plan) {
  ObjectWriter top;
  top.put("format", JsonValue::string(std::string(kFormatName)));
  top.whole("version", kFormatVersion);
  PlanInfo info = plan.info();
  Head head = plan.head();
  Hair hair = plan.hair();
  walk(top, info);
  top.object("head", "head", head);
  top.object("hair", "hair", hair);
  putList<Formula>(top, "formulas", plan);
  putList<Choice>(top, "choices", plan);
  putList<Section>(top, "sections", plan);
  putList<Piece>(top, "pieces", plan);
  putList<Treatment>(top, "treatments", plan);
  putList<Note>(top, "placedNotes", plan);
  if (const Handout* found = plan.find<Handout>(kHandoutId)) {
    Handout handout = *found;
    top.object("handout", "handout", handout);
  }
  top.kept("agreed", info.agreedJson);
  top.kept("visits", info.visitsJson);
  top.kept("log", info.logJson);
  top.extra(info.extra);
  return prettyText(std::move(top).take());
}

std::string writeParts(const Parts& parts, std::string_view formatName) {
  ObjectWriter top;
  top.put("format", JsonValue::string(std::string(formatName)));
  top.whole("version", kFormatVersion);
  Parts header{parts.name, parts.goodFor, parts.notFor, {}};
  walk(top, header);
  Head head = parts.plan.head();
  if (!(head == noParts().head())) top.object("head", "head", head);
  putList<Formula>(top, "formulas", parts.plan);
  putList<Section>(top, "sections", parts.plan);
  putList<Piece>(top, "pieces", parts.plan);
  putList<Note>(top, "placedNotes", parts.plan);
  top.extra(parts.plan.info().extra);
  return prettyText(std::move(top).take());
}

}  // namespace combdraft::plan
