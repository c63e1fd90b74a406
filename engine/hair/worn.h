#pragma once
// How the hair is worn. Each way is only another flow over the same roots.
#include <array>
#include <optional>
#include <string_view>

namespace combdraft::hair {

enum class WornWay { Down, HalfUp, TiedBack };
inline constexpr std::array<WornWay, 3> kWornWays{WornWay::Down, WornWay::HalfUp,
                                                  WornWay::TiedBack};
/// "down", "half-up", "tied-back".
std::string_view wornWord(WornWay way);
std::optional<WornWay> wornFromWord(std::string_view word);

struct Worn {
  WornWay way = WornWay::Down;
  double partShift_mm = 0;  ///< + toward the wearer's right, -60..60; only for hair worn down
  bool operator==(const Worn&) const = default;
};

}  // namespace combdraft::hair
