#include "app/sheet/view_layout.h"

#include <algorithm>

#include "app/paint/head_art.h"

namespace combdraft::sheet {
namespace {

constexpr double kGap_px = 6, kLeast_px = 60;
constexpr double kFrameAspect = 0.8;  // width to height of a view with its title

struct Strip {
  int lines;
  double across, shown;  // of one view, pixels
};

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
  // The strip stands at the side of a wide sheet and below a tall one, in as
  // many lines as show its views largest; the large view keeps what it needs.
  const bool wide = area.width() > area.height();
  const double length = wide ? area.height() : area.width();   // along the strip
  const double breadth = wide ? area.width() : area.height();  // across it
  const double frame = wide ? kFrameAspect : 1 / kFrameAspect;
  const double spare = breadth - std::max(0.45 * breadth, length * frame) - kGap_px;
  Strip best{1, kLeast_px, 0};
  for (int lines = 1; lines <= 3; ++lines) {
    const int inLine = (4 + lines) / lines;
    const double along = (length - (inLine - 1) * kGap_px) / inLine;
    const double across = std::max(
        kLeast_px, std::min((spare - (lines - 1) * kGap_px) / lines, along * frame * 1.1));
    const double w = wide ? across : along, h = (wide ? along : across) - request.title_px;
    const double shown = std::min(w, h * kFrameAspect);
    if (shown > best.shown) best = {lines, across, shown};
  }
  const double strip = best.lines * best.across + (best.lines - 1) * kGap_px;
  QRectF main = area;
  wide ? main.setRight(area.right() - strip - kGap_px)
       : main.setBottom(area.bottom() - strip - kGap_px);
  const int inLine = (4 + best.lines) / best.lines;
  const double along = (length - (inLine - 1) * kGap_px) / inLine;
  int n = 0;
  for (const head::ViewName view : head::kAllViews) {
    if (view == *request.large) {
      places.push_back(placed(view, main, request.title_px, request.zoom, request.pan_mm));
      places.back().large = true;
      continue;
    }
    // In reading order, beside the large view and below it alike.
    const int place = wide ? n / best.lines : n % inLine;
    const int line = wide ? n % best.lines : n / inLine;
    const double s = place * (along + kGap_px), t = kGap_px + line * (best.across + kGap_px);
    ++n;
    const QRectF rect =
        wide ? QRectF(main.right() + t, area.top() + s, best.across, along)
             : QRectF(area.left() + s, main.bottom() + t, along, best.across);
    places.push_back(placed(view, rect, request.title_px, 1, {}));
  }
  return places;
}

}  // namespace combdraft::sheet
