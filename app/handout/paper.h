#pragma once
// Sheets of paper and the sizes of what stands on them. All in paper mm.
#include <QSizeF>

#include "app/paint/drawing.h"
#include "engine/plan/plan.h"

namespace combdraft::handout {

/// Width and height as the sheet lies.
QSizeF sheetSize(plan::PaperSize paper, plan::PageTurn turn);

/// Where the text stands on a sheet.
struct Room {
  QSizeF sheet;
  QRectF body;  ///< between the margins, above the foot
  /// Makes the body lower where a foot of that height would come too near the sheet's edge.
  void leaveFoot(double height_mm);
};
Room roomOn(plan::PaperSize paper, plan::PageTurn turn);

/// Heights of letters (em) on paper: 1 mm is 2.83 points.
namespace type {
inline constexpr double kTitle = 8.4, kHeading = 5.2, kSub = 3.7, kBody = 3.35, kSmall = 2.75, kFoot = 2.45;
inline constexpr double kLine = 1.42;  ///< distance of lines, in heights of letters
}  // namespace type

/// Greys that a photocopy keeps.
struct Inks {
  QColor ink{0x1F, 0x22, 0x25}, soft{0x50, 0x50, 0x50}, rule{0x9A, 0x9A, 0x9A}, tint{0xEF, 0xEF, 0xEE};
};

}  // namespace combdraft::handout
