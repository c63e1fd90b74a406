#include "engine/plan/json_reader.h"

#include <cmath>

#include "engine/base/number_text.h"
#include "engine/head/measures.h"
#include "engine/plan/object_reader.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

using Kind = JsonValue::Kind;

class PlanReader {
 public:
  /// `root` is brought to the format of this program.
  PlanReader(JsonValue& root, std::string_view formatName)
      : root_(root), formatName_(formatName), top_(state_, root, "", "plan") {}

  const Migration& migration() const { return migration_; }

  Result<Plan> read() {
    readHeader();
    if (!state_.failed()) readItems();
    if (!state_.failed()) resolveTwins();
    if (state_.failed()) return error();
    return std::move(plan_);
  }

  Result<Parts> readParts() {
    Parts parts{{}, {}, {}, noParts()};
    readHeader();
    PlanInfo info = parts.plan.info();
    if (!state_.failed()) {
      walk(top_, parts);
      Head head = parts.plan.head();
      if (top_.has("head"))
        readHead(head);
      else
        useHead(head);
      plan_ = parts.plan;
      plan_.put(kHeadId, std::move(head));
      readPlacement();
      top_.extra(info.extra);
    }
    if (!state_.failed()) resolveTwins();
    if (state_.failed()) return error();
    plan_.put(kPlanId, std::move(info));
    tidyParts(plan_);
    parts.plan = std::move(plan_);
    return parts;
  }

 private:
  Error error() const {
    Error error = *state_.error;
    error.where = placeBefore(migration_, error.where);
    return error;
  }

  void readHeader() {
    const std::string kind(formatName_.substr(formatName_.find(' ') + 1));
    if (root_.kind != Kind::Object)
      return state_.fail(ErrorCode::NotAPlan, "", {"it is " + kindText(root_), kind});
    const JsonValue* format = root_.find("format");
    if (!format || format->kind != Kind::Text || format->text != formatName_)
      return state_.fail(ErrorCode::NotAPlan, format ? "/format" : "",
                         {"it needs \"format\": \"" + std::string(formatName_) + "\"", kind});
    const JsonValue* version = root_.find("version");
    if (!version) return state_.fail(ErrorCode::FieldMissing, "", {"version"});
    const auto typed = parseNumber(version->kind == Kind::Number ? version->text : "");
    if (!typed)
      return state_.fail(ErrorCode::FieldWrongType, "/version",
                         {kindText(*version), "the number of a format"});
    const std::string known = std::to_string(kFormatVersion);
    const std::string found = version->text.substr(0, 40);
    if (*typed > kFormatVersion)
      return state_.fail(ErrorCode::VersionTooNew, "/version", {found, known});
    if (*typed < 1 || *typed != std::floor(*typed))
      return state_.fail(ErrorCode::VersionUnknown, "/version", {found, known});
    migration_ = migrate(root_, static_cast<int>(*typed));
    top_.skip("format");
    top_.skip("version");
  }

  void readItems() {
    const Plan fresh = Plan::fresh(1);
    PlanInfo info;
    for (const char* key : {"number", "activeChoice", "head", "hair", "choices"}) top_.need(key);
    walk(top_, info);
    if (info.activeChoice.empty()) state_.fail(ErrorCode::FieldMissing, "", {"activeChoice"});
    Head head = fresh.head();
    head.part.clear();
    readHead(head);
    Hair hair;
    top_.object("hair", "hair", hair);
    plan_.put(kHeadId, std::move(head));
    plan_.put(kHairId, std::move(hair));
    readList<Choice>("choices", "choice", 1, limits::kChoices);
    readPlacement();
    readList<Treatment>("treatments", "treatment", 0, limits::kTreatments);
    std::optional<Handout> handout;
    top_.object("handout", "handout", handout);
    if (handout) plan_.put(kHandoutId, *std::move(handout));
    top_.kept("agreed", info.agreedJson);
    top_.kept("visits", info.visitsJson);
    top_.kept("log", info.logJson);
    top_.extra(info.extra);
    plan_.put(kPlanId, std::move(info));
  }

  void readPlacement() {
    readList<Formula>("formulas", "formula", 0, limits::kFormulas);
    readList<Section>("sections", "section", 0, limits::kSections);
    readList<Piece>("pieces", "piece", 0, limits::kPieces);
    readList<Note>("placedNotes", "note", 0, limits::kNotes);
  }

  void readHead(Head& head) {
    // Measures and hairline first: points are held against them.
    const JsonValue* found = root_.find("head");
    if (state_.failed() || !found) return;
    if (found->kind == Kind::Object) {
      ReadState measuring;
      ObjectReader reader(measuring, *found, "/head", "head");
      Head measured;
      walk(reader, measured);
      if (!measuring.failed()) useHead(measured);
    }
    top_.object("head", "head", head);
  }

  void useHead(const Head& head) {
    const auto fitted = head::fitHead(head.measures);
    if (!fitted)
      return state_.fail(fitted.error().code, "/head/" + measureKey(fitted.error().where),
                         fitted.error().args);
    state_.shape.emplace(fitted->axes);
    state_.hairline.emplace(*state_.shape, head.hairline);
    state_.lowestHairline.emplace(*state_.shape, lowestHairline());
  }

  // A plan whose hairline was moved must still open, so a file is held against
  // the lowest hairline that a plan can have; validate() uses the plan's own.
  static head::HairlineMoves lowestHairline() {
    return {fieldInfo("head.hairlineFront_mm").low, fieldInfo("head.hairlineTemples_mm").low,
            fieldInfo("head.hairlineSides_mm").low, fieldInfo("head.hairlineNape_mm").low};
  }

