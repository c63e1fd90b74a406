#include "engine/plan/edits.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/head/measures.h"
#include "engine/head/part_line.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

Piece mirror(const Plan& plan, const ItemId& id, const Piece& p) {
  return mirroredPiece(plan, id, p);
}
Section mirror(const Plan&, const ItemId& id, const Section& s) { return mirroredSection(id, s); }

// Twins that followed their source before the edit follow it after, and stand
// alone when it is gone.
template <class T>
void letTwinsFollow(const Plan& before, Plan& after) {
  for (const auto& [id, item] : before.items()) {
    const T* old = std::get_if<T>(item.get());
    const T* now = after.find<T>(id);
    if (!old || !now || now->twinOf.empty() || !followsSource(before, *old)) continue;
    const T* source = after.find<T>(now->twinOf);
    T twin = source ? mirror(after, now->twinOf, *source) : *now;
    if (!source) twin.twinOf.clear();
    twin.order = now->order;
    twin.extra = now->extra;
    if (!(twin == *now)) after.put(id, std::move(twin));
  }
}

ChangeSet finished(const Plan& before, Plan after, EditKind kind,
                   std::vector<std::string> args = {}) {
  letTwinsFollow<Section>(before, after);
  letTwinsFollow<Piece>(before, after);
  return difference(before, after, kind, std::move(args));
}

// A twin's changed values, turned into its source's.
void takeFromTwin(const Plan& plan, Piece& source, const Piece& oldTwin, Piece twin) {
  const Piece back = mirroredPiece(plan, {}, twin);
  Piece changed = twin;
  changed.line = twin.line == oldTwin.line ? source.line : back.line;
  changed.section = twin.section == oldTwin.section ? source.section : back.section;
  if (twin.foil == oldTwin.foil) changed.foil = source.foil;
  changed.twinOf.clear();
  changed.order = source.order;
  changed.extra = source.extra;
  source = std::move(changed);
}
void takeFromTwin(const Plan&, Section& source, const Section& oldTwin, Section twin) {
  Section changed = twin;
  changed.outline =
      twin.outline == oldTwin.outline ? source.outline : mirroredSection({}, twin).outline;
  changed.twinOf.clear();
  changed.order = source.order;
  changed.extra = source.extra;
  source = std::move(changed);
}

template <class T>
Plan changeEach(const Plan& plan, const std::vector<ItemId>& ids,
                const std::function<void(T&)>& change) {
  Plan after = plan;
  std::set<ItemId> done;
  for (const ItemId& id : ids) {
    const T* item = plan.find<T>(id);
    if (!item) continue;
    const bool follows = followsSource(plan, *item);
    const ItemId owner = follows ? item->twinOf : id;
    if (!done.insert(owner).second) continue;
    T value = *item;
    change(value);
    if (!follows) {
      after.put(id, std::move(value));
      continue;
    }
    T own = *item;  // order and extra fields are the twin's own
    own.order = value.order;
    own.extra = value.extra;
    after.put(id, std::move(own));
    T source = *plan.find<T>(owner);
    takeFromTwin(plan, source, *item, std::move(value));
    after.put(owner, std::move(source));
  }
  return after;
}

struct HeadNow {
  head::HeadShape shape;
  head::Hairline hairline;
};
HeadNow headOf(const Plan& plan) {
  const auto fitted = head::fitHead(plan.head().measures);
  const head::HeadShape shape(fitted ? fitted->axes : head::HeadAxes{});
  return {shape, head::Hairline(shape, plan.head().hairline)};
}

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

}  // namespace

ChangeSet addPiece(const Plan& plan, Piece piece) {
  Plan after = plan;
  if (piece.choice.empty()) piece.choice = plan.info().activeChoice;
  if (piece.order == 0) {
    const auto pieces = plan.pieces(piece.choice);
    piece.order = pieces.empty() ? 1 : pieces.back().second->order + 1;
  }
  const ItemId id = plan.freeId("piece");
  after.put(id, std::move(piece));
  return finished(plan, std::move(after), EditKind::AddPieces, {id});
}

ChangeSet addTwins(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = plan;
  std::vector<std::string> made;
  const head::HeadShape shape = headOf(plan).shape;
  for (const ItemId& id : ids) {
    const Plan before = after;
    if (addTwin<Section>(before, shape, id, "section", after) ||
        addTwin<Piece>(before, shape, id, "piece", after))
      made.push_back(id);
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
    }
  }
  return finished(plan, std::move(after), EditKind::StandAlone, ids);
}

