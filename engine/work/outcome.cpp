#include "engine/work/outcome.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/assumptions.h"
#include "engine/base/number_text.h"
#include "engine/plan/json_text.h"
#include "engine/work/speeds.h"

namespace combdraft::work {
namespace {

constexpr std::array<std::string_view, kFactors> kNames{"speed", "product_per_hair", "waste", "pushed_frac"};
constexpr std::array<std::string_view, 5> kSpeeds{"work.slice_min", "work.weave_min", "work.paint_min", "work.backcomb_min",
                                                  "work.combOut_min"};

std::size_t indexOf(Factor factor) { return static_cast<std::size_t>(factor); }

std::optional<Error> refusal(const MeasuredHead& head, const std::string& place) {
  for (int i = 0; i < kFactors; ++i) {
    const auto at = static_cast<std::size_t>(i);
    if (!head.got[at]) continue;
    const bool waste = static_cast<Factor>(i) == Factor::Waste;
    const double value = *head.got[at], high = waste ? 2 : static_cast<Factor>(i) == Factor::PushedShare ? 1 : 20;
    if (!(waste ? value >= 0 : value > 0) || !(value <= high))
      return Error{ErrorCode::FieldOutOfRange, place + "/" + std::string(kNames[at]),
                   {numberText(value), (waste ? "0 to " : "above 0 to ") + numberText(high)}, {}};
  }
  return std::nullopt;
}

}  // namespace

std::optional<LearnedFactor> learned(const OwnFactors& factors, Factor which) {
  LearnedFactor mean;
  for (const MeasuredHead& head : factors.heads)
    if (const auto& got = head.got[indexOf(which)]) {
      mean.value += *got;
      ++mean.heads;
    }
  if (!mean.heads) return std::nullopt;
  mean.value /= mean.heads;
  return mean;
}

Result<OwnFactors> withHead(OwnFactors factors, MeasuredHead head) {
  if (const auto error = refusal(head, "")) return *error;
  factors.heads.push_back(std::move(head));
  return factors;
}

OwnFactors withoutLastHead(OwnFactors factors) {
  if (!factors.heads.empty()) factors.heads.pop_back();
  return factors;
}

std::map<std::string, double> withFactors(const OwnFactors& factors, std::map<std::string, double> overrides) {
  const auto put = [&](std::string_view name, double value) {
    for (const Assumption& known : assumptionTable())
      if (known.name == name) overrides.emplace(std::string(name), std::clamp(value, known.low, known.high));
  };
  if (const auto speed = learned(factors, Factor::Speed)) {
    const Assumptions defaults;
    for (const std::string_view name : kSpeeds) put(name, defaults[name] * speed->value);
  }
  if (const auto product = learned(factors, Factor::ProductPerHair)) put("amount.product_per_hair", product->value);
  if (const auto waste = learned(factors, Factor::Waste)) put("amount.waste_share", waste->value);
  return overrides;
}

std::optional<double> speedFrom(const plan::Plan& plan, const AppointmentLog& log) {
  constexpr int kFewest = 3;
  const Assumptions defaults;
  const LogEvent* before = nullptr;
  double needed = 0, planned = 0;
  int steps = 0;
  for (const LogEvent& event : tapsOfVisit(log)) {
    if (event.takenBack) continue;
    if (event.tap == Tap::Placed && before && before->tap == Tap::Placed && before->who == event.who) {
      double minutes = 0;
      for (const plan::ItemId& id : event.pieces)
        if (const auto* piece = plan.find<plan::Piece>(id)) minutes += minutesOf(*piece, defaults).toPlace();
      if (minutes > 0 && event.at_s > before->at_s) {
        needed += (event.at_s - before->at_s) / 60;
        planned += minutes;
        ++steps;
      }
    }
    before = &event;
  }
  if (steps < kFewest) return std::nullopt;
  return needed / planned;
}

Result<UsedProduct> usedProduct(double mixed_g, double left_g, double hair_g) {
  const auto refuse = [](const char* what, double found, const std::string& right) {
    return Error{ErrorCode::FieldOutOfRange, what, {numberText(found), right}, {}};
  };
  if (!(mixed_g > 0) || !std::isfinite(mixed_g)) return refuse("mixed", mixed_g, "grams above 0");
  if (!(left_g >= 0) || !(left_g < mixed_g)) return refuse("left", left_g, "0 to less than the " + numberText(mixed_g) + " g that were mixed");
  if (!(hair_g > 0) || !std::isfinite(hair_g)) return refuse("hair", hair_g, "grams above 0");
  return UsedProduct{(mixed_g - left_g) / hair_g, left_g / (mixed_g - left_g)};
}

std::vector<PieceOutcome> plannedAgainstGot(const plan::Plan& plan, const AppointmentLog& log) {
  std::vector<PieceOutcome> outcomes;
  for (const auto& [id, now] : stateAt(log, 1e18)) {
    const auto* piece = plan.find<plan::Piece>(id);
    if (!piece || piece->action != plan::Action::Lighten || !now.came) continue;
    const plan::LiftsTo lifts = now.planned.value_or(piece->root.lifts);
    outcomes.push_back({id, lifts, *now.came, *now.came >= lifts.low && *now.came <= lifts.high});
  }
  return outcomes;
}

std::string writeFactors(const OwnFactors& factors) {
  using plan::JsonValue;
  JsonValue list = JsonValue::array();
  for (const MeasuredHead& head : factors.heads) {
    JsonValue object = JsonValue::object();
    object.add("date", JsonValue::string(head.date));
    for (std::size_t i = 0; i < kFactors; ++i)
      if (head.got[i]) object.add(std::string(kNames[i]), JsonValue::number(numberText(*head.got[i])));
    list.items.push_back(std::move(object));
  }
  JsonValue top = JsonValue::object();
  top.add("heads", std::move(list));
  return plan::inlineText(top);
}

Result<OwnFactors> readFactors(std::string_view json) {
  using Kind = plan::JsonValue::Kind;
  OwnFactors factors;
  if (json.empty()) return factors;
  const auto parsed = plan::parseJson(json, {8, 100'000});
  if (!parsed) return parsed.error();
  const plan::JsonValue* heads = parsed->kind == Kind::Object ? parsed->find("heads") : nullptr;
  if (!heads || heads->kind != Kind::Array) return Error{ErrorCode::FieldWrongType, "/heads", {"no list", "a list of heads"}, {}};
  for (std::size_t i = 0; i < heads->items.size(); ++i) {
    const plan::JsonValue& item = heads->items[i];
    const std::string place = "/heads/" + std::to_string(i);
    if (item.kind != Kind::Object) return Error{ErrorCode::FieldWrongType, place, {"something else", "an object"}, {}};
    MeasuredHead head;
    if (const plan::JsonValue* date = item.find("date"); date && date->kind == Kind::Text) head.date = date->text;
    for (std::size_t k = 0; k < kFactors; ++k)
      if (const plan::JsonValue* value = item.find(kNames[k])) {
        head.got[k] = value->kind == Kind::Number ? parseNumber(value->text) : std::nullopt;
        if (!head.got[k]) return Error{ErrorCode::FieldWrongType, place + "/" + std::string(kNames[k]), {"no number", "a number"}, {}};
      }
    if (const auto error = refusal(head, place)) return *error;
    factors.heads.push_back(std::move(head));
  }
  return factors;
}

}  // namespace combdraft::work
