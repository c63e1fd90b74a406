#pragma once
// Colours and sizes of the drawing. Sizes are paper mm; `Ink` turns them into
// drawing mm for a given scale so that lines look alike at every size.
#include <QColor>

namespace combdraft::paint {

struct Palette {
  QColor ground{0xF6, 0xF3, 0xEC};    ///< warm off-white
  QColor ink{0x2E, 0x32, 0x36};       ///< graphite
  QColor softInk{0x62, 0x5F, 0x5D};
  QColor paleInk{0xB3, 0xAA, 0xA2};
  QColor skin{0xFB, 0xF8, 0xF3};
  QColor scalp{0xEA, 0xE5, 0xDD};
  QColor guide{0x8F, 0xA0, 0xAE};
  QColor taken{0xFF, 0xFF, 0xFF};
  QColor onTaken{0x2E, 0x32, 0x36};   ///< edges, hatch and words on `taken`
  QColor leftOut{0xB9, 0xB5, 0xAE};
  QColor deepen{0x83, 0x7E, 0x78};
  QColor accent{0x1F, 0x6F, 0x78};    ///< the one quiet accent: selection, handles
  QColor trouble{0xA3, 0x2A, 0x1E};   ///< where a drawing goes wrong; always with a cross
  QColor midGrey{0x9B, 0x9B, 0x9B};   ///< neutral surround for judging colour

  bool operator==(const Palette&) const = default;
};

/// For a dark window. What is taken stays the lightest and what is deepened the
/// darkest. Paper, files and every look keep the light one.
inline Palette darkPalette() {
  Palette p;
  p.ground = QColor(0x21, 0x20, 0x1E);
  p.ink = QColor(0xE8, 0xE4, 0xDC);
  p.softInk = QColor(0xB9, 0xB2, 0xA7);
  p.paleInk = QColor(0x78, 0x72, 0x6A);
  p.skin = QColor(0x2A, 0x28, 0x26);
  p.scalp = QColor(0x36, 0x33, 0x30);
  p.guide = QColor(0x72, 0x82, 0x90);
  p.taken = QColor(0xEF, 0xEB, 0xE2);
  p.leftOut = QColor(0x8B, 0x86, 0x7E);
  p.deepen = QColor(0x1B, 0x1A, 0x18);
  p.accent = QColor(0x2E, 0x8F, 0x99);  // seen on the dark sheet and on a look's paper
  p.trouble = QColor(0xE8, 0x7A, 0x6A);
  return p;
}

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
