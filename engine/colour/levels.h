#pragma once
// The two level scales: which lightness a hair level stands for. Both are our
// own and may be edited; only their order is certain.
#include <array>
#include <string_view>

#include "engine/base/result.h"

namespace combdraft::colour {

/// Levels that the colour functions take; others are clamped into this range.
inline constexpr double kLowestLevel = 1;
inline constexpr double kHighestLevel = 12;
/// The surface reflection alone has L* 17.9; nothing on a head is darker.
inline constexpr double kDarkestLightness = 18.0;

/// L* (daylight, 2 degree observer) at level 1, 2, ... of dry hair.
struct LevelScale {
  /// [own] Natural hair, level 1 to 10.
  std::array<double, 10> natural{18.2, 19, 20.5, 22.5, 26, 31, 37, 44, 52, 60};
  /// [own] Lightened hair, bare (before toner), level 1 to 10.
  std::array<double, 10> lightened{19.5, 22, 25.5, 30, 36, 43, 50, 58, 66, 73};

  /// L* at a level, straight between whole levels; outside 1 to 10 the last
  /// slope goes on, up to level 12 and down to level 1.
  double lightnessOfNatural(double level) const;
  double lightnessOfLightened(double level) const;
  /// L* of lightened hair after a toner that leaves no cast [own]: the natural
  /// scale up to level 4, then part of the way up to the bare one, because
  /// taking the yellow out costs lightness.
  double lightnessOfFinished(double level) const;
  /// Level-equivalent: the level of natural hair that is as light. 1 for
  /// anything darker than level 1; goes on above 10 with the last slope (print
  /// "10+").
  double levelOfLightness(double L) const;

  bool operator==(const LevelScale&) const = default;
};

/// Refuses (FieldOutOfRange, at `where`/natural/3 and the like) a scale that is
/// not strictly rising, starts at or below L* 18, passes L* 90, or has bare hair
/// no lighter than natural hair of the same level.
Result<void> checkLevelScale(const LevelScale& scale, std::string_view where = "/levels");

}  // namespace combdraft::colour
