#include "app/document/plan_room.h"

#include <algorithm>
#include <variant>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/json_text.h"

namespace combdraft::document {
namespace {

namespace limits = plan::limits;
using For = NoRoom::For;

// What an item takes in a file at most, apart from its points and texts (own
// estimate: a piece with every field set has about 60 values in 1,600 bytes).
constexpr std::size_t kItem_bytes = 2500, kItemValues = 90;
constexpr std::size_t kPoint_bytes = 90, kPointValues = 3;
// JSON of others is written indented: each of its values may stand on a line of its own.
constexpr std::size_t kIndented_bytes = 2 * limits::kDepth + 3;

// At most: each value but the first of a list or object follows a comma. A picture in base64
// has neither, so that a plan that was agreed is not worked out whole at every tap.
std::size_t valuesOf(const std::string& json) {
  const auto count = [&](char sign) { return static_cast<std::size_t>(std::count(json.begin(), json.end(), sign)); };
  return 1 + count(',') + count('[') + count('{');
}
// The ends of lists and objects stand on lines of their own too.
std::size_t bytesOf(const std::string& json) {
  const auto ends = static_cast<std::size_t>(std::count(json.begin(), json.end(), ']') + std::count(json.begin(), json.end(), '}'));
  return json.size() + kIndented_bytes * (valuesOf(json) + ends);
}

struct Counted {
  std::size_t pieces = 0, sections = 0, formulas = 0, treatments = 0, notes = 0, choices = 0;
  std::size_t points = 0, longestLine = 0, longestOutline = 0, longestText = 0, longestName = 0;
  std::size_t bytes = 0, values = 0;

  void text(const std::string& text) {
    longestText = std::max(longestText, text.size());
    bytes += 6 * text.size();  // a control character becomes six
  }
  void name(const std::string& name) { longestName = std::max(longestName, name.size()); }
  void extra(const plan::Extra& extra) {
    for (const auto& [key, json] : extra) {
      bytes += 6 * key.size() + bytesOf(json);
      values += valuesOf(json);
    }
  }
  void line(std::size_t count) {
    points += count;
    longestLine = std::max(longestLine, count);
  }
  void piece(const plan::Piece& piece) {
    line(piece.line.size());
    text(piece.note);
    name(piece.label);
    name(piece.foil);
    extra(piece.extra);
    extra(piece.backcomb.extra);
    for (const plan::ZoneColour* zone : {&piece.root, &piece.end}) {
      extra(zone->extra);
      extra(zone->lifts.extra);
      if (zone->finish) extra(zone->finish->extra);
    }
    if (piece.laidOut) extra(piece.laidOut->extra);
    values += 2 * piece.dropOuts.size();
    bytes += 60 * piece.dropOuts.size();
  }

