#pragma once
// Plain words and warnings for a colour of hair, from its CIELAB values under
// the light it is judged in. All thresholds are our own [own]; see docs/colour.md.
#include <string_view>

#include "engine/colour/xyz.h"

namespace combdraft::colour {

/// One of "cool", "neutral", "warm", "golden", "coppery".
std::string_view warmthWord(const Lab& lab);

/// A colour that reads khaki or drab olive on a head: too little red for its
/// yellow, and too little of both to read as yellow.
bool readsKhaki(const Lab& lab);

/// Grey-mix flag: very light, hardly coloured pieces over brown read grey from
/// a distance (common practice, no source). `lightShare`: how much of the hair is
/// light; a few light strands, or a few dark ones, do not make a mix.
bool readsGreyOverBrown(const Lab& light, const Lab& dark, double lightShare);

}  // namespace combdraft::colour
