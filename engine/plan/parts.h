#pragma once
// Sections, pieces, notes and the formulas they use, taken out of a plan: what
// a clip and a pattern hold, and how they come into a plan. Points are
// directions, so they fit any head; runs flow anew on another one.
#include <functional>

#include "engine/base/result.h"
#include "engine/plan/change_set.h"

namespace combdraft::plan {

struct Parts {
  std::string name, goodFor, notFor;  ///< of a pattern; "" in a clip
  /// The items, in no choice (""), with the head that they were drawn on
  /// (measures and hairline). What they name is among them or not named.
  Plan plan;
};

/// A plan without items, for parts to be put into.
Plan noParts();

/// Brings the items of a plan that was read as parts into the form above:
/// no choice; what names an item that is not there names none; a piece without
/// its section is drawn free; a twin without its source stands on its own.
void tidyParts(Plan& plan);

/// What is selected: sections with the pieces in them, pieces, notes; and the
/// formulas they use. Pairs stay pairs when both are in. Other ids are passed over.
Parts partsOf(const Plan& plan, const std::vector<ItemId>& ids);

/// Whether runs keep the pieces that they bring where the head is the same.
enum class Runs { AsTheyAre, FlowAnew };

/// Adds parts under free ids to the active choice, after all others in the
/// order. An equal formula is used again; another with a letter that is taken
/// gets a free one. On another head runs flow anew, and points near the hairline keep their
/// distance to it.
/// `args` of the edit: the new sections, pieces without section, and notes.
/// Error: TooManyItems when the plan would grow over the limits of a file.
Result<ChangeSet> addParts(const Plan& plan, Parts parts, EditKind kind, Runs runs);

/// Calls `change` on every point of the sections, pieces and notes.
void changePoints(Plan& parts, const std::function<void(ScalpPoint&)>& change);

}  // namespace combdraft::plan
