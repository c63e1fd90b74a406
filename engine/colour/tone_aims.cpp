#include "engine/colour/tone_aims.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/vec.h"

namespace combdraft::colour {
namespace {

constexpr std::size_t kStops = 8;
constexpr double kFirst_lightness = 18;
constexpr std::array<double, kStops> kLightness{kFirst_lightness, 25, 32, 40, 48, 56, 64, 72};

struct Aim {
  std::array<double, kStops> lift;  ///< L* gained (+) or lost (-) with the cast
  std::array<double, kStops> chroma, hue_deg;
};

// clang-format off
constexpr std::array<Aim, kAllTones.size()> kAims{{
    /* natural */ {{0, 0, -0.5, -1, -1.5, -1.5, -1, -1}, {0.8, 10.8, 16, 19.5, 21, 21, 20, 18},     {40, 61, 67.5, 72, 74.5, 76, 77, 78}},
    /* ash     */ {{0, -1, -3, -5, -6.5, -7, -7, -6}, {0.6, 7, 9, 10, 10, 9.5, 9, 8},            {36, 54, 61, 67, 72, 76, 79, 80}},
    /* pearl   */ {{0, -1, -3, -4.5, -5.5, -5.5, -4.5, -3.5}, {0.7, 7.5, 10.5, 12, 12.5, 12.5, 12, 11},  {35, 52, 59, 63, 66, 69, 70, 71}},
    /* beige   */ {{0, -0.5, -1.5, -3, -3.5, -3.5, -2.5, -2}, {0.8, 9.5, 13.5, 16.5, 17.5, 17.5, 17, 16},{38, 57, 63, 67, 70, 72, 73, 74}},
    /* gold    */ {{0, 0, 0, 0, 0, 0, 0, -1}, {0.9, 12, 19, 27, 32.5, 35, 34, 31},       {42, 60, 66, 70.5, 74, 76, 77.5, 79}},
    /* copper  */ {{0, 0, -0.5, -2, -3.5, -4.5, -5.5, -6.5}, {1.2, 15, 25, 35, 41, 43, 42, 39},         {34, 46, 52, 56, 59, 62, 65, 67}},
    /* red     */ {{0, -1, -3.5, -6, -9, -12, -14, -16}, {1.5, 18, 28, 35, 38, 38, 36, 33},         {25, 31, 36, 40, 43, 46, 49, 51}},
}};
// clang-format on

double between(const std::array<double, kStops>& row, double lightness) {
  std::size_t below = 0;
  while (below + 2 < kStops && kLightness[below + 1] <= lightness) ++below;
  const double t = std::clamp(
      (lightness - kLightness[below]) / (kLightness[below + 1] - kLightness[below]), 0.0, 1.0);
  return row[below] + t * (row[below + 1] - row[below]);
}

const Aim& aimOf(Tone tone) {
  const auto index = static_cast<std::size_t>(tone);
  COMBDRAFT_EXPECT(index < kAims.size(), index);
  return kAims[index];
}

}  // namespace

Lab toneAimAt(Tone tone, double lightness) {
  const Aim& aim = aimOf(tone);
  const double c = between(aim.chroma, lightness);
  const double h = radians(between(aim.hue_deg, lightness));
  return {lightness, c * std::cos(h), c * std::sin(h)};
}

Lab toneAim(Tone tone, double lightness) {
  return toneAimAt(tone, lightness + between(aimOf(tone).lift, lightness));
}

DyeBox dyesOf(Tone tone) {
  const bool reddish = tone == Tone::Copper || tone == Tone::Red;
  return {Dye::Gold, reddish ? Dye::Red : Dye::Violet, Dye::Blue};
}

}  // namespace combdraft::colour
