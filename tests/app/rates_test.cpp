// Rates of the user's own: what the work list makes of them, and where they are typed.
#include <catch2/catch.hpp>

#include <QSettings>

#include "app/appointment/appointment_page.h"
#include "app/desk/preferences_page.h"
#include "engine/base/number_text.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::appointment {

using document::DocumentController;
using tests::typeInto;

TEST_CASE("the work list reckons only with rates that are typed", "[appointment][price]") {
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  REQUIRE(waitForCount(page));
  CHECK(view.priceText().isEmpty());
  const double minutes = view.list()->timeline.total_min;
  double grams = 0;
  for (const work::BowlGrams& bowl : view.list()->bowls) grams += bowl.mixed_g;
  const auto text = [](double value) { return QString::fromStdString(numberText(value, 2)); };
  view.setRates({60, {}, QStringLiteral("crowns")});
  CHECK(view.priceText().contains(text(minutes) + QStringLiteral(" crowns")));
  CHECK_FALSE(view.priceText().contains(QStringLiteral("g mixed")));
  view.setRates({60, 2, {}});
  CHECK(view.priceText().contains(QStringLiteral("rates: ") + text(minutes + 2 * grams) + QStringLiteral(" for")));
  view.setRates({});
  CHECK(view.priceText().isEmpty());
}

TEST_CASE("rates are typed in the preferences and kept and damaged ones are as if not there", "[appointment][price]") {
  tests::Desk desk;
  desk.window->actions().action(QStringLiteral("edit.preferences"))->trigger();
  desk::PreferencesPage& page = desk.window->preferencesPage();
  CHECK(page.perHour()->edit()->text().isEmpty());
  CHECK(page.perGram()->edit()->text().isEmpty());
  CHECK(page.currency()->edit()->text().isEmpty());
  typeInto(page.perHour()->edit(), QStringLiteral("48.5"));
  typeInto(page.currency()->edit(), QStringLiteral("crowns"));
  const QString ini = desk.dir.filePath(QStringLiteral("settings.ini"));
  CHECK(store::Settings(ini).rates() == store::Rates{48.5, {}, QStringLiteral("crowns")});
  typeInto(page.perHour()->edit(), QString());
  CHECK_FALSE(store::Settings(ini).rates().perHour);
  QSettings(ini, QSettings::IniFormat).setValue(QStringLiteral("rates/perGram"), QStringLiteral("nan"));
  CHECK_FALSE(store::Settings(ini).rates().perGram);
}

}  // namespace combdraft::appointment
