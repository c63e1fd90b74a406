#pragma once
// What validate() finds about the things a card shows. Thresholds and words are
// those of engine/plan/validate.h.
#include <QStringList>

#include "engine/plan/validate.h"

namespace combdraft::cards {

/// One sentence, without the names of the items.
QString issueLine(const plan::Issue& issue);

/// Cautions and notes on these pieces; cautions first, no line twice.
QStringList pieceIssues(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);
/// Cautions and notes on the hair as such (bands that end before they begin).
QStringList hairIssues(const plan::Plan& plan);

}  // namespace combdraft::cards
