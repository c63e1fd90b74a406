#pragma once
// What is wrong in a plan and what is to be checked before work, in the words of the window,
// of the work list and of paper.
#include <QString>
#include <QStringList>

#include "engine/plan/validate.h"

namespace combdraft::paint {

/// "piece 4", "section crown", "hair"; an item without a name is named by its id.
QString itemName(const plan::Plan& plan, const plan::ItemId& id);

/// "Piece 4, piece 7: starts at or near the scalp; ..."; of many items four are named.
QString issueText(const plan::Plan& plan, const plan::Issue& issue);

/// What hair, skin or product ask to be checked before the work of a choice, as `issueText`.
/// Empty: nothing of it was found, which is no promise.
QStringList checksBeforeWork(const plan::Plan& plan, const plan::ItemId& choice);

/// Whether a piece of a choice lifts to what every new piece comes with, and the sentence for
/// it, which is true also where somebody typed just that.
bool liftsAsNew(const plan::Piece& piece);
QString liftsAsNewText(const plan::Plan& plan, const plan::ItemId& choice);

}  // namespace combdraft::paint
