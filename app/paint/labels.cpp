#include "app/paint/labels.h"

#include <algorithm>

namespace combdraft::paint {

std::optional<QPointF> LabelRoom::take(const std::vector<QPointF>& centres, const QSizeF& size,
                                       Cover cover) {
  for (const Cover pass : {Cover::Never, Cover::MayCoverDrawing}) {
    if (pass == Cover::MayCoverDrawing && cover == Cover::Never) break;
    for (const QPointF& centre : centres) {
      const QRectF room(centre.x() - size.width() / 2, centre.y() - size.height() / 2,
                        size.width(), size.height());
      const auto meets = [&](const QRectF& other) { return other.intersects(room); };
      const auto hides = [&](const QPointF& place) { return room.contains(place); };
      if (!frame_.contains(room) || std::any_of(taken_.begin(), taken_.end(), meets)) continue;
      if (pass == Cover::Never && std::any_of(drawn_.begin(), drawn_.end(), hides)) continue;
      taken_.push_back(room);
      return centre;
    }
  }
  return std::nullopt;
}

}  // namespace combdraft::paint
