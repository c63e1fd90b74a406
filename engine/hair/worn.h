#pragma once
// How the hair is worn. Each way is only another flow over the same roots.
#include <array>
#include <optional>
#include <string_view>

namespace combdraft::hair {

enum class WornWay {
  Down,
  HalfUp,
  TiedBack,
  CrownOpened,  ///< hair at the whorl spread apart by the hand
  Blown,        ///< the whorl turned up by wind
  LayerRaised   ///< hair rooted above a level parting held up by the hand
};
inline constexpr std::array<WornWay, 6> kWornWays{WornWay::Down,        WornWay::HalfUp,
                                                  WornWay::TiedBack,    WornWay::CrownOpened,
                                                  WornWay::Blown,       WornWay::LayerRaised};
/// "down", "half-up", "tied-back", "crown-opened", "blown", "layer-raised".
std::string_view wornWord(WornWay way);
std::optional<WornWay> wornFromWord(std::string_view word);

struct Worn {
  WornWay way = WornWay::Down;
  double partShift_mm = 0;  ///< + toward the wearer's right, -60..60; nothing where the top is tied
  /// LayerRaised: where the parting crosses the middle of the back, mm below
  /// the vertex along the surface; it runs level round the head.
  double raised_mm = 140;
  bool operator==(const Worn&) const = default;
};

inline constexpr double kLeastRaised_mm = 40, kMostRaised_mm = 220;
/// Whether the part is seen in this way of wearing, so that moving it matters.
bool showsPart(WornWay way);

}  // namespace combdraft::hair
