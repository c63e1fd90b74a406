#pragma once
// UTF-8 as bytes [RFC3629].
#include <cstddef>
#include <optional>
#include <string_view>

namespace combdraft::plan {

/// Offset of the first byte that is not UTF-8 (overlong forms, surrogates and
/// values above U+10FFFF included), or nothing.
std::optional<std::size_t> firstBadUtf8(std::string_view text);

/// Whether a line break or another control character stands in UTF-8 `text`.
bool hasLineBreakOrControl(std::string_view text);
/// Like it, but line feed and tab are fine.
bool hasControlBesideLines(std::string_view text);

}  // namespace combdraft::plan
