#pragma once
// Edits of a plan as pure functions: plan in, ChangeSet out. Twins follow by
// themselves: an edit of a piece or section, of either side, changes both in
// one ChangeSet; a twin whose source goes stands on its own from then on.
// Laid-out sections flow anew when their outline, rule or head changes
// (lay_out.h); what was edited by hand on one of their pieces stays.
#include <functional>

#include "engine/head/hairline.h"
#include "engine/plan/change_set.h"

namespace combdraft::plan {

/// Points closer than this to the centre line count as on it.
inline constexpr double kCentreLine_mm = 0.5;

// ---- pieces ---------------------------------------------------------------

/// Adds a piece under a free id ("piece-N", in args[0]). Order 0 = after all others;
/// an empty choice = the active one.
ChangeSet addPiece(const Plan& plan, Piece piece);

/// Gives each piece or section a twin across the centre line, next in the
/// order. Left out: twins, items that have one, and items that lie on the
/// centre line (within kCentreLine_mm) and so are their own mirror.
ChangeSet addTwins(const Plan& plan, const std::vector<ItemId>& ids);

/// Twins among `ids` keep their values and stop following.
ChangeSet standAlone(const Plan& plan, const std::vector<ItemId>& ids);

/// Calls `change` on each piece. Of a pair, the source is changed once, also
/// when the twin was meant. `change` must not touch `twinOf`.
ChangeSet changePieces(const Plan& plan, const std::vector<ItemId>& ids,
                       const std::function<void(Piece&)>& change);
ChangeSet changeSections(const Plan& plan, const std::vector<ItemId>& ids,
                         const std::function<void(Section&)>& change);

/// Moves pieces, notes and sections (with all in them) along the head: all points turn about the head centre by what
/// takes `from` to `to`. The step ends where a point would leave the hair (or
/// go further outside than it was). With both of a pair among `ids`, the first
/// named is the one that makes this step; the other mirrors it.
ChangeSet movePieces(const Plan& plan, const std::vector<ItemId>& ids, const ScalpPoint& from,
                     const ScalpPoint& to);

/// The point `right_mm` along the surface toward larger bearing and `down_mm`
/// toward larger drop: what an arrow key does.
ScalpPoint stepped(const head::HeadShape& shape, const ScalpPoint& from, double right_mm,
                   double down_mm);

/// Orders the pieces of a choice 1, 2, 3 ... : first `ids` as listed, then the
/// rest as they were; a twin that is not listed comes right after its source.
ChangeSet renumber(const Plan& plan, const ItemId& choice, const std::vector<ItemId>& ids);

// ---- sections -------------------------------------------------------------

/// Adds a section under a free id ("section-N", in args[0]); order and choice as
/// addPiece.
ChangeSet addSection(const Plan& plan, Section section);

/// Splits a section along a parting whose ends reach its outline or stop at most
/// 12 mm short. The higher half keeps the id; the other (args[1]) gets the same
/// rule, and a twin when the section has one. Empty when the parting does not
/// cross from side to side exactly once.
ChangeSet splitSection(const Plan& plan, const ItemId& id, const std::vector<ScalpPoint>& parting);

/// Pieces follow their section's rule in everything again; of a section, all
/// its pieces do, and emptied places are filled.
ChangeSet takeBack(const Plan& plan, const std::vector<ItemId>& ids);
/// Takes the rule away from sections; their pieces stay and are drawn by hand now.
ChangeSet dropRule(const Plan& plan, const std::vector<ItemId>& ids);
/// Pieces keep all that they have, whatever the rule says; their place stays theirs.
ChangeSet letGo(const Plan& plan, const std::vector<ItemId>& ids);

/// The pieces of a choice by rule: section by section in their order, each from
/// its lowest row to its highest (its run's placing order), then what lies in no
/// section from the nape up. For `renumber`.
std::vector<ItemId> orderByRule(const Plan& plan, const ItemId& choice);

// ---- anything -------------------------------------------------------------

/// Removes items. With a section go the pieces that its rule made, those drawn by
/// hand become free; the place of a laid-out piece stays empty; a formula's users name none,
/// a choice takes all its items along (the last choice stays). The plan, head,
/// hair and handout items stay.
ChangeSet removeItems(const Plan& plan, const std::vector<ItemId>& ids);

ChangeSet changeHead(const Plan& plan, const std::function<void(Head&)>& change);
ChangeSet changeHair(const Plan& plan, const std::function<void(Hair&)>& change);
ChangeSet changePlan(const Plan& plan, const std::function<void(PlanInfo&)>& change);

/// Draws the part anew.
ChangeSet setPart(const Plan& plan, std::vector<ScalpPoint> line);
/// Moves the part along the surface, square to itself, + toward the wearer's right.
ChangeSet shiftPart(const Plan& plan, double shift_mm);

/// Adds or replaces one item of any kind (formulas, treatments, notes, choices, the handout).
ChangeSet setItem(const Plan& plan, const ItemId& id, Item item);

}  // namespace combdraft::plan
