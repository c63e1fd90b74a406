#pragma once
// How light each place looks against its surround, as the eye at a distance
// sees it: luminance blurred finely, minus luminance blurred widely, both in
// linear light and then in L*. Kept between edits: an edit works out only the
// cells that hold its locks.
#include <span>

#include "engine/look/lock_colours.h"
#include "engine/visibility/seen_hair.h"

namespace combdraft::look {

class LocalPicture {
 public:
  /// Cells of 2 mm (or the raster's pixel, when coarser) over the five views.
  explicit LocalPicture(const visibility::SeenHair& seen);

  /// Takes over the colours of `changed` locks; every cell the first time.
  void update(const visibility::SeenHair& seen, const LockColours& colours,
              std::span<const std::uint32_t> changed);

  struct Values {
    /// Local L* difference of independent 5 mm places, per region.
    std::array<std::vector<double>, visibility::kRegions> of;
    /// L* between the darkest and lightest fiftieth of single places of hair.
    double plannedDifference = 5;
  };
  /// What is seen from `distance_m`. About 3 ms.
  Values at(double distance_m);

 private:
  struct View {
    int width = 0, height = 0, step = 1;
    double cell_mm = 2;
    std::vector<float> cover;            ///< hair, in pixels
    std::vector<float> light;            ///< sum of cover * Y
    std::vector<std::uint8_t> region;
    std::vector<float> fineCover, wideCover;  ///< blurred, for `distance`
    std::vector<std::uint32_t> first, cells;  ///< lock -> cells
  };
  void workOut(const visibility::ViewSamples& raster, View& view, std::uint32_t cell,
               const LockColours& colours) const;
  double fineSigma(const View& view, double distance_m) const;

  std::array<View, visibility::SeenHair::kViews> views_;
  bool filled_ = false;
  double distance_m_ = -1;
};

}  // namespace combdraft::look
