#pragma once
// The handles of one selected piece in one view: its two edges (thickness),
// where lightener starts, and the points of its line.
#include <QPointF>
#include <optional>
#include <vector>

#include "app/paint/scene.h"

namespace combdraft::sheet {

enum class HandleKind { Thickness, Start, Point, Corner, Spacing };

struct Handle {
  HandleKind kind{};
  QPointF at_mm;      ///< view mm
  QPointF base_mm;    ///< Thickness, Start: on the centre line; Spacing: on the first piece
  QPointF outward;    ///< Thickness, Start, Spacing: unit, from base to handle
  std::size_t point = 0;  ///< Point, Corner: which of the line's
  Vec3 centre = Vec3::Zero(), across = Vec3::UnitX();  ///< Thickness: on the scalp
};

/// Handles where the piece is seen; none for a piece behind the head. The start
/// handle stands as far off the centre line as lightener starts off the scalp,
/// at the drawing's scale.
std::vector<Handle> handlesOf(const paint::Scene& scene, const paint::PieceShape& piece,
                              head::ViewName view);

/// The corners of a section that a view sees; after them, as point
/// outline.size(), where its pivoting rows turn; and, when it is laid out in rows,
/// a handle on its second piece that pulls the left-outs wider or narrower.
std::vector<Handle> sectionHandles(const paint::Scene& scene, const plan::ItemId& id,
                                   head::ViewName view);

/// The handle nearest to a place within `reach_mm`.
std::optional<Handle> handleAt(const std::vector<Handle>& handles, const QPointF& view_mm,
                               double reach_mm);

}  // namespace combdraft::sheet
