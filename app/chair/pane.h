#pragma once
// One picture of a head: a look over its line art, or the diagram. Drawn into
// an image that a widget, or an agreement, keeps.
#include <QImage>
#include <memory>
#include <vector>

#include "app/live/look_result.h"
#include "app/paint/sheet_page.h"
#include "engine/plan/agreement.h"

namespace combdraft::chair {

using plan::Facing;

struct Pane {
  enum class Kind { Look, Diagram } kind = Kind::Look;
  std::shared_ptr<const paint::Scene> scene;          ///< null = nothing to draw
  std::shared_ptr<const live::LookResult> look = {};  ///< null = the bare head
  QString title, state;                               ///< "Today", "first estimate"
  std::vector<plan::ItemId> marked = {};              ///< pieces outlined in a diagram
  bool operator==(const Pane&) const = default;
};

/// The whole frame of the view at so many pixels for a mm of the head, without
/// words, on nothing.
QImage paneImage(const Pane& pane, head::ViewName view, Facing facing, double pixelsPerMm);

/// A small picture with its ground, title and the line that it is no promise, as
/// PNG in base64, made smaller until it is no longer than `most` letters. "" when
/// not even a tiny one fits.
std::string smallPicture(const Pane& pane, head::ViewName view, Facing facing, const QString& line, std::size_t most);

}  // namespace combdraft::chair
