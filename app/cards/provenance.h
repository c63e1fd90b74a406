#pragma once
// Where a number on a card stands from, in a sentence: our default with its
// source or "own assumption", typed by the user, or followed from other values.
#include <QString>
#include <optional>

namespace combdraft::cards {

/// `field` is a row of plan::fieldTable(). A value equal to the row's default
/// counts as the default. Nothing = not typed.
QString provenance(const char* field, const std::optional<double>& value);

}  // namespace combdraft::cards
