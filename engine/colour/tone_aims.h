#pragma once
// What colour a tone means on hair of a given lightness: the aims that dyes are
// worked out for. All [own]: no table of finished hair has been read; set by
// eye on mid grey so that none but ash reads khaki or grey (docs/colour.md).
#include "engine/colour/hair_colour.h"
#include "engine/colour/toner.h"
#include "engine/colour/xyz.h"

namespace combdraft::colour {

/// CIELAB in daylight of hair of that tone whose lightness without cast would
/// be L*; copper, red and ash come out deeper, gold a little lighter.
Lab toneAim(Tone tone, double lightness);
/// The same with exactly that L*.
Lab toneAimAt(Tone tone, double lightness);
/// Dyes a tone is mixed from: warm ones need a red, the others a violet.
DyeBox dyesOf(Tone tone);

}  // namespace combdraft::colour
