#pragma once
// The diagram of a plan in one view: partings, pieces as true strips with
// their teeth, left-outs, drop-outs, backcomb, numbers and letters.
//
// Notation: solid line = parting, dashed = hidden behind the head; hatch and
// letter mean formula and nothing else; it reads in greys alone.
#include <map>
#include <optional>
#include <set>

#include "app/paint/drawing.h"
#include "app/paint/ink.h"
#include "app/paint/scene.h"

namespace combdraft::paint {

/// The items of pieces in one view and style, so that an edit of one piece draws one. Whoever
/// keeps it empties it when view, palette or scale change.
using KeptPieces = std::map<std::shared_ptr<const PieceShape>, std::pair<QString, Items>>;  // letters, items

struct DiagramStyle {
  Palette palette;
  double scale = 0.25;  ///< paper mm per drawing mm
  enum class Labels { Shown, Omitted } labels = Labels::Shown;
  /// When given, only these pieces are drawn and numbered.
  const std::set<plan::ItemId>* only = nullptr;

  /// Where labels stay; nothing = anywhere in the view.
  std::optional<QRectF> labelFrame = {};

  /// When given, what is known of pieces is taken from it; afterwards it holds those drawn.
  KeptPieces* kept = nullptr;

  bool shows(const plan::ItemId& piece) const { return !only || only->contains(piece); }
};

/// Items of layers Diagram and Labels. Every piece of the scene has at least
/// one item in every view: its strip where it is seen, a dashed line where it
/// is behind the head.
Items diagramItems(const Scene& scene, head::ViewName view, const DiagramStyle& style);

/// Only the items of one piece without its label (for previews).
Items pieceItems(const Scene& scene, const PieceShape& piece, head::ViewName view,
                 const DiagramStyle& style);

/// Partings, the pieces that `style` shows and their labels in a view of one's own
/// (a close-up), cut to `frame`.
Items closeUpItems(const Scene& scene, const head::SheetView& view, const QRectF& frame,
                   const DiagramStyle& style);

}  // namespace combdraft::paint
