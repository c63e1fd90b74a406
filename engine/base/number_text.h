#pragma once
// Numbers as text, independent of the C locale.
#include <optional>
#include <string>
#include <string_view>

namespace combdraft {

/// Shortest text that reads back to the same double.
std::string numberText(double value);
/// Fixed decimals, rounded half away from zero as the C library rounds.
std::string numberText(double value, int decimals);
/// The whole of `text` as a finite double, or nothing.
std::optional<double> parseNumber(std::string_view text);

}  // namespace combdraft
