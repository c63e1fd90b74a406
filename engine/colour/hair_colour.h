#pragma once
// The colour of hair as a reflectance spectrum: natural, lightened, toned,
// dyed darker, glazed, white, wet. docs/colour.md tells the model, what in it
// is our own, and where it holds.
//
// Levels are clamped into 1..12, fractions into 0..1; a level that is not a
// number breaks an expectation. Everything is a pure function of its
// arguments. Mixed strands are mixed in XYZ by the caller, never here.
#include <array>
#include <optional>
#include <string_view>

#include "engine/colour/hair_words.h"
#include "engine/colour/levels.h"
#include "engine/colour/light.h"
#include "engine/colour/spectrum.h"

namespace combdraft::colour {

enum class Tone { Natural, Ash, Pearl, Beige, Gold, Copper, Red };
inline constexpr std::array kAllTones{Tone::Natural, Tone::Ash,    Tone::Pearl, Tone::Beige,
                                      Tone::Gold,    Tone::Copper, Tone::Red};
/// Stable word of a tone: "natural", "ash", "pearl", "beige", "gold", "copper", "red".
std::string_view toneWord(Tone tone);
std::optional<Tone> toneFromWord(std::string_view word);

/// Hair as it grows. `warmth` -1..1: 0 has the eumelanin to pheomelanin shares
/// of brown and blond hair, 95 to 5; 1 those of red hair, 67 to 33
/// [Borges2001]; -1 none. L* in daylight is the natural scale's to 1e-6.
/// 8 microseconds.
Spectrum naturalHair(double level, double warmth = 0, const LevelScale& scale = {});

/// Lightened hair, bare: rinsed and dry, not toned. L* is the lightened
/// scale's; orange at the dark end, then gold, yellow, pale yellow.
Spectrum lightenedHair(double level, const LevelScale& scale = {});

/// Bare hair of `bareLevel` after a toner that brings it to `level` and `tone`.
/// A toner takes light away at every wavelength, so a level above `bareLevel`
/// gives what the tone gives at `bareLevel`. 40 microseconds.
Spectrum finishedHair(double bareLevel, double level, Tone tone, const LevelScale& scale = {});

/// Hair dyed darker, to a level on the natural scale and a tone.
Spectrum deepenedHair(double level, Tone tone, const LevelScale& scale = {});

/// Hair without pigment.
Spectrum whiteHair();

/// Root shadow or glaze over any hair: absorption is added, at each wavelength,
/// toward that of finished hair of `level` and `tone`. Strength 1 gives that
/// colour on hair that is lighter throughout; hair that is already darker
/// stays. Never lighter than `base` at any wavelength.
/// 25 microseconds, nearly all of it for the typed colour.
Spectrum glazed(const Spectrum& base, double level, Tone tone, double strength_frac,
                const LevelScale& scale = {});
/// The same for many hairs: work out glazeColour once. 3 microseconds.
Spectrum glazeColour(double level, Tone tone, const LevelScale& scale = {});
Spectrum glazedToward(const Spectrum& base, const Spectrum& colour, double strength_frac);

/// Wet hair: the same hair with its light path through pigment lengthened.
/// Darker and deeper in colour by about two levels.
Spectrum wet(const Spectrum& dry);

}  // namespace combdraft::colour
