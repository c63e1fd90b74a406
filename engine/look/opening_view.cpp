#include "engine/look/opening_view.h"

#include <algorithm>
#include <cmath>

#include "engine/base/content_hash.h"
#include "engine/colour/xyz.h"
#include "engine/head/part_line.h"
#include "engine/look/blur.h"
#include "engine/look/head_hair.h"

namespace combdraft::look {
namespace {

using visibility::kSamples;

constexpr float kFar_mm = 1e6f;
// Hair that is seen beside a part or whorl is seen within this arc of its root;
// the tail of tied hair hangs over the nape and is followed to its end.
constexpr double kReach_mm = 220, kStep_mm = 6;
constexpr double kBeyondHead_mm = 16;  // hair stands off the head by less
constexpr double kSteepest = 4;        // a surface seen more slantingly counts as this much larger

hair::Worn wornFor(OpeningWay way, double shift_mm) {
  hair::Worn worn;
  worn.partShift_mm = shift_mm;
  if (way == OpeningWay::CrownOpened) worn.way = hair::WornWay::CrownOpened;
  if (way == OpeningWay::Blown) worn.way = hair::WornWay::Blown;
  if (way == OpeningWay::TiedBack) worn.way = hair::WornWay::TiedBack;
  return worn;
}

/// Looked at from above for a part, along the normal for a whorl, from behind when tied.
visibility::RasterSpec specFor(const HeadGround& ground, OpeningWay way) {
  const head::HeadAxes& axes = ground.shape().axes();
  visibility::RasterSpec spec;
  spec.pixel_mm = OpeningView::kCell_mm;
  const auto frame = [&](double halfWidth, double halfHeight) {
    // Whole cells, centred.
    const double w = std::ceil(halfWidth / spec.pixel_mm) * spec.pixel_mm;
    const double h = std::ceil(halfHeight / spec.pixel_mm) * spec.pixel_mm;
    return head::ViewFrame{-w, -h, 2 * w, 2 * h};
  };
  switch (way) {
    case OpeningWay::Part:
      spec.view = head::SheetView(head::ViewName::Top);
      spec.frame = frame(axes.a_mm + kBeyondHead_mm, axes.b_mm + kBeyondHead_mm);
      break;
    case OpeningWay::TiedBack:
      spec.view = head::SheetView(head::ViewName::Back);
      spec.frame = frame(axes.a_mm + kBeyondHead_mm, axes.c_mm + kBeyondHead_mm);
      break;
    case OpeningWay::CrownOpened:
    case OpeningWay::Blown:
      spec.view = ground.specOf(head::ViewName::Crown, 1).view;
      spec.frame = frame(80, 80);
      break;
  }
  return spec;
}

/// The line along which the hair opens, on the surface.
std::vector<Vec3> lineOf(const plan::Plan& plan, const HeadGround& ground, OpeningWay way, double shift_mm) {
  std::vector<Vec3> line;
  const head::HeadShape& shape = ground.shape();
  switch (way) {
    case OpeningWay::Part: return partOf(plan, wornFor(way, shift_mm), ground);
    case OpeningWay::TiedBack:  // the hairline at the nape, from ear to ear
      for (double azimuth = 110; azimuth <= 250; azimuth += 2) line.push_back(ground.hairline().pointAt(azimuth));
      break;
    case OpeningWay::CrownOpened:
    case OpeningWay::Blown: {  // front to back through the first whorl
      const head::SheetView view = ground.specOf(head::ViewName::Crown, 1).view;
      for (double v = -40; v <= 40; v += 4)
        if (const auto at = view.castBack(shape, 0, v)) line.push_back(*at);
      break;
    }
  }
  return line;
}

}  // namespace

std::uint64_t OpeningView::keyOf(const plan::Plan& plan, std::uint64_t ground) {
  // Any way of wearing reads the same of a plan, but for the assumptions about
  // that way; all of them count here.
  ContentHash h;
  h.add(ground);
  for (const hair::WornWay way : {hair::WornWay::Down, hair::WornWay::TiedBack, hair::WornWay::CrownOpened, hair::WornWay::Blown})
    h.add(HeadHair::keyOf(plan, {way}, 1, 1, kCell_mm));
  return h.key();
}

std::unique_ptr<OpeningView> OpeningView::build(const plan::Plan& plan, const HeadGround& ground,
                                                OpeningWay way, double shift_mm, std::stop_token stop) {
  if (way == OpeningWay::Part) {
    const auto& part = plan.head().part;
    if (part.size() < 2) return nullptr;
    const auto moved = head::partMoved(ground.shape(), ground.hairline(), part, shift_mm);
    if (moved.line.size() < 2 || 2 * moved.skipped > static_cast<int>(part.size())) return nullptr;
  }
  const std::vector<Vec3> line = lineOf(plan, ground, way, shift_mm);
  if (line.size() < 2) return nullptr;
  const bool tied = way == OpeningWay::TiedBack;
  FallPart followed;
  followed.step_mm = kStep_mm;
  if (!tied) followed.until = hair::FallInput::Until::ItHangs;
  followed.reach_mm = tied ? hair::kLongestHair_mm : kReach_mm;
  followed.lowestRoot_mm = tied ? -1e9 : -10 * ground.shape().axes().c_mm / 90;
  const hair::Locks locks = fallOf(plan, wornFor(way, shift_mm), ground, followed, stop);
  if (stop.stop_requested()) return nullptr;
  const visibility::RasterSpec spec = specFor(ground, way);
  const visibility::ViewSamples raster =
      visibility::rasterise(locks, spec, ground.bodyDepthIn(spec), visibility::Shading::None, ground.seed(), stop);
  if (stop.stop_requested()) return nullptr;

  auto made = std::make_unique<OpeningView>();
  made->way_ = way, made->shift_mm_ = shift_mm;
  made->width_ = raster.width, made->height_ = raster.height;
  made->sample_ = raster.sample;
  made->cover_ = raster.hairCover;
  const std::size_t n = raster.pixels();
  made->area_.assign(n, 0), made->fromLine_.assign(n, kFar_mm), made->alongLine_.assign(n, 0);
  made->place_.resize(n);
  made->luminance_.assign(n, 0), made->leftDark_.assign(n, 0);

  // The hair's surface: depth of the middle sample, smoothed over a few cells.
  std::vector<float> depth(n, 0), weight(n, 0);
  for (std::size_t cell = 0; cell < n; ++cell)
    if (raster.hairCover[cell] > 0) {
      weight[cell] = 1;
      depth[cell] = raster.depth_mm[cell * kSamples + kSamples / 2];
    }
  blur(depth, raster.width, raster.height, 1.5);
  blur(weight, raster.width, raster.height, 1.5);
  const auto smooth = [&](int x, int y) -> std::optional<double> {
    if (x < 0 || y < 0 || x >= raster.width || y >= raster.height) return std::nullopt;
    const auto at = static_cast<std::size_t>(y) * raster.width + x;
    if (raster.hairCover[at] <= 0 || weight[at] < 1e-3f) return std::nullopt;
    return depth[at] / weight[at];
  };
  for (int y = 0; y < raster.height; ++y)
    for (int x = 0; x < raster.width; ++x) {
      const auto here = smooth(x, y);
      if (!here) continue;
      const auto cell = static_cast<std::size_t>(y) * raster.width + x;
      const auto slope = [&](int dx, int dy) {
        const auto before = smooth(x - dx, y - dy), after = smooth(x + dx, y + dy);
        const double run = kCell_mm * ((before ? 1 : 0) + (after ? 1 : 0));
        return run > 0 ? (after.value_or(*here) - before.value_or(*here)) / run : 0.0;
      };
      const double sx = slope(1, 0), sy = slope(0, 1);
      made->area_[cell] = static_cast<float>(kCell_mm * kCell_mm * std::min(kSteepest, std::sqrt(1 + sx * sx + sy * sy)));
      const Vec3 place = spec.view.place({spec.frame.left_mm + (x + 0.5) * kCell_mm,
                                          spec.frame.top_mm + (y + 0.5) * kCell_mm, *here});
      made->place_[cell] = toPoint3f(place);
      // Nearest place of the opening line.
      double along = 0, best = 1e18, bestAlong = 0;
      for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Vec3 d = line[i + 1] - line[i];
        const double length = d.norm();
        const double t = length > 0 ? std::clamp((place - line[i]).dot(d) / (length * length), 0.0, 1.0) : 0.0;
        const double squared = (place - line[i] - t * d).squaredNorm();
        if (squared < best) best = squared, bestAlong = along + t * length;
        along += length;
      }
      made->fromLine_[cell] = static_cast<float>(std::sqrt(best));
      made->alongLine_[cell] = static_cast<float>(bestAlong);
    }
  return made;
}

