#pragma once
// Things of a drawing by where they lie, so that a question about one spot does not
// meet all of them.
#include <QRectF>
#include <algorithm>
#include <cmath>
#include <vector>

namespace combdraft::paint {

template <class Thing>
class Cells {
 public:
  /// `frame`: where most of them lie, in any unit; what lies outside counts to its rim.
  explicit Cells(const QRectF& frame) : frame_(frame), cells_(kAcross * kAcross) {}

  /// `box`: a rectangle that holds the thing.
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
      return static_cast<int>(std::clamp(std::floor(kAcross * (at - from) / size), 0.0, kAcross - 1.0));
    };
    const int left = index(box.left(), frame_.left(), frame_.width()), right = index(box.right(), frame_.left(), frame_.width());
    const int top = index(box.top(), frame_.top(), frame_.height()), bottom = index(box.bottom(), frame_.top(), frame_.height());
    for (int row = top; row <= bottom; ++row)
      for (int column = left; column <= right; ++column)
        if (act(static_cast<std::size_t>(row * kAcross + column))) return true;
    return false;
  }

  QRectF frame_;
  std::vector<std::vector<Thing>> cells_;
};

}  // namespace combdraft::paint
