#include "engine/plan/edits.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "engine/head/measures.h"
#include "engine/head/part_line.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/field_info.h"
#include "engine/plan/plan_words.h"
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

// What an edit changed by hand on a laid-out piece is the piece's own from now on.
void keepHandWork(const Plan& before, Plan& after) {
  for (const auto& [id, item] : before.items()) {
    const Piece* old = std::get_if<Piece>(item.get());
    const Piece* now = after.find<Piece>(id);
    if (!old || !now || old == now || !old->laidOut || !now->laidOut ||
        followsSource(before, *old))
      continue;
    std::set<RunField> own(now->laidOut->own.begin(), now->laidOut->own.end());
    const std::size_t known = own.size();
    for (const RunField field : governedDifferences(*old, *now)) own.insert(field);
    if (own.size() == known) continue;
    Piece piece = *now;
    piece.laidOut->own.assign(own.begin(), own.end());
    after.put(id, std::move(piece));
  }
}

// Runs whose section, head or freed pieces changed flow anew.
void letRunsFlow(const Plan& before, Plan& after) {
  const bool otherHead = !(before.head().measures == after.head().measures);
  std::set<ItemId> freed;
  for (const auto& [id, item] : before.items()) {
    const Piece* old = std::get_if<Piece>(item.get());
    const Piece* now = after.find<Piece>(id);
    if (old && now && old != now && old->laidOut && now->laidOut &&
        old->laidOut->own.size() > now->laidOut->own.size())
      freed.insert(now->section);
  }
  std::vector<ItemId> flowing;
  for (const auto& [id, item] : after.items()) {
    const Section* now = std::get_if<Section>(item.get());
    const Section* old = before.find<Section>(id);
    if (!now || !now->layout) continue;
    // A place that was only just emptied moves nothing.
    const bool otherRule = !old || !old->layout || [&] {
      Layout rule = *old->layout;
      for (const RunSlot& slot : old->layout->empty)
        if (std::find(now->layout->empty.begin(), now->layout->empty.end(), slot) ==
            now->layout->empty.end())
          return true;
      rule.empty = now->layout->empty;
      return !(rule == *now->layout);
    }();
    if (otherHead || freed.count(id) || otherRule || !(old->outline == now->outline))
      flowing.push_back(id);
  }
  for (const ItemId& id : flowing) after = reflowed(std::move(after), id);
}

ChangeSet finished(const Plan& before, Plan after, EditKind kind,
                   std::vector<std::string> args = {}) {
  keepHandWork(before, after);
  letTwinsFollow<Section>(before, after);
  letRunsFlow(before, after);
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
  const Section back = mirroredSection({}, twin);
  changed.outline = twin.outline == oldTwin.outline ? source.outline : back.outline;
  changed.layout = twin.layout == oldTwin.layout ? source.layout : back.layout;
  changed.retired = source.retired;
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

ChangeSet letGo(const Plan& plan, const std::vector<ItemId>& ids) {
  Plan after = changeEach<Piece>(plan, ids, [](Piece& piece) {
    if (!piece.laidOut) return;
    piece.laidOut->own.clear();
    for (const auto& field : words<RunField>()) piece.laidOut->own.push_back(field.value);
  });
  return finished(plan, std::move(after), EditKind::LetGo, ids);
}

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
  const auto bind = [&](const std::vector<ScalpPoint>& points) {
    for (const ScalpPoint& point : points)
      bounds.emplace_back(
          point, std::min(0.0, head.hairline.above_mm(head.shape.pointAt(point)) - 1e-9));
  };
  std::set<ItemId> sections;
  for (const ItemId& id : ids)
    if (const Section* section = plan.find<Section>(id)) {
      bind(section->outline);
      sections.insert(id);
    }
  // A section takes its pieces along; laid-out ones go with its rule.
  std::vector<ItemId> pieces;
  for (const auto& [id, item] : plan.items()) {
    const Piece* piece = std::get_if<Piece>(item.get());
    if (piece && sections.count(piece->section) && !piece->laidOut &&
        std::find(ids.begin(), ids.end(), id) == ids.end())
      pieces.push_back(id);
  }
  for (const ItemId& id : ids)
    if (const Piece* piece = plan.find<Piece>(id);
        piece && !(piece->laidOut && sections.count(piece->section)))
      pieces.push_back(id);
  for (const ItemId& id : pieces) bind(plan.find<Piece>(id)->line);
  for (const ItemId& id : ids)
    if (const Note* note = plan.find<Note>(id)) bind({note->at});
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
  Plan after = changeEach<Section>(plan, {sections.begin(), sections.end()}, [&](Section& section) {
    for (ScalpPoint& point : section.outline) point = turned(point, share);
  });
  after = changeEach<Piece>(after, pieces, [&](Piece& piece) {
    for (ScalpPoint& point : piece.line) point = turned(point, share);
  });
  for (const ItemId& id : ids)
    if (const Note* note = plan.find<Note>(id)) {
      Note moved = *note;
      moved.at = turned(note->at, share);
      after.put(id, std::move(moved));
    }
  return finished(plan, std::move(after), EditKind::MovePieces, ids);
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
  // The place of a laid-out piece that is taken away stays empty.
  for (const ItemId& id : ids) {
    const Piece* piece = plan.find<Piece>(id);
    if (!piece || !piece->laidOut || followsSource(plan, *piece) || gone(piece->section)) continue;
    const Section* now = after.find<Section>(piece->section);
    if (!now || !now->layout || now->layout->empty.size() >= limits::kRunPieces) continue;
    Section section = *now;
    section.layout->empty.push_back({piece->laidOut->row, piece->laidOut->column, {}});
    after.put(piece->section, std::move(section));
  }
  const auto sweep = [&](const ItemId& id, auto item) {
    using T = decltype(item);
    if constexpr (requires { item.choice; })
      if (plan.find<Choice>(item.choice) && gone(item.choice)) going.insert(id);
    if (gone(id)) return after.put(id, ItemPtr{});
    const T old = item;
    if constexpr (std::is_same_v<T, Piece>) {
      if (item.laidOut && gone(item.section)) return after.put(id, ItemPtr{});
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
