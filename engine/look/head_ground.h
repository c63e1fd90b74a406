#pragma once
// What every way of wearing shares: the head, its body and where its hair is
// rooted. Built once per head, hairline, density and number of locks.
#include <memory>

#include "engine/hair/roots.h"
#include "engine/look/look.h"
#include "engine/visibility/seen_hair.h"

namespace combdraft::look {

class HeadGround {
 public:
  /// Errors: OutOfRange, MeasuresContradict (fitHead).
  static Result<std::shared_ptr<const HeadGround>> build(const plan::Plan& plan, int locks,
                                                         double measuringPixel_mm);
  /// Hash of exactly what `build` reads.
  static std::uint64_t keyOf(const plan::Plan& plan, int locks, double measuringPixel_mm);

  std::uint64_t key() const { return key_; }
  const head::HeadShape& shape() const { return shape_; }
  const head::Hairline& hairline() const { return hairline_; }
  const hair::Roots& roots() const { return roots_; }
  const hair::RootGrid& grid() const { return *grid_; }
  const hair::BodyGrid& body() const { return *body_; }
  std::uint64_t seed() const { return seed_; }

  /// The raster of a view of this head; the crown close-up looks at the first whorl.
  visibility::RasterSpec specOf(head::ViewName view, double pixel_mm) const;
  /// Where the body lies in a view: kept for the five measured views.
  visibility::BodyDepth bodyDepthOf(head::ViewName view, double pixel_mm) const;
  /// `measuredDepth` at the finer pixels of a picture.
  visibility::BodyDepth refinedDepth(int view, const visibility::RasterSpec& spec) const;
  visibility::BodyDepth bodyDepthIn(const visibility::RasterSpec& spec) const;
  const visibility::BodyDepth& measuredDepth(int view) const {
    return depths_[static_cast<std::size_t>(view)];
  }

 private:
  HeadGround(const head::HeadShape& shape, const head::Hairline& hairline)
      : shape_(shape), hairline_(hairline), solid_(shape) {}

  std::uint64_t key_ = 0, seed_ = 0;
  head::HeadShape shape_;
  head::Hairline hairline_;
  hair::Body solid_;
  Vec3 crown_ = Vec3::Zero();
  hair::Roots roots_;
  std::unique_ptr<hair::RootGrid> grid_;
  std::unique_ptr<hair::BodyGrid> body_;
  std::array<visibility::BodyDepth, visibility::SeenHair::kViews> depths_;
};

}  // namespace combdraft::look
