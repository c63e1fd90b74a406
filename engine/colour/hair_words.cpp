#include "engine/colour/hair_words.h"

#include "engine/colour/tone_aims.h"

namespace combdraft::colour {
namespace {

// [own] warmth: chroma as a multiple of the chroma of a natural tone of the
// same lightness, and hue short of that tone's hue.
constexpr double kCoolBelow = 0.75;
constexpr double kWarmFrom = 1.25;
constexpr double kGoldenFrom = 1.45;
constexpr double kCopperyFrom = 1.15;
constexpr double kCopperyTurn_deg = 6;
// [own] so near black that no warmth is seen, chroma.
constexpr double kBlackish_chroma = 3;

// [own] khaki: chroma between grey and yellow, hue past golden.
constexpr double kKhakiLeast_chroma = 6;
constexpr double kKhakiMost_chroma = 25;
constexpr double kKhakiFrom_deg = 82;
constexpr double kKhakiTo_deg = 150;
constexpr double kKhakiMost_lightness = 72;  // above it reads pale yellow or cream

// [own] grey mix.
constexpr double kGreyLeast_lightness = 50;
constexpr double kGreyMost_chroma = 11;
constexpr double kBrownMost_lightness = 40;
constexpr double kMixLeast_share = 0.1;

}  // namespace

std::string_view warmthWord(const Lab& lab) {
  const Lab natural = toneAimAt(Tone::Natural, lab.L);
  const double c = chroma(lab);
  if (c < kBlackish_chroma && chroma(natural) < kBlackish_chroma) return "neutral";
  const double ratio = c / chroma(natural);
  const double turn_deg = hue_deg(natural) - hue_deg(lab);
  const bool red = turn_deg > kCopperyTurn_deg || turn_deg < -180;  // past red, hue wraps
  if (ratio > kCopperyFrom && red) return "coppery";
  if (ratio > kGoldenFrom) return "golden";
  if (ratio > kWarmFrom) return "warm";
  if (ratio < kCoolBelow) return "cool";
  return "neutral";
}

bool readsKhaki(const Lab& lab) {
  const double c = chroma(lab), h = hue_deg(lab);
  return c > kKhakiLeast_chroma && c < kKhakiMost_chroma && h > kKhakiFrom_deg &&
         h < kKhakiTo_deg && lab.L < kKhakiMost_lightness;
}

bool readsGreyOverBrown(const Lab& light, const Lab& dark, double lightShare) {
  return lightShare > kMixLeast_share && lightShare < 1 - kMixLeast_share && light.L > kGreyLeast_lightness && chroma(light) < kGreyMost_chroma &&
         dark.L < kBrownMost_lightness;
}

}  // namespace combdraft::colour
