#include "engine/look/contrast_sensitivity.h"

#include <cmath>

#include "engine/base/expect.h"
#include "engine/base/vec.h"

namespace combdraft::look {

double contrastSensitivity(double frequency_cpd) {
  COMBDRAFT_EXPECT(frequency_cpd >= 0, frequency_cpd);
  const double f = 0.114 * frequency_cpd;
  return 2.6 * (0.0192 + f) * std::exp(-std::pow(f, 1.1));
}

double stripeFrequency_cpd(double stripe_mm, double distance_m) {
  COMBDRAFT_EXPECT(stripe_mm > 0 && distance_m > 0, stripe_mm, distance_m);
  const double stripe_deg = degrees(2 * std::atan(stripe_mm / (2000 * distance_m)));
  return 1 / (2 * stripe_deg);
}

}  // namespace combdraft::look