  void operator()(const plan::PlanInfo& info) {
    text(info.notes);
    name(info.title);
    extra(info.extra);
    for (const std::string* json : {&info.agreedJson, &info.visitsJson, &info.logJson}) {
      bytes += bytesOf(*json);
      values += valuesOf(*json);
    }
  }
  void operator()(const plan::Head& head) {
    line(head.part.size());
    points += head.whorls.size();
    for (const plan::Whorl& whorl : head.whorls) extra(whorl.extra);
    extra(head.extra);
  }
  void operator()(const plan::Hair& hair) {
    extra(hair.extra);
    bytes += 300 * (hair.bands.size() + hair.scattered.size());
    values += 8 * (hair.bands.size() + hair.scattered.size());
  }
  void operator()(const plan::Formula& formula) {
    ++formulas;
    text(formula.text);
    for (const std::string* one : {&formula.letter, &formula.kind, &formula.leaflet.origin, &formula.leaflet.read}) name(*one);
    text(formula.leaflet.directions);
    for (const auto* parts : {&formula.products, &formula.additives})
      for (const plan::MixPart& part : *parts) mixed(part);
    for (const plan::Developer& developer : formula.developers) mixed(developer);
    extra(formula.extra);
    extra(formula.leaflet.extra);
  }
  template <class T>
  void mixed(const T& part) {
    name(part.name);
    extra(part.extra);
    bytes += kItem_bytes;
    values += kItemValues;
  }
  void operator()(const plan::Handout& handout) {
    for (const std::string* one : {&handout.aim, &handout.kit, &handout.checks, &handout.faults, &handout.selfCheck}) text(*one);
    for (const plan::HandoutStep& step : handout.steps) {
      for (const std::string* one : {&step.what, &step.how, &step.why}) text(*one);
      extra(step.extra);
    }
    for (const plan::HandoutUse& use : handout.parts) extra(use.extra);
    extra(handout.extra);
    bytes += kItem_bytes * (handout.steps.size() + handout.parts.size());
    values += kItemValues * (handout.steps.size() + handout.parts.size());
  }
  void operator()(const plan::Section& section) {
    ++sections;
    name(section.label);
    points += section.outline.size();
    longestOutline = std::max(longestOutline, section.outline.size());
    extra(section.extra);
    for (const plan::RetiredPiece& retired : section.retired) {
      piece(retired);
      bytes += kItem_bytes;
      values += kItemValues;
    }
    if (section.layout) {
      extra(section.layout->extra);
      points += section.layout->pivot ? 1 : 0;
      bytes += kItem_bytes + 80 * section.layout->empty.size();
      values += kItemValues + 3 * section.layout->empty.size();
    }
  }
  void operator()(const plan::Piece& one) {
    ++pieces;
    piece(one);
  }
  void operator()(const plan::Treatment& treatment) {
    ++treatments;
    extra(treatment.extra);
    extra(treatment.colour.extra);
  }
  void operator()(const plan::Note& note) {
    ++notes;
    ++points;
    text(note.text);
    extra(note.extra);
  }
  void operator()(const plan::Choice& choice) {
    ++choices;
    name(choice.name);
    extra(choice.extra);
    extra(choice.otherTargets);
    for (const auto& [region, target] : choice.targets) extra(target.extra);
    bytes += 300 * choice.targets.size();
    values += 8 * choice.targets.size();
  }
};

// Asked only when an estimate on the safe side says that it may be too much:
// twins, for one, are counted, and take no room in a file.
std::optional<NoRoom> missingInFile(const plan::Plan& plan, std::size_t points) {
  const std::string bytes = plan::writePlan(plan);
  if (bytes.size() > limits::kFileBytes) return NoRoom{For::FileBytes, bytes.size(), limits::kFileBytes};
  if (plan::readPlan(bytes)) return std::nullopt;
  if (points > limits::kPoints) return NoRoom{For::Points, points, limits::kPoints};
  return NoRoom{For::FileValues, limits::kValues + 1, limits::kValues};
}

}  // namespace

std::optional<NoRoom> roomMissing(const plan::Plan& plan) {
  Counted is;
  for (const auto& [id, item] : plan.items()) {
    std::visit(is, *item);
    is.bytes += kItem_bytes;
    is.values += kItemValues;
  }
  const NoRoom counts[] = {{For::Pieces, is.pieces, limits::kPieces},
                           {For::Sections, is.sections, limits::kSections},
                           {For::Formulas, is.formulas, limits::kFormulas},
                           {For::Treatments, is.treatments, limits::kTreatments},
                           {For::Notes, is.notes, limits::kNotes},
                           {For::Choices, is.choices, limits::kChoices},
                           {For::LinePoints, is.longestLine, limits::kLinePoints},
                           {For::OutlinePoints, is.longestOutline, limits::kOutlinePoints},
                           {For::Text, is.longestText, limits::kTextBytes},
                           {For::Name, is.longestName, limits::kLineBytes}};
  for (const NoRoom& count : counts)
    if (count.found > count.most) return count;
  is.values += kPointValues * is.points;
  is.bytes += kPoint_bytes * is.points;
  if (is.points > limits::kPoints || is.bytes > limits::kFileBytes || is.values > limits::kValues)
    return missingInFile(plan, is.points);
  return std::nullopt;
}

std::optional<plan::FieldProblem> wrongValue(const plan::ChangeSet& edit) {
  for (const plan::ItemChange& change : edit.changes) {
    if (!change.after) continue;
    const std::vector<plan::FieldProblem> problems = plan::checkFields(*change.after);
    if (problems.empty()) continue;
    const std::vector<plan::FieldProblem> before =
        change.before ? plan::checkFields(*change.before) : std::vector<plan::FieldProblem>{};
    for (const plan::FieldProblem& problem : problems)
      if (std::none_of(before.begin(), before.end(), [&](const plan::FieldProblem& old) {
            return old.field == problem.field && old.found == problem.found;
          }))
        return problem;
  }
  return std::nullopt;
}

std::optional<plan::ItemId> itemOffHead(const plan::ChangeSet& edit, const plan::Plan& next) {
  const auto isHead = [](const plan::ItemChange& change) { return change.id == plan::kHeadId; };
  if (std::none_of(edit.changes.begin(), edit.changes.end(), isHead)) return std::nullopt;
  const std::string text = plan::writePlan(next);
  const auto read = plan::readPlan(text);
  if (read || read.error().code != ErrorCode::PointOffHead) return std::nullopt;
  // "/sections/2/retired/0/line/1": the outermost item on the way that has an id.
  const auto root = plan::parseJson(text, {plan::limits::kDepth, plan::limits::kValues});
  const plan::JsonValue* at = root ? &*root : nullptr;
  std::string_view left = read.error().where;
  while (at && left.size() > 1) {
    left.remove_prefix(1);
    const std::string_view step = left.substr(0, left.find('/'));
    left.remove_prefix(step.size());
    const std::size_t number = static_cast<std::size_t>(parseNumber(step).value_or(0));
    at = at->kind == plan::JsonValue::Kind::Array ? (number < at->items.size() ? &at->items[number] : nullptr) : at->find(step);
    if (const plan::JsonValue* id = at ? at->find("id") : nullptr) return id->text;
  }
  return plan::kHeadId;
}

}  // namespace combdraft::document
