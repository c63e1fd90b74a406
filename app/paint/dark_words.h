#pragma once
// What stays dark in a look, as a client is told it: on the screen and on paper alike.
#include <QString>

#include "engine/look/look.h"

namespace combdraft::paint {

/// One sentence without words of technique; "" without a reading.
QString whatStaysDark(const look::Readings* planned);

}  // namespace combdraft::paint
