// Hair is counted on a thread of its own: what the pages of an appointment show until it
// is, whose answer counts, and when it is counted anew.
#include <catch2/catch.hpp>

#include <QSignalSpy>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <mutex>
#include <new>
#include <set>
#include <thread>

#include "app/paint/amount_words.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/levels_that_came.h"

namespace combdraft::appointment {
namespace {

using document::DocumentController;
using live::HairCountService;

const QString kWaiting = QStringLiteral("is being counted");

/// The engine behind a gate: a count that is begun ends when the gate is open or it is stopped.
struct Gate {
  std::atomic<bool> isOpen{false}, heedsStop{true};
  std::atomic<int> begun{0}, stopped{0};
  std::mutex mutex;
  std::set<std::thread::id> threads;

  HairCountService::Count count() {
    return [this](const plan::Plan& plan, std::stop_token stop) -> Result<work::HairCount> {
      {
        const std::lock_guard lock(mutex);
        threads.insert(std::this_thread::get_id());
      }
      ++begun;
      constexpr int kLongest_ms = 20'000;  // a test that failed does not hang
      for (int waited_ms = 0; !isOpen && waited_ms < kLongest_ms; ++waited_ms) {
        if (stop.stop_requested() && heedsStop) {
          ++stopped;
          return Error{ErrorCode::Cancelled, {}, {}, {}};
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
      }
      return work::countHair(plan, {}, live::kCountedLocks);
    };
  }
  bool waitForBegun(int times) {
    return QTest::qWaitFor([&] { return begun >= times; });
  }
  bool waitForStopped(int times) {
    return QTest::qWaitFor([&] { return stopped >= times; });
  }
};

plan::Plan withDensity(double density_per_cm2) {
  plan::Plan plan = tests::demoPlan();
  plan::Hair hair = plan.hair();
  hair.density_per_cm2 = density_per_cm2;
  plan.put(plan::kHairId, hair);
  return plan;
}

double hairsOf(const work::HairCount& count) {
  double hairs = 0;
  for (const work::PieceAmount& piece : count.pieces) hairs += piece.hairs;
  return hairs;
}

void thicken(DocumentController& controller, double thickness_mm) {
  plan::Plan next = controller.document();
  plan::Piece piece = *next.find<plan::Piece>("piece-1");
  piece.thickness_mm = thickness_mm;
  next.put("piece-1", piece);
  controller.edit(next, QStringLiteral("thickness"));
}

}  // namespace

TEST_CASE("the count of an older plan is dropped even when it comes", "[appointment][count]") {
  Gate gate;
  gate.heedsStop = false;  // it ends as if it had not heard
  HairCountService counts(gate.count());
  const QSignalSpy answered(&counts, &HairCountService::answered);
  const plan::Plan older = withDensity(150), newest = withDensity(300);
  counts.request(older);
  REQUIRE(gate.waitForBegun(1));
  counts.request(withDensity(200));  // it waits, and the next takes its place
  counts.request(newest);
  gate.isOpen = true;
  REQUIRE(QTest::qWaitFor([&] { return !counts.isCounting(); }));
  CHECK(answered.count() == 1);
  CHECK(gate.begun == 2);
  CHECK_FALSE(counts.answerFor(older));
  const auto* answer = counts.answerFor(newest);
  REQUIRE(answer);
  REQUIRE(answer->ok());
  CHECK(hairsOf(answer->value()) == hairsOf(work::countHair(newest, {}, live::kCountedLocks).value()));
  const std::lock_guard lock(gate.mutex);
  CHECK(gate.threads.size() == 1);
  CHECK(gate.threads.count(std::this_thread::get_id()) == 0);
}

TEST_CASE("going back to a plan that is counted gives up the one that is not", "[appointment][count]") {
  Gate gate;
  gate.isOpen = true;
  HairCountService counts(gate.count());
  const plan::Plan first = withDensity(150), second = withDensity(300);
  counts.request(first);
  REQUIRE(QTest::qWaitFor([&] { return !counts.isCounting(); }));
  gate.isOpen = false;
  counts.request(second);
  REQUIRE(gate.waitForBegun(2));
  counts.request(first);  // an undo
  CHECK_FALSE(counts.isCounting());
  REQUIRE(gate.waitForStopped(1));
  gate.isOpen = true;
  QTest::qWait(50);
  CHECK(counts.answerFor(first));
  CHECK_FALSE(counts.answerFor(second));
}

TEST_CASE("until the hair is counted the work list shows its order and minutes and says so", "[appointment][count]") {
  Gate gate;
  DocumentController controller(typedPlan(6, {}));
  AppointmentPage page(controller, nullptr, LogView::systemClock(), gate.count());
  page.show();
  page.turnTo(AppointmentPage::View::WorkList);
  WorkListView& view = page.workList();
  view.setRates({60, 2, {}});
  tests::typeInto(view.smallestBowl()->edit(), QStringLiteral("900"));
  REQUIRE(view.list());
  CHECK_FALSE(view.isCounted());
  const work::WorkList whole = work::workListOf(controller.document(), view.settings()).value();
  CHECK(view.list()->order == whole.order);
  CHECK(view.list()->timeline.total_min == whole.timeline.total_min);
  CHECK(view.table()->rowCount() == static_cast<int>(work::linesOf(whole.timeline).size()));
  CHECK(view.summaryText().contains(kWaiting));
  CHECK_FALSE(view.summaryText().contains(QStringLiteral("g mixed")));
  CHECK(view.priceText().contains(kWaiting));
  CHECK(view.paper()->isEnabled());  // the pages count for themselves
  CHECK(view.sideText().contains(QStringLiteral("pieces: being counted")));
  CHECK_FALSE(view.sideText().contains(QStringLiteral(" g of hair taken")));
  CHECK_FALSE(view.sideText().contains(QStringLiteral("You mix 900 g at least")));  // nothing is known of grams

  gate.isOpen = true;
  REQUIRE(waitForCount(page));
  CHECK(view.isCounted());
  CHECK(view.list()->amounts.hairs == whole.amounts.hairs);
  CHECK(view.list()->amounts.mixed_g().about == whole.amounts.mixed_g().about);
  CHECK(view.summaryText().contains(paint::mixedText(whole.amounts)));
  CHECK(view.sideText().contains(QStringLiteral(" g of hair taken")));
  CHECK(view.sideText().contains(QStringLiteral("You mix 900 g at least")));
  CHECK_FALSE((view.summaryText() + view.sideText() + view.priceText()).contains(QStringLiteral("being counted")));
  CHECK(gate.begun == 1);
  const std::lock_guard lock(gate.mutex);
  CHECK(gate.threads.count(std::this_thread::get_id()) == 0);
}

TEST_CASE("the work list and the next visit share one count", "[appointment][count]") {
  Gate gate;
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller, nullptr, LogView::systemClock(), gate.count());
  page.show();
  page.turnTo(AppointmentPage::View::WorkList);
  REQUIRE(gate.waitForBegun(1));
  page.turnTo(AppointmentPage::View::NextVisit);
  NextVisitView& next = page.nextVisit();
  CHECK(next.sharesText().contains(kWaiting));
  CHECK_FALSE(next.leftOut()->isVisible());
  gate.isOpen = true;
  REQUIRE(waitForCount(page));
  CHECK(next.leftOut()->isVisible());
  CHECK(next.leftOut()->rowCount() == static_cast<int>(plan::kHairZones));
  CHECK_FALSE(next.sharesText().contains(kWaiting));
  page.turnTo(AppointmentPage::View::WorkList);
  CHECK(page.workList().isCounted());  // at once
  CHECK(gate.begun == 1);
  CHECK(gate.stopped == 0);
}

TEST_CASE("leaving the views gives the count up and coming back begins it again", "[appointment][count]") {
  Gate gate;
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller, nullptr, LogView::systemClock(), gate.count());
  page.show();
  REQUIRE(gate.waitForBegun(1));
  page.turnTo(AppointmentPage::View::Log);
  CHECK_FALSE(page.counts().isCounting());
  REQUIRE(gate.waitForStopped(1));
  page.turnTo(AppointmentPage::View::WorkList);
  REQUIRE(gate.waitForBegun(2));
  page.hide();
  CHECK_FALSE(page.counts().isCounting());
  REQUIRE(gate.waitForStopped(2));
  gate.isOpen = true;
  QTest::qWait(50);
  CHECK_FALSE(page.counts().answerFor(controller.document()));
  page.show();
  REQUIRE(waitForCount(page));
  CHECK(page.workList().isCounted());
}

