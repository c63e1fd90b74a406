#include "engine/visibility/body_depth.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::visibility {

float BodyDepth::at(double u, double v) const {
  const double x = u / pixel_mm - 0.5, y = v / pixel_mm - 0.5;
  const int i = std::clamp(static_cast<int>(std::floor(x)), 0, std::max(0, width - 2));
  const int j = std::clamp(static_cast<int>(std::floor(y)), 0, std::max(0, height - 2));
  const int right = std::min(1, width - 1), below = std::min(1, height - 1);  // a picture may be one pixel high
  const auto value = [&](int a, int b) {
    return depth_mm[static_cast<std::size_t>(j + std::min(b, below)) * width + i + std::min(a, right)];
  };
  const float c00 = value(0, 0), c10 = value(1, 0), c01 = value(0, 1), c11 = value(1, 1);
  const double s = std::clamp(x - i, 0.0, 1.0), t = std::clamp(y - j, 0.0, 1.0);
  if (c00 == kNone || c10 == kNone || c01 == kNone || c11 == kNone)
    return value(s > 0.5 ? 1 : 0, t > 0.5 ? 1 : 0);
  return static_cast<float>((c00 * (1 - s) + c10 * s) * (1 - t) + (c01 * (1 - s) + c11 * s) * t);
}

namespace {

struct Met {
  float depth = BodyDepth::kNone;
  bool isScalp = false;
};

class Tracer {
 public:
  Tracer(const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid, const head::HeadShape& shape, const head::Hairline& hairline)
      : spec_(spec), body_(body), grid_(grid), shape_(shape), hairline_(hairline) {}

  Met at(int column, int row) const {
    const double u = spec_.frame.left_mm + (column + 0.5) * spec_.pixel_mm;
    const double v = spec_.frame.top_mm + (row + 0.5) * spec_.pixel_mm;
    double depth = 240;
    for (int i = 0; i < 160 && depth > -240; ++i) {
      const Vec3 p = spec_.view.place({u, v, depth});
      double d = grid_.distance_mm(p);
      if (std::abs(p.x()) > 50 && std::abs(p.z() + 30) < 60) d = std::min(d, body_.earDistance_mm(p));
      if (d < 0.25)
        return {static_cast<float>(depth), hairline_.contains(p) && shape_.implicit(p) < 0.08 && p.z() > hairline_.height_mm(180) - 2};
      depth -= std::max(0.75 * d, 0.4);  // the distance is approximate
    }
    return {};
  }

 private:
  const RasterSpec& spec_;
  const hair::Body& body_;
  const hair::BodyGrid& grid_;
  const head::HeadShape& shape_;
  const head::Hairline& hairline_;
};

/// `meet(column, row)` for each pixel.
template <class Meet>
BodyDepth filled(const RasterSpec& spec, Meet meet) {
  BodyDepth result;
  result.pixel_mm = spec.pixel_mm;
  result.width = spec.width();
  result.height = spec.height();
  const auto pixels = static_cast<std::size_t>(result.width) * result.height;
  result.depth_mm.assign(pixels, BodyDepth::kNone);
  result.isScalp.assign(pixels, 0);
  parallelFor(static_cast<std::size_t>(result.height), [&](std::size_t row) {
    for (int column = 0; column < result.width; ++column) {
      const Met met = meet(column, static_cast<int>(row));
      const std::size_t pixel = row * result.width + column;
      result.depth_mm[pixel] = met.depth;
      result.isScalp[pixel] = met.isScalp;
    }
  });
  return result;
}

}  // namespace

BodyDepth bodyDepth(const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid,
                    const head::HeadShape& shape, const head::Hairline& hairline) {
  const Tracer tracer(spec, body, grid, shape, hairline);
  return filled(spec, [&](int column, int row) { return tracer.at(column, row); });
}

BodyDepth refined(const BodyDepth& coarse, const RasterSpec& spec, const hair::Body& body, const hair::BodyGrid& grid,
                  const head::HeadShape& shape, const head::Hairline& hairline) {
  const Tracer tracer(spec, body, grid, shape, hairline);
  return filled(spec, [&](int column, int row) -> Met {
    const double u = (column + 0.5) * spec.pixel_mm, v = (row + 0.5) * spec.pixel_mm;
    const int i = std::clamp(static_cast<int>(u / coarse.pixel_mm), 0, coarse.width - 1);
    const int j = std::clamp(static_cast<int>(v / coarse.pixel_mm), 0, coarse.height - 1);
    int solid = 0, asked = 0;
    for (int b = std::max(0, j - 1); b <= std::min(coarse.height - 1, j + 1); ++b)
      for (int a = std::max(0, i - 1); a <= std::min(coarse.width - 1, i + 1); ++a)
        ++asked, solid += coarse.depth_mm[static_cast<std::size_t>(b) * coarse.width + a] != BodyDepth::kNone;
    if (solid == 0) return {};
    if (solid < asked) return tracer.at(column, row);
    return {coarse.at(u, v), coarse.isScalp[static_cast<std::size_t>(j) * coarse.width + i] != 0};
  });
}

}  // namespace combdraft::visibility
