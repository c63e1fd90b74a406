#include "engine/plan/pattern.h"

#include <algorithm>
#include <set>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

namespace combdraft::plan {
namespace {

// Calls `change` on each section and on each piece, retired ones too.
template <class OnSection, class OnPiece>
void changeAll(Plan& plan, OnSection onSection, OnPiece onPiece) {
  const Plan before = plan;
  for (const auto& [id, item] : before.items()) {
    if (const Section* found = std::get_if<Section>(item.get())) {
      Section section = *found;
      onSection(section);
      for (RetiredPiece& piece : section.retired) onPiece(piece);
      plan.put(id, std::move(section));
    } else if (const Piece* found_ = std::get_if<Piece>(item.get())) {
      Piece piece = *found_;
      onPiece(piece);
      plan.put(id, std::move(piece));
    }
  }
}

bool isCombed(double depth_mm, double pushed_frac) { return depth_mm > 0 && pushed_frac > 0; }

// Takes all backcomb out; says whether there was any.
bool takeBackcombOut(Plan& plan) {
  bool any = false;
  changeAll(
      plan,
      [&](Section& section) {
        if (!section.layout) return;
        Layout& rule = *section.layout;
        any = any || isCombed(std::max(rule.backcomb_mm.from, rule.backcomb_mm.to),
                              std::max(rule.pushed_frac.from, rule.pushed_frac.to));
        rule.backcomb_mm = rule.pushed_frac = {0, 0};
      },
      [&](Piece& piece) {
        any = any || isCombed(piece.backcomb.depth_mm, piece.backcomb.pushed_frac);
        piece.backcomb.depth_mm = piece.backcomb.pushed_frac = 0;
      });
  return any;
}

}  // namespace

Parts patternOf(const Plan& plan, const std::vector<ItemId>& ids, const std::string& name,
                const std::string& goodFor, const std::string& notFor) {
  std::vector<ItemId> sections;
  for (const ItemId& id : ids)
    if (plan.find<Section>(id)) sections.push_back(id);
  Parts pattern = partsOf(plan, sections);
  pattern.name = name;
  pattern.goodFor = goodFor;
  pattern.notFor = notFor;
  changeAll(
      pattern.plan, [](Section&) {},
      [](Piece& piece) {
        piece.root = piece.end = {};
        piece.held = false;
      });
  const Plan whole = pattern.plan;
  for (const auto& [id, item] : whole.items())
    if (std::holds_alternative<Formula>(*item)) pattern.plan.put(id, ItemPtr{});
  return pattern;
}

std::string writePattern(const Parts& pattern) { return writeParts(pattern, kPatternFormat); }

Result<Parts> readPattern(std::string_view text) {
  Result<Parts> pattern = readParts(text, kPatternFormat);
  if (!pattern) return pattern;
  if (pattern->name.empty()) return Error{ErrorCode::FieldMissing, "", {"name"}, {}};
  if (pattern->plan.sections().empty())
    return Error{ErrorCode::FieldMissing, "", {"sections"}, {}};
  return pattern;
}

Result<UsedPattern> usePattern(const Plan& plan, const Parts& pattern) {
  Parts parts = pattern;
  UsedPattern used;
  if (plan.hair().curl >= CurlClass::TightCurl)
    used.isBackcombTakenOut = takeBackcombOut(parts.plan);
  Result<ChangeSet> added = addParts(plan, std::move(parts), EditKind::UsePattern, Runs::FlowAnew);
  if (!added) return added.error();
  used.edit = std::move(added).value();

  const Plan after = applied(plan, used.edit);
  std::set<ItemId> came, filled;
  for (const ItemChange& change : used.edit.changes)
    if (!change.before) came.insert(change.id);
  for (const auto& [id, piece] : after.pieces())
    if (piece->laidOut) filled.insert(piece->section);
  for (const ItemId& id : used.edit.args)
    if (const Section* section = after.find<Section>(id); section && section->layout && !filled.count(id))
      used.withoutPieces.push_back(id);
  for (Issue issue : validate(after)) {
    if (issue.severity != Severity::Error && issue.code != IssueCode::HairShorterThanStart &&
        issue.code != IssueCode::HairShorterThanBackcomb)
      continue;
    std::erase_if(issue.items, [&](const ItemId& id) { return !came.count(id); });
    if (!issue.items.empty()) used.issues.push_back(std::move(issue));
  }
  return used;
}

}  // namespace combdraft::plan
