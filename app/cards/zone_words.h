#pragma once
// Hair zones by name, and a choice among them with "whole head" first.
#include <QComboBox>
#include <optional>

#include "engine/plan/plan.h"

namespace combdraft::cards {

/// "Front", "Top", ...
QString zoneName(plan::HairZone zone);

/// Whole head, then the zones.
QComboBox* newZoneChoice(QWidget* parent, const QString& name);
std::optional<plan::HairZone> zoneAtRow(int row);
int rowOfZone(const std::optional<plan::HairZone>& zone);

}  // namespace combdraft::cards
