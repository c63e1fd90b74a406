// Remedies as edits.
#include <algorithm>
#include <cmath>
#include <set>

#include "engine/advise/rules.h"
#include "engine/advise/remedy.h"
#include "engine/advise/strips.h"
#include "engine/plan/edits.h"
#include "engine/plan/twins.h"

namespace combdraft::advise {
namespace {

using plan::ItemId;
using plan::Piece;
using plan::Plan;

/// The sides to change: of a pair the source, each once.
std::vector<ItemId> ownersOf(const Plan& plan, const std::vector<ItemId>& ids) {
  std::vector<ItemId> owners;
  std::set<ItemId> seen;
  for (const ItemId& id : ids) {
    const Piece* piece = plan.find<Piece>(id);
    if (!piece) continue;
    const ItemId owner = plan::followsSource(plan, *piece) ? piece->twinOf : id;
    if (seen.insert(owner).second) owners.push_back(owner);
  }
  return owners;
}

class Change {
 public:
  explicit Change(const Plan& plan) : plan_(plan), strips_(plan) {}

  const Plan& plan() const { return plan_; }
  const Strips& strips() const { return strips_; }

  void each(const std::vector<ItemId>& ids, const std::function<void(Piece&)>& change) {
    take(plan::changePieces(plan_, ids, change));
  }
  /// Adds a piece (and its twin, where `like` has or is one) after another in
  /// the working order; last of all when `after` is "".
  void add(Piece piece, const ItemId& like, const ItemId& after) {
    piece.section.clear(), piece.label.clear(), piece.note.clear(), piece.foil.clear();
    piece.laidOut.reset(), piece.twinOf.clear(), piece.held = false, piece.order = 0;
    const ItemId choice = piece.choice;
    const plan::ChangeSet added = plan::addPiece(plan_, std::move(piece));
    const ItemId id = added.args.front();
    take(added);
    const Piece* model = plan_.find<Piece>(like);
    if (model && (!model->twinOf.empty() || !plan::twinsOf(plan_, like).empty()))
      take(plan::addTwins(plan_, {id}));
    if (after.empty()) return;
    std::vector<ItemId> order;
    for (const auto& [other, entry] : plan_.pieces(choice)) {
      if (other == id || (entry->twinOf == id && plan::followsSource(plan_, *entry))) continue;
      order.push_back(other);
      if (other == after) order.push_back(id);
    }
    take(plan::renumber(plan_, choice, order));
  }
  /// Replaces a piece by `count` strips of `thickness_mm` over its old width.
  void split(const ItemId& id, int count, double thickness_mm) {
    const Piece old = *plan_.find<Piece>(id);
    const double between = count > 1 ? (old.thickness_mm - thickness_mm) / (count - 1) : 0;
    ItemId last = id;
    for (int i = 0; i < count; ++i) {
      const double left = -(old.thickness_mm - thickness_mm) / 2 + i * between;
      Piece strip = old;
      strip.line = strips_.beside(old, left);
      strip.thickness_mm = thickness_mm;
      if (i == 0) {
        each({id}, [&](Piece& piece) { piece.line = strip.line, piece.thickness_mm = thickness_mm; });
      } else {
        const ItemId next = plan_.freeId("piece");
        add(std::move(strip), id, last);
        last = next;
      }
    }
  }
  void remove(const std::vector<ItemId>& ids) {
    std::vector<ItemId> all;
    for (const ItemId& id : ownersOf(plan_, ids)) {
      all.push_back(id);
      for (const ItemId& twin : plan::twinsOf(plan_, id)) all.push_back(twin);
    }
    take(plan::removeItems(plan_, all));
  }

 private:
  void take(const plan::ChangeSet& edit) { plan_ = plan::applied(plan_, edit); }

