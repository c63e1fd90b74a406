#pragma once
// An edit as data: which items it replaces, and what it is called. Built by the
// pure functions of edits.h; one undo entry holds one ChangeSet.
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::plan {

/// What an edit does. The app turns it and its arguments into a sentence.
enum class EditKind {
  AddPieces,
  AddTwins,
  StandAlone,
  Remove,
  ChangePieces,
  MovePieces,
  Renumber,
  ChangePart,
  ChangeHead,
  ChangeHair,
  ChangePlan,
  ChangeSections,
  AddSection,
  SplitSection,
  TakeBack,
  LetGo,
  DropRule,
  Paste,
  Duplicate,
  UsePattern,
  ChangeItem,
  AddChoice,
  ChangeChoice,
  TakeInto,
};

/// One item of an edit. Null before = added, null after = removed.
struct ItemChange {
  ItemId id;
  ItemPtr before, after;
};

struct ChangeSet {
  EditKind kind = EditKind::ChangeItem;
  std::vector<std::string> args;    ///< ids or numbers for the sentence
  std::vector<ItemChange> changes;  ///< by id, each id once

  bool empty() const { return changes.empty(); }
};

/// The plan after an edit. A broken expectation when an item of `plan` is not
/// what the edit was built on.
Plan applied(Plan plan, const ChangeSet& edit);

/// Undoes `edit`.
ChangeSet inverse(const ChangeSet& edit);

/// `first`, then `second`, as one edit with the name of `first`. Items that end
/// as they began are left out.
ChangeSet merged(const ChangeSet& first, const ChangeSet& second);

/// What leads from one plan to the other.
ChangeSet difference(const Plan& before, const Plan& after, EditKind kind,
                     std::vector<std::string> args = {});

}  // namespace combdraft::plan
