#pragma once
// Sums of seen colour per region: the sparse matrix times the lock colours.
// Kept between edits; an edit takes the old share of its locks out and puts
// the new one in.
#include <array>
#include <span>

#include "engine/look/lock_colours.h"
#include "engine/visibility/seen_hair.h"

namespace combdraft::look {

/// Groups of locks for the jackknife.
constexpr int kGroups = 16;
int groupOf(std::uint32_t lock);

struct ColourSum {
  double area_mm2 = 0, x = 0, y = 0, z = 0, light = 0;
  /// Sums of light squared and of light times colour: what tells light from dark hair.
  double lightLight = 0, lightX = 0, lightY = 0, lightZ = 0;
  ColourSum& operator+=(const ColourSum& o);
  ColourSum operator-(const ColourSum& o) const;
};

class RegionSums {
 public:
  /// Adds (+1) or takes out (-1) the locks' present colours.
  void add(const visibility::SeenHair& seen, const hair::Locks& locks, const LockColours& colours,
           std::span<const std::uint32_t> which, double sign);
  void clear();

  const ColourSum& at(visibility::Region region, visibility::StrandPart part, int group) const {
    return sums_[static_cast<std::size_t>(region)][static_cast<std::size_t>(part)]
                [static_cast<std::size_t>(group)];
  }

 private:
  std::array<std::array<std::array<ColourSum, kGroups>, 3>, visibility::kRegions> sums_{};
};

/// All readings but contrast; level-equivalents on `scale`.
Readings readingsFrom(const RegionSums& sums, const visibility::SeenHair& seen,
                      const hair::Locks& locks, colour::Light light,
                      const colour::LevelScale& scale = {});

}  // namespace combdraft::look
