// "This one": what the plan keeps of the client's screen, and what it costs as it was typed.
#include <QDate>
#include <QImage>
#include <QToolButton>
#include <cmath>

#include "app/cards/consultation_card.h"
#include "app/chair/touch_controls.h"
#include "app/desk/card_column.h"
#include "app/store/client_keeper.h"
#include "tests/app/chair_fixture.h"

using namespace combdraft;
using chair::ChairView;
using tests::Chair;

TEST_CASE("this one keeps choice and picture and span and date outside undo and in the file", "[chair][agreement]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  chair.tap(view.wornRow()->button(3));
  chair.tap(view.weeks(), QPoint(view.weeks()->width() / 2, 24));
  REQUIRE(chair.settled());
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  REQUIRE(QTest::qWaitFor([&] { return view.knowsWhatIsKept(1); }, 5000));
  const int entries = chair.window->controller().undoStack().count();
  const int asked = chair.window->lookService().requestsPosted();
  chair.tap(view.thisOne(1));
  CHECK(view.noticeText().contains(QLatin1String("Noted in the plan; it goes into the file with the next save. Choice A")));
  CHECK(view.chips(1)[0]->text() == QLatin1String("Choice A\nagreed"));
  CHECK(chair.window->controller().isModified());
  CHECK(chair.window->controller().undoStack().count() == entries);
  QTest::qWait(50);
  CHECK(view.picture()->pane(1).state.isEmpty());  // no look is worked out anew for it
  CHECK(chair.window->lookService().requestsPosted() <= asked + 1);

  const auto agreed = plan::readAgreement(chair.plan().info().agreedJson);
  REQUIRE(agreed.ok());
  CHECK(agreed->choice == "choice-1");
  CHECK(agreed->choiceName == "A");
  CHECK(agreed->date == QDate::currentDate().toString(Qt::ISODate).toStdString());
  CHECK(agreed->view.worn == "tied-back");
  CHECK(agreed->view.weeks == 0);  // the weeks were looked at, not agreed on
  CHECK(agreed->view.facing == plan::Facing::AsInMirror);
  REQUIRE(agreed->span);
  CHECK(agreed->span->low == 6.5);
  CHECK(agreed->span->level == 7);
  CHECK(agreed->span->high == 7.5);
  CHECK(agreed->promiseLine == view.picture()->line().toStdString());
  CHECK_FALSE(agreed->engineVersion.empty());
  REQUIRE(agreed->frozen);
  CHECK(agreed->frozen->pieces("choice-1").size() == 1);
  CHECK_FALSE(agreed->frozen->find<plan::Choice>("choice-2"));
  CHECK(agreed->pictureBase64.size() <= plan::kAgreedPictureBytes);
  QImage picture;
  REQUIRE(picture.loadFromData(QByteArray::fromBase64(QByteArray::fromStdString(agreed->pictureBase64)), "PNG"));
  CHECK(picture.width() >= 150);

  // Saved and read again it is there; another one keeps the first.
  chair.tap(view.chips(1)[1]);
  REQUIRE(chair.settled());
  REQUIRE(QTest::qWaitFor([&] { return view.knowsWhatIsKept(1); }, 5000));
  chair.tap(view.thisOne(1));
  const auto second = plan::readAgreement(chair.plan().info().agreedJson);
  REQUIRE(second.ok());
  CHECK(second->choice == "choice-2");
  REQUIRE(second->earlier.size() == 1);
  CHECK(plan::readAgreement(second->earlier[0])->choice == "choice-1");
  const QString path = chair.dir.filePath(QStringLiteral("kept.json"));
  REQUIRE(store::savePlan(chair.plan(), path).ok());
  CHECK(store::openPlan(path)->plan.info().agreedJson == chair.plan().info().agreedJson);
}

TEST_CASE("this one keeps the picture as planned on the day in daylight whatever else is looked at", "[chair][agreement]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  const QString usual = view.noticeText();
  CHECK(usual.contains(QLatin1String("keeps the picture, its range")));
  SECTION("lighter") { chair.tap(view.liftRow()->button(2)); }
  SECTION("in another light") { chair.tap(view.lightRow()->button(2)); }
  SECTION("weeks later") { chair.tap(view.weeks(), QPoint(view.weeks()->width() / 2, 24)); }
  CHECK(view.noticeText() == QStringLiteral("\u201CThis one\u201D keeps the picture as planned, on the day, in daylight."));
  REQUIRE(chair.settled());
  REQUIRE(QTest::qWaitFor([&] { return view.knowsWhatIsKept(1); }, 5000));
  const look::LookSettings shown = view.settings();
  CHECK(view.picture()->pane(1).look->settings.light == shown.light);
  CHECK(view.picture()->pane(1).look->settings.weeks == shown.weeks);
  CHECK(view.picture()->pane(1).look->settings.lift == shown.lift);
  chair.tap(view.thisOne(1));
  const auto agreed = plan::readAgreement(chair.plan().info().agreedJson);
  REQUIRE(agreed.ok());
  CHECK(agreed->view.weeks == 0);
  CHECK(agreed->view.light == "daylight");
  CHECK(agreed->view.lift == "as-planned");
  REQUIRE(agreed->span);
  CHECK(agreed->span->low == 6.5);
  CHECK(agreed->span->level == 7);
  CHECK(agreed->span->high == 7.5);
  CHECK_FALSE(agreed->pictureBase64.empty());
  CHECK(view.settings() == shown);  // the screen stays as it was
}

TEST_CASE("a plan that may only be read says that nothing was kept", "[chair][agreement]") {
  Chair chair;
  REQUIRE(chair.settled());
  chair.window->controller().setAccess(document::DocumentController::Access::ReadOnly);
  chair.tap(chair.view().thisOne(1));
  CHECK(chair.view().noticeText().contains(QLatin1String("not kept")));
  CHECK(chair.plan().info().agreedJson.empty());
}

TEST_CASE("visits and minutes and price stand there only when something is typed", "[chair]") {
  Chair chair;
  CHECK(chair.view().costText().isEmpty());
  chair.view().setCostLine([](const plan::ItemId& id) { return id == "choice-1" ? QStringLiteral("2 visits, 180 minutes, 240") : QString(); });
  CHECK(chair.view().costText() == QLatin1String("2 visits, 180 minutes, 240"));
  chair.tap(chair.view().chips(1)[1]);
  CHECK(chair.view().costText().isEmpty());
}

TEST_CASE("what the colourist typed for a choice stands on the client's screen and nothing that was worked out", "[chair][price]") {
  Chair chair;
  REQUIRE(chair.settled());
  cards::ConsultationCard* card = chair.window->cards().consultationCard();
  REQUIRE(card->keeper());
  store::Rates rates;
  rates.perHour = 77;
  card->setRates(rates);
  chair.tap(chair.view().chips(1)[0]);
  CHECK(chair.view().costText().isEmpty());
  card->keeper()->edit([&](store::ClientFile& file) {
    store::Offer& offer = store::offerFor(file, chair.plan().info().number, "choice-1");
    offer.visits = "two";
    offer.price = "240 crowns";
  });
  chair.tap(chair.view().chips(1)[0]);
  CHECK(chair.view().costText() == QStringLiteral("Visits: two; Price: 240 crowns"));
  chair.tap(chair.view().chips(1)[1]);
  CHECK(chair.view().costText().isEmpty());
}
