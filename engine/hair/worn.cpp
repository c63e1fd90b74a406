#include "engine/hair/worn.h"

namespace combdraft::hair {

std::string_view wornWord(WornWay way) {
  switch (way) {
    case WornWay::Down: return "down";
    case WornWay::HalfUp: return "half-up";
    case WornWay::TiedBack: return "tied-back";
    case WornWay::CrownOpened: return "crown-opened";
    case WornWay::Blown: return "blown";
    case WornWay::LayerRaised: return "layer-raised";
  }
  return "";
}

std::optional<WornWay> wornFromWord(std::string_view word) {
  for (const WornWay way : kWornWays)
    if (wornWord(way) == word) return way;
  return std::nullopt;
}

bool showsPart(WornWay way) {
  return way != WornWay::HalfUp && way != WornWay::TiedBack;
}

}  // namespace combdraft::hair
