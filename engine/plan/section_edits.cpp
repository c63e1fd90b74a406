// Edits of sections and of their runs, and the order that follows from them.
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "engine/head/scalp_outline.h"
#include "engine/plan/edit_steps.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/plan_words.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {

ChangeSet addSection(const Plan& plan, Section section) {
  Plan after = plan;
  if (section.choice.empty()) section.choice = plan.info().activeChoice;
  if (section.order == 0) {
    const auto sections = plan.sections(section.choice);
    section.order = sections.empty() ? 1 : sections.back().second->order + 1;
  }
  const ItemId id = plan.freeId("section");
  after.put(id, std::move(section));
  return finished(plan, std::move(after), EditKind::AddSection, {id});
}

ChangeSet splitSection(const Plan& plan, const ItemId& id, const std::vector<ScalpPoint>& parting) {
  const Section* section = plan.find<Section>(id);
  ChangeSet none{EditKind::SplitSection, {id}, {}};
  if (!section || section->outline.size() < 3) return none;
  const head::HeadShape shape = headOf(plan).shape;
  const auto onSurface = [&](const std::vector<ScalpPoint>& points) {
    std::vector<Vec3> out;
    for (const ScalpPoint& point : points) out.push_back(shape.pointAt(point));
    return out;
  };
  const auto halves =
      head::ScalpOutline(shape, onSurface(section->outline)).split(onSurface(parting));
  if (!halves) return none;
  const auto points = [&](const std::vector<Vec3>& outline) {
    std::vector<ScalpPoint> out;
    for (const Vec3& p : outline) {
      const ScalpPoint at = shape.scalpPointAt(p);
      out.push_back({std::round(at.bearing_deg * 1000) / 1000, std::round(at.drop_deg * 1000) / 1000});
    }
    return out;
  };
  // The higher half keeps the section: its run is counted from the opening.
  std::vector<Vec3> kept = halves->first, cut = halves->second;
  if (head::ScalpOutline(shape, kept).middle().z() < head::ScalpOutline(shape, cut).middle().z())
    std::swap(kept, cut);
  if (kept.size() > limits::kOutlinePoints || cut.size() > limits::kOutlinePoints) return none;
  Plan after = changeEach<Section>(plan, {id}, [&](Section& half) { half.outline = points(kept); });
  const bool follows = followsSource(plan, *section);
  Section other = *section;
  other.outline = points(cut);
  other.retired.clear();
  other.label.clear();
  other.twinOf.clear();
  if (other.layout) other.layout->empty.clear();
  // Room in the order right after the section.
  for (const auto& [otherId, later] : plan.sections(section->choice)) {
    if (later->order <= section->order) continue;
    Section moved = *after.find<Section>(otherId);
    ++moved.order;
    after.put(otherId, std::move(moved));
  }
  other.order = section->order + 1;
  const ItemId made = after.freeId("section");
  after.put(made, other);
  // Pieces drawn by hand go with the half they lie in.
  const head::ScalpOutline below(shape, cut);
  for (const auto& [pieceId, piece] : plan.pieces(section->choice)) {
    if (piece->section != id || piece->laidOut || followsSource(plan, *piece)) continue;
    if (!below.contains(shape.pointAt(piece->line[piece->line.size() / 2]))) continue;
    Piece moved = *after.find<Piece>(pieceId);
    moved.section = made;
    after.put(pieceId, std::move(moved));
  }
  Plan whole = applied(plan, finished(plan, std::move(after), EditKind::SplitSection));
  // A pair stays a pair: the new half gets its twin as well.
  if (follows || !twinsOf(plan, id).empty())
    whole = applied(whole, addTwins(whole, {made}));
  return difference(plan, whole, EditKind::SplitSection, {id, made});
}

ChangeSet takeBack(const Plan& plan, const std::vector<ItemId>& ids) {
  std::set<ItemId> sections(ids.begin(), ids.end());
  Plan after = changeEach<Section>(plan, ids, [](Section& section) {
    if (section.layout) section.layout->empty.clear();
  });
  std::vector<ItemId> pieces;
  for (const auto& [id, item] : plan.items())
    if (const Piece* piece = std::get_if<Piece>(item.get()))
      if (sections.count(id) || sections.count(piece->section)) pieces.push_back(id);
  after = changeEach<Piece>(after, pieces, [](Piece& piece) {
    if (piece.laidOut) piece.laidOut->own.clear();
  });
  return finished(plan, std::move(after), EditKind::TakeBack, ids);
}

ChangeSet dropRule(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = changeEach<Section>(plan, ids, [](Section& section) {
    section.layout.reset();
    section.retired.clear();
  });
  std::vector<ItemId> pieces;
  for (const auto& [id, item] : plan.items()) {
    const Piece* piece = std::get_if<Piece>(item.get());
    const Section* section = piece ? after.find<Section>(piece->section) : nullptr;
    if (piece && piece->laidOut && section && !section->layout && piece->twinOf.empty()) pieces.push_back(id);
  }
  after = changeEach<Piece>(after, pieces, [](Piece& piece) { piece.laidOut.reset(); });
  return finished(plan, std::move(after), EditKind::DropRule, ids);
}

ChangeSet letGo(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = changeEach<Piece>(plan, ids, [](Piece& piece) {
    if (!piece.laidOut) return;
    piece.laidOut->own.clear();
    for (const auto& field : words<RunField>()) piece.laidOut->own.push_back(field.value);
  });
  return finished(plan, std::move(after), EditKind::LetGo, ids);
}

std::vector<ItemId> orderByRule(const Plan& plan, const ItemId& choice) {
  const head::HeadShape shape = headOf(plan).shape;
  struct Place {
    int section, row, column;
    double height_mm;
    ItemId id;
  };
  std::map<ItemId, int> sectionPlace;
  for (const auto& [id, section] : plan.sections(choice))
    sectionPlace.emplace(id, static_cast<int>(sectionPlace.size()));
  const int none = static_cast<int>(sectionPlace.size());
  std::vector<Place> places;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    const auto found = sectionPlace.find(piece->section);
    double height = 0;
    for (const ScalpPoint& point : piece->line)
      height += shape.pointAt(point).z() / static_cast<double>(piece->line.size());
    places.push_back({found == sectionPlace.end() ? none : found->second,
                      piece->laidOut ? -piece->laidOut->row : 0,
                      piece->laidOut ? piece->laidOut->column : 0, height, id});
  }
  // Laid-out ones in their run's order, then those drawn by hand by height.
  const auto key = [](const Place& p) {
    return std::tuple(p.section, p.row == 0, p.row, p.column, p.row == 0 ? p.height_mm : 0.0);
  };
  std::stable_sort(places.begin(), places.end(),
                   [&](const Place& a, const Place& b) { return key(a) < key(b); });
  std::vector<ItemId> order;
  for (const Place& place : places) order.push_back(place.id);
  return order;
}

}  // namespace combdraft::plan
