#pragma once
// Things of a drawing by where they lie, so that a question about one spot does not
// meet all of them.
#include <QRectF>
#include <algorithm>
#include <vector>

#include "engine/base/expect.h"

namespace combdraft::paint {

template <class Thing>
class Cells {
 public:
  /// `frame`: where most of them lie, in any unit; what lies outside counts to its rim.
  explicit Cells(const QRectF& frame) : frame_(frame), cells_(kAcross * kAcross) {
    COMBDRAFT_EXPECT(frame.width() > 0 && frame.height() > 0, frame.width(), frame.height());
  }

  /// `box`: a rectangle that holds the thing; it may be a line or a point.
  void add(const Thing& thing, const QRectF& box) {
    forCells(box, [&](std::size_t cell) {
      cells_[cell].push_back(thing);
      return false;
    });
  }

  /// Whether `test` holds for a thing that may meet `box`; a thing may be asked about twice.
  template <class Test>
  bool any(const QRectF& box, const Test& test) const {
    return forCells(box, [&](std::size_t cell) { return std::any_of(cells_[cell].begin(), cells_[cell].end(), test); });
  }

 private:
  static constexpr int kAcross = 24;

  // Until `act` says true.
  template <class Act>
  bool forCells(const QRectF& box, const Act& act) const {
    const auto index = [](double at, double from, double size) {
      const double cell = kAcross * (at - from) / size;
      return cell > 0 ? static_cast<int>(std::min(cell, kAcross - 1.0)) : 0;
    };
    const auto [left, right] = std::minmax({index(box.left(), frame_.left(), frame_.width()), index(box.right(), frame_.left(), frame_.width())});
    const auto [top, bottom] = std::minmax({index(box.top(), frame_.top(), frame_.height()), index(box.bottom(), frame_.top(), frame_.height())});
    for (int row = top; row <= bottom; ++row)
      for (int column = left; column <= right; ++column)
        if (act(static_cast<std::size_t>(row * kAcross + column))) return true;
    return false;
  }

  QRectF frame_;
  std::vector<std::vector<Thing>> cells_;
};

}  // namespace combdraft::paint
