#pragma once
// Puts views of a plan on one page: diagrams, looks or both, with titles, the
// key and the line that a look must carry.
#include "app/paint/diagram.h"
#include "app/paint/page_layer.h"
#include "engine/look/look.h"

namespace combdraft::paint {

struct PageRequest {
  std::vector<head::ViewName> views;
  PageLayer layer = PageLayer::Both;
  Ground ground = Ground::Paper;  ///< round the looks
  QString caption;                ///< "Choice A, down, daylight"
};

/// One view's diagram, or its look over line art. `look` may be null: the bare
/// head is drawn then.
Figure diagramFigure(const Scene& scene, head::ViewName view, const DiagramStyle& style);
Figure lookFigure(const Scene& scene, head::ViewName view, const look::LookFrame* look,
                  const Palette& palette, double scale, Ground ground);

/// A page no larger than A4 (A3 for all views in both layers), as small as its
/// content allows.
Page sheetPage(const Scene& scene, const look::LookFrame* look, const PageRequest& request);

/// Paper mm per head mm that `sheetPage` uses for a request.
double pageScale(const PageRequest& request);

}  // namespace combdraft::paint
