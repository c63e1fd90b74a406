#include "engine/advise/aims.h"

#include <algorithm>
#include <cmath>

namespace combdraft::advise {
namespace {

class Miss {
 public:
  void level(const look::Reading& seen, const plan::Target& aim) {
    if (aim.level) add(seen.level - *aim.level);
  }
  void contrast(const look::Contrast& seen, const plan::Target& aim) {
    if (!aim.contrast || seen.verdict == look::ContrastVerdict::TooLittleHair) return;
    add(static_cast<double>(seen.verdict) - static_cast<double>(*aim.contrast));
  }
  void ends(const std::array<std::optional<look::Reading>, 3>& thirds, const plan::Target& aim) {
    double lightest = -1e9, darkest = 1e9;
    for (const auto& third : thirds)
      if (third) lightest = std::max(lightest, third->level), darkest = std::min(darkest, third->level);
    if (lightest < darkest) return;  // nothing seen
    if (aim.brightest) add(std::max(0.0, lightest - *aim.brightest));
    if (aim.darkest) add(std::max(0.0, *aim.darkest - darkest));
  }
  double rms() const { return count_ > 0 ? std::sqrt(squares_ / count_) : 0; }

 private:
  void add(double off) { squares_ += off * off, ++count_; }
  double squares_ = 0;
  int count_ = 0;
};

}  // namespace

double missOf(const look::Readings& readings, const Aims& aims) {
  Miss miss;
  for (const auto& [word, aim] : aims) {
    if (word == "whole") {
      if (readings.whole.seen_mm2 > 0) miss.level(readings.whole, aim);
      continue;
    }
    for (const look::RegionReading& region : readings.regions) {
      if (look::regionWord(region.region) != word || !region.whole) continue;
      miss.level(*region.whole, aim);
      miss.contrast(region.contrast, aim);
      miss.ends(region.rootMiddleEnd, aim);
    }
  }
  return miss.rms();
}

Aims aimsToKeep(const look::Readings& readings) {
  Aims aims;
  if (readings.whole.seen_mm2 > 0) aims["whole"].level = readings.whole.level;
  for (const look::RegionReading& region : readings.regions)
    if (region.whole) aims[std::string(look::regionWord(region.region))].level = region.whole->level;
  return aims;
}

}  // namespace combdraft::advise