void OpeningView::colourCell(std::size_t cell, const LockColours& colours) {
  float y = 0, dark = 0;
  for (int k = 0; k < kSamples; ++k) {
    const visibility::LockBin who = samples(cell)[k];
    y += colours.at(who.lock(), who.bin()).y / kSamples;
    const plan::Piece* piece = colours.pieceOf(who.lock());
    if (!piece || piece->action != plan::Action::Lighten) dark += 1.0f / kSamples;
  }
  luminance_[cell] = y, leftDark_[cell] = dark;
}

void OpeningView::colour(const LockColours& colours, std::span<const std::uint8_t> changed) {
  for (std::size_t cell = 0; cell < cells(); ++cell) {
    if (cover_[cell] <= 0) continue;
    bool wanted = changed.empty();
    for (int k = 0; k < kSamples && !wanted; ++k) wanted = changed[samples(cell)[k].lock()] != 0;
    if (wanted) colourCell(cell, colours);
  }
}

std::vector<float> OpeningView::blurred(double fwhm_mm) const {
  const double sigma = sigmaOfFwhm(fwhm_mm);
  const double cells = std::sqrt(std::max(0.0, sigma * sigma - kCell_mm * kCell_mm / 12)) / kCell_mm;
  std::vector<float> light(luminance_.size()), weight = cover_;
  for (std::size_t i = 0; i < light.size(); ++i) light[i] = luminance_[i] * cover_[i];
  blur(light, width_, height_, cells);
  blur(weight, width_, height_, cells);
  for (std::size_t i = 0; i < light.size(); ++i)
    light[i] = weight[i] > 1e-4f ? static_cast<float>(colour::lightnessFromY(light[i] / weight[i])) : 0;
  return light;
}

}  // namespace combdraft::look