  Plan plan_;
  Strips strips_;
};

int stripsIn(double width_mm, double strip_mm) {
  return std::max(2, static_cast<int>((width_mm + 1.5 * strip_mm) / (2.5 * strip_mm)));
}

void startLower(Piece& piece, double start_mm) {
  if (piece.start_mm >= start_mm) return;
  piece.start_mm = start_mm;
  // Hair pushed no farther than the new start is not pushed at all.
  if (piece.backcomb.depth_mm <= start_mm) piece.backcomb.depth_mm = piece.backcomb.pushed_frac = 0;
}

void moreBackcomb(Piece& piece, double depth_mm) {
  piece.backcomb.depth_mm = std::max(piece.backcomb.depth_mm, depth_mm);
  piece.backcomb.pushed_frac =
      std::max(piece.backcomb.pushed_frac, std::clamp(piece.backcomb.pushed_frac + 0.2, 0.4, 0.7));
}

void dropMiddle(Piece& piece, double length_mm, double out_mm) {
  const double from = (length_mm - out_mm) / 2, to = (length_mm + out_mm) / 2;
  plan::Stretch middle{from, to};
  std::vector<plan::Stretch> outs;
  for (const plan::Stretch& s : piece.dropOuts) {
    if (s.to_mm < middle.from_mm || s.from_mm > middle.to_mm) outs.push_back(s);
    else middle = {std::min(s.from_mm, middle.from_mm), std::max(s.to_mm, middle.to_mm)};
  }
  outs.push_back(middle);
  std::sort(outs.begin(), outs.end(),
            [](const auto& a, const auto& b) { return a.from_mm < b.from_mm; });
  piece.dropOuts = std::move(outs);
}

void addLike(Change& change, const Remedy& remedy) {
  const ItemId& like = remedy.pieces.front();
  Piece piece = *change.plan().find<Piece>(like);
  piece.action = plan::Action::Lighten;
  piece.line = remedy.line;
  piece.thickness_mm = remedy.amount;
  piece.dropOuts.clear();
  piece.start_mm = std::max(piece.start_mm, leastStart_mm(change.plan(), piece.choice).value_or(0));
  if (!mayBackcombMore(change.plan(), piece)) piece.backcomb.depth_mm = piece.backcomb.pushed_frac = 0;
  // A left-out keeps its hair against every piece: it has to make room.
  for (std::size_t i = 1; i < remedy.pieces.size(); ++i) {
    const Piece* out = change.plan().find<Piece>(remedy.pieces[i]);
    if (out && out->action == plan::Action::LeaveOut && out->thickness_mm > remedy.amount + 1)
      change.split(remedy.pieces[i], 2, (out->thickness_mm - remedy.amount) / 2);
  }
  change.add(std::move(piece), like, {});
}

/// A copy of the piece where there is room beside it.
void addBeside(Change& change, const ItemId& id) {
  const Piece piece = *change.plan().find<Piece>(id);
  const Strips& strips = change.strips();
  for (const double away : {4.0, 6.0, 9.0, 13.0})
    for (const double side : {1.0, -1.0}) {
      Piece copy = piece;
      copy.line = strips.beside(piece, side * (piece.thickness_mm + away));
      copy.dropOuts.clear();
      const auto strip = strips.of(copy);
      if (!strip || !strips.isInHair(copy.line)) continue;
      const auto all = change.plan().pieces(piece.choice);
      if (std::any_of(all.begin(), all.end(), [&](const auto& other) {
            const auto theirs = strips.of(*other.second);
            return theirs && Strips::overlap(*strip, *theirs, 1.5);
          }))
        continue;
      if (!mayBackcombMore(change.plan(), copy)) copy.backcomb.depth_mm = copy.backcomb.pushed_frac = 0;
      change.add(std::move(copy), id, id);
      return;
    }
}

void apply(Change& change, const Remedy& remedy, const std::vector<ItemId>& ids) {
  const double amount = remedy.amount;
  switch (remedy.kind) {
    case RemedyKind::Thinner:
      return change.each(ids, [&](Piece& p) { p.thickness_mm = std::min(p.thickness_mm, amount); });
    case RemedyKind::TakeLess:
      return change.each(ids, [&](Piece& p) { p.taken_frac = std::min(p.taken_frac, amount); });
    case RemedyKind::StartLower:
      return change.each(ids, [&](Piece& p) { startLower(p, amount); });
    case RemedyKind::MoreBackcomb:
      return change.each(ids, [&](Piece& p) { moreBackcomb(p, amount); });
    case RemedyKind::DropMiddleOfLength:
      return change.each(ids, [&](Piece& p) {
        if (const auto strip = change.strips().of(p); strip && strip->frame.length_mm() > amount)
          dropMiddle(p, strip->frame.length_mm(), amount);
      });
    case RemedyKind::SplitWidth:
      for (const ItemId& id : ids)
        if (const double width = change.plan().find<Piece>(id)->thickness_mm; width > 2 * amount)
          change.split(id, stripsIn(width, amount), amount);
      return;
    case RemedyKind::DropMiddleOfWidth:
      for (const ItemId& id : ids)
        if (const double width = change.plan().find<Piece>(id)->thickness_mm; width > amount + 1)
          change.split(id, 2, (width - amount) / 2);
      return;
    case RemedyKind::BreakWithLeftOut: {
      Piece out;
      out.choice = change.plan().find<Piece>(ids.front())->choice;
      out.action = plan::Action::LeaveOut;
      out.line = remedy.line;
      out.thickness_mm = amount;
      return change.add(std::move(out), ids.front(), {});
    }
    case RemedyKind::AddLightPiece: return addLike(change, remedy);
    case RemedyKind::FewerPieces: return change.remove(ids);
    case RemedyKind::MorePieces:
      for (const ItemId& id : ids) addBeside(change, id);
      return;
  }
}

}  // namespace

plan::ChangeSet editOf(const Plan& plan, const Remedy& remedy) {
  const plan::ChangeSet nothing{plan::EditKind::ChangePieces, remedy.pieces, {}};
  const std::vector<ItemId> ids = ownersOf(plan, remedy.pieces);
  const bool drawsLine =
      remedy.kind == RemedyKind::BreakWithLeftOut || remedy.kind == RemedyKind::AddLightPiece;
  if (ids.empty() || !plan.find<Piece>(remedy.pieces.front()) || (drawsLine && remedy.line.size() < 2))
    return nothing;
  Change change(plan);
  apply(change, remedy, ids);
  if (brokenBy(plan, change.plan())) return nothing;
  return plan::difference(plan, change.plan(), plan::EditKind::ChangePieces, remedy.pieces);
}

}  // namespace combdraft::advise
