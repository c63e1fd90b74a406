#pragma once
// From what stands on the client's screen to what the plan keeps of it.
#include <QDate>

#include "app/chair/pane.h"
#include "app/chair/plain_readings.h"
#include "engine/plan/agreement.h"

namespace combdraft::chair {

/// What is agreed on: one choice, worn as it is shown; as planned, on the day, in daylight.
struct Shown {
  plan::ItemId choice;
  QString choiceName;  ///< as typed
  look::LookSettings settings;
  head::ViewName view = head::ViewName::Front;
  Facing facing = Facing::AsInMirror;
  std::optional<LevelSpan> span;
  Pane pane;
};

/// The agreement to be kept in `plan`, with what was agreed before among its
/// earlier ones.
plan::Agreement agreementOf(const plan::Plan& plan, const Shown& shown, const QDate& date);

/// What a plan says was agreed, when it can be read.
std::optional<plan::Agreement> agreedIn(const plan::Plan& plan);

}  // namespace combdraft::chair
