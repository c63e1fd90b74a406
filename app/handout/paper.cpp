#include "app/handout/paper.h"

#include <algorithm>

namespace combdraft::handout {
namespace {
// A margin that a hand can hold and a hole punch needs; the foot is below the body.
constexpr double kSide_mm = 18, kTop_mm = 16, kFootRoom_mm = 25, kBelowFoot_mm = 5;
}  // namespace

QSizeF sheetSize(plan::PaperSize paper, plan::PageTurn turn) {
  const QSizeF upright = paper == plan::PaperSize::A4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4);
  return turn == plan::PageTurn::Portrait ? upright : upright.transposed();
}

void Room::leaveFoot(double height_mm) { body.setBottom(std::min(body.bottom(), sheet.height() - kBelowFoot_mm - height_mm)); }

Room roomOn(plan::PaperSize paper, plan::PageTurn turn) {
  const QSizeF sheet = sheetSize(paper, turn);
  return {sheet, QRectF(kSide_mm, kTop_mm, sheet.width() - 2 * kSide_mm, sheet.height() - kTop_mm - kFootRoom_mm)};
}

}  // namespace combdraft::handout
