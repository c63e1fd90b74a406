#pragma once
// The slow half of a look: one head, its hair and one way of wearing it, traced
// and rastered. Immutable once built; kept while nothing it read has changed.
#include <memory>
#include <mutex>
#include <stop_token>

#include "engine/look/look.h"
#include "engine/visibility/seen_hair.h"

namespace combdraft::look {

class HeadHair {
 public:
  /// Errors: OutOfRange (measures), Cancelled.
  static Result<std::shared_ptr<const HeadHair>> build(const plan::Plan& plan, const hair::Worn& worn,
                                                       int locks, double measuringPixel_mm,
                                                       double step_mm, std::stop_token stop);
  /// The same without what only pictures need: a tenth of the memory.
  static Result<std::shared_ptr<const HeadHair>> buildForReadings(
      const plan::Plan& plan, const hair::Worn& worn, int locks, double measuringPixel_mm,
      double step_mm, std::stop_token stop);
  /// Hash of exactly what `build` reads.
  static std::uint64_t keyOf(const plan::Plan& plan, const hair::Worn& worn, int locks,
                             double measuringPixel_mm, double step_mm);

  const head::HeadShape& shape() const { return shape_; }
  const head::Hairline& hairline() const { return hairline_; }
  const hair::Roots& roots() const { return roots_; }
  const hair::RootGrid& grid() const { return *grid_; }
  const hair::Locks& locks() const { return locks_; }
  const visibility::SeenHair& seen() const { return *seen_; }
  const hair::BodyGrid& body() const { return *body_; }
  std::uint64_t seed() const { return seed_; }

  /// A raster for a picture. Empty when stopped.
  visibility::ViewSamples pictureRaster(const PictureRequest& request, std::stop_token stop) const;
  /// The raster of a view of this head; the crown close-up looks at the first whorl.
  visibility::RasterSpec specOf(head::ViewName view, double pixel_mm) const;

 private:
  static Result<std::shared_ptr<HeadHair>> make(const plan::Plan& plan, const hair::Worn& worn,
                                                int locks, double measuringPixel_mm, double step_mm,
                                                std::stop_token stop);
  HeadHair(const head::HeadShape& shape, const head::Hairline& hairline)
      : shape_(shape), hairline_(hairline) {}
  visibility::BodyDepth bodyDepthOf(head::ViewName view, double pixel_mm) const;

  head::HeadShape shape_;
  head::Hairline hairline_;
  Vec3 crown_ = Vec3::Zero();
  hair::Roots roots_;
  std::unique_ptr<hair::RootGrid> grid_;
  std::unique_ptr<hair::Body> solid_;
  std::unique_ptr<hair::BodyGrid> body_;
  hair::Locks locks_;
  std::unique_ptr<visibility::SeenHair> seen_;
  std::array<visibility::BodyDepth, visibility::SeenHair::kViews> depths_;
  std::uint64_t seed_ = 0;
};

}  // namespace combdraft::look
