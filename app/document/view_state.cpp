#include "app/document/view_state.h"

#include <algorithm>

namespace combdraft::document {

void ViewState::setHover(const std::optional<head::ScalpPoint>& point, const plan::ItemId& item) {
  if (point == hoverPoint_ && item == hoverItem_) return;
  hoverPoint_ = point;
  hoverItem_ = item;
  Q_EMIT changed(Aspect::Hover);
}

void ViewState::setLookSettings(const look::LookSettings& settings) {
  set(lookSettings_, settings, Aspect::Look);
}

void ViewState::setLayer(Layer layer) { set(layer_, layer, Aspect::Layer); }

void ViewState::setDivider(double divider_frac) {
  set(divider_frac_, std::clamp(divider_frac, 0.0, 1.0), Aspect::Layer);
}

void ViewState::setSurround(Surround surround) { set(surround_, surround, Aspect::Layer); }

void ViewState::setLargeView(const std::optional<head::ViewName>& view) {
  set(largeView_, view, Aspect::Arrangement);
}

void ViewState::setZoom(double zoom) {
  set(zoom_, std::clamp(zoom, 0.5, 8.0), Aspect::Arrangement);
}

void ViewState::setTool(Tool tool) { set(tool_, tool, Aspect::Tool); }

void ViewState::setMarks(Marks marks) {
  if (marks.places.empty() && marks_.places.empty()) return;
  marks_ = std::move(marks);
  Q_EMIT changed(Aspect::Marks);
}

}  // namespace combdraft::document
