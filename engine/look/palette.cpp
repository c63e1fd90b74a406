#include "engine/look/palette.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::look {
namespace {

constexpr int kPerLevel = 16;
constexpr int kNaturals = (12 - 1) * kPerLevel + 1;

colour::Tone toneOf(plan::Tone tone) {
  // The plan names tones in the same order; plan/ may not depend on colour/.
  static_assert(static_cast<int>(plan::Tone::Red) == static_cast<int>(colour::Tone::Red));
  return static_cast<colour::Tone>(tone);
}

}  // namespace

colour::LevelScale levelScaleOf(const Assumptions& assumptions) {
  colour::LevelScale scale;
  const double natural = assumptions["colour.naturalShift"];
  const double lightened = assumptions["colour.lightenedShift"];
  // The dark end stands on the surface reflection and cannot move: shift in full
  // from level 5 up, and keep every step rising.
  double before = colour::kDarkestLightness + 0.1;
  for (std::size_t k = 0; k < scale.natural.size(); ++k) {
    const double share = std::min(1.0, static_cast<double>(k) / 4);
    scale.natural[k] = std::max(scale.natural[k] + share * natural, before + 0.05);
    scale.lightened[k] = std::max(scale.lightened[k] + share * lightened, scale.natural[k] + 0.5);
    before = scale.natural[k];
  }
  for (std::size_t k = 1; k < scale.lightened.size(); ++k)
    scale.lightened[k] = std::max(scale.lightened[k], scale.lightened[k - 1] + 0.05);
  return scale;
}

Palette::Palette(const plan::Hair& hair, std::vector<plan::Treatment> treatments,
                 const colour::LevelScale& scale, colour::Light light, Moisture moisture)
    : treatments_(std::move(treatments)), scale_(scale), light_(light), moisture_(moisture) {
  for (const plan::Treatment& t : treatments_)
    glazes_.push_back(colour::glazeColour(t.colour.level, toneOf(t.colour.tone), scale_));
  natural_.resize(kNaturals);
  parallelFor(kNaturals, [&](std::size_t i) {
    natural_[i] =
        swatch(colour::naturalHair(1 + static_cast<double>(i) / kPerLevel, hair.toneWarmth, scale_));
  });
  white_ = swatch(colour::whiteHair());
}

Swatch Palette::swatch(const colour::Spectrum& dry) const {
  const auto seen = [&](const colour::Spectrum& s) {
    return colour::xyzOf(moisture_ == Moisture::Wet ? colour::wet(s) : s, light_);
  };
  Swatch result{seen(dry)};
  for (std::size_t k = 0; k < treatments_.size(); ++k)
    result.push_back(seen(colour::glazedToward(dry, glazes_[k], treatments_[k].strength_frac)));
  return result;
}

colour::Xyz Palette::natural(double level, std::size_t treatment) const {
  const double at = (std::clamp(level, 1.0, 12.0) - 1) * kPerLevel;
  const auto i = std::min<std::size_t>(static_cast<std::size_t>(at), kNaturals - 2);
  const double t = at - static_cast<double>(i);
  return (1 - t) * natural_[i][treatment] + t * natural_[i + 1][treatment];
}

const Swatch& Palette::lightened(double level) {
  const auto found = lightened_.find(level);
  if (found != lightened_.end()) return found->second;
  return lightened_.emplace(level, swatch(colour::lightenedHair(level, scale_))).first->second;
}

const Swatch& Palette::finished(double bareLevel, const plan::FinishesAt& finish) {
  const std::tuple key{bareLevel, finish.level, static_cast<int>(finish.tone)};
  const auto found = finished_.find(key);
  if (found != finished_.end()) return found->second;
  return finished_
      .emplace(key, swatch(colour::finishedHair(bareLevel, finish.level, toneOf(finish.tone), scale_)))
      .first->second;
}

const Swatch& Palette::deepened(const plan::FinishesAt& colour) {
  const std::pair key{colour.level, static_cast<int>(colour.tone)};
  const auto found = deepened_.find(key);
  if (found != deepened_.end()) return found->second;
  return deepened_.emplace(key, swatch(colour::deepenedHair(colour.level, toneOf(colour.tone), scale_)))
      .first->second;
}

}  // namespace combdraft::look
