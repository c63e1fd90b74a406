#include "engine/colour/levels.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/base/number_text.h"

namespace combdraft::colour {
namespace {

constexpr double kBrightestLightness = 90;  // leaves room for level 12

// [own] How far a finished colour climbs from the natural scale to the bare
// one: nothing up to level 4, this share from level 10 on.
constexpr double kFinishedShare_frac = 0.65;
constexpr double kFinishedFrom_level = 4;
constexpr double kFinishedFull_level = 10;

double lightnessAt(const std::array<double, 10>& scale, double level) {
  COMBDRAFT_EXPECT(std::isfinite(level), level);
  const double at = std::clamp(level, kLowestLevel, kHighestLevel) - 1;
  const auto below = static_cast<std::size_t>(std::min(at, 8.0));
  return scale[below] + (at - static_cast<double>(below)) * (scale[below + 1] - scale[below]);
}

Result<void> checkRow(const std::array<double, 10>& row, const std::string& where) {
  double least = kDarkestLightness;
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (!(row[i] > least && row[i] <= kBrightestLightness))
      return Error{ErrorCode::FieldOutOfRange,
                   where + "/" + std::to_string(i),
                   {std::isfinite(row[i]) ? numberText(row[i]) : "no number",
                    "above " + numberText(least) + (i == 0 ? "" : " (the level below)") +
                        " and up to " + numberText(kBrightestLightness)},
                   {}};
    least = row[i];
  }
  return {};
}

}  // namespace

double LevelScale::lightnessOfNatural(double level) const {
  return lightnessAt(natural, level);
}
double LevelScale::lightnessOfLightened(double level) const {
  return lightnessAt(lightened, level);
}

double LevelScale::lightnessOfFinished(double level) const {
  const double climbed = std::clamp(
      (level - kFinishedFrom_level) / (kFinishedFull_level - kFinishedFrom_level), 0.0, 1.0);
  const double low = lightnessOfNatural(level);
  return low + kFinishedShare_frac * climbed * (lightnessOfLightened(level) - low);
}

double LevelScale::levelOfLightness(double L) const {
  COMBDRAFT_EXPECT(std::isfinite(L), L);
  if (L <= natural.front()) return kLowestLevel;
  std::size_t below = 0;
  while (below + 2 < natural.size() && natural[below + 1] <= L) ++below;
  return 1 + static_cast<double>(below) +
         (L - natural[below]) / (natural[below + 1] - natural[below]);
}

Result<void> checkLevelScale(const LevelScale& scale, std::string_view where) {
  const std::string place(where);
  if (auto row = checkRow(scale.natural, place + "/natural"); !row) return row;
  if (auto row = checkRow(scale.lightened, place + "/lightened"); !row) return row;
  for (std::size_t i = 0; i < scale.natural.size(); ++i)
    if (!(scale.lightened[i] > scale.natural[i]))
      return Error{ErrorCode::FieldOutOfRange,
                   place + "/lightened/" + std::to_string(i),
                   {numberText(scale.lightened[i]),
                    "above " + numberText(scale.natural[i]) + ", natural hair of that level"},
                   {}};
  return {};
}

}  // namespace combdraft::colour
