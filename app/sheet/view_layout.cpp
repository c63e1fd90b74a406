#include "app/sheet/view_layout.h"

#include <algorithm>

#include "app/paint/head_art.h"

namespace combdraft::sheet {
namespace {

constexpr double kGap_px = 6;

ViewPlace placed(head::ViewName view, const QRectF& rect, double title_px, double zoom,
                 const QPointF& pan_mm) {
  ViewPlace place;
  place.view = view;
  place.rect = rect;
  const QRectF room = rect.adjusted(0, title_px, 0, 0);
  const QRectF frame = paint::frameOf(view);
  place.scale = zoom * std::max(0.05, std::min(room.width() / frame.width(),
                                               room.height() / frame.height()));
  place.origin = room.center() - (frame.center() - pan_mm) * place.scale;
  return place;
}

}  // namespace

std::vector<ViewPlace> layoutViews(const LayoutRequest& request) {
  std::vector<ViewPlace> places;
  const QRectF& area = request.area;
  if (area.width() < 60 || area.height() < 60) return places;
  if (!request.large) {
    const int columns = area.width() > 1.1 * area.height() ? 3 : 2;
    const int rows = 6 / columns;
    const double w = (area.width() - (columns - 1) * kGap_px) / columns;
    const double h = (area.height() - (rows - 1) * kGap_px) / rows;
    for (std::size_t i = 0; i < head::kAllViews.size(); ++i) {
      const int column = static_cast<int>(i) % columns, row = static_cast<int>(i) / columns;
      const QRectF rect(area.left() + column * (w + kGap_px), area.top() + row * (h + kGap_px), w,
                        h);
      places.push_back(placed(head::kAllViews[i], rect, request.title_px, 1, {}));
    }
    return places;
  }
  // The strip stands at the side of a wide sheet and below a tall one.
  const bool wide = area.width() > area.height();
  const double strip = wide ? std::clamp(area.height() / 5 * 0.9, 60.0, area.width() * 0.28)
                            : std::clamp(area.width() / 5 * 1.35, 60.0, area.height() * 0.28);
  QRectF main = area;
  wide ? main.setRight(area.right() - strip - kGap_px)
       : main.setBottom(area.bottom() - strip - kGap_px);
  const double each = ((wide ? area.height() : area.width()) - 4 * kGap_px) / 5;
  int n = 0;
  for (const head::ViewName view : head::kAllViews) {
    if (view == *request.large) {
      places.push_back(placed(view, main, request.title_px, request.zoom, request.pan_mm));
      places.back().large = true;
      continue;
    }
    const double along = n++ * (each + kGap_px);
    const QRectF rect = wide ? QRectF(main.right() + kGap_px, area.top() + along, strip, each)
                             : QRectF(area.left() + along, main.bottom() + kGap_px, each, strip);
    places.push_back(placed(view, rect, request.title_px, 1, {}));
  }
  return places;
}

}  // namespace combdraft::sheet
