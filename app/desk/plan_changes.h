#pragma once
// What differs between two states of a plan, in plain words.
#include <QStringList>

#include "engine/plan/plan.h"

namespace combdraft::desk {

/// One line for each kind of thing and what became of it on the way from
/// `before` to `after`: "2 pieces added: piece 7, piece 8". Empty when nothing
/// differs.
QStringList planChanges(const plan::Plan& before, const plan::Plan& after);

}  // namespace combdraft::desk
