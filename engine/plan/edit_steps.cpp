#include "engine/plan/edit_steps.h"

#include <algorithm>
#include <set>

#include "engine/head/measures.h"
#include "engine/plan/lay_out.h"
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
  if (twin.layout) changed.retired = source.retired;
  changed.twinOf.clear();
  changed.order = source.order;
  changed.extra = source.extra;
  source = std::move(changed);
}

}  // namespace

ChangeSet finished(const Plan& before, Plan after, EditKind kind,
                   std::vector<std::string> args) {
  keepHandWork(before, after);
  letTwinsFollow<Section>(before, after);
  letRunsFlow(before, after);
  letTwinsFollow<Piece>(before, after);
  return difference(before, after, kind, std::move(args));
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
template Plan changeEach<Piece>(const Plan&, const std::vector<ItemId>&,
                                const std::function<void(Piece&)>&);
template Plan changeEach<Section>(const Plan&, const std::vector<ItemId>&,
                                  const std::function<void(Section&)>&);

HeadNow headOf(const Plan& plan) {
  const auto fitted = head::fitHead(plan.head().measures);
  const head::HeadShape shape(fitted ? fitted->axes : head::HeadAxes{});
  return {shape, head::Hairline(shape, plan.head().hairline)};
}

}  // namespace combdraft::plan
