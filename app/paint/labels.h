#pragma once
// Finds room for circled numbers and small words so that they do not cover
// each other.
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

namespace combdraft::paint {

class LabelRoom {
 public:
  explicit LabelRoom(const QRectF& frame) : frame_(frame) {}

  /// The first of `centres` around which `size` fits free of earlier labels;
  /// takes that room. Nothing when none is free.
  std::optional<QPointF> take(const std::vector<QPointF>& centres, const QSizeF& size);
  /// Takes room that is used anyway.
  void reserve(const QRectF& room) { taken_.push_back(room); }

 private:
  QRectF frame_;
  std::vector<QRectF> taken_;
};

}  // namespace combdraft::paint
