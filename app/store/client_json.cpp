#include "app/store/client_json.h"

#include <set>

#include "engine/base/number_text.h"
#include "engine/plan/json_text.h"
#include "engine/plan/object_reader.h"

namespace combdraft::store {

using plan::JsonValue;

// One list of fields per object, walked by reader and writer alike (as in
// engine/plan/plan_fields.h).
template <class V>
void walk(V& v, Consent& c) {
  v.line("purpose", c.purpose);
  v.date("date", c.date);
  v.extra(c.extra);
}

template <class V>
void walk(V& v, Wishes& w) {
  v.text("wanted", w.wanted);
  v.text("notWanted", w.notWanted);
  v.text("howWorn", w.howWorn);
  v.line("upkeep", w.upkeep);
  v.line("budget", w.budget);
  v.line("visits", w.visits);
  v.extra(w.extra);
}

template <class V>
void walk(V& v, HairHistory& h) {
  v.word("dye", h.dye);
  v.word("henna", h.henna);
  v.word("metallic", h.metallic);
  v.word("boxColour", h.boxColour);
  v.line("lastLightening", h.lastLightening);
  v.text("words", h.words);
  v.extra(h.extra);
}

template <class V>
void walk(V& v, Health& h) {
  v.word("ageReached", h.ageReached);
  v.word("reacted", h.reacted);
  v.text("reactions", h.reactions);
  v.word("scalp", h.scalp);
  v.text("scalpWords", h.scalpWords);
  v.date("asked", h.asked);
  v.extra(h.extra);
}

template <class V>
void walk(V& v, ClientTest& t) {
  v.word("kind", t.kind);
  v.date("date", t.date);
  v.text("result", t.result);
  v.date("due", t.due);
  v.extra(t.extra);
}

template <class V>
void walk(V& v, ClientPhoto& p) {
  v.id("file", p.file);
  v.word("of", p.of);
  v.line("words", p.words);
  v.date("date", p.date);
  v.extra(p.extra);
}

template <class V>
void walk(V& v, Offer& o) {
  v.planNumber("plan", o.plan);
  v.id("choice", o.choice);
  v.line("minutes", o.minutes);
  v.line("price", o.price);
  v.line("visits", o.visits);
  v.extra(o.extra);
}

template <class V>
void walk(V& v, Visit& visit) {
  v.date("date", visit.date);
  v.line("title", visit.title);
  v.planNumber("number", visit.number);
  v.text("words", visit.words);
  v.extra(visit.extra);
}

template <class V>
void walk(V& v, ClientFile& f) {
  v.planNumber("number", f.number);
  v.date("begun", f.begun);
  v.date("kept", f.kept);
  v.line("name", f.name);
  v.text("contact", f.contact);
  v.object("consent", "consent", f.consent);
  v.object("wishes", "wishes", f.wishes);
  v.object("history", "history", f.history);
  v.object("health", "health", f.health);
  v.list("tests", "test", f.tests, 0, limits::kClientTests);
  v.list("photos", "photo", f.photos, 0, limits::kClientPhotos);
  v.list("offers", "offer", f.offers, 0, limits::kClientOffers);
  v.list("visits", "visit", f.visits, 0, limits::kClientVisits);
  v.text("notes", f.notes);
  v.extra(f.extra);
}

namespace {

class Writer {
 public:
  JsonValue take() && { return std::move(object_); }
  void put(std::string_view key, JsonValue value) { object_.add(std::string(key), std::move(value)); }
  void line(std::string_view key, const std::string& value) {
    if (!value.empty()) put(key, JsonValue::string(value));
  }
  void text(std::string_view key, const std::string& value) { line(key, value); }
  void date(std::string_view key, const std::string& value) { line(key, value); }
  void id(std::string_view key, const std::string& value) { line(key, value); }
  void planNumber(std::string_view key, std::uint64_t value) { put(key, JsonValue::number(std::to_string(value))); }
  template <class E>
  void word(std::string_view key, E value) {
    if (value != E{}) put(key, JsonValue::string(std::string(plan::wordOf(value))));
  }
  template <class T>
  void object(std::string_view key, const char*, T& value) {
    if (value == T{}) return;
    Writer inside;
    walk(inside, value);
    put(key, std::move(inside).take());
  }
  template <class T>
  void object(std::string_view key, const char* kind, std::optional<T>& value) {
    if (value) object(key, kind, *value);
  }
  template <class T>
  void list(std::string_view key, const char*, std::vector<T>& value, std::size_t, std::size_t) {
    if (value.empty()) return;
    JsonValue items = JsonValue::array();
    for (T& entry : value) {
      Writer inside;
      walk(inside, entry);
      items.items.push_back(std::move(inside).take());
    }
    put(key, std::move(items));
  }
  void extra(const Extra& rest) {
    for (const auto& [key, json] : rest) {
      auto parsed = plan::parseJson(json, {plan::limits::kDepth, plan::limits::kValues});
      put(key, parsed ? std::move(parsed).value() : JsonValue::string(json));
    }
  }

 private:
  JsonValue object_ = JsonValue::object();
};

Result<void> checkFormat(const JsonValue& root) {
  const std::string right(kClientFormat.substr(kClientFormat.find(' ') + 1));
  if (root.kind != JsonValue::Kind::Object) return Error{ErrorCode::NotAPlan, "", {"it is " + plan::kindText(root), right}, {}};
  const JsonValue* format = root.find("format");
  if (!format || format->text != kClientFormat)
    return Error{ErrorCode::NotAPlan, format ? "/format" : "", {"it needs \"format\": \"" + std::string(kClientFormat) + "\"", right}, {}};
  const JsonValue* version = root.find("version");
  const auto number = version && version->kind == JsonValue::Kind::Number ? parseNumber(version->text) : std::nullopt;
  if (!number) return Error{ErrorCode::FieldMissing, "", {"version"}, {}};
  const std::vector<std::string> args{version->text.substr(0, 40), std::to_string(kClientVersion)};
  if (*number > kClientVersion) return Error{ErrorCode::VersionTooNew, "/version", args, {}};
  if (*number != kClientVersion) return Error{ErrorCode::VersionUnknown, "/version", args, {}};
  return {};
}

}  // namespace

Result<ClientFile> readClient(std::string_view text) {
  if (text.size() > limits::kClientBytes)
    return Error{ErrorCode::FileTooLarge, "", {std::to_string(text.size()), std::to_string(limits::kClientBytes)}, {}};
  const Result<JsonValue> root = plan::parseJson(text, {plan::limits::kDepth, plan::limits::kValues});
  if (!root) return root.error();
  if (const auto right = checkFormat(*root); !right) return right.error();
  plan::ReadState state;
  plan::ObjectReader reader(state, *root, "", "client");
  reader.skip("format");
  reader.skip("version");
  reader.need("number");
  ClientFile file;
  walk(reader, file);
  if (state.error) return *state.error;
  return file;
}

std::string writeClient(const ClientFile& file) {
  Writer writer;
  writer.put("format", JsonValue::string(std::string(kClientFormat)));
  writer.put("version", JsonValue::number(std::to_string(kClientVersion)));
  ClientFile copy = file;
  walk(writer, copy);
  return plan::prettyText(std::move(writer).take());
}

}  // namespace combdraft::store