TEST_CASE("hair is counted anew only when what is counted changes", "[appointment][count]") {
  Gate gate;
  gate.isOpen = true;
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller, nullptr, LogView::systemClock(), gate.count());
  page.show();
  WorkListView& view = page.workList();
  REQUIRE(waitForCount(page));
  const double before = view.list()->amounts.hair_g;
  plan::Plan next = controller.document();
  plan::Piece piece = *next.find<plan::Piece>("piece-1");
  piece.label = "back low";
  piece.foil = "shared";
  piece.root.formula = "formula-2";
  next.put("piece-1", piece);
  controller.edit(next, QStringLiteral("label, foil, formula"));
  tests::typeInto(view.foils()->edit(), QStringLiteral("60, 120"));
  page.turnTo(AppointmentPage::View::Log);
  page.turnTo(AppointmentPage::View::WorkList);
  CHECK(view.isCounted());
  CHECK(gate.begun == 1);
  CHECK(view.list()->amounts.hair_g == before);
  CHECK(std::any_of(view.list()->amounts.foils.begin(), view.list()->amounts.foils.end(), [](const work::FoilNeed& foil) { return foil.name == "shared"; }));
  const work::WorkList whole = work::workListOf(controller.document(), view.settings()).value();
  CHECK(view.list()->amounts.mixed_g().about == whole.amounts.mixed_g().about);

  gate.isOpen = false;
  thicken(controller, 12);
  view.fill();
  CHECK_FALSE(view.isCounted());  // the older plan's grams do not stand for the newer
  CHECK(view.summaryText().contains(kWaiting));
  gate.isOpen = true;
  REQUIRE(waitForCount(page));
  CHECK(gate.begun == 2);
  CHECK(view.list()->amounts.hair_g > before);
}

