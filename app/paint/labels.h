#pragma once
// Finds room for labels and small words so that they do not cover each other,
// and where possible not the drawing either.
#include <QLineF>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

#include "app/paint/cells.h"

namespace combdraft::paint {

class LabelRoom {
 public:
  explicit LabelRoom(const QRectF& frame)
      : frame_(frame), taken_(frame), leaders_(frame), lines_(frame), places_(frame) {}

  /// Places that a label should leave free when it can.
  void avoid(const QPointF& place);
  /// Lines that neither a label nor its leader should meet when they can.
  void avoidLines(const QPainterPath& lines);

  /// A place for a label, and the line that would lead to it; a line of no length
  /// for a label that needs none.
  struct Spot {
    QPointF centre;
    QLineF leader;
  };
  /// What a label may lie on: nothing; the avoided places; these and the avoided lines,
  /// its leader crossing others; leaders as well, its own passing under labels.
  enum class Cover { Nothing, Places, PlacesAndLines, Leaders };
  /// The first of `spots` around which `size` fits inside the frame, free of earlier
  /// labels and of what `cover` does not allow. Takes that room. Nothing when none fits.
  std::optional<Spot> take(const std::vector<Spot>& spots, const QSizeF& size, Cover cover);

 private:
  bool isFree(const Spot& spot, const QRectF& room, Cover cover) const;

  QRectF frame_;
  Cells<QRectF> taken_;
  Cells<QLineF> leaders_, lines_;
  Cells<QPointF> places_;
};

}  // namespace combdraft::paint
