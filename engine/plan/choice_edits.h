#pragma once
// Edits of choices: alternative placements for the same head in one plan. Each
// choice has its own sections, pieces, treatments, placed notes and targets; head,
// hair and formulas are shared.
#include "engine/base/result.h"
#include "engine/plan/change_set.h"

namespace combdraft::plan {

/// The choices of a plan, by id as a person expects ("choice-2" before "choice-10").
std::vector<std::pair<ItemId, const Choice*>> choicesOf(const Plan& plan);
/// The choice of this name; "" when there is none.
ItemId choiceNamed(const Plan& plan, const std::string& name);
/// The first of A, B, C ... that no choice is called.
std::string freeChoiceName(const Plan& plan);

/// Adds a choice under a free id ("choice-N", in args[0]) and makes it the active
/// one. With a `model` it holds copies of all that the model has, in the same order,
/// pairs still pairs, and the same targets; without one ("") it is empty.
/// Error: TooManyItems when the plan would grow over the limits of a file.
Result<ChangeSet> addChoice(const Plan& plan, const std::string& name, const ItemId& model);

/// Empty when there is no such choice, or another one has the name.
ChangeSet renameChoice(const Plan& plan, const ItemId& choice, const std::string& name);

/// With all that is in it. Empty for the last choice of a plan.
ChangeSet removeChoice(const Plan& plan, const ItemId& choice);

/// Empty when there is no such choice.
ChangeSet activateChoice(const Plan& plan, const ItemId& choice);

/// What is wanted in a region (a word of targetRegions()); an empty target takes
/// the old one away. Empty when there is no such choice.
ChangeSet setTarget(const Plan& plan, const ItemId& choice, const std::string& region,
                    const Target& target);

/// Copies pieces, sections (with the pieces in them) and notes to the same places in
/// another choice, after all that it has. What is in that choice already is passed
/// over. The active choice stays. `args`: what came, as addParts says.
/// Errors: TooManyItems, UnknownName when there is no such choice.
Result<ChangeSet> takeInto(const Plan& plan, const std::vector<ItemId>& ids, const ItemId& choice);

}  // namespace combdraft::plan
