#pragma once
// The lights hair is looked at in, the standard observer, and what an observer
// makes of a reflectance under a light.
#include <array>
#include <optional>
#include <string_view>

#include "engine/colour/spectrum.h"
#include "engine/colour/xyz.h"

namespace combdraft::colour {

/// Each is a published table [CIE015]: Daylight D65; Overcast D75, the bluer
/// light of a sky without sun; WarmLamp LED-B1, a 2730 K white LED; Office
/// FL11, a 4000 K three-band tube; Incandescent A.
enum class Light { Daylight, Overcast, WarmLamp, Office, Incandescent };
inline constexpr std::array kAllLights{Light::Daylight, Light::Overcast, Light::WarmLamp,
                                       Light::Office, Light::Incandescent};

/// Stable word of a light: "daylight", "overcast", "warm-lamp", "office", "incandescent".
std::string_view lightWord(Light light);
/// Nothing for an unknown word.
std::optional<Light> lightFromWord(std::string_view word);

/// Relative spectral power; the scale is the published one.
const Spectrum& lightPower(Light light);

/// CIE 1931 2 degree colour-matching functions.
struct Observer {
  Spectrum x, y, z;
};
const Observer& standardObserver();

/// XYZ of the perfect diffuser, Y = 1; sums at 5 nm.
Xyz whitePoint(Light light);
/// XYZ of a reflectance under a light. 0.1 microseconds.
Xyz xyzOf(const Spectrum& reflectance, Light light);
/// Shorthand: CIELAB of a reflectance against the light's own white.
Lab labOf(const Spectrum& reflectance, Light light);
/// Luminance factor under daylight: the one number the level scales rest on.
double daylightY(const Spectrum& reflectance);

}  // namespace combdraft::colour
