#pragma once
// A command of the window by its id.
#include <QAction>

#include "tests/app/desk_fixture.h"

namespace combdraft::tests {

inline QAction* actionOf(Desk& desk, const char* id) { return desk.window->actions().action(QLatin1String(id)); }

}  // namespace combdraft::tests