  static std::string measureKey(const std::string& name) {
    return (name == "ear-to-ear" ? "earToEar" : name) + "_mm";
  }

  template <class T>
  void readList(std::string_view key, const std::string& kind, std::size_t least,
                std::size_t most) {
    const JsonValue* found = root_.find(key);
    top_.skip(key);
    if (state_.failed() || !found) return;
    const std::string place = pointerTo("", key);
    if (found->kind != Kind::Array)
      return state_.fail(ErrorCode::FieldWrongType, place, {kindText(*found), "a list"});
    const std::size_t count = found->items.size();
    if (count > most)
      return state_.fail(ErrorCode::TooManyItems, place,
                         {std::to_string(count), std::to_string(most)});
    if (count < least)
      return state_.fail(ErrorCode::FieldOutOfRange, place,
                         {std::to_string(count) + " entries",
                          std::to_string(least) + " to " + std::to_string(most) + " entries"});
    for (std::size_t i = 0; i < count && !state_.failed(); ++i)
      readItem<T>(found->items[i], place + "/" + std::to_string(i), kind);
  }

  template <class T>
  void readItem(const JsonValue& object, const std::string& place, const std::string& kind) {
    if (object.kind != Kind::Object)
      return state_.fail(ErrorCode::FieldWrongType, place, {kindText(object), "an object"});
    ObjectReader reader(state_, object, place, kind);
    ItemId id;
    reader.ownId("id", id);
    if (state_.failed()) return;
    if (plan_.item(id)) return state_.fail(ErrorCode::IdDuplicate, place + "/id", {id});
    T item{};
    if constexpr (std::is_same_v<T, Piece> || std::is_same_v<T, Section>) {
      const char* points = std::is_same_v<T, Piece> ? "line" : "outline";
      if (reader.has("twinOf") && !reader.has(points)) return readTwin(reader, id, item, points);
    }
    walk(reader, item);
    plan_.put(id, std::move(item));
  }

  // A twin stores whose twin it is and its place in the order; the rest comes
  // from its source once everything is read.
  template <class T>
  void readTwin(ObjectReader& reader, const ItemId& id, T& item, const char* points) {
    reader.id("twinOf", item.twinOf);
    reader.whole("order", item.order);
    reader.extra(item.extra);
    if (state_.failed()) return;
    KeyNames names;
    T probe{};
    walk(names, probe);
    for (const auto& entry : item.extra)
      if (names.keys.count(entry.first))
        return state_.fail(ErrorCode::FieldMissing, reader.place(), {points});
    shortTwins_.push_back({id, reader.place()});
    plan_.put(id, std::move(item));
  }

  void resolveTwins() {
    resolve<Section>([](const Plan&, const ItemId& id, const Section& s) {
      return mirroredSection(id, s);
    });
    resolve<Piece>(mirroredPiece);
  }

  template <class T, class Mirror>
  void resolve(Mirror mirror) {
    for (const auto& [id, place] : shortTwins_) {
      const T* twin = plan_.find<T>(id);
      if (!twin) continue;
      const T* source = plan_.find<T>(twin->twinOf);
      if (!source) return state_.fail(ErrorCode::IdUnknown, place + "/twinOf", {twin->twinOf});
      if (!source->twinOf.empty())
        return state_.fail(ErrorCode::ReferenceCycle, place + "/twinOf", {twin->twinOf});
      T whole = mirror(plan_, twin->twinOf, *source);
      whole.order = twin->order;
      whole.extra = twin->extra;
      plan_.put(id, std::move(whole));
    }
  }

  // Collects the keys of an object kind.
  struct KeyNames {
    std::set<std::string, std::less<>> keys;
    template <class... A> void number(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void whole(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void flag(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void line(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void text(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void id(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void ownId(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void word(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void points(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void stretches(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void object(std::string_view k, A&&...) { keys.emplace(k); }
    template <class... A> void list(std::string_view k, A&&...) { keys.emplace(k); }
    void extra(const Extra&) {}
  };

  struct ShortTwin {
    ItemId id;
    std::string place;
  };

  JsonValue& root_;
  const std::string_view formatName_;
  Migration migration_;
  ReadState state_;
  ObjectReader top_;
  Plan plan_;
  std::vector<ShortTwin> shortTwins_;
};

}  // namespace

namespace {

Result<JsonValue> parsedFile(std::string_view text) {
  if (text.size() > limits::kFileBytes)
    return Error{ErrorCode::FileTooLarge, {},
                 {std::to_string(text.size()), std::to_string(limits::kFileBytes)}, {}};
  return parseJson(text, {limits::kDepth, limits::kValues});
}

}  // namespace

Result<Plan> readPlan(std::string_view text) {
  auto read = readPlanAsRead(text);
  if (!read) return read.error();
  return std::move(read).value().plan;
}

Result<PlanAsRead> readPlanAsRead(std::string_view text) {
  Result<JsonValue> root = parsedFile(text);
  if (!root) return root.error();
  JsonValue tree = std::move(root).value();
  PlanReader reader(tree, kFormatName);
  auto plan = reader.read();
  if (!plan) return plan.error();
  return PlanAsRead{std::move(plan).value(), reader.migration()};
}

Result<Parts> readParts(std::string_view text, std::string_view formatName) {
  Result<JsonValue> root = parsedFile(text);
  if (!root) return root.error();
  JsonValue tree = std::move(root).value();
  return PlanReader(tree, formatName).readParts();
}

}  // namespace combdraft::plan
