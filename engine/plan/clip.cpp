#include "engine/plan/clip.h"

#include <algorithm>
#include <cmath>

#include "engine/head/scalp_outline.h"
#include "engine/plan/edits.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/edit_steps.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

// Whether the copy has its own free place across the centre line: sections of
// one side, nothing of which has a twin.
bool goesAcross(const Plan& plan, const head::HeadShape& shape, const Plan& parts) {
  bool sections = false;
  int side = 0;
  const auto isOneSided = [&](const std::vector<ScalpPoint>& points) {
    return std::all_of(points.begin(), points.end(), [&](const ScalpPoint& point) {
      const double x = shape.pointAt(point).x();
      if (std::abs(x) <= kCentreLine_mm) return true;
      if (side == 0) side = x < 0 ? -1 : 1;
      return (x < 0 ? -1 : 1) == side;
    });
  };
  for (const auto& [id, item] : parts.items()) {
    const Section* section = std::get_if<Section>(item.get());
    const Piece* piece = std::get_if<Piece>(item.get());
    if (!section && !piece) continue;
    sections = sections || section;
    const ItemId& twinOf = section ? plan.find<Section>(id)->twinOf : plan.find<Piece>(id)->twinOf;
    if (!twinOf.empty() || !twinsOf(plan, id).empty() ||
        !isOneSided(section ? section->outline : piece->line))
      return false;
  }
  return sections && side != 0;
}

Vec3 middleOf(const head::HeadShape& shape, const Plan& plan, const ItemId& id) {
  if (const Piece* piece = plan.find<Piece>(id)) return shape.pointAt(piece->line[piece->line.size() / 2]);
  std::vector<Vec3> corners;
  for (const ScalpPoint& point : plan.find<Section>(id)->outline)
    corners.push_back(shape.pointAt(point));
  return head::ScalpOutline(shape, corners).middle();
}

}  // namespace

std::string copied(const Plan& plan, const std::vector<ItemId>& ids) {
  const Parts parts = partsOf(plan, ids);
  const bool any = std::any_of(parts.plan.items().begin(), parts.plan.items().end(),
                               [](const auto& entry) {
                                 return std::holds_alternative<Section>(*entry.second) ||
                                        std::holds_alternative<Piece>(*entry.second) ||
                                        std::holds_alternative<Note>(*entry.second);
                               });
  return any ? writeParts(parts, kClipFormat) : std::string();
}

Result<ChangeSet> pasted(const Plan& plan, std::string_view text) {
  Result<Parts> parts = readParts(text, kClipFormat);
  if (!parts) return parts.error();
  return addParts(plan, std::move(parts).value(), EditKind::Paste, Runs::AsTheyAre);
}

Result<ChangeSet> duplicated(const Plan& plan, const std::vector<ItemId>& ids) {
  const head::HeadShape shape = headOf(plan).shape;
  Parts parts = partsOf(plan, ids);
  const bool across = goesAcross(plan, shape, parts.plan);
  if (across)
    changePoints(parts.plan, [](ScalpPoint& point) { point = head::mirrored(point); });
  Result<ChangeSet> added = addParts(plan, std::move(parts), EditKind::Duplicate, Runs::AsTheyAre);
  if (!added || across) return added;
  Plan after = applied(plan, *added);
  for (const ItemId& id : added->args) {
    const Section* section = after.find<Section>(id);
    const Piece* piece = after.find<Piece>(id);
    if ((section && followsSource(after, *section)) || (piece && followsSource(after, *piece)))
      continue;
    if (const Note* note = after.find<Note>(id)) {
      Note lower = *note;
      lower.at = stepped(shape, note->at, 0, kCopyBelow_mm);
      after.put(id, std::move(lower));
      continue;
    }
    const Vec3 from = middleOf(shape, after, id);
    const ScalpPoint at = shape.scalpPointAt(from);
    for (const double way_mm : {kCopyBelow_mm, -kCopyBelow_mm}) {
      Plan moved = applied(after, movePieces(after, {id}, at, stepped(shape, at, 0, way_mm)));
      const bool clear = (middleOf(shape, moved, id) - from).norm() > kCopyBelow_mm / 2;
      if (!clear && way_mm > 0) continue;  // the hair ends here
      after = std::move(moved);
      break;
    }
  }
  return difference(plan, after, EditKind::Duplicate, added->args);
}

}  // namespace combdraft::plan
