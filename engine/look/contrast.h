#pragma once
// Two clear levels, soft, or one tone: judged on the local picture, as the eye
// at a distance sees it (docs/engine-notes.md, "Contrast").
#include <array>
#include <span>
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/look/local_picture.h"

namespace combdraft::look {

/// Two normals of one width against one normal, by EM and BIC.
struct LevelSplit {
  double dark = 0, light = 0;  ///< fitted means
  double width = 0;            ///< common standard deviation
  double lightShare = 0;       ///< weight of the lighter normal
  double middleShare = 0;      ///< share of values in the middle third between the means
  double bicGain = 0;          ///< BIC(one normal) - BIC(two normals); > 0: two win
  double humpGain = 0;         ///< the same against the best single flat, skewed or long-tailed shape
};
/// `values`: local L* differences of independent cells, in any order; they are
/// counted into 128 steps first, which moves the fit by less than a step.
LevelSplit splitLevels(std::span<const double> values);

/// `plannedDifference`: L* between the plan's lightest and darkest planned
/// colour; thresholds scale with it. They are the assumptions `contrast.*`.
Contrast judge(std::span<const double> values, double plannedDifference, double distance_m,
               const Assumptions& assumptions = {});

/// Contrast of every region, and last of all seen hair, from a local picture.
std::array<Contrast, visibility::kRegions + 1> contrastOf(LocalPicture& picture, double distance_m,
                                                          const Assumptions& assumptions);

}  // namespace combdraft::look
