#include "engine/hair/worn.h"

namespace combdraft::hair {

std::string_view wornWord(WornWay way) {
  switch (way) {
    case WornWay::Down: return "down";
    case WornWay::HalfUp: return "half-up";
    case WornWay::TiedBack: return "tied-back";
  }
  return "";
}

std::optional<WornWay> wornFromWord(std::string_view word) {
  for (const WornWay way : kWornWays)
    if (wornWord(way) == word) return way;
  return std::nullopt;
}

}  // namespace combdraft::hair
