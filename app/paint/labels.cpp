#include "app/paint/labels.h"

#include <algorithm>

namespace combdraft::paint {

std::optional<QPointF> LabelRoom::take(const std::vector<QPointF>& centres, const QSizeF& size) {
  for (const QPointF& centre : centres) {
    const QRectF room(centre.x() - size.width() / 2, centre.y() - size.height() / 2, size.width(),
                      size.height());
    const auto covers = [&](const QRectF& other) { return other.intersects(room); };
    if (!frame_.contains(room) || std::any_of(taken_.begin(), taken_.end(), covers)) continue;
    taken_.push_back(room);
    return centre;
  }
  return std::nullopt;
}

}  // namespace combdraft::paint
