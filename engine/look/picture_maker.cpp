#include "engine/look/picture_maker.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"
#include "engine/base/random.h"
#include "engine/colour/screen.h"
#include "engine/look/blur.h"

namespace combdraft::look {

using visibility::kSamples;
using visibility::LockBin;

PictureMaker::PictureMaker(visibility::ViewSamples samples, std::size_t locks, std::uint64_t seed)
    : samples_(std::move(samples)) {
  const std::size_t pixels = samples_.pixels();
  eye_.resize(pixels * kSamples);

  // Shading is for the eye only: its mean around each place is brought to 1,
  // so that the picture is as light as the readings say.
  for (std::size_t slot = 0; slot < eye_.size(); ++slot) {
    if (samples_.sample[slot].none()) continue;
    const double grain = 1 + 0.30 * (randomUniform(seed, samples_.sample[slot].lock(), 240) - 0.5);
    eye_[slot] = static_cast<float>(samples_.shade[slot] / 128.0 * grain);
  }
  std::vector<float> weight = samples_.hairCover;
  constexpr double kAround_mm = 38;
  blur(weight, samples_.width, samples_.height, kAround_mm / samples_.spec.pixel_mm);
  // One pass leaves whole regions up to 9 % off, where bright hair borders on dull.
  for (int pass = 0; pass < 3; ++pass) {
    std::vector<float> shaded(pixels);
    for (std::size_t p = 0; p < pixels; ++p)
      for (std::size_t k = 0; k < kSamples; ++k)
        shaded[p] += samples_.hairCover[p] * eye_[p * kSamples + k] / kSamples;
    blur(shaded, samples_.width, samples_.height, kAround_mm / samples_.spec.pixel_mm);
    for (std::size_t p = 0; p < pixels; ++p)
      if (samples_.hairCover[p] > 0 && shaded[p] > 1e-6f)
        for (std::size_t k = 0; k < kSamples; ++k) eye_[p * kSamples + k] *= weight[p] / shaded[p];
  }

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
}

void PictureMaker::drawPixel(std::size_t pixel, const LockColours& colours, Picture& into) const {
  std::uint8_t* rgba = into.rgba.data() + pixel * 4;
  const float cover = samples_.hairCover[pixel];
  if (cover <= 0) return;
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
  rgba[3] = static_cast<std::uint8_t>(std::lround(255 * cover));
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
