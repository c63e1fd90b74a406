#pragma once
// What a person types into a number field: simple sums, either decimal mark,
// fractions ("1 1/8").
#include <QString>
#include <optional>

namespace combdraft::controls {

/// The value of a sum of + - * / and brackets, with "." or "," as the decimal
/// mark; "1 1/8" is one and an eighth. Nothing for anything else, for division
/// by zero and for results that are not finite.
std::optional<double> evaluate(const QString& text);

/// At most `decimals` decimals, no trailing zeros, decimal point.
QString shownNumber(double value, int decimals);

}  // namespace combdraft::controls
