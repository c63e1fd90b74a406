#pragma once
// Colours and sizes of the drawing. Sizes are paper mm; `Ink` turns them into
// drawing mm for a given scale so that lines look alike at every size.
#include <QColor>

namespace combdraft::paint {

struct Palette {
  QColor ground{0xF6, 0xF3, 0xEC};    ///< warm off-white
  QColor ink{0x2E, 0x32, 0x36};       ///< graphite
  QColor softInk{0x6D, 0x6A, 0x68};
  QColor paleInk{0xB3, 0xAA, 0xA2};
  QColor skin{0xFB, 0xF8, 0xF3};
  QColor scalp{0xEA, 0xE5, 0xDD};
  QColor guide{0x8F, 0xA0, 0xAE};
  QColor taken{0xFF, 0xFF, 0xFF};
  QColor leftOut{0xB9, 0xB5, 0xAE};
  QColor deepen{0x83, 0x7E, 0x78};
  QColor accent{0x1F, 0x6F, 0x78};    ///< the one quiet accent: selection, handles
  QColor midGrey{0x9B, 0x9B, 0x9B};   ///< neutral surround for judging colour
};

/// Paper sizes in drawing mm.
class Ink {
 public:
  /// `scale`: paper mm per drawing mm, > 0.
  explicit Ink(double scale) : scale_(scale) {}
  double operator()(double paper_mm) const { return paper_mm / scale_; }
  double scale() const { return scale_; }

 private:
  double scale_;
};

}  // namespace combdraft::paint
