#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

std::vector<ScalpPoint> mirroredPoints(std::vector<ScalpPoint> points) {
  for (ScalpPoint& point : points) point = head::mirrored(point);
  return points;
}

ItemId sectionOnOtherSide(const Plan& plan, const ItemId& section) {
  if (section.empty()) return {};
  const Section* own = plan.find<Section>(section);
  if (own && !own->twinOf.empty()) return own->twinOf;
  for (const auto& [id, item] : plan.items()) {
    const Section* other = std::get_if<Section>(item.get());
    if (other && other->twinOf == section) return id;
  }
  return section;
}

}  // namespace

Piece mirroredPiece(const Plan& plan, const ItemId& sourceId, const Piece& source) {
  Piece twin = source;
  twin.line = mirroredPoints(std::move(twin.line));
  twin.section = sectionOnOtherSide(plan, source.section);
  if (!twin.foil.empty()) twin.foil += "*";  // foils with one name would be one foil
  twin.twinOf = sourceId;
  twin.order = 0;
  twin.extra.clear();
  return twin;
}

Section mirroredSection(const ItemId& sourceId, const Section& source) {
  Section twin = source;
  twin.outline = mirroredPoints(std::move(twin.outline));
  if (twin.layout && twin.layout->pivot) *twin.layout->pivot = head::mirrored(*twin.layout->pivot);
  twin.retired.clear();  // its pieces come and go with their sources
  twin.twinOf = sourceId;
  twin.order = 0;
  twin.extra.clear();
  return twin;
}

bool followsSource(const Plan& plan, const Piece& twin) {
  const Piece* source = twin.twinOf.empty() ? nullptr : plan.find<Piece>(twin.twinOf);
  if (!source || !source->twinOf.empty()) return false;
  Piece wanted = mirroredPiece(plan, twin.twinOf, *source);
  wanted.order = twin.order;
  wanted.extra = twin.extra;
  return wanted == twin;
}

bool followsSource(const Plan& plan, const Section& twin) {
  const Section* source = twin.twinOf.empty() ? nullptr : plan.find<Section>(twin.twinOf);
  if (!source || !source->twinOf.empty()) return false;
  Section wanted = mirroredSection(twin.twinOf, *source);
  wanted.order = twin.order;
  wanted.extra = twin.extra;
  return wanted == twin;
}

ItemId twinOwner(const Plan& plan, const ItemId& id) {
  if (const Piece* piece = plan.find<Piece>(id)) return piece->twinOf;
  if (const Section* section = plan.find<Section>(id)) return section->twinOf;
  return {};
}

std::vector<ItemId> twinsOf(const Plan& plan, const ItemId& sourceId) {
  std::vector<ItemId> found;
  if (sourceId.empty()) return found;  // whoever stands alone names nobody
  for (const auto& [id, item] : plan.items()) {
    const Piece* piece = std::get_if<Piece>(item.get());
    const Section* section = std::get_if<Section>(item.get());
    if ((piece && piece->twinOf == sourceId) || (section && section->twinOf == sourceId))
      found.push_back(id);
  }
  return found;
}

}  // namespace combdraft::plan
