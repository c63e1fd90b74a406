#include "engine/plan/migrations.h"

#include <algorithm>
#include <array>

#include "engine/base/expect.h"
#include "engine/plan/json_reader.h"

namespace combdraft::plan {
namespace {

using Kind = JsonValue::Kind;

JsonValue* member(JsonValue& object, std::string_view key) {
  const auto found = std::find(object.keys.begin(), object.keys.end(), key);
  return found == object.keys.end() ? nullptr : &object.items[static_cast<std::size_t>(found - object.keys.begin())];
}

JsonValue taken(JsonValue& object, std::string_view key) {
  const auto at = std::find(object.keys.begin(), object.keys.end(), key) - object.keys.begin();
  JsonValue value = std::move(object.items[static_cast<std::size_t>(at)]);
  object.keys.erase(object.keys.begin() + at);
  object.items.erase(object.items.begin() + at);
  return value;
}

// Format 2: what was read in a leaflet (where, when, what it says of the scalp)
// stands together in `leaflet`, where more of it can join.
void leafletTogether(JsonValue& root, std::vector<MovedPlace>& moved) {
  struct Renamed {
    std::string_view before, after;
  };
  static constexpr std::array<Renamed, 3> kRenamed{
      {{"origin", "origin"}, {"date", "read"}, {"scalpContact", "scalpContact"}}};
  JsonValue* formulas = member(root, "formulas");
  if (!formulas || formulas->kind != Kind::Array) return;
  for (std::size_t i = 0; i < formulas->items.size(); ++i) {
    JsonValue& formula = formulas->items[i];
    if (formula.kind != Kind::Object) continue;
    const std::string place = "/formulas/" + std::to_string(i);
    if (member(formula, "leaflet")) {  // somebody else's key in format 1: kept as such
      std::string name = "leaflet of format 1";
      while (member(formula, name)) name += '+';
      formula.add(name, taken(formula, "leaflet"));
      moved.push_back({pointerTo(place, "leaflet"), pointerTo(place, name)});
    }
    JsonValue leaflet = JsonValue::object();
    for (const Renamed& key : kRenamed) {
      if (!member(formula, key.before)) continue;
      leaflet.add(std::string(key.after), taken(formula, key.before));
      moved.push_back({pointerTo(place, key.before), pointerTo(pointerTo(place, "leaflet"), key.after)});
    }
    if (!leaflet.items.empty()) formula.add("leaflet", std::move(leaflet));
  }
}

struct Step {
  void (*apply)(JsonValue& root, std::vector<MovedPlace>& moved);
  std::string_view what;
};
/// kSteps[i] brings format i + 1 to i + 2.
constexpr std::array<Step, kFormatVersion - 1> kSteps{
    {{leafletTogether, "what was read in a leaflet stands together"}}};

}  // namespace

Migration migrate(JsonValue& root, int from) {
  COMBDRAFT_EXPECT(from >= 1 && from <= kFormatVersion, from);
  Migration migration{from, kFormatVersion, {}};
  for (int version = from; version < kFormatVersion; ++version)
    kSteps[static_cast<std::size_t>(version - 1)].apply(root, migration.moved);
  if (JsonValue* version = member(root, "version"); version && from < kFormatVersion)
    *version = JsonValue::number(std::to_string(kFormatVersion));
  return migration;
}

std::string placeBefore(const Migration& migration, const std::string& where) {
  std::string place = where;
  // Later steps first; the place itself or anything inside it.
  for (auto move = migration.moved.rbegin(); move != migration.moved.rend(); ++move)
    if (place == move->to || place.starts_with(move->to + "/")) place = move->from + place.substr(move->to.size());
  return place;
}

std::string describe(const Migration& migration) {
  std::string text = "format " + std::to_string(migration.from) + " to " + std::to_string(migration.to);
  for (int version = migration.from; version < migration.to; ++version)
    text += (version == migration.from ? ": " : "; ") + std::string(kSteps[static_cast<std::size_t>(version - 1)].what);
  if (!migration.moved.empty()) text += " (" + std::to_string(migration.moved.size()) + (migration.moved.size() == 1 ? " place)" : " places)");
  return text;
}

}  // namespace combdraft::plan
