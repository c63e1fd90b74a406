#include "engine/look/picture_maker.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"
#include "engine/base/random.h"
#include "engine/colour/screen.h"
#include "engine/look/blur.h"
#include "engine/visibility/region.h"

namespace combdraft::look {

using visibility::kSamples;
using visibility::LockBin;

PictureMaker::PictureMaker(visibility::ViewSamples samples, const head::HeadShape& shape, std::size_t locks, std::uint64_t seed)
    : samples_(std::move(samples)) {
  const std::size_t pixels = samples_.pixels();
  eye_.resize(pixels * kSamples);
  for (std::size_t slot = 0; slot < eye_.size(); ++slot) {
    if (samples_.sample[slot].none()) continue;
    const double grain = 1 + 0.40 * (randomUniform(seed, samples_.sample[slot].lock(), 240) - 0.5);
    eye_[slot] = static_cast<float>(samples_.shade[slot] / static_cast<double>(visibility::kShadeOfOne) * grain);
  }
  bringToOne(shape);
  const head::ViewName view = samples_.spec.view.name();
  if (view == head::ViewName::Top)
    fadeFarBelow();
  else if (view != head::ViewName::Crown)
    skin_ = std::make_shared<const std::vector<std::uint8_t>>(skinAmongHair());

  first_.assign(locks + 1, 0);
  const auto eachLock = [&](std::size_t p, auto visit) {
    std::uint32_t before = LockBin::kNone;
    for (std::size_t k = 0; k < kSamples; ++k) {
      const LockBin who = samples_.sample[p * kSamples + k];
      if (who.none() || who.lock() == before) continue;
      before = who.lock();
      visit(before);
    }
  };
  for (std::size_t p = 0; p < pixels; ++p) eachLock(p, [&](std::uint32_t lock) { ++first_[lock + 1]; });
  for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
  pixels_.resize(first_.back());
  std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
  for (std::size_t p = 0; p < pixels; ++p)
    eachLock(p, [&](std::uint32_t lock) { pixels_[next[lock]++] = static_cast<std::uint32_t>(p); });
  samples_.depth_mm = {};
  samples_.shade = {};
  samples_.bareSkin = {};
}

// Shading is for the eye only: its mean is brought to 1, first around each place, so that
// no border of two regions is seen, then the little that is left over each region, so that
// the picture is as light as the readings say.
void PictureMaker::bringToOne(const head::HeadShape& shape) {
  constexpr double kAround_mm = 45, kSoft_mm = 14;
  const std::size_t pixels = samples_.pixels();
  const auto blurred = [&](std::vector<float> plane, double sigma_mm) {
    blur(plane, samples_.width, samples_.height, sigma_mm / samples_.spec.pixel_mm);
    return plane;
  };
  std::vector<float> shaded(pixels);  // what is seen of each pixel, with its cover
  for (std::size_t slot = 0; slot < eye_.size(); ++slot) shaded[slot / kSamples] += samples_.hairCover[slot / kSamples] * eye_[slot] / kSamples;
  std::vector<float> factor(pixels, 1);
  const auto multiply = [&](const std::vector<float>& by, const std::vector<float>& over) {
    for (std::size_t p = 0; p < pixels; ++p)
      if (over[p] > 1e-6f) factor[p] *= by[p] / over[p], shaded[p] *= by[p] / over[p];
  };
  const std::vector<float> around = blurred(samples_.hairCover, kAround_mm), near = blurred(samples_.hairCover, kSoft_mm);
  for (int pass = 0; pass < 2; ++pass) multiply(around, blurred(shaded, kAround_mm));
  const std::vector<std::uint8_t> regions = regionsSeen(shape);
  for (int pass = 0; pass < 8; ++pass) {
    std::array<double, visibility::kRegions> area{}, sum{};
    for (std::size_t p = 0; p < pixels; ++p)
      area[regions[p]] += static_cast<double>(samples_.hairCover[p]), sum[regions[p]] += static_cast<double>(shaded[p]);
    std::vector<float> wanted(pixels);
    for (std::size_t p = 0; p < pixels; ++p)
      if (const std::uint8_t r = regions[p]; sum[r] > 0) wanted[p] = samples_.hairCover[p] * static_cast<float>(area[r] / sum[r]);
    multiply(blurred(std::move(wanted), kSoft_mm), near);
  }
  for (std::size_t slot = 0; slot < eye_.size(); ++slot) eye_[slot] *= factor[slot / kSamples];
}

// Seen from above, lengths hang toward the floor and show nothing but their cut through the
// picture's pixels: they run out softly below the head.
void PictureMaker::fadeFarBelow() {
  constexpr double kFrom_mm = -30, kGone_mm = -120;
  for (std::size_t p = 0; p < samples_.pixels(); ++p)
    samples_.hairCover[p] *= static_cast<float>(smoothstep(kGone_mm, kFrom_mm, static_cast<double>(samples_.depth_mm[p * kSamples])));
}

// Only where hair is near and hair or body all around, above the shoulders: elsewhere the
// line art's own outline counts.
std::vector<std::uint8_t> PictureMaker::skinAmongHair() const {
  constexpr double kNear_mm = 4, kShoulders_mm = -160, kNeck_mm = -145;
  const auto near = [&](std::vector<float> plane) {
    blur(plane, samples_.width, samples_.height, kNear_mm / samples_.spec.pixel_mm);
    return plane;
  };
  std::vector<float> solid = samples_.hairCover;
  for (std::size_t p = 0; p < solid.size(); ++p)
    if (samples_.bareSkin[p]) solid[p] = 1;
  const std::vector<float> hair = near(samples_.hairCover), all = near(std::move(solid));
  std::vector<std::uint8_t> skin(samples_.pixels(), 0);
  const auto width = static_cast<std::size_t>(samples_.width);
  for (std::size_t p = 0; p < skin.size(); ++p) {
    if (!samples_.bareSkin[p]) continue;
    const double height_mm = samples_.spec.view.place({0, samples_.spec.frame.top_mm + static_cast<double>(p / width) * samples_.spec.pixel_mm, 0}).z();
    skin[p] = static_cast<std::uint8_t>(std::lround(255 * smoothstep(0.1, 0.3, static_cast<double>(hair[p])) * smoothstep(0.7, 0.85, static_cast<double>(all[p])) *
                                                    smoothstep(kShoulders_mm, kNeck_mm, height_mm)));
  }
  return skin;
}

// Of each pixel by the middle one of its samples; anything where there is no hair.
std::vector<std::uint8_t> PictureMaker::regionsSeen(const head::HeadShape& shape) const {
  const visibility::RasterSpec& spec = samples_.spec;
  const auto width = static_cast<std::size_t>(samples_.width);
  std::vector<std::uint8_t> regions(samples_.pixels(), 0);
  parallelFor(static_cast<std::size_t>(samples_.height), [&](std::size_t row) {
    for (std::size_t column = 0; column < width; ++column) {
      const std::size_t pixel = row * width + column, slot = pixel * kSamples + kSamples / 2;
      if (samples_.sample[slot].none()) continue;
      const Vec3 place = spec.view.place({spec.frame.left_mm + (static_cast<double>(column) + 0.5) * spec.pixel_mm,
                                          spec.frame.top_mm + (static_cast<double>(row) + 0.5) * spec.pixel_mm,
                                          static_cast<double>(samples_.depth_mm[slot])});
      regions[pixel] = static_cast<std::uint8_t>(visibility::regionAt(shape, place));
    }
  });
  return regions;
}

void PictureMaker::drawPixel(std::size_t pixel, const LockColours& colours, Picture& into) const {
  std::uint8_t* rgba = into.rgba.data() + pixel * 4;
  if (samples_.sample[pixel * kSamples].none()) return;
  double x = 0, y = 0, z = 0;
  for (std::size_t k = 0; k < kSamples; ++k) {
    const LockBin who = samples_.sample[pixel * kSamples + k];
    const BinColour& c = colours.at(who.lock(), who.bin());
    const double eye = eye_[pixel * kSamples + k];
    x += eye * c.x, y += eye * c.y, z += eye * c.z;
  }
  for (std::size_t c = 0; c < 3; ++c)
    rgba[c] = colour::encodeSrgbFast(static_cast<float>(
        (toRgb_[c * 3] * x + toRgb_[c * 3 + 1] * y + toRgb_[c * 3 + 2] * z) / kSamples));
  rgba[3] = static_cast<std::uint8_t>(std::lround(255 * samples_.hairCover[pixel]));
}

std::shared_ptr<const Picture> PictureMaker::update(const LockColours& colours,
                                                    colour::Light light,
                                                    std::span<const std::uint32_t> changed) {
  const bool all = !shown_ || light_ != light || changed.size() * 4 > first_.size();
  if (!all && changed.empty()) return shown_;
  if (light_ != light) {
    for (std::size_t c = 0; c < 3; ++c) {
      const auto column = colour::linearSrgb({c == 0 ? 1.0 : 0.0, c == 1 ? 1.0 : 0.0, c == 2 ? 1.0 : 0.0}, light);
      for (std::size_t r = 0; r < 3; ++r) toRgb_[r * 3 + c] = column[r];
    }
    light_ = light;
  }
  auto next = std::make_shared<Picture>();
  if (shown_) {
    *next = *shown_;
  } else {
    next->view = samples_.spec.view.name();
    next->projection = samples_.spec.view;
    next->frame = samples_.spec.frame;
    next->pixel_mm = samples_.spec.pixel_mm;
    next->width = samples_.width;
    next->height = samples_.height;
    next->rgba.assign(samples_.pixels() * 4, 0);
    next->skin = skin_;
  }
  if (all) {
    parallelFor(static_cast<std::size_t>(samples_.height), [&](std::size_t row) {
      const auto width = static_cast<std::size_t>(samples_.width);
      for (std::size_t p = row * width; p < (row + 1) * width; ++p) drawPixel(p, colours, *next);
    });
  } else {
    std::vector<std::uint8_t> done(samples_.pixels(), 0);
    for (const std::uint32_t lock : changed)
      for (std::uint32_t k = first_[lock]; k < first_[lock + 1]; ++k)
        if (!done[pixels_[k]]) {
          done[pixels_[k]] = 1;
          drawPixel(pixels_[k], colours, *next);
        }
  }
  shown_ = next;
  return shown_;
}

}  // namespace combdraft::look
