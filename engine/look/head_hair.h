#pragma once
// The slow half of a look: one head, its hair and one way of wearing it, traced
// and rastered. Immutable once built; kept while nothing it read has changed.
#include <memory>
#include <stop_token>

#include "engine/hair/locks.h"
#include "engine/look/head_ground.h"

namespace combdraft::look {

/// The part in a way of wearing: its points on the surface, front to back, where
/// there is one; moved by the shift and by the assumption `fall.partSide_mm`.
std::vector<Vec3> partOf(const plan::Plan& plan, const hair::Worn& worn, const HeadGround& ground);

/// How far hair is followed and which is left out (hair::FallInput).
struct FallPart {
  double step_mm = 4, reach_mm = hair::kLongestHair_mm, lowestRoot_mm = -1e9;
  hair::FallInput::Until until = hair::FallInput::Until::TheEnd;
};
/// The fall of a plan's hair worn that way. Empty when stopped.
hair::Locks fallOf(const plan::Plan& plan, const hair::Worn& worn, const HeadGround& ground,
                   const FallPart& part, std::stop_token stop);

class HeadHair {
 public:
  /// `ground` is used when it is this plan's, and built anew otherwise.
  /// Errors: OutOfRange (measures), Cancelled.
  static Result<std::shared_ptr<const HeadHair>> build(
      const plan::Plan& plan, const hair::Worn& worn, int locks, double measuringPixel_mm,
      double step_mm, std::stop_token stop, std::shared_ptr<const HeadGround> ground = nullptr);
  /// The same without what only pictures need: a tenth of the memory.
  static Result<std::shared_ptr<const HeadHair>> buildForReadings(
      const plan::Plan& plan, const hair::Worn& worn, int locks, double measuringPixel_mm,
      double step_mm, std::stop_token stop, std::shared_ptr<const HeadGround> ground = nullptr);
  /// Hash of exactly what `build` reads.
  static std::uint64_t keyOf(const plan::Plan& plan, const hair::Worn& worn, int locks,
                             double measuringPixel_mm, double step_mm);

  const std::shared_ptr<const HeadGround>& ground() const { return ground_; }
  const head::HeadShape& shape() const { return ground_->shape(); }
  const head::Hairline& hairline() const { return ground_->hairline(); }
  const hair::Roots& roots() const { return ground_->roots(); }
  const hair::RootGrid& grid() const { return ground_->grid(); }
  const hair::BodyGrid& body() const { return ground_->body(); }
  std::uint64_t seed() const { return ground_->seed(); }
  const hair::Locks& locks() const { return locks_; }
  const visibility::SeenHair& seen() const { return *seen_; }

  /// A raster for a picture. Empty when stopped.
  visibility::ViewSamples pictureRaster(const PictureRequest& request, std::stop_token stop) const;
  /// A raster of any part of a view, without shading. Empty when stopped.
  visibility::ViewSamples closeUp(const visibility::RasterSpec& spec, std::stop_token stop) const;
  visibility::RasterSpec specOf(head::ViewName view, double pixel_mm) const {
    return ground_->specOf(view, pixel_mm);
  }

 private:
  static Result<std::shared_ptr<HeadHair>> make(const plan::Plan& plan, const hair::Worn& worn,
                                                int locks, double measuringPixel_mm, double step_mm,
                                                std::stop_token stop,
                                                std::shared_ptr<const HeadGround> ground);
  HeadHair() = default;

  std::shared_ptr<const HeadGround> ground_;
  hair::Locks locks_;
  std::unique_ptr<visibility::SeenHair> seen_;
};

}  // namespace combdraft::look
