#include "engine/plan/field_check.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/plan/object_reader.h"
#include "engine/plan/plan_fields.h"
#include "engine/plan/utf8.h"

namespace combdraft::plan {
namespace {

/// The checking walker of plan_fields.h.
class FieldWalker {
 public:
  explicit FieldWalker(std::string kind) : kind_(std::move(kind)) {}
  std::vector<FieldProblem> take() && { return std::move(problems_); }

  void number(std::string_view key, double value) {
    check(value, fieldInfo(kind_ + "." + std::string(key)));
  }
  void number(std::string_view key, const std::optional<double>& value) {
    if (value) number(key, *value);
  }
  void whole(std::string_view key, int value) { number(key, value); }
  void planNumber(std::string_view key, std::uint64_t value) {
    if (value < 1 || value > kLargestPlanNumber)
      problem(key, std::to_string(value), "1 to " + std::to_string(kLargestPlanNumber));
  }
  void flag(std::string_view, bool) {}
  void line(std::string_view key, const std::string& value) {
    checkText(key, value, limits::kLineBytes);
    if (hasLineBreakOrControl(value)) problem(key, "a line break", "one line of plain text");
  }
  void text(std::string_view key, const std::string& value) {
    checkText(key, value, limits::kTextBytes);
    if (hasControlBesideLines(value)) problem(key, "a control character", "plain text");
  }
  void date(std::string_view key, const std::string& value) {
    if (value.empty() || isDate(value)) return;
    const bool isShort = value.size() <= kShown_bytes && !firstBadUtf8(value);
    problem(key, isShort ? "\"" + value + "\"" : std::to_string(value.size()) + " bytes",
            "a date such as \"2024-05-31\", or \"\"");
  }
  void id(std::string_view key, const ItemId& value) {
    if (!value.empty() && !isId(value))
      problem(key, value.substr(0, kShown_bytes), "1 to 64 letters, digits, '-', '_' or '.'");
  }
  void ownId(std::string_view key, const ItemId& value) {
    if (value.empty()) return problem(key, "\"\"", "1 to 64 letters, digits, '-', '_' or '.'");
    id(key, value);
  }
  template <class E>
  void word(std::string_view, const E&) {}
  template <class E>
  void words(std::string_view, const std::vector<E>&) {}
  void point(std::string_view, const ScalpPoint& value) {
    check(value.bearing_deg, fieldInfo("point.bearing_deg"));
    check(value.drop_deg, fieldInfo("point.drop_deg"));
  }
  void point(std::string_view key, const std::optional<ScalpPoint>& value) {
    if (value) point(key, *value);
  }
  void points(std::string_view key, const std::vector<ScalpPoint>& value, std::size_t least,
              std::size_t most) {
    checkCount(key, value.size(), least, most);
    for (const ScalpPoint& entry : value) point(key, entry);
  }
  void stretches(std::string_view key, const std::vector<Stretch>& value) {
    checkCount(key, value.size(), 0, limits::kSmallList);
    const FieldInfo& field = fieldInfo(kind_ + "." + std::string(key));
    for (const Stretch& stretch : value) {
      check(stretch.from_mm, field);
      check(stretch.to_mm, field);
      if (!(stretch.from_mm < stretch.to_mm))
        problem(key, numberText(stretch.from_mm) + " to " + numberText(stretch.to_mm),
                "a stretch that ends after it begins");
    }
  }
  void numbersByName(std::string_view key, const std::map<std::string, double>& value) {
    checkCount(key, value.size(), 0, limits::kSmallList);
    for (const auto& [name, number] : value) {
      if (!isId(name)) problem(key, name.substr(0, kShown_bytes), "the name of an assumption");
      if (!std::isfinite(number)) problem(key, numberText(number), "a number");
    }
  }
  void kept(std::string_view, const std::string&) {}
  template <class T>
  void byName(std::string_view key, const std::string& kind,
              std::span<const std::string_view> names, std::map<std::string, T>& value, const Extra&) {
    for (auto& [name, entry] : value) {
      if (std::find(names.begin(), names.end(), name) == names.end())
        problem(key, name, "one of its regions");
      object(key, kind, entry);
    }
  }
  void extra(const Extra&) {}
  template <class T>
  void object(std::string_view, const std::string& kind, T& value) {
    const std::string outer = std::exchange(kind_, kind);
    walk(*this, value);
    kind_ = outer;
  }
  template <class T>
  void object(std::string_view key, const std::string& kind, std::optional<T>& value) {
    if (value) object(key, kind, *value);
  }
  template <class T>
  void list(std::string_view key, const std::string& kind, std::vector<T>& value,
            std::size_t least, std::size_t most) {
    checkCount(key, value.size(), least, most);
    for (T& entry : value) object(key, kind, entry);
  }
  void perZone(std::string_view key, const std::array<double, kHairZones>& value) {
    for (const double number : value) this->number(key, number);
  }
  void perZone(std::string_view key, const std::array<RootMiddleEnd, kHairZones>& value) {
    for (const RootMiddleEnd& levels : value)
      for (const double level : {levels.root, levels.middle, levels.end}) number(key, level);
  }
  template <class E>
    requires std::is_enum_v<E>
  void perZone(std::string_view, const std::array<E, kHairZones>&) {}
  template <class E>
  void foundPerZone(std::string_view, const std::array<E, kHairZones>&) {}

 private:
  static constexpr std::size_t kShown_bytes = 40;

  void problem(std::string_view key, std::string found, std::string allowed) {
    problems_.push_back({kind_ + "." + std::string(key), std::move(found), std::move(allowed)});
  }
  void check(double value, const FieldInfo& field) {
    if (!(value >= field.low && value <= field.high))
      problems_.push_back({std::string(field.name), numberText(value), rangeText(field)});
  }
  void checkCount(std::string_view key, std::size_t count, std::size_t least, std::size_t most) {
    if (count < least || count > most)
      problem(key, std::to_string(count) + " entries",
              std::to_string(least) + " to " + std::to_string(most) + " entries");
  }
  void checkText(std::string_view key, const std::string& value, std::size_t most) {
    if (value.size() > most)
      problem(key, std::to_string(value.size()) + " bytes",
              "at most " + std::to_string(most) + " bytes");
    if (firstBadUtf8(value)) problem(key, "text that is not UTF-8", "UTF-8");
  }

  std::string kind_;
  std::vector<FieldProblem> problems_;
};

const char* kindOf(const Item& item) {
  constexpr const char* kKinds[] = {"plan",  "head",      "hair", "formula", "section",
                                    "piece", "treatment", "note", "choice",  "handout"};
  static_assert(std::size(kKinds) == std::variant_size_v<Item>);
  return kKinds[item.index()];
}

}  // namespace

std::vector<FieldProblem> checkFields(const Item& item) {
  FieldWalker walker(kindOf(item));
  std::visit([&](auto value) { walk(walker, value); }, item);
  return std::move(walker).take();
}

}  // namespace combdraft::plan
