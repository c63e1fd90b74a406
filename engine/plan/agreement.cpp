#include "engine/plan/agreement.h"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_text.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/object_reader.h"

namespace combdraft::plan {
namespace {

using Kind = JsonValue::Kind;

constexpr std::string_view kTop = "/agreed", kEarlierKey = "earlier", kFrozenKey = "frozen";
constexpr std::array<std::string_view, 2> kFacingWords{"as-others-see", "as-in-mirror"};
constexpr double kHighestLevel = 14;  // 10+ goes on; far above any hair

std::string_view jsonKind(const JsonValue& value) {
  switch (value.kind) {
    case Kind::Null: return "nothing";
    case Kind::False:
    case Kind::True: return "yes or no";
    case Kind::Number: return "a number";
    case Kind::Text: return "text";
    case Kind::Array: return "a list";
    case Kind::Object: return "an object";
  }
  return {};
}

bool isBase64(std::string_view text) {
  return text.size() % 4 == 0 && std::all_of(text.begin(), text.end(), [](char c) {
           return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '+' || c == '/' || c == '=';
         });
}

// The first error stops what follows; keys that were read are remembered, so
// that the others can be kept.
class Reader {
 public:
  Reader(std::optional<Error>& error, const JsonValue& object, std::string place)
      : error_(error), object_(object), place_(std::move(place)) {}

  const JsonValue* take(std::string_view key, Kind kind, std::string_view needs) {
    const JsonValue* found = error_ ? nullptr : object_.find(key);
    if (!found) return nullptr;
    seen_.emplace_back(key);
    if (found->kind == kind) return found;
    fail(ErrorCode::FieldWrongType, key, {std::string(jsonKind(*found)), std::string(needs)});
    return nullptr;
  }
  void text(std::string_view key, std::string& value, std::size_t most = limits::kLineBytes) {
    const JsonValue* found = take(key, Kind::Text, "text");
    if (!found) return;
    if (found->text.size() > most)
      return fail(ErrorCode::TextTooLong, key, {std::to_string(found->text.size()), std::to_string(most)});
    value = found->text;
  }
  void number(std::string_view key, double& value, double low, double high) {
    const JsonValue* found = take(key, Kind::Number, "a number");
    if (!found) return;
    const std::optional<double> typed = parseNumber(found->text);
    if (!typed || *typed < low || *typed > high)
      return fail(ErrorCode::FieldOutOfRange, key, {found->text.substr(0, 40), numberText(low) + " to " + numberText(high)});
    value = *typed;
  }
  void fail(ErrorCode code, std::string_view key, std::vector<std::string> args) {
    if (!error_) error_ = Error{code, pointerTo(place_, key), std::move(args), {}};
  }
  std::string placeOf(std::string_view key) const { return pointerTo(place_, key); }
  bool failed() const { return error_.has_value(); }
  void others(Extra& extra, const std::string& prefix = {}) {
    for (std::size_t i = 0; i < object_.items.size(); ++i)
      if (std::find(seen_.begin(), seen_.end(), object_.keys[i]) == seen_.end() &&
          !extra.emplace(prefix + object_.keys[i], inlineText(object_.items[i])).second)
        fail(ErrorCode::JsonDuplicateKey, object_.keys[i], {object_.keys[i]});  // two spellings of one place
  }

