#pragma once
// Head measures as a person gives them, and the axes that follow.
#include <optional>
#include <vector>

#include "engine/base/result.h"
#include "engine/head/head_shape.h"

namespace combdraft::head {

enum class HeadSet { Women, Men };            ///< whose survey means and ranges apply
enum class HeadSize { Small, Medium, Large };  ///< 5th, 50th (mean) and 95th percentile

/// What the user typed; empty values follow from the others.
struct HeadMeasures {
  HeadSet set = HeadSet::Women;
  HeadSize size = HeadSize::Medium;
  std::optional<double> circumference_mm;
  std::optional<double> length_mm;
  std::optional<double> breadth_mm;
  std::optional<double> earToEar_mm;  ///< over the top, ear hole to ear hole
  bool operator==(const HeadMeasures&) const = default;
};

/// Outside the survey's 5th to 95th percentile: worth a look, not an error.
struct MeasureNote {
  std::string name;  ///< "circumference", "length", "breadth", "ear-to-ear"
  double value_mm, low_mm, high_mm;
};

struct FittedHead {
  HeadAxes axes;
  double circumference_mm, length_mm, breadth_mm, earToEar_mm;  ///< as typed or as followed
  std::vector<MeasureNote> notes;
  bool contradictory = false;  ///< no outline exponent in 2.0..3.2 gives the typed circumference
};

/// Axes from measures. A typed circumference alone scales length and breadth by
/// their survey regression; with length and breadth typed too it sets the
/// outline exponent p in [2.0, 3.2]. Ear-to-ear scales c by typed / mean.
/// Errors: OutOfRange for a measure no head has (where = its name).
Result<FittedHead> fitHead(const HeadMeasures& measures);

}  // namespace combdraft::head
