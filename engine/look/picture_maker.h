#pragma once
// Turns a picture raster and the lock colours into pixels. After an edit only
// the pixels that hold a changed lock are worked out again; a pixel is always
// the same function of its eight samples, so a full redraw gives the same.
#include <memory>
#include <span>

#include "engine/head/head_shape.h"
#include "engine/look/lock_colours.h"
#include "engine/visibility/raster.h"

namespace combdraft::look {

class PictureMaker {
 public:
  /// `samples` rastered with Shading::ForTheEye.
  PictureMaker(visibility::ViewSamples samples, const head::HeadShape& shape, std::size_t locks, std::uint64_t seed);

  /// Redraws the pixels of `changed` locks and returns the picture.
  std::shared_ptr<const Picture> update(const LockColours& colours, colour::Light light,
                                        std::span<const std::uint32_t> changed);
  /// The picture as it stands, without redrawing.
  std::shared_ptr<const Picture> picture() const { return shown_; }
  double pixel_mm() const { return samples_.spec.pixel_mm; }

 private:
  void bringToOne(const head::HeadShape& shape);
  std::vector<std::uint8_t> skinAmongHair() const;
  void fadeFarBelow();
  std::vector<std::uint8_t> regionsSeen(const head::HeadShape& shape) const;
  void drawPixel(std::size_t pixel, const LockColours& colours, Picture& into) const;

  visibility::ViewSamples samples_;
  std::vector<float> eye_;  ///< per sample: shade, normalised to mean 1 over each region
  std::vector<std::uint32_t> first_, pixels_;  ///< lock -> pixels
  std::shared_ptr<const std::vector<std::uint8_t>> skin_;  ///< as in Picture
  std::array<double, 9> toRgb_{};
  std::optional<colour::Light> light_;
  std::shared_ptr<const Picture> shown_;
};

}  // namespace combdraft::look
