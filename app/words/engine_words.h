#pragma once
// The engine's sentences in the reader's language. The engine makes plain English and
// knows no translation; here a finished sentence is recognised by its phrase (the table
// of engine_phrases.cpp, context "Engine" of the .ts files), and what stands in the holes
// of the phrase is put into the translation.
#include <QString>
#include <string_view>

#include "engine/base/result.h"

namespace combdraft::words {

/// What the engine said, in the language that is spoken; as it is where the language is
/// English or no phrase fits. What stands in a hole is translated as well, numbers get the
/// decimal sign of the locale; what stands between quotes is the user's and stays.
QString inWords(std::string_view english);

/// describe(error): its file and place, then its sentence.
QString inWords(const Error& error);

}  // namespace combdraft::words
