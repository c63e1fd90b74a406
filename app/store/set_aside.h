#pragma once
// A file of the program's own that cannot be used goes out of the way and is kept.
#include <QString>

#include "engine/base/result.h"

namespace combdraft::store {

/// Renames to NAME.broken, or NAME.broken-2 and so on where that is taken.
/// Returns the new path.
Result<QString> setAside(const QString& path);

}  // namespace combdraft::store
