#include "engine/advise/rules.h"

#include <algorithm>
#include <cmath>

#include "engine/advise/strips.h"
#include "engine/plan/hair_marks.h"

namespace combdraft::advise {
namespace {

using plan::Action;
using plan::ItemId;
using plan::Piece;
using plan::Plan;

constexpr double kAlmost = 1e-6;

/// Share of a piece's strip that is taken and lightened, along the line.
double takenShare(const Piece& piece, double length_mm) {
  const double period = piece.tooth_mm + piece.gap_mm;
  const double teeth = piece.tooth_mm > 0 && period > 0 ? piece.tooth_mm / period : 1;
  double out = 0;
  for (const plan::Stretch& s : piece.dropOuts)
    out += std::max(0.0, std::min(s.to_mm, length_mm) - std::max(s.from_mm, 0.0));
  return piece.taken_frac * teeth * std::max(0.0, 1 - out / std::max(length_mm, 1e-9));
}

bool isCombed(const plan::Backcomb& comb) { return comb.depth_mm > 0 && comb.pushed_frac > 0; }
bool isMoreCombed(const plan::Backcomb& before, const plan::Backcomb& after) {
  if (!isCombed(after)) return false;
  return !isCombed(before) || after.depth_mm > before.depth_mm + kAlmost ||
         after.pushed_frac > before.pushed_frac + kAlmost;
}
/// Less pushed back means more light, unless the start moved beyond it.
bool isLessCombed(const Piece& before, const Piece& after) {
  return isCombed(before.backcomb) && before.backcomb.depth_mm > after.start_mm + kAlmost &&
         isMoreCombed(after.backcomb, before.backcomb);
}

/// The piece with what placement may change put back to what it was.
Piece withPlacementOf(Piece piece, const Piece& of) {
  piece.line = of.line, piece.thickness_mm = of.thickness_mm;
  piece.taking = of.taking, piece.taken_frac = of.taken_frac;
  piece.tooth_mm = of.tooth_mm, piece.gap_mm = of.gap_mm, piece.dropOuts = of.dropOuts;
  piece.start_mm = of.start_mm, piece.backcomb = of.backcomb;
  piece.order = of.order, piece.laidOut = of.laidOut;
  return piece;
}

bool haveSameColour(const Piece& a, const Piece& b) {
  return a.action == b.action && a.root == b.root && a.end == b.end &&
         a.handover_mm == b.handover_mm && a.stop_mm == b.stop_mm && a.outer_frac == b.outer_frac &&
         a.under == b.under;
}

class Comparison {
 public:
  Comparison(const Plan& before, const Plan& after) : before_(before), after_(after), strips_(before) {
    for (const auto& [id, item] : before.items())
      if (const auto* piece = std::get_if<Piece>(item.get()); piece && !piece->line.empty())
        if (auto strip = strips_.of(*piece)) known_.push_back({id, piece, std::move(*strip)});
  }

  std::optional<BrokenRule> run() const {
    for (const auto& [id, item] : before_.items()) {
      const plan::ItemPtr now = after_.item(id);
      if (now == item) continue;
      const auto* old = std::get_if<Piece>(item.get());
      if (!old) {
        // Sections carry the empty places of pieces that were taken away.
        if (now && (*now == *item || std::holds_alternative<plan::Section>(*now))) continue;
        return BrokenRule{Rule::PlacementOnly, id};
      }
      if (const auto broken = checkKnown(id, *old, after_.find<Piece>(id))) return broken;
    }
    for (const auto& [id, item] : after_.items()) {
      if (before_.item(id) == item) continue;
      const auto* now = std::get_if<Piece>(item.get());
      if (!now) {
        if (!before_.item(id)) return BrokenRule{Rule::PlacementOnly, id};
        continue;
      }
      const auto* old = before_.find<Piece>(id);
      if (old && *old == *now) continue;
      if (old && withPlacementOf(*now, *old) == *old && old->order != now->order) {
        Piece same = *now;
        same.order = old->order;
        if (same == *old) continue;  // only numbered anew
      }
      if (const auto broken = checkHair(id, *now)) return broken;
    }
    return std::nullopt;
  }

 private:
  struct Known {
    ItemId id;
    const Piece* piece;
    Strip strip;
  };

