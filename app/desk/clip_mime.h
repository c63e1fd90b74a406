#pragma once
// A clip on the system's clipboard: as our own type, as text, and as pictures
// of the sheet for other programs.
#include <QMimeData>
#include <memory>
#include <optional>

#include "app/paint/drawing.h"

namespace combdraft::desk {

inline constexpr const char* kClipMime = "application/x-combdraft-clip+json";

/// SVG and PNG.
std::unique_ptr<QMimeData> pictureMime(const paint::Page& picture);
/// `picture` is what other programs get.
std::unique_ptr<QMimeData> clipMime(const std::string& clip, const paint::Page& picture);
/// The clip's text: of our own type, or of a text that says that it is a clip.
std::optional<std::string> clipText(const QMimeData& mime);

}  // namespace combdraft::desk
