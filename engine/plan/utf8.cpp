#include "engine/plan/utf8.h"

namespace combdraft::plan {

std::optional<std::size_t> firstBadUtf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    std::size_t more = 0;
    unsigned low = 0x80, high = 0xBF;  // allowed for the first continuation byte
    if (lead < 0x80) {
      ++i;
      continue;
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
      more = 1;
    } else if (lead >= 0xE0 && lead <= 0xEF) {
      more = 2;
      if (lead == 0xE0) low = 0xA0;
      if (lead == 0xED) high = 0x9F;
    } else if (lead >= 0xF0 && lead <= 0xF4) {
      more = 3;
      if (lead == 0xF0) low = 0x90;
      if (lead == 0xF4) high = 0x8F;
    } else {
      return i;
    }
    for (std::size_t k = 1; k <= more; ++k) {
      if (i + k >= text.size()) return i;
      const auto byte = static_cast<unsigned char>(text[i + k]);
      if (byte < low || byte > high) return i;
      low = 0x80;
      high = 0xBF;
    }
    i += more + 1;
  }
  return std::nullopt;
}

namespace {
enum class Lines { Refused, Fine };

bool hasControl(std::string_view text, Lines lines) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const auto at = [&](std::size_t k) {
      return i + k < text.size() ? static_cast<unsigned char>(text[i + k]) : 0u;
    };
    if (lines == Lines::Fine && (byte == '\n' || byte == '\t')) continue;
    if (byte < 0x20 || byte == 0x7F) return true;
    if (byte == 0xC2 && at(1) < 0xA0) return true;  // C1 controls
    if (lines == Lines::Refused && byte == 0xE2 && at(1) == 0x80 && (at(2) == 0xA8 || at(2) == 0xA9))
      return true;  // line and paragraph separator
  }
  return false;
}
}  // namespace

bool hasLineBreakOrControl(std::string_view text) { return hasControl(text, Lines::Refused); }
bool hasControlBesideLines(std::string_view text) { return hasControl(text, Lines::Fine); }

}  // namespace combdraft::plan
