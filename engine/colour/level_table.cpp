#include "engine/colour/level_table.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"
#include "engine/colour/levels.h"

namespace combdraft::colour {
namespace {

constexpr double kEntriesPerLevel = 32;

}  // namespace

LevelTable::LevelTable(const std::function<Spectrum(double level)>& hairOfLevel, Light light) {
  const int last = static_cast<int>((kHighestLevel - kLowestLevel) * kEntriesPerLevel);
  entries_.reserve(static_cast<std::size_t>(last) + 1);
  for (int i = 0; i <= last; ++i)
    entries_.push_back(xyzOf(hairOfLevel(kLowestLevel + i / kEntriesPerLevel), light));
}

Xyz LevelTable::at(double level) const {
  COMBDRAFT_EXPECT(std::isfinite(level), level);
  const double place =
      (std::clamp(level, kLowestLevel, kHighestLevel) - kLowestLevel) * kEntriesPerLevel;
  const auto below = std::min(static_cast<std::size_t>(place), entries_.size() - 2);
  const double t = place - static_cast<double>(below);
  return (1 - t) * entries_[below] + t * entries_[below + 1];
}

}  // namespace combdraft::colour
