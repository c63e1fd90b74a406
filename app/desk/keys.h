#pragma once
// The keys of commands as the user wants them: which keys may be given, who has
// them already, and what of the stored ones can be used.
#include "app/desk/action_registry.h"
#include "app/store/settings.h"

namespace combdraft::desk {

/// Why these keys cannot be any command's, as a sentence; "" when they can.
QString keyTrouble(const QKeySequence& keys);

/// The command that has these keys, or keys that begin like them, now; null
/// when none has. `except` is left out.
const ActionSpec* keyHolder(const ActionRegistry& actions, const QKeySequence& keys, const QString& except);

/// Those that differ from the keys the program came with.
std::map<QString, QKeySequence> changedKeys(const ActionRegistry& actions);

/// Gives every command its own keys or the stored ones. What cannot be used is
/// ignored; one sentence for each is returned.
QStringList applyKeys(ActionRegistry& actions, const store::StoredKeys& stored);

}  // namespace combdraft::desk
