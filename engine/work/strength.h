#pragma once
// Hydrogen peroxide: percent, volumes and moles, their nominal labels, and what
// comes of mixing developers by parts. Arithmetic on what the user typed from a
// leaflet or label; nothing here proposes a strength.
//
// Percent is by mass in volume (1 % = 10 g in a litre), as pharmacopoeia labels
// are; by mass in mass the same number is about 4 % stronger.
#include <optional>
#include <span>
#include <string>

#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::work {

/// Molar mass of H2O2, and of an ideal gas a mole's volume at 0 C and 101.325 kPa.
inline constexpr double kPeroxide_g_per_mol = 34.0147, kMole_l = 22.414;
/// Volumes of oxygen from a volume of a 1 % solution, 2 H2O2 -> 2 H2O + O2: 3.2948.
inline constexpr double kVolumesPerPercent = 10 / kPeroxide_g_per_mol / 2 * kMole_l;
/// Hair products in the EU: 12 % or 40 volumes, present or released [EU1223].
inline constexpr double kEuLimit_percent = 12, kEuLimit_volumes = 40;
/// Anything stronger than this is no developer but a slip of the pen [own].
inline constexpr double kStrongest_percent = 30, kStrongest_volumes = 100;

struct Strength {
  double percent = 0;
  plan::StrengthUnit typedIn = plan::StrengthUnit::Percent;

  double volumes() const { return percent * kVolumesPerPercent; }
  double molPerLitre() const { return percent * 10 / kPeroxide_g_per_mol; }
  /// Outside the EU limit, in the unit that was typed: 40 volumes are not, though
  /// they are 12.14 % exactly, because that is how the limit is written.
  bool isOverEuLimit() const;
  bool operator==(const Strength&) const = default;
};

/// Error FieldOutOfRange at `where`: not above 0, over kStrongest, not a number.
Result<Strength> strengthOf(double typed, plan::StrengthUnit unit, const std::string& where = {});

/// What a label calls it: 10 volumes for 3 %, 20 for 6 %, ... in steps of 5 up
/// to 50, where percent (or volumes) stand within 1 % of such a label; else nothing.
struct Label {
  double percent = 0;
  int volumes = 0;
  bool operator==(const Label&) const = default;
};
std::optional<Label> nominalLabel(const Strength& strength);

struct StrengthPart {
  Strength strength;
  double parts = 0;  ///< by weight; the densities of developers are taken as equal
};
/// Sum of parts times strength over the sum of parts. In volumes when all were
/// typed so, else in percent. Error FieldOutOfRange: no part, or one not above 0.
Result<Strength> mixed(std::span<const StrengthPart> parts, const std::string& where = {});

/// The strength of a formula's developers together. Nothing where it cannot be
/// told: none, one without strength, or several without parts. Errors as above;
/// `where` is "/developers/1/strength" and the like.
Result<std::optional<Strength>> developerStrength(const plan::Formula& formula);

}  // namespace combdraft::work