ChangeSet changePieces(const Plan& plan, const std::vector<ItemId>& ids,
                       const std::function<void(Piece&)>& change) {
  return finished(plan, changeEach<Piece>(plan, ids, change), EditKind::ChangePieces, ids);
}

ChangeSet changeSections(const Plan& plan, const std::vector<ItemId>& ids,
                         const std::function<void(Section&)>& change) {
  return finished(plan, changeEach<Section>(plan, ids, change), EditKind::ChangeSections, ids);
}

ChangeSet movePieces(const Plan& plan, const std::vector<ItemId>& ids, const ScalpPoint& from,
                     const ScalpPoint& to) {
  const HeadNow head = headOf(plan);
  const Eigen::Quaterniond whole =
      Eigen::Quaterniond::FromTwoVectors(head::directionOf(from), head::directionOf(to));
  const auto turned = [&](const ScalpPoint& point, double share) {
    const Eigen::Quaterniond part = Eigen::Quaterniond::Identity().slerp(share, whole);
    const Vec3 direction = part * head::directionOf(point);
    const ScalpPoint moved = head::scalpPointAlong(direction);
    // A thousandth of a degree is 0.002 mm; the file stays readable.
    return ScalpPoint{std::round(moved.bearing_deg * 1000) / 1000,
                      std::round(moved.drop_deg * 1000) / 1000};
  };
  std::vector<std::pair<ScalpPoint, double>> bounds;  // a point, and how low it may go
  for (const ItemId& id : ids)
    if (const Piece* piece = plan.find<Piece>(id))
      for (const ScalpPoint& point : piece->line)
        bounds.emplace_back(
            point, std::min(0.0, head.hairline.above_mm(head.shape.pointAt(point)) - 1e-9));
  const auto fits = [&](double share) {
    return std::all_of(bounds.begin(), bounds.end(), [&](const auto& bound) {
      return head.hairline.above_mm(head.shape.pointAt(turned(bound.first, share))) >=
             bound.second;
    });
  };
  double share = 1;
  if (!fits(1)) {
    double low = 0, high = 1;
    for (int i = 0; i < 24; ++i) {
      const double middle = (low + high) / 2;
      (fits(middle) ? low : high) = middle;
    }
    share = low;
  }
  if (share == 0) return {EditKind::MovePieces, ids, {}};
  return finished(plan,
                  changeEach<Piece>(plan, ids,
                                    [&](Piece& piece) {
                                      for (ScalpPoint& point : piece.line)
                                        point = turned(point, share);
                                    }),
                  EditKind::MovePieces, ids);
}

ScalpPoint stepped(const head::HeadShape& shape, const ScalpPoint& from, double right_mm,
                   double down_mm) {
  const double bearing = radians(from.bearing_deg), drop = radians(from.drop_deg);
  const Vec3 right(std::cos(bearing), -std::sin(bearing), 0);
  const Vec3 down(std::cos(drop) * std::sin(bearing), std::cos(drop) * std::cos(bearing),
                  -std::sin(drop));
  const Vec3 at = shape.pointAt(from);
  const Vec3 normal = shape.normalAt(at);
  const Vec3 along = right * right_mm + down * down_mm;
  const double length = std::hypot(right_mm, down_mm);
  if (length == 0) return from;
  const Vec3 tangent = along - normal * along.dot(normal);
  return shape.scalpPointAt(head::surfaceOffset(shape, at, tangent, length));
}

