// Edits that make twins and let them stand alone.
#include <algorithm>
#include <cmath>

#include "engine/plan/edit_steps.h"
#include "engine/plan/edits.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

Piece mirror(const Plan& plan, const ItemId& id, const Piece& p) { return mirroredPiece(plan, id, p); }
Section mirror(const Plan&, const ItemId& id, const Section& s) { return mirroredSection(id, s); }

bool onCentreLine(const head::HeadShape& shape, const std::vector<ScalpPoint>& points) {
  return std::all_of(points.begin(), points.end(), [&](const ScalpPoint& point) {
    return std::abs(shape.pointAt(point).x()) <= kCentreLine_mm;
  });
}
const std::vector<ScalpPoint>& pointsOf(const Piece& piece) { return piece.line; }
const std::vector<ScalpPoint>& pointsOf(const Section& section) { return section.outline; }

template <class T>
bool addTwin(const Plan& plan, const head::HeadShape& shape, const ItemId& id, const char* stem,
             Plan& after) {
  const T* item = plan.find<T>(id);
  if (!item || !item->twinOf.empty() || !twinsOf(plan, id).empty() ||
      onCentreLine(shape, pointsOf(*item)))
    return false;
  // Room in the order right after the source.
  for (const auto& [otherId, entry] : plan.items()) {
    const T* other = std::get_if<T>(entry.get());
    const T* now = after.find<T>(otherId);
    if (!other || other->choice != item->choice || other->order <= item->order) continue;
    T later = *now;
    ++later.order;
    after.put(otherId, std::move(later));
  }
  const T source = *after.find<T>(id);
  T twin = mirror(after, id, source);
  twin.order = source.order + 1;
  after.put(after.freeId(stem), std::move(twin));
  return true;
}

// The pieces of a section that has got a twin: theirs, as one block behind them.
void twinPieces(const ItemId& sectionId, const head::HeadShape& shape, Plan& after) {
  std::vector<ItemId> sources;
  ItemId choice;
  for (const auto& [id, piece] : after.pieces(after.find<Section>(sectionId)->choice)) {
    choice = piece->choice;
    if (piece->section == sectionId && piece->twinOf.empty() && twinsOf(after, id).empty() &&
        !onCentreLine(shape, piece->line))
      sources.push_back(id);
  }
  if (sources.empty()) return;
  const int last = after.find<Piece>(sources.back())->order;
  const int count = static_cast<int>(sources.size());
  for (const auto& [id, piece] : after.pieces(choice)) {
    if (piece->order <= last) continue;
    Piece later = *piece;
    later.order += count;
    after.put(id, std::move(later));
  }
  int order = last;
  for (const ItemId& id : sources) {
    Piece twin = mirroredPiece(after, id, *after.find<Piece>(id));
    twin.order = ++order;
    after.put(after.freeId("piece"), std::move(twin));
  }
}

}  // namespace

ChangeSet addTwins(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = plan;
  std::vector<std::string> made;
  const head::HeadShape shape = headOf(plan).shape;
  for (const ItemId& id : ids) {
    const Plan before = after;
    if (addTwin<Section>(before, shape, id, "section", after)) {
      made.push_back(id);
      twinPieces(id, shape, after);
    } else if (addTwin<Piece>(before, shape, id, "piece", after)) {
      made.push_back(id);
    }
  }
  return finished(plan, std::move(after), EditKind::AddTwins, std::move(made));
}

ChangeSet standAlone(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = plan;
  for (const ItemId& id : ids) {
    if (const Piece* piece = plan.find<Piece>(id)) {
      Piece own = *piece;
      own.twinOf.clear();
      after.put(id, std::move(own));
    } else if (const Section* section = plan.find<Section>(id)) {
      Section own = *section;
      own.twinOf.clear();
      after.put(id, std::move(own));
      for (const auto& [pieceId, twin] : plan.pieces(section->choice)) {
        if (twin->section != id || twin->twinOf.empty()) continue;
        Piece free = *twin;
        free.twinOf.clear();
        after.put(pieceId, std::move(free));
      }
    }
  }
  return finished(plan, std::move(after), EditKind::StandAlone, ids);
}

}  // namespace combdraft::plan
