#pragma once
// What the tests of an appointment share: a clock that a test sets, a plan with a typed
// leaflet, the log that a plan holds, a wait for the hair that is counted.
#include <QTest>

#include "app/appointment/appointment_page.h"
#include "engine/work/log_text.h"
#include "tests/app/demo_plans.h"

namespace combdraft::appointment {

/// Seconds of an appointment, as the test says.
struct TestClock {
  double minute = 0;
  std::int64_t back_ms = 0;
  LogView::Clock clock() {
    return [this] {
      const auto ms = static_cast<std::int64_t>(minute * 60'000);
      return work::TapClock{1'700'000'000'000 + ms - back_ms, ms, "test"};
    };
  }
};

inline plan::Plan typedPlan(std::optional<double> life, std::optional<double> longest) {
  plan::Plan plan = tests::demoPlan();
  plan::Formula formula = *plan.find<plan::Formula>("formula-1");
  formula.products = {{"powder", 1, {}}};
  formula.developers = {{"developer", 6, plan::StrengthUnit::Percent, 2, {}}};
  formula.leaflet.workingLife_min = life;
  formula.leaflet.longestTime_min = longest;
  plan.put("formula-1", formula);
  return plan;
}

/// Waits until nothing is being counted; false = it takes too long.
inline bool waitForCount(const AppointmentPage& page) {
  return QTest::qWaitFor([&] { return !page.counts().isCounting(); });
}

inline work::AppointmentLog logOf(const document::DocumentController& controller) { return work::readLog(controller.document().info().logJson).value(); }

}  // namespace combdraft::appointment
