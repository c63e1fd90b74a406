#pragma once
// The range beside the size of a block: what it would be if one assumption after
// the other were at its low or high end, and with other roots of the same hair.
// Slow the first time for an opening (one coarse trace per end of each assumption
// about the fall), then fast: what was traced is kept.
#include <memory>
#include <stop_token>

#include "engine/look/openings.h"

namespace combdraft::look {

class OpeningRange {
 public:
  OpeningRange();
  ~OpeningRange();
  OpeningRange(OpeningRange&&) noexcept;
  OpeningRange& operator=(OpeningRange&&) noexcept;

  /// Fills `lightRange` and `darkRange` of `openings`, what OpeningSweep said of
  /// this plan. Deviations to either side add by root of squares, those of other
  /// roots among them [own]; nothing is below 0. Where the part lies is not varied: the
  /// sweep does that. The lines that say what counts as a
  /// block (block.*) stay as they are, and so does the cut. Of `settings` the way of
  /// wearing is not used. Errors: Cancelled (what was traced is kept), OutOfRange.
  Result<Openings> apply(const plan::Plan& plan, const LookSettings& settings, Openings openings,
                         std::stop_token stop);

  static constexpr int kLocks = 6000;  ///< of the coarse traces

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::look
