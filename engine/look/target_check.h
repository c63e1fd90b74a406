#pragma once
// What is wanted in a region held against what is read there.
#include <array>
#include <optional>

#include "engine/base/assumptions.h"
#include "engine/look/look.h"

namespace combdraft::look {

/// How far from its target a level may look before it counts as missed: the
/// assumption finding.target_levels, with a plan's overrides.
inline double targetTolerance_levels(const std::map<std::string, double>& overrides = {}) {
  return Assumptions(overrides)["finding.target_levels"];
}

/// How a reading stands to a target. Levels off are + too light, - too dark, and
/// only given where they are over the tolerance.
struct TargetCheck {
  std::optional<double> level;      ///< the region's mean
  std::optional<double> brightest;  ///< its lightest of root, middle and ends: over what is allowed
  std::optional<double> darkest;    ///< its darkest of them: under what is allowed
  bool contrast = false;            ///< another contrast than wanted
  bool missed() const { return level || brightest || darkest || contrast; }
};

/// `parts` and `contrast` may be null (the whole head has no parts): what needs
/// them then counts as met, but the whole's own level stands for the parts.
/// "Too little hair to say" misses no contrast.
TargetCheck checkTarget(const plan::Target& target, const Reading& whole,
                        const std::array<std::optional<Reading>, 3>* parts,
                        const Contrast* contrast,
                        double tolerance_levels = targetTolerance_levels());
TargetCheck checkTarget(const plan::Target& target, const RegionReading& region,
                        double tolerance_levels = targetTolerance_levels());

/// The reading of plan::targetRegions()[index] held against a target; nothing where
/// too little is seen.
std::optional<TargetCheck> checkTarget(const plan::Target& target, const Readings& readings,
                                       std::size_t index,
                                       double tolerance_levels = targetTolerance_levels());

}  // namespace combdraft::look