 private:
  std::optional<Error>& error_;
  const JsonValue& object_;
  std::string place_;
  std::vector<std::string> seen_;
};

void readView(Reader& outer, std::optional<Error>& error, Agreement& agreement) {
  const JsonValue* found = outer.take("view", Kind::Object, "an object");
  if (!found) return;
  Reader in(error, *found, outer.placeOf("view"));
  AgreedView& view = agreement.view;
  in.text("worn", view.worn);
  in.number("partShift_mm", view.partShift_mm, -60, 60);
  in.number("weeks", view.weeks, 0, 26);
  in.text("light", view.light);
  in.text("lift", view.lift);
  in.text("view", view.view);
  std::string facing(kFacingWords[static_cast<std::size_t>(view.facing)]);
  in.text("facing", facing);
  const auto known = std::find(kFacingWords.begin(), kFacingWords.end(), facing);
  if (known == kFacingWords.end())
    in.fail(ErrorCode::FieldUnknownWord, "facing", {facing, std::string(kFacingWords[0]) + ", " + std::string(kFacingWords[1])});
  else
    view.facing = static_cast<Facing>(known - kFacingWords.begin());
  in.others(agreement.extra, "/view/");
}

void readSpan(Reader& outer, std::optional<Error>& error, Agreement& agreement) {
  const JsonValue* found = outer.take("span_levels", Kind::Object, "an object");
  if (!found) return;
  Reader in(error, *found, outer.placeOf("span_levels"));
  AgreedSpan span;
  in.number("planned", span.level, 0, kHighestLevel);
  in.number("low", span.low, 0, kHighestLevel);
  in.number("high", span.high, 0, kHighestLevel);
  in.others(agreement.extra, "/span_levels/");
  agreement.span = span;
}

// An error inside the frozen choice keeps its place under ours.
void readFrozen(Reader& outer, std::optional<Error>& error, Agreement& agreement) {
  const JsonValue* found = outer.take(kFrozenKey, Kind::Object, "an object");
  if (!found) return;
  Result<Plan> plan = readPlan(inlineText(*found));
  if (plan) {
    agreement.frozen = std::move(plan).value();
    return;
  }
  error = plan.error();
  error->where = outer.placeOf(kFrozenKey) + error->where;
}

JsonValue numberOf(double value) { return JsonValue::number(numberText(value == 0 ? 0.0 : value)); }

JsonValue jsonOf(const std::string& text) {
  auto parsed = parseJson(text, {limits::kDepth, limits::kValues});
  return parsed ? std::move(parsed).value() : JsonValue::string(text);
}

// Unknown keys, and which of them are written.
struct Others {
  const Extra& all;
  std::set<std::string> written{};
};

void addOthers(JsonValue& object, Others& others, const std::string& prefix) {
  for (const auto& [key, json] : others.all) {
    if (key.rfind(prefix, 0) != 0 || others.written.count(key)) continue;
    const std::string name = key.substr(prefix.size());
    if (object.find(name)) continue;  // a known field: the other stays where it was found
    object.add(name, jsonOf(json));
    others.written.insert(key);
  }
}

JsonValue viewOf(const Agreement& agreement, Others& others) {
  const AgreedView& view = agreement.view;
  JsonValue object = JsonValue::object();
  object.add("worn", JsonValue::string(view.worn));
  object.add("partShift_mm", numberOf(view.partShift_mm));
  object.add("weeks", numberOf(view.weeks));
  object.add("light", JsonValue::string(view.light));
  object.add("lift", JsonValue::string(view.lift));
  object.add("view", JsonValue::string(view.view));
  object.add("facing", JsonValue::string(std::string(kFacingWords[static_cast<std::size_t>(view.facing)])));
  addOthers(object, others, "/view/");
  return object;
}

}  // namespace

std::optional<Plan> frozenChoice(const Plan& plan, const ItemId& choice) {
  const auto* named = plan.find<Choice>(choice);
  if (!named) return std::nullopt;
  Plan frozen = plan;
  PlanInfo info;
  info.title = plan.info().title;
  info.number = plan.info().number;
  info.activeChoice = choice;
  info.assumptions = plan.info().assumptions;
  for (const auto& [id, item] : plan.items()) {
    const auto isOf = [&](const auto* one) { return one && one->choice == choice; };
    const bool stays = id == choice || id == kHeadId || id == kHairId || std::get_if<Formula>(item.get()) ||
                       isOf(std::get_if<Piece>(item.get())) || isOf(std::get_if<Section>(item.get())) ||
                       isOf(std::get_if<Treatment>(item.get())) || isOf(std::get_if<Note>(item.get()));
    if (!stays) frozen.put(id, ItemPtr());
  }
  frozen.put(kPlanId, info);
  return frozen;
}

Result<Agreement> readAgreement(std::string_view json) {
  if (json.empty()) return Error{ErrorCode::FileEmpty, std::string(kTop), {}, {}};
  const Result<JsonValue> root = parseJson(json, {limits::kDepth, limits::kValues});
  if (!root) return root.error();
  if (root->kind != Kind::Object)
    return Error{ErrorCode::FieldWrongType, std::string(kTop), {std::string(jsonKind(*root)), "an object"}, {}};
  Agreement agreement;
  std::optional<Error> error;
  Reader in(error, *root, std::string(kTop));
  in.text("date", agreement.date);
  if (!agreement.date.empty() && !isDate(agreement.date))
    in.fail(ErrorCode::FieldWrongType, "date", {"\"" + agreement.date.substr(0, 40) + "\"", "a date like 2026-05-31"});
  in.text("choice", agreement.choice, limits::kIdBytes);
  in.text("choiceName", agreement.choiceName);
  readView(in, error, agreement);
  readSpan(in, error, agreement);
  in.text("promiseLine", agreement.promiseLine, limits::kTextBytes);
  in.text("engineVersion", agreement.engineVersion);
  in.text("picturePng_base64", agreement.pictureBase64, kAgreedPictureBytes);
  if (!isBase64(agreement.pictureBase64)) in.fail(ErrorCode::FieldWrongType, "picturePng_base64", {"text", "a PNG picture in base64"});
  if (!error) readFrozen(in, error, agreement);
  if (const JsonValue* list = in.take(kEarlierKey, Kind::Array, "a list"))
    for (const JsonValue& one : list->items) agreement.earlier.push_back(inlineText(one));
  in.others(agreement.extra);
  if (error) return *error;
  return agreement;
}

Result<std::string> writeAgreement(const Agreement& agreement) {
  JsonValue object = JsonValue::object();
  const auto text = [&](const char* key, const std::string& value) {
    if (!value.empty()) object.add(key, JsonValue::string(value));
  };
  text("date", agreement.date);
  text("choice", agreement.choice);
  text("choiceName", agreement.choiceName);
  Others others{agreement.extra};
  object.add("view", viewOf(agreement, others));
  if (agreement.span) {
    JsonValue span = JsonValue::object();
    span.add("planned", numberOf(agreement.span->level));
    span.add("low", numberOf(agreement.span->low));
    span.add("high", numberOf(agreement.span->high));
    addOthers(span, others, "/span_levels/");
    object.add("span_levels", std::move(span));
  }
  text("promiseLine", agreement.promiseLine);
  text("engineVersion", agreement.engineVersion);
  text("picturePng_base64", agreement.pictureBase64);
  if (agreement.frozen) object.add(std::string(kFrozenKey), jsonOf(writePlan(*agreement.frozen)));
  if (!agreement.earlier.empty()) {
    JsonValue list = JsonValue::array();
    for (const std::string& one : agreement.earlier) list.items.push_back(jsonOf(one));
    object.add(std::string(kEarlierKey), std::move(list));
  }
  addOthers(object, others, {});
  std::string json = inlineText(object);
  if (const Result<Agreement> again = readAgreement(json); !again) return again.error();
  return json;
}

Agreement withEarlier(Agreement next, const std::string& beforeJson) {
  next.earlier.clear();
  if (beforeJson.empty()) return next;
  Result<Agreement> before = readAgreement(beforeJson);
  if (!before) {  // kept as found
    next.earlier.push_back(beforeJson);
    return next;
  }
  Agreement alone = std::move(before).value();
  std::vector<std::string> older = std::exchange(alone.earlier, {});
  const Result<std::string> text = writeAgreement(alone);
  next.earlier.push_back(text ? *text : beforeJson);
  for (std::string& one : older)
    if (next.earlier.size() < kEarlierAgreements) next.earlier.push_back(std::move(one));
  return next;
}

}  // namespace combdraft::plan
