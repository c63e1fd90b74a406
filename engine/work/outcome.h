#pragma once
// Planned against got, and the user's own factors that come of it: placing speed,
// product for hair, waste, pushed share. Only what was measured on heads and taken
// over by her; each value says how many heads stand behind it; the last head can be
// taken away again. Never minutes on the hair, never a predicted lift.
#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/result.h"
#include "engine/work/appointment_log.h"

namespace combdraft::work {

enum class Factor {
  Speed,           ///< minutes needed over minutes planned
  ProductPerHair,  ///< g of product used for 1 g of hair under it
  Waste,           ///< left in the bowl, of what was used
  PushedShare,     ///< of the taken hair, what the comb pushed back in fact
};
inline constexpr int kFactors = 4;

/// What one head gave; nothing where it was not measured.
struct MeasuredHead {
  std::string date;  ///< ISO
  std::array<std::optional<double>, kFactors> got;
  bool operator==(const MeasuredHead&) const = default;
};
struct OwnFactors {
  std::vector<MeasuredHead> heads;
  bool operator==(const OwnFactors&) const = default;
};
struct LearnedFactor {
  double value = 0;  ///< mean over the heads
  int heads = 0;
};
/// Nothing when no head gave it.
std::optional<LearnedFactor> learned(const OwnFactors& factors, Factor which);
/// Error FieldOutOfRange: a value that is not above 0 (waste: below 0) or over 20 (waste: over 2, pushed share: over 1).
Result<OwnFactors> withHead(OwnFactors factors, MeasuredHead head);
OwnFactors withoutLastHead(OwnFactors factors);
/// Overrides of assumptions (work.*_min, amount.*) for a plan: the defaults times
/// the speed, the learned amounts; within the assumptions' ranges. `overrides`
/// wins where it has a value.
std::map<std::string, double> withFactors(const OwnFactors& factors, std::map<std::string, double> overrides);

/// Minutes between placed taps over the planned minutes of those pieces. Counted
/// are steps from one placed tap to the next by the same person with nothing else
/// tapped between; nothing when there are fewer than three.
std::optional<double> speedFrom(const plan::Plan& plan, const AppointmentLog& log);

struct UsedProduct {
  double perHair = 0, waste_share = 0;
};
/// From what was mixed, what was left and the hair under product, g. Error
/// FieldOutOfRange: not above 0, more left than mixed.
Result<UsedProduct> usedProduct(double mixed_g, double left_g, double hair_g);

/// Level planned and got of each lightened piece that was seen after its rinse.
struct PieceOutcome {
  plan::ItemId piece;
  plan::LiftsTo planned;  ///< as the log holds it from when it was placed; else the plan's
  double got = 0;
  bool inSpan = false;    ///< within the planned span
};
std::vector<PieceOutcome> plannedAgainstGot(const plan::Plan& plan, const AppointmentLog& log);

/// The factors as JSON text for the program's own settings, and back. Errors as readLog.
std::string writeFactors(const OwnFactors& factors);
Result<OwnFactors> readFactors(std::string_view json);

}  // namespace combdraft::work
