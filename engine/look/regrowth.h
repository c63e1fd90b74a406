#pragma once
// When new growth shows: the week in which the hair near the opening has
// visibly changed against the day of the appointment, worn down (part and
// whorl) and tied back (hairline all round). docs/engine-notes.md, "Time".
// Takes seconds: meant for the background.
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "engine/look/look.h"

namespace combdraft::look {

struct Regrowth {
  hair::WornWay way{};
  /// Weeks since the appointment; nothing: not within kWeeks.
  std::optional<double> week;
  /// Range of it: growth at its published low and high, starts scattered more
  /// and less. Nothing, as above: not within kWeeks.
  std::optional<double> earliest, latest;

  static constexpr double kWeeks = 26;
};

/// What was traced is kept, so that after an edit of pieces only colours are
/// worked out. One thread at a time.
class RegrowthSearch {
 public:
  /// `locks`: 2,000 to 200,000.
  explicit RegrowthSearch(int locks = 8000);
  ~RegrowthSearch();
  RegrowthSearch(RegrowthSearch&&) noexcept;
  RegrowthSearch& operator=(RegrowthSearch&&) noexcept;

  /// Down with the settings' part, then tied back. Of `settings` the way of
  /// wearing and the weeks are not used. Errors: Cancelled, OutOfRange (measures).
  Result<std::vector<Regrowth>> update(const plan::Plan& plan, const LookSettings& settings,
                                       std::stop_token stop);
  /// How far the hair near the opening looks changed at `weeks`, L*, nearer hair
  /// counting more, on the stretch where it is most: what `update` compares with
  /// `regrowth.tolerance_L`.
  Result<double> seenChange(const plan::Plan& plan, const LookSettings& settings,
                            hair::WornWay way, double weeks, std::stop_token stop);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::look
