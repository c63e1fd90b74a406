#pragma once
// Finds room for labels and small words so that they do not cover each other,
// and where possible not the drawing either.
#include <QLineF>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

namespace combdraft::paint {

class LabelRoom {
 public:
  explicit LabelRoom(const QRectF& frame) : frame_(frame) {}

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
  bool isFree(const Spot& spot, const QRectF& room, Cover cover);
  bool hidesPlace(const QRectF& room);

  QRectF frame_;
  std::vector<QRectF> taken_;
  std::vector<QLineF> leaders_;
  std::vector<QLineF> lines_;
  std::vector<QPointF> places_;
  enum class Order { Sorted, Mixed } order_ = Order::Sorted;  ///< of places_, by x
};

}  // namespace combdraft::paint
