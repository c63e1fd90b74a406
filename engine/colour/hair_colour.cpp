#include "engine/colour/hair_colour.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"
#include "engine/base/vec.h"
#include "engine/colour/fibre.h"
#include "engine/colour/tone_aims.h"
#include "engine/colour/toner.h"

namespace combdraft::colour {
namespace {

constexpr std::array<std::string_view, kAllTones.size()> kToneWords{
    "natural", "ash", "pearl", "beige", "gold", "copper", "red"};

// [pub Borges2001] pheomelanin share of brown and blond, and of red hair.
constexpr double kPheoBrown_frac = 0.05;
constexpr double kPheoRed_frac = 0.33;

// [own] Warm absorption: what gives lightened hair its orange and yellow. The
// form is a power law, steeper than either melanin; amounts are per unit of
// eumelanin.
constexpr double kWarmAt_nm = 480;
constexpr double kWarmExponent = 7;
// [own] Red-gold natural hair (warmth 1): warm absorption, and the red band of
// the red dye, beyond what pheomelanin gives.
constexpr double kRedGoldWarm = 1.5;
constexpr double kRedGoldRed = 0.5;
// [own] Ash natural hair (warmth -1): absorption of the violet and blue dyes.
constexpr double kAshViolet = 0.15;
constexpr double kAshBlue = 0.15;
// [own] Blond hair is a little more golden than its melanin alone.
constexpr double kBlondWarm = 0.3;
constexpr double kBlondFrom_lightness = 30;
constexpr double kBlondFull_lightness = 55;

// [own] Warm absorption of bare hair by its L*: pigment goes faster than
// warmth, so the share is high where little has gone and falls as hair lightens.
struct WarmStop {
  double lightness, warm;
};
constexpr std::array<WarmStop, 7> kBareWarm{
    {{30, 8}, {36, 7}, {43, 5}, {50, 3.2}, {58, 2.2}, {66, 1.85}, {73, 1.72}}};

// [own] White hair: its lightness, and a cooler make-up than blond hair.
constexpr double kWhite_lightness = 77;
constexpr double kWhiteViolet = 0.2;
constexpr double kWhiteBlue = 0.2;

// [own] Light path of wet hair over that of dry hair.
constexpr double kWetPath = 1.5;

// [own] How much lighter the hair is that a deepening colour is laid on, levels.
constexpr double kDeepenFrom_levels = 2;

const Spectrum& warmAbsorption() {
  static const Spectrum kShape = [] {
    Spectrum s;
    for (std::size_t i = 0; i < kSamples; ++i)
      s[i] = std::pow(kWarmAt_nm / wavelength_nm(i), kWarmExponent);
    return s;
  }();
  return kShape;
}

double bareWarm(double lightness) {
  if (lightness <= kBareWarm.front().lightness) return kBareWarm.front().warm;
  for (std::size_t i = 1; i < kBareWarm.size(); ++i)
    if (lightness < kBareWarm[i].lightness) {
      const WarmStop &p = kBareWarm[i - 1], &q = kBareWarm[i];
      return p.warm +
             (q.warm - p.warm) * (lightness - p.lightness) / (q.lightness - p.lightness);
    }
  return kBareWarm.back().warm;
}

/// Pigment of a make-up, in any amount.
struct MakeUp {
  double pheo_frac = 0, warm = 0;
  DyeAmounts bands{};
};
Spectrum pigment(const MakeUp& m) {
  Spectrum s;
  for (std::size_t i = 0; i < kSamples; ++i)
    s[i] = (1 - m.pheo_frac) * eumelanin()[i] + m.pheo_frac * pheomelanin()[i] +
           m.warm * warmAbsorption()[i];
  return withDyes(s, m.bands);
}

Spectrum bareAbsorption(double level, const LevelScale& scale) {
  const double L = scale.lightnessOfLightened(level);
  return scaledToLightness(pigment({0, bareWarm(L), {}}), L);
}

Spectrum naturalAbsorption(double level, double warmth, const LevelScale& scale) {
  COMBDRAFT_EXPECT(std::isfinite(warmth), warmth);
  const double L = scale.lightnessOfNatural(level);
  const double red = std::clamp(warmth, 0.0, 1.0), ash = std::clamp(-warmth, 0.0, 1.0);
  const double blond = smoothstep(kBlondFrom_lightness, kBlondFull_lightness, L);
  return scaledToLightness(
      pigment({kPheoBrown_frac * (1 - ash) + (kPheoRed_frac - kPheoBrown_frac) * red,
               kBlondWarm * blond * (1 - ash) + kRedGoldWarm * red,
               {0, kRedGoldRed * red, kAshViolet * ash, kAshBlue * ash}}),
      L);
}

Spectrum finishedAbsorption(double bareLevel, double level, Tone tone,
                            const LevelScale& scale) {
  const Spectrum bare = bareAbsorption(bareLevel, scale);
  const double reached = std::min(level, bareLevel);
  return withDyes(
      bare, dyesToward(bare, toneAim(tone, scale.lightnessOfFinished(reached)), dyesOf(tone)));
}

}  // namespace

std::string_view toneWord(Tone tone) {
  const auto index = static_cast<std::size_t>(tone);
  COMBDRAFT_EXPECT(index < kToneWords.size(), index);
  return kToneWords[index];
}

std::optional<Tone> toneFromWord(std::string_view word) {
  for (const Tone tone : kAllTones)
    if (toneWord(tone) == word) return tone;
  return std::nullopt;
}

Spectrum naturalHair(double level, double warmth, const LevelScale& scale) {
  return reflectanceOf(naturalAbsorption(level, warmth, scale));
}

Spectrum lightenedHair(double level, const LevelScale& scale) {
  return reflectanceOf(bareAbsorption(level, scale));
}

Spectrum finishedHair(double bareLevel, double level, Tone tone, const LevelScale& scale) {
  return reflectanceOf(finishedAbsorption(bareLevel, level, tone, scale));
}

Spectrum deepenedHair(double level, Tone tone, const LevelScale& scale) {
  if (tone == Tone::Natural) return naturalHair(level, 0, scale);
  const Spectrum base =
      naturalAbsorption(std::min(level, kHighestLevel) + kDeepenFrom_levels, 0, scale);
  return reflectanceOf(withDyes(
      base, dyesToward(base, toneAimAt(tone, scale.lightnessOfNatural(level)), dyesOf(tone))));
}

Spectrum whiteHair() {
  return reflectanceOf(scaledToLightness(
      pigment({kPheoBrown_frac, 0, {0, 0, kWhiteViolet, kWhiteBlue}}), kWhite_lightness));
}

Spectrum glazeColour(double level, Tone tone, const LevelScale& scale) {
  return finishedHair(kHighestLevel, level, tone, scale);
}

Spectrum glazedToward(const Spectrum& base, const Spectrum& colour, double strength_frac) {
  COMBDRAFT_EXPECT(std::isfinite(strength_frac), strength_frac);
  const double strength = std::clamp(strength_frac, 0.0, 1.0);
  const Spectrum aim = absorptionOf(colour);
  Spectrum sigma = absorptionOf(base);
  for (std::size_t i = 0; i < kSamples; ++i)
    sigma[i] += strength * std::max(0.0, aim[i] - sigma[i]);
  return reflectanceOf(sigma);
}

Spectrum glazed(const Spectrum& base, double level, Tone tone, double strength_frac,
                const LevelScale& scale) {
  return glazedToward(base, glazeColour(level, tone, scale), strength_frac);
}

Spectrum wet(const Spectrum& dry) {
  Spectrum sigma = absorptionOf(dry);
  for (double& s : sigma) s *= kWetPath * kWetPath;
  return reflectanceOf(sigma);
}

}  // namespace combdraft::colour
