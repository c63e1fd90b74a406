#pragma once
// Where the six views stand on the sheet: one large with the others in a
// strip, or all at one size.
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

#include "engine/head/sheet_view.h"

namespace combdraft::sheet {

/// One view's place, in the widget's logical pixels, and its scale.
struct ViewPlace {
  head::ViewName view{};
  QRectF rect;        ///< with its title; also the clip
  bool large = false;
  double scale = 1;   ///< pixels per mm of the view
  QPointF origin;     ///< where the view's (0, 0) lies

  QPointF toWidget(const QPointF& view_mm) const { return origin + view_mm * scale; }
  QPointF toView(const QPointF& widget) const { return (widget - origin) / scale; }
  bool operator==(const ViewPlace&) const = default;
};

struct LayoutRequest {
  QRectF area;
  std::optional<head::ViewName> large;  ///< nothing = all at one size
  double zoom = 1;                      ///< of the large view
  QPointF pan_mm;                       ///< what the large view is moved by
  double title_px = 18;                 ///< height of a view's title
};

/// Places of all six views in the order of head::kAllViews; empty for an area
/// too small to draw in (less than 60 pixels a side).
std::vector<ViewPlace> layoutViews(const LayoutRequest& request);

}  // namespace combdraft::sheet
