#pragma once
// The few colours a plan's hair is mixed from, as XYZ under the chosen light:
// each spectrum is worked out once, locks then only mix. A colour also knows
// what each treatment (root shadow, glaze) makes of it.
#include <map>
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/colour/hair_colour.h"
#include "engine/look/look.h"

namespace combdraft::look {

/// Plain colour first, then under each treatment in order.
using Swatch = std::vector<colour::Xyz>;

/// The level scales with a plan's own assumptions in them.
colour::LevelScale levelScaleOf(const Assumptions& assumptions);

class Palette {
 public:
  Palette(const plan::Hair& hair, std::vector<plan::Treatment> treatments,
          const colour::LevelScale& scale, colour::Light light, Moisture moisture);

  const std::vector<plan::Treatment>& treatments() const { return treatments_; }
  /// Natural hair; level by straight interpolation between sixteenths.
  colour::Xyz natural(double level, std::size_t treatment) const;
  const Swatch& white() const { return white_; }
  /// The colours below are worked out on first use: not for several threads at once.
  const Swatch& lightened(double level);
  const Swatch& finished(double bareLevel, const plan::FinishesAt& finish);
  const Swatch& deepened(const plan::FinishesAt& colour);

 private:
  Swatch swatch(const colour::Spectrum& dry) const;

  std::vector<plan::Treatment> treatments_;
  std::vector<colour::Spectrum> glazes_;  ///< what each treatment draws toward
  colour::LevelScale scale_;
  colour::Light light_;
  Moisture moisture_;
  std::vector<Swatch> natural_;
  Swatch white_;
  std::map<double, Swatch> lightened_;
  std::map<std::tuple<double, double, int>, Swatch> finished_;
  std::map<std::pair<double, int>, Swatch> deepened_;
};

}  // namespace combdraft::look
