#pragma once
// The phrases of the engine's sentences, holes as %1, %2 in the order of the sentence.
#include <span>

namespace combdraft::words {

/// All of them. A new sentence of the engine needs a line here to be translated.
std::span<const char* const> enginePhrases();

}  // namespace combdraft::words
