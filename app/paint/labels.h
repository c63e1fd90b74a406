#pragma once
// Finds room for circled numbers and small words so that they do not cover
// each other, and where possible not the drawing either.
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

namespace combdraft::paint {

class LabelRoom {
 public:
  explicit LabelRoom(const QRectF& frame) : frame_(frame) {}

  /// Places that a label should leave free when it can.
  void avoid(const QPointF& place) { drawn_.push_back(place); }

  enum class Cover { MayCoverDrawing, Never };
  /// The first of `centres` around which `size` fits free of earlier labels and
  /// of the drawing; failing that, free of labels only. Takes that room.
  /// Nothing when none is free.
  std::optional<QPointF> take(const std::vector<QPointF>& centres, const QSizeF& size,
                              Cover cover = Cover::MayCoverDrawing);

 private:
  QRectF frame_;
  std::vector<QRectF> taken_;
  std::vector<QPointF> drawn_;
};

}  // namespace combdraft::paint
