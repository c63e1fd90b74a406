#pragma once
// What of a drawing has to be painted anew when some of its items change.
#include <optional>
#include <vector>

#include "app/paint/drawing.h"

namespace combdraft::sheet {

/// Rectangles in drawing mm that hold every item of a thing (by its id) that is drawn otherwise
/// in `after` than in `before`; empty when nothing is. Nothing when what stays lies in another
/// order: then everything has to be painted.
std::optional<std::vector<QRectF>> changedArea(const paint::Items& before, const paint::Items& after);

}  // namespace combdraft::sheet
