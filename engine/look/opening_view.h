#pragma once
// One traced way in which the hair opens: which hair each cell of it shows, how
// large the cell is on the hair's surface and how far it lies from the opening
// line. Independent of colour; the colours of its cells are kept between edits.
#include <span>
#include <stop_token>

#include "engine/look/head_ground.h"
#include "engine/look/lock_colours.h"
#include "engine/look/openings.h"

namespace combdraft::look {

class OpeningView {
 public:
  static constexpr double kCell_mm = 2;

  /// Traces the hair near the opening and rasters it. Nothing when stopped, and
  /// nothing when there is no such opening on this head (no part, or hardly any
  /// of it stays on the hair).
  static std::unique_ptr<OpeningView> build(const plan::Plan& plan, const HeadGround& ground,
                                            OpeningWay way, double shift_mm, std::stop_token stop);
  /// Hash of what `build` reads of a plan, without way and shift.
  static std::uint64_t keyOf(const plan::Plan& plan, std::uint64_t ground);

  OpeningWay way() const { return way_; }
  double shift_mm() const { return shift_mm_; }
  int width() const { return width_; }
  int height() const { return height_; }
  std::size_t cells() const { return cover_.size(); }

  /// Samples of a cell, visibility::kSamples of them; none where no hair is seen.
  const visibility::LockBin* samples(std::size_t cell) const {
    return sample_.data() + cell * visibility::kSamples;
  }
  const std::vector<float>& cover() const { return cover_; }        ///< share that is hair
  const std::vector<float>& area_mm2() const { return area_; }      ///< on the hair's surface
  const std::vector<Point3f>& place() const { return place_; }
  const std::vector<float>& fromLine_mm() const { return fromLine_; }  ///< large where it is not near
  const std::vector<float>& alongLine_mm() const { return alongLine_; }

  /// Takes over the colours; of `changed` (1 per lock) only, unless it is empty.
  void colour(const LockColours& colours, std::span<const std::uint8_t> changed);
  const std::vector<float>& luminance() const { return luminance_; }  ///< Y of the hair in a cell
  const std::vector<float>& leftDark() const { return leftDark_; }    ///< share of its hair no piece lightens
  /// L* of each cell blurred in linear light by a Gaussian of that full width at
  /// half maximum, hair only.
  std::vector<float> blurred(double fwhm_mm) const;

 private:
  void colourCell(std::size_t cell, const LockColours& colours);

  OpeningWay way_{};
  double shift_mm_ = 0;
  int width_ = 0, height_ = 0;
  std::vector<visibility::LockBin> sample_;
  std::vector<float> cover_, area_, fromLine_, alongLine_, luminance_, leftDark_;
  std::vector<Point3f> place_;
};

}  // namespace combdraft::look
