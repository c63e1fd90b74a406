#pragma once
// Drop-outs as people type them: "40-60, 110-125" along the piece, in the unit
// in force.
#include <QString>
#include <optional>
#include <vector>

#include "app/controls/units.h"
#include "engine/plan/plan.h"

namespace combdraft::cards {

QString dropOutText(const std::vector<plan::Stretch>& dropOuts,
                    controls::LengthUnit unit = controls::LengthUnit::Millimetres);
/// Nothing for text that is not such a list, or with a stretch that runs
/// backwards. Empty text = no drop-outs. A number that reads as one of `before`
/// is shown keeps that value, so that fractions do not wear off.
std::optional<std::vector<plan::Stretch>> dropOutsFrom(
    const QString& text, controls::LengthUnit unit = controls::LengthUnit::Millimetres,
    const std::vector<plan::Stretch>& before = {});

}  // namespace combdraft::cards