ChangeSet renumber(const Plan& plan, const ItemId& choice, const std::vector<ItemId>& ids) {
  const auto pieces = plan.pieces(choice);
  std::set<ItemId> known, placed;
  for (const auto& entry : pieces) known.insert(entry.first);
  const std::set<ItemId> listed(ids.begin(), ids.end());
  std::vector<ItemId> order;
  const auto place = [&](const ItemId& id) {
    if (!known.count(id) || !placed.insert(id).second) return;
    order.push_back(id);
    for (const ItemId& twin : twinsOf(plan, id))
      if (!listed.count(twin) && known.count(twin) && placed.insert(twin).second)
        order.push_back(twin);
  };
  for (const ItemId& id : ids) place(id);
  for (const auto& entry : pieces) {
    // A twin waits for its source, which comes later in the old order.
    const Piece& piece = *entry.second;
    if (followsSource(plan, piece) && known.count(piece.twinOf) && !placed.count(piece.twinOf) &&
        !listed.count(entry.first))
      continue;
    place(entry.first);
  }
  for (const auto& entry : pieces) place(entry.first);
  Plan after = plan;
  for (std::size_t i = 0; i < order.size(); ++i) {
    Piece piece = *plan.find<Piece>(order[i]);
    piece.order = static_cast<int>(i) + 1;
    after.put(order[i], std::move(piece));
  }
  return finished(plan, std::move(after), EditKind::Renumber, ids);
}

ChangeSet removeItems(const Plan& plan, const std::vector<ItemId>& ids) {
  std::set<ItemId> going;
  std::size_t choices = 0;
  for (const auto& [id, item] : plan.items()) choices += std::holds_alternative<Choice>(*item);
  for (const ItemId& id : ids) {
    if (id == kPlanId || id == kHeadId || id == kHairId || !plan.item(id)) continue;
    if (plan.find<Choice>(id) && !going.count(id)) {
      if (choices == 1) continue;
      --choices;
    }
    going.insert(id);
  }
  const auto gone = [&](const ItemId& id) { return going.count(id) > 0; };
  Plan after = plan;
  const auto sweep = [&](const ItemId& id, auto item) {
    using T = decltype(item);
    if constexpr (requires { item.choice; })
      if (plan.find<Choice>(item.choice) && gone(item.choice)) going.insert(id);
    if (gone(id)) return after.put(id, ItemPtr{});
    const T old = item;
    if constexpr (std::is_same_v<T, Piece>) {
      if (gone(item.section)) item.section.clear();
      for (ZoneColour* zone : {&item.root, &item.end})
        if (gone(zone->formula)) zone->formula.clear();
    }
    if constexpr (std::is_same_v<T, Treatment>)
      if (gone(item.formula)) item.formula.clear();
    if constexpr (std::is_same_v<T, PlanInfo>)
      if (gone(item.activeChoice))
        for (const auto& [other, entry] : plan.items())
          if (std::holds_alternative<Choice>(*entry) && !gone(other)) {
            item.activeChoice = other;
            break;
          }
    if (!(item == old)) after.put(id, std::move(item));
  };
  for (const auto& [id, item] : plan.items())
    std::visit([&, &itemId = id](const auto& value) { sweep(itemId, value); }, *item);
  return finished(plan, std::move(after), EditKind::Remove, ids);
}

ChangeSet changeHead(const Plan& plan, const std::function<void(Head&)>& change) {
  Head head = plan.head();
  change(head);
  Plan after = plan;
  after.put(kHeadId, std::move(head));
  return finished(plan, std::move(after), EditKind::ChangeHead);
}

ChangeSet changeHair(const Plan& plan, const std::function<void(Hair&)>& change) {
  Hair hair = plan.hair();
  change(hair);
  Plan after = plan;
  after.put(kHairId, std::move(hair));
  return finished(plan, std::move(after), EditKind::ChangeHair);
}

ChangeSet changePlan(const Plan& plan, const std::function<void(PlanInfo&)>& change) {
  PlanInfo info = plan.info();
  change(info);
  Plan after = plan;
  after.put(kPlanId, std::move(info));
  return finished(plan, std::move(after), EditKind::ChangePlan);
}

ChangeSet setPart(const Plan& plan, std::vector<ScalpPoint> line) {
  Head head = plan.head();
  head.part = std::move(line);
  Plan after = plan;
  after.put(kHeadId, std::move(head));
  return finished(plan, std::move(after), EditKind::ChangePart);
}

ChangeSet shiftPart(const Plan& plan, double shift_mm) {
  const HeadNow now = headOf(plan);
  return setPart(plan, head::partMoved(now.shape, now.hairline, plan.head().part, shift_mm).line);
}

ChangeSet setItem(const Plan& plan, const ItemId& id, Item item) {
  Plan after = plan;
  after.put(id, std::make_shared<const Item>(std::move(item)));
  return finished(plan, std::move(after), EditKind::ChangeItem, {id});
}

}  // namespace combdraft::plan
