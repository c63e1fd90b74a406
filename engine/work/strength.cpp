#include "engine/work/strength.h"

#include <cmath>

#include "engine/base/number_text.h"

namespace combdraft::work {
namespace {

using plan::StrengthUnit;

Error refused(const std::string& where, double found, const std::string& allowed) {
  return {ErrorCode::FieldOutOfRange, where, {numberText(found), allowed}, {}};
}

}  // namespace

bool Strength::isOverEuLimit() const {
  // A little over is rounding of a conversion there and back, not a stronger product.
  constexpr double kRounding = 1e-9;
  return typedIn == StrengthUnit::Percent ? percent > kEuLimit_percent + kRounding
                                          : volumes() > kEuLimit_volumes + kRounding;
}

Result<Strength> strengthOf(double typed, StrengthUnit unit, const std::string& where) {
  const bool percent = unit == StrengthUnit::Percent;
  const double strongest = percent ? kStrongest_percent : kStrongest_volumes;
  if (!(typed > 0) || !(typed <= strongest))
    return refused(where, typed, "above 0 to " + numberText(strongest) + (percent ? " %" : " volumes"));
  return Strength{percent ? typed : typed / kVolumesPerPercent, unit};
}

std::optional<Label> nominalLabel(const Strength& strength) {
  // Labels go by 10 volumes for 3 %; the exact value lies 1.2 % below its label.
  const double value = strength.typedIn == StrengthUnit::Percent ? strength.percent / 0.3 : strength.volumes();
  for (int volumes = 5; volumes <= 50; volumes += 5)
    if (std::abs(value / volumes - 1) < 0.01) return Label{volumes * 0.3, volumes};
  return std::nullopt;
}

Result<Strength> mixed(std::span<const StrengthPart> parts, const std::string& where) {
  double sum = 0, all = 0;
  StrengthUnit unit = StrengthUnit::Volume;
  for (const StrengthPart& part : parts) {
    if (!(part.parts > 0) || !std::isfinite(part.parts)) return refused(where, part.parts, "parts above 0");
    sum += part.parts * part.strength.percent;
    all += part.parts;
    if (part.strength.typedIn == StrengthUnit::Percent) unit = StrengthUnit::Percent;
  }
  if (parts.empty()) return refused(where, 0, "one part or more");
  return Strength{sum / all, unit};
}

Result<std::optional<Strength>> developerStrength(const plan::Formula& formula) {
  std::vector<StrengthPart> parts;
  for (std::size_t i = 0; i < formula.developers.size(); ++i) {
    const plan::Developer& developer = formula.developers[i];
    const std::string place = "/developers/" + std::to_string(i);
    if (!developer.strength) return std::optional<Strength>();
    const Result<Strength> strength = strengthOf(*developer.strength, developer.unit, place + "/strength");
    if (!strength) return strength.error();
    if (developer.parts && !(*developer.parts > 0)) return refused(place + "/parts", *developer.parts, "parts above 0");
    if (!developer.parts && formula.developers.size() > 1) return std::optional<Strength>();
    parts.push_back({*strength, developer.parts.value_or(1)});
  }
  if (parts.empty()) return std::optional<Strength>();
  const Result<Strength> all = mixed(parts, "/developers");
  if (!all) return all.error();
  return std::optional<Strength>(*all);
}

}  // namespace combdraft::work