TEST_CASE("hair that could not be counted is told and tried again", "[appointment][count]") {
  std::atomic<bool> fails{true};
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller, nullptr, LogView::systemClock(), [&](const plan::Plan& plan, std::stop_token) -> Result<work::HairCount> {
    if (fails) throw std::bad_alloc();
    return work::countHair(plan, {}, live::kCountedLocks);
  });
  page.show();
  REQUIRE(waitForCount(page));
  WorkListView& view = page.workList();
  REQUIRE(view.list());
  CHECK_FALSE(view.isCounted());
  CHECK(view.summaryText().contains(QStringLiteral("could not be counted")));
  CHECK(view.summaryText().contains(QStringLiteral("memory")));
  CHECK(view.sideText().contains(QStringLiteral("pieces: not counted")));
  fails = false;
  page.turnTo(AppointmentPage::View::NextVisit);
  REQUIRE(waitForCount(page));
  CHECK(page.nextVisit().leftOut()->isVisible());
}

TEST_CASE("a head is taken over with its product only when its hair is counted", "[appointment][count][after]") {
  Gate gate;
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}, {"piece-2", 6}, {"piece-3", 7}, {"piece-4", 8}}));
  AppointmentPage page(controller, nullptr, LogView::systemClock(), gate.count());
  page.show();
  page.turnTo(AppointmentPage::View::Outcome);
  OutcomeView& view = page.outcome();
  tests::typeInto(view.mixed()->edit(), QStringLiteral("10"));
  tests::typeInto(view.left()->edit(), QStringLiteral("2"));
  view.consent()->setChecked(true);
  CHECK(view.headText().contains(kWaiting));
  CHECK_FALSE(view.take()->isEnabled());
  gate.isOpen = true;
  REQUIRE(waitForCount(page));
  CHECK_FALSE(view.headText().contains(kWaiting));
  CHECK(view.measured().got[static_cast<std::size_t>(work::Factor::ProductPerHair)]);
  CHECK(view.take()->isEnabled());
}

}  // namespace combdraft::appointment
