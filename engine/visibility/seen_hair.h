#pragma once
// Everything that is seen of one head, hair and way of wearing: the measuring
// rasters of the five views and the sparse matrix from lock colours to region
// sums. Built once, independent of colour; a placement edit never rebuilds it.
#include <array>
#include <span>

#include "engine/visibility/raster.h"
#include "engine/visibility/region.h"

namespace combdraft::visibility {

/// One column entry: the weight with which an arc bin of a lock counts in a
/// region as seen from a view.
struct SeenEntry {
  float area_mm2;      ///< hair area on the drawing, as this view sees it
  float shared_mm2;    ///< the same divided by how many views see that place
  std::uint8_t region, view, bin, spare;
};

/// Root, middle or end of a lock by its stretched arc: thirds at 25 % and 65 %.
enum class StrandPart { Root, Middle, End };
StrandPart strandPart(double arc_mm, double length_mm);

class SeenHair {
 public:
  /// Views in the order of head::kAllViews; the crown close-up is not measured.
  static constexpr int kViews = 5;

  /// Takes the measuring rasters of the five views. Empty when stopped.
  SeenHair(std::array<ViewSamples, kViews> views, const std::array<const BodyDepth*, kViews>& bodies,
           const hair::Locks& locks, const head::HeadShape& shape);

  std::span<const SeenEntry> entriesOf(std::uint32_t lock) const {
    return {entries_.data() + first_[lock], entries_.data() + first_[lock + 1]};
  }
  std::size_t locks() const { return first_.size() - 1; }
  std::size_t entryCount() const { return entries_.size(); }
  const ViewSamples& view(int v) const { return views_[static_cast<std::size_t>(v)]; }
  /// Region of each sample of a view's raster, kNoRegion where no hair is seen.
  const std::vector<std::uint8_t>& regionsOf(int v) const {
    return regions_[static_cast<std::size_t>(v)];
  }
  /// Gives up the rasters and keeps the matrix: readings, but no contrast.
  void dropRasters();
  static constexpr std::uint8_t kNoRegion = 255;
  /// Scalp showing through per region, summed over views like `shared_mm2`.
  double scalp_mm2(Region region) const { return scalp_[static_cast<std::size_t>(region)]; }

 private:
  std::array<ViewSamples, kViews> views_;
  std::array<std::vector<std::uint8_t>, kViews> regions_;
  std::array<double, kRegions> scalp_{};
  std::vector<std::uint32_t> first_;
  std::vector<SeenEntry> entries_;
};

}  // namespace combdraft::visibility
