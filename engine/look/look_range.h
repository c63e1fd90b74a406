#pragma once
// The range beside each reading: what it would be if one assumption after the
// other were at its low or high end, with the same roots and random numbers.
// Slow the first time for a head and way of wearing (one coarse trace per end
// of each shape assumption), then fast: what was traced is kept.
#include <map>
#include <memory>

#include "engine/look/look.h"

namespace combdraft::look {

class HeadHair;

/// A plan that assumes one number otherwise: for what would be if.
plan::Plan withAssumption(const plan::Plan& plan, std::string_view name, double value);

class LookRange {
 public:
  LookRange();
  ~LookRange();

  /// Fills low, high, rangeKnown and movesMost of `readings`. Deviations to
  /// either side add by root of squares with the sampling error [own].
  /// Errors: Cancelled, OutOfRange (measures).
  Result<Readings> apply(const plan::Plan& plan, const LookSettings& settings, Readings readings,
                         std::stop_token stop);

  /// Traced heads that are kept: those of the head and way asked last.
  std::size_t kept() const { return traced_.size(); }

  /// Locks and pixel of the coarse traces.
  static constexpr int kLocks = 6000;
  static constexpr double kPixel_mm = 2, kStep_mm = 6;

 private:
  std::map<std::uint64_t, std::shared_ptr<const HeadHair>> traced_;
  std::uint64_t base_ = 0;  ///< the head and way that `traced_` is about
};

}  // namespace combdraft::look
