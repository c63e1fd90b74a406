#include "engine/visibility/body_depth.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::visibility {

float BodyDepth::at(double u, double v) const {
  const double x = u / pixel_mm - 0.5, y = v / pixel_mm - 0.5;
  const int i = std::clamp(static_cast<int>(std::floor(x)), 0, width - 2);
  const int j = std::clamp(static_cast<int>(std::floor(y)), 0, height - 2);
  const auto value = [&](int a, int b) {
    return depth_mm[static_cast<std::size_t>(j + b) * width + i + a];
  };
  const float c00 = value(0, 0), c10 = value(1, 0), c01 = value(0, 1), c11 = value(1, 1);
  const double s = std::clamp(x - i, 0.0, 1.0), t = std::clamp(y - j, 0.0, 1.0);
  if (c00 == kNone || c10 == kNone || c01 == kNone || c11 == kNone)
    return value(s > 0.5 ? 1 : 0, t > 0.5 ? 1 : 0);
  return static_cast<float>((c00 * (1 - s) + c10 * s) * (1 - t) + (c01 * (1 - s) + c11 * s) * t);
}

BodyDepth bodyDepth(const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid,
                    const head::HeadShape& shape, const head::Hairline& hairline) {
  BodyDepth result;
  result.pixel_mm = spec.pixel_mm;
  result.width = spec.width();
  result.height = spec.height();
  const auto pixels = static_cast<std::size_t>(result.width) * result.height;
  result.depth_mm.assign(pixels, BodyDepth::kNone);
  result.isScalp.assign(pixels, 0);
  parallelFor(static_cast<std::size_t>(result.height), [&](std::size_t row) {
    for (int column = 0; column < result.width; ++column) {
      const double u = spec.frame.left_mm + (column + 0.5) * spec.pixel_mm;
      const double v = spec.frame.top_mm + (static_cast<double>(row) + 0.5) * spec.pixel_mm;
      double depth = 240;
      for (int i = 0; i < 160 && depth > -240; ++i) {
        const Vec3 p = spec.view.place({u, v, depth});
        double d = grid.distance_mm(p);
        if (std::abs(p.x()) > 50 && std::abs(p.z() + 30) < 60) d = std::min(d, body.earDistance_mm(p));
        if (d < 0.25) {
          const std::size_t pixel = row * result.width + column;
          result.depth_mm[pixel] = static_cast<float>(depth);
          result.isScalp[pixel] = hairline.contains(p) && shape.implicit(p) < 0.08 &&
                                  p.z() > hairline.height_mm(180) - 2;
          break;
        }
        depth -= std::max(0.75 * d, 0.4);  // the distance is approximate
      }
    }
  });
  return result;
}

}  // namespace combdraft::visibility
