#include "engine/look/target_check.h"

#include <algorithm>
#include <cmath>

namespace combdraft::look {
namespace {

bool isMet(plan::ContrastAim aim, ContrastVerdict verdict) {
  switch (verdict) {
    case ContrastVerdict::TwoClearLevels: return aim == plan::ContrastAim::TwoClearLevels;
    case ContrastVerdict::Soft: return aim == plan::ContrastAim::Soft;
    case ContrastVerdict::OneTone: return aim == plan::ContrastAim::OneTone;
    case ContrastVerdict::TooLittleHair: return true;
  }
  return true;
}

}  // namespace

TargetCheck checkTarget(const plan::Target& target, const Reading& whole,
                        const std::array<std::optional<Reading>, 3>* parts,
                        const Contrast* contrast, double tolerance_levels) {
  double lightest = whole.level, darkest = whole.level;
  if (parts)
    for (const std::optional<Reading>& part : *parts)
      if (part) {
        lightest = std::max(lightest, part->level);
        darkest = std::min(darkest, part->level);
      }
  TargetCheck check;
  if (target.level && std::abs(whole.level - *target.level) > tolerance_levels)
    check.level = whole.level - *target.level;
  if (target.brightest && lightest - *target.brightest > tolerance_levels)
    check.brightest = lightest - *target.brightest;
  if (target.darkest && *target.darkest - darkest > tolerance_levels)
    check.darkest = darkest - *target.darkest;
  check.contrast = target.contrast && contrast && !isMet(*target.contrast, contrast->verdict);
  return check;
}

TargetCheck checkTarget(const plan::Target& target, const RegionReading& region,
                        double tolerance_levels) {
  if (!region.whole) return {};
  return checkTarget(target, *region.whole, &region.rootMiddleEnd, &region.contrast,
                     tolerance_levels);
}

std::optional<TargetCheck> checkTarget(const plan::Target& target, const Readings& readings,
                                       std::size_t index, double tolerance_levels) {
  if (index == 0) {
    if (readings.whole.seen_mm2 <= 0) return std::nullopt;
    return checkTarget(target, readings.whole, nullptr, &readings.contrast, tolerance_levels);
  }
  if (index > readings.regions.size() || !readings.regions[index - 1].whole) return std::nullopt;
  return checkTarget(target, readings.regions[index - 1], tolerance_levels);
}

}  // namespace combdraft::look