  std::optional<BrokenRule> checkKnown(const ItemId& id, const Piece& old, const Piece* now) const {
    if (old.held) {
      if (!now) return BrokenRule{Rule::HeldStays, id};
      Piece same = *now;
      same.order = old.order;
      if (!(same == old)) return BrokenRule{Rule::HeldStays, id};
    }
    if (now && !(withPlacementOf(*now, old) == old)) return BrokenRule{Rule::PlacementOnly, id};
    return std::nullopt;
  }

  std::optional<BrokenRule> checkHair(const ItemId& id, const Piece& now) const {
    const auto strip = strips_.of(now);
    if (!strip) return std::nullopt;
    const Known* cover = coverOf(id, now, *strip);
    const bool grows = !cover || now.thickness_mm > cover->piece->thickness_mm + kAlmost;
    if (grows && takesFromHeld(now, *strip)) return BrokenRule{Rule::HeldStays, id};
    if (now.action == Action::LeaveOut) return std::nullopt;
    if (!before_.find<Piece>(id) &&
        std::none_of(known_.begin(), known_.end(),
                     [&](const Known& k) { return haveSameColour(*k.piece, now); }))
      return BrokenRule{Rule::PlacementOnly, id};

    const auto least = leastStart_mm(before_, now.choice);
    if (now.start_mm < (cover ? cover->piece->start_mm : least.value_or(0)) - kAlmost)
      return BrokenRule{Rule::NotNearerTheScalp, id};
    const double length = strip->frame.length_mm();
    const bool moreLight =
        now.action == Action::Lighten &&
        (grows || isLessCombed(*cover->piece, now) ||
         takenShare(now, length) > takenShare(*cover->piece, cover->strip.frame.length_mm()) + 1e-3);
    if (moreLight && !mayTakeMoreLight(before_, now)) return BrokenRule{Rule::NotOnMarkedHair, id};
    if (isMoreCombed(cover ? cover->piece->backcomb : plan::Backcomb{}, now.backcomb) &&
        !mayBackcombMore(before_, now))
      return BrokenRule{Rule::NoMoreBackcomb, id};
    return std::nullopt;
  }

  /// What a piece was, or was part of, before.
  const Known* coverOf(const ItemId& id, const Piece& now, const Strip& strip) const {
    for (const Known& k : known_)
      if (k.id == id && k.piece->line == now.line) return &k;
    for (const Known& k : known_)
      if (k.piece->action == now.action && k.piece->choice == now.choice && !k.piece->held &&
          Strips::contains(k.strip, strip))
        return &k;
    return nullptr;
  }

  bool takesFromHeld(const Piece& now, const Strip& strip) const {
    return std::any_of(known_.begin(), known_.end(), [&](const Known& k) {
      return k.piece->held && k.piece->choice == now.choice &&
             (now.action == Action::LeaveOut || now.order < k.piece->order) &&
             Strips::overlap(strip, k.strip);
    });
  }

  const Plan& before_;
  const Plan& after_;
  Strips strips_;
  std::vector<Known> known_;
};

}  // namespace

std::string_view ruleSentence(Rule rule) {
  switch (rule) {
    case Rule::PlacementOnly: return "only placement may change";
    case Rule::HeldStays: return "a held piece stays as it is";
    case Rule::NotNearerTheScalp: return "no start moves nearer the scalp";
    case Rule::NotOnMarkedHair:
      return "no more light on hair that is marked already light or in poor condition";
    case Rule::NoMoreBackcomb:
      return "no more backcomb where condition is poor or not checked";
  }
  return "";
}

std::optional<BrokenRule> brokenBy(const Plan& before, const Plan& after) {
  return Comparison(before, after).run();
}

std::optional<double> leastStart_mm(const Plan& plan, const ItemId& choice) {
  std::optional<double> least;
  for (const auto& [id, piece] : plan.pieces(choice))
    if (piece->action == Action::Lighten) least = std::min(least.value_or(1e9), piece->start_mm);
  return least;
}

bool mayTakeMoreLight(const Plan& plan, const Piece& piece) {
  const auto zones = plan::zonesOf(Strips(plan).shape(), piece);
  return !plan::anyIn(plan.hair(), zones, plan::Condition::Poor) &&
         !plan::meetsLightHair(plan.hair(), zones, piece);
}

bool mayBackcombMore(const Plan& plan, const Piece& piece) {
  const auto zones = plan::zonesOf(Strips(plan).shape(), piece);
  return !plan::anyIn(plan.hair(), zones, plan::Condition::Poor) &&
         !plan::anyIn(plan.hair(), zones, plan::Condition::NotChecked);
}

}  // namespace combdraft::advise
