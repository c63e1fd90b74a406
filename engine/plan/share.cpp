#include "engine/plan/share.h"

#include <type_traits>
#include <vector>

#include "engine/plan/plan_fields.h"

namespace combdraft::plan {
namespace {

/// A walker of plan_fields.h that drops notes and what nobody knows.
struct Stripper {
  template <class... A>
  void number(A&&...) {}
  template <class... A>
  void whole(A&&...) {}
  template <class... A>
  void planNumber(A&&...) {}
  template <class... A>
  void flag(A&&...) {}
  template <class... A>
  void line(A&&...) {}
  template <class... A>
  void date(A&&...) {}
  template <class... A>
  void id(A&&...) {}
  template <class... A>
  void ownId(A&&...) {}
  template <class... A>
  void word(A&&...) {}
  template <class... A>
  void words(A&&...) {}
  template <class... A>
  void point(A&&...) {}
  template <class... A>
  void points(A&&...) {}
  template <class... A>
  void stretches(A&&...) {}
  template <class... A>
  void numbersByName(A&&...) {}
  template <class... A>
  void perZone(A&&...) {}
  template <class... A>
  void foundPerZone(A&&...) {}

  void text(std::string_view key, std::string& value) {
    if (key == "note" || key == "notes") value.clear();
  }
  void kept(std::string_view, std::string& json) { json.clear(); }
  void extra(Extra& rest) { rest.clear(); }
  template <class T>
  void object(std::string_view, const std::string&, T& value) {
    walk(*this, value);
  }
  template <class T>
  void object(std::string_view, const std::string&, std::optional<T>& value) {
    if (value) walk(*this, *value);
  }
  template <class T>
  void list(std::string_view, const std::string&, std::vector<T>& value, std::size_t, std::size_t) {
    for (T& entry : value) walk(*this, entry);
  }
  template <class T>
  void byName(std::string_view, const std::string&, std::span<const std::string_view>, std::map<std::string, T>& value, Extra& others) {
    for (auto& [name, entry] : value) walk(*this, entry);
    others.clear();
  }
};

}  // namespace

Plan sharedCopy(const Plan& plan, std::uint64_t number) {
  const std::uint64_t kept = Plan::fresh(number).info().number;  // within what a file holds
  Plan copy = plan;
  for (const auto& [id, item] : plan.items()) {
    if (std::holds_alternative<Note>(*item)) {
      copy.put(id, ItemPtr());
      continue;
    }
    Item stripped = *item;
    std::visit(
        [&](auto& value) {
          Stripper stripper;
          walk(stripper, value);
          value.extra.clear();
          if constexpr (std::is_same_v<std::decay_t<decltype(value)>, PlanInfo>) {
            value.number = kept;
            value.agreedJson.clear();
            value.visitsJson.clear();
            value.logJson.clear();
          }
        },
        stripped);
    if (!(stripped == *item)) copy.put(id, std::make_shared<const Item>(std::move(stripped)));
  }
  return copy;
}

}  // namespace combdraft::plan
