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

/// Axes from measures. What is not typed starts at the size's value (the mean
/// once a circumference is typed) and follows what is typed by the survey's
/// regression [ANSUR2]. Length, breadth and circumference typed together set the
/// outline exponent p in [2.0, 3.2]; otherwise p is 2.4. Ear-to-ear scales c by
/// typed / mean [ANSUR1].
/// Errors: OutOfRange for a measure no head has (where = its name);
/// MeasuresContradict for a head much broader than long (where = "breadth").
Result<FittedHead> fitHead(const HeadMeasures& measures);

}  // namespace combdraft::head
