#pragma once
// Where the line of sight of each pixel first meets the body.
#include <limits>
#include <vector>

#include "engine/hair/body_grid.h"
#include "engine/head/hairline.h"
#include "engine/head/sheet_view.h"

namespace combdraft::visibility {

/// A raster over a view: which part of the drawing plane, how fine.
struct RasterSpec {
  head::SheetView view = head::SheetView(head::ViewName::Front);
  head::ViewFrame frame{};
  double pixel_mm = 1;
  int width() const { return static_cast<int>(frame.width_mm / pixel_mm + 0.5); }
  int height() const { return static_cast<int>(frame.height_mm / pixel_mm + 0.5); }
};

struct BodyDepth {
  static constexpr float kNone = -std::numeric_limits<float>::infinity();
  double pixel_mm = 1;
  int width = 0, height = 0;
  std::vector<float> depth_mm;        ///< view depth of the body, kNone where there is none
  std::vector<std::uint8_t> isScalp;  ///< 1 where that place lies inside the hairline

  /// Depth at a pixel of a finer or equal raster over the same frame.
  float at(double u_from_left_mm, double v_from_top_mm) const;
};

/// The same at the finer `spec` of the same view and frame: what lies inside the outline
/// is interpolated, the outline itself is traced anew, so that a picture has no steps there.
BodyDepth refined(const BodyDepth& coarse, const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid,
                  const head::HeadShape& shape, const head::Hairline& hairline);

/// Sphere tracing through the body's lattice; depth good to 0.5 mm.
BodyDepth bodyDepth(const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid,
                    const head::HeadShape& shape, const head::Hairline& hairline);

}  // namespace combdraft::visibility
