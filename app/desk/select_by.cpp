#include "app/desk/select_by.h"

#include <set>

#include "engine/head/measures.h"
#include "engine/plan/edits.h"

namespace combdraft::desk {
namespace {

using plan::ItemId;

const ItemId& choiceOf(const plan::Plan& plan, const ItemId& id) {
  if (const auto* piece = plan.find<plan::Piece>(id)) return piece->choice;
  if (const auto* section = plan.find<plan::Section>(id)) return section->choice;
  if (const auto* note = plan.find<plan::Note>(id)) return note->choice;
  return plan.info().activeChoice;
}

std::vector<plan::ScalpPoint> pointsOf(const plan::Plan& plan, const ItemId& id) {
  if (const auto* piece = plan.find<plan::Piece>(id)) return piece->line;
  if (const auto* section = plan.find<plan::Section>(id)) return section->outline;
  if (const auto* note = plan.find<plan::Note>(id)) return {note->at};
  return {};
}

// Keeps the leading item in the lead when it is among them.
document::Selection led(std::vector<ItemId> ids, const ItemId& lead) {
  if (const auto at = std::find(ids.begin(), ids.end(), lead); at != ids.end())
    std::rotate(at, at + 1, ids.end());
  return document::Selection(std::move(ids));
}

}  // namespace

document::Selection sameKind(const plan::Plan& plan, const document::Selection& from) {
  const ItemId& lead = from.lead();
  const ItemId choice = choiceOf(plan, lead);
  const auto* model = plan.find<plan::Piece>(lead);
  std::vector<ItemId> ids;
  for (const auto& [id, item] : plan.items()) {
    if (item->index() != (plan.item(lead) ? plan.item(lead)->index() : std::variant_npos) ||
        choiceOf(plan, id) != choice)
      continue;
    const auto* piece = plan.find<plan::Piece>(id);
    if (!model || (piece->action == model->action && piece->taking == model->taking)) ids.push_back(id);
  }
  return led(std::move(ids), lead);
}

std::vector<ItemId> sectionsIn(const plan::Plan& plan, const document::Selection& from) {
  std::set<ItemId> sections;
  for (const ItemId& id : from.ids()) {
    if (plan.find<plan::Section>(id)) sections.insert(id);
    if (const auto* piece = plan.find<plan::Piece>(id); piece && plan.find<plan::Section>(piece->section))
      sections.insert(piece->section);
  }
  return {sections.begin(), sections.end()};
}

document::Selection sameSection(const plan::Plan& plan, const document::Selection& from) {
  std::set<ItemId> sections;
  for (const ItemId& id : from.ids()) {
    if (plan.find<plan::Section>(id)) sections.insert(id);
    if (const auto* piece = plan.find<plan::Piece>(id)) sections.insert(piece->section);
  }
  std::vector<ItemId> ids;
  for (const auto& [id, piece] : plan.pieces(choiceOf(plan, from.lead())))
    if (sections.count(piece->section)) ids.push_back(id);
  return led(std::move(ids), from.lead());
}

document::Selection sameSide(const plan::Plan& plan, const document::Selection& from) {
  const auto fitted = head::fitHead(plan.head().measures);
  const head::HeadShape shape = fitted ? head::HeadShape(fitted->axes) : head::HeadShape();
  const auto sideOf = [&](const ItemId& id) {
    double x = 0;
    const auto points = pointsOf(plan, id);
    for (const plan::ScalpPoint& point : points) x += shape.pointAt(point).x();
    if (!points.empty()) x /= static_cast<double>(points.size());
    return std::abs(x) <= plan::kCentreLine_mm ? 0 : x < 0 ? -1 : 1;
  };
  const int side = sideOf(from.lead());
  std::vector<ItemId> ids;
  for (const auto& [id, piece] : plan.pieces(choiceOf(plan, from.lead())))
    if (sideOf(id) == side) ids.push_back(id);
  return led(std::move(ids), from.lead());
}

}  // namespace combdraft::desk
