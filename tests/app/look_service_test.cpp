// The worker: the newest request wins, results never dry up, lagging is told.
#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTest>
#include <atomic>

#include "app/live/look_service.h"

using namespace combdraft;
using live::LookResult;
using live::LookService;
using live::Pass;

namespace {

// Stand-ins for the engine that take time and can be stopped, as it can.
struct SlowPasses {
  std::atomic<int> quick{0}, full{0}, cancelled{0};

  LookService::Passes passes(int quick_ms, int full_ms) {
    const auto pass = [this](std::atomic<int>& count, int ms) {
      return [this, &count, ms](const plan::Plan&, const look::LookSettings&,
                                const std::vector<look::PictureRequest>&,
                                std::stop_token stop) -> Result<look::LookFrame> {
        QElapsedTimer timer;
        timer.start();
        while (timer.elapsed() < ms) {
          if (stop.stop_requested()) {
            ++cancelled;
            return Error{ErrorCode::Cancelled, {}, {}, {}};
          }
          std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        ++count;
        return look::LookFrame{};
      };
    };
    return {pass(quick, quick_ms), pass(full, full_ms)};
  }
};

plan::Plan planWithHairline(double front_mm) {
  plan::Plan plan = plan::Plan::fresh(3);
  plan::Head head = plan.head();
  head.hairline.front_mm = front_mm;
  plan.put(plan::kHeadId, head);
  return plan;
}

struct Listener {
  std::vector<std::shared_ptr<const LookResult>> results;
  explicit Listener(LookService& service) {
    QObject::connect(&service, &LookService::lookReady, &service,
                     [this](const std::shared_ptr<const LookResult>& r) { results.push_back(r); });
  }
};

}  // namespace

TEST_CASE("requests of one turn become one, and the last one wins", "[live]") {
  SlowPasses slow;
  LookService service(slow.passes(1, 1));
  Listener listener(service);
  for (std::uint64_t revision = 1; revision <= 5; ++revision)
    service.request(planWithHairline(0), revision, {}, {});
  CHECK(service.isLagging());
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  CHECK(service.requestsPosted() == 1);
  for (const auto& result : listener.results) CHECK(result->revision == 5);
  CHECK(listener.results.size() == 2);  // quick, then full
  CHECK(listener.results.back()->pass == Pass::Full);
}

TEST_CASE("a steady drag that reshapes the hair still gets looks, and ends with the last one", "[live]") {
  SlowPasses slow;
  LookService service(slow.passes(10, 400));
  Listener listener(service);
  QElapsedTimer timer;
  timer.start();
  std::uint64_t revision = 0;
  while (timer.elapsed() < 700) {  // much shorter apart than any full pass
    ++revision;
    service.request(planWithHairline(0.01 * static_cast<double>(revision)), revision, {}, {});
    QTest::qWait(5);
  }
  const std::size_t during = listener.results.size();
  INFO(during << " looks during " << revision << " edits");
  CHECK(during >= 8);       // quick passes are never cancelled
  CHECK(slow.full == 0);    // full ones are
  CHECK(slow.cancelled > 0);
  std::uint64_t last = 0;
  for (const auto& result : listener.results) {
    CHECK(result->revision > last);
    last = result->revision;
  }
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  CHECK(listener.results.back()->revision == revision);
  CHECK(listener.results.back()->pass == Pass::Full);
}

TEST_CASE("an edit that only colours hair is answered by the full engine alone", "[live]") {
  SlowPasses slow;
  LookService service(slow.passes(5, 5));
  Listener listener(service);
  plan::Plan plan = planWithHairline(0);
  service.request(plan, 1, {}, {});
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  plan::Hair hair = plan.hair();
  hair.white_frac = 0.4;
  plan.put(plan::kHairId, hair);
  plan::Piece piece;
  piece.choice = "choice-1";
  piece.line = {{150, 80}, {210, 80}};
  plan.put("piece-1", piece);
  service.request(plan, 2, {}, {});
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  CHECK(slow.quick == 1);
  CHECK(slow.full == 2);
  look::LookSettings tied;
  tied.worn.way = hair::WornWay::TiedBack;
  service.request(plan, 3, tied, {});
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  CHECK(slow.quick == 2);
}

TEST_CASE("looks of a document that was put away are never shown", "[live]") {
  SlowPasses slow;
  LookService service(slow.passes(60, 1));
  Listener listener(service);
  service.request(planWithHairline(0), 1, {}, {});
  QTest::qWait(20);  // the worker is busy with it
  service.forget();
  service.request(planWithHairline(5), 2, {}, {});
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  for (const auto& result : listener.results) CHECK(result->revision == 2);
}

TEST_CASE("closing while the worker is busy does not wait for the full pass", "[live]") {
  SlowPasses slow;
  QElapsedTimer timer;
  {
    LookService service(slow.passes(1, 20000));
    service.request(planWithHairline(0), 1, {}, {});
    REQUIRE(QTest::qWaitFor([&] { return slow.quick == 1; }, 5000));
    timer.start();
  }
  CHECK(timer.elapsed() < 2000);
}

TEST_CASE("a plan that cannot be computed is told and the worker goes on", "[live]") {
  const auto failing = [](const plan::Plan& plan, const look::LookSettings&,
                          const std::vector<look::PictureRequest>&,
                          std::stop_token) -> Result<look::LookFrame> {
    if (plan.head().hairline.front_mm > 1) return Error{ErrorCode::OutOfRange, "head", {}, {}};
    return look::LookFrame{};
  };
  LookService service({failing, failing});
  Listener listener(service);
  int failures = 0;
  QObject::connect(&service, &LookService::failed, &service, [&](const Error& error) {
    CHECK(error.code == ErrorCode::OutOfRange);
    ++failures;
  });
  service.request(planWithHairline(5), 1, {}, {});
  REQUIRE(QTest::qWaitFor([&] { return failures > 0; }, 5000));
  service.request(planWithHairline(0), 2, {}, {});
  REQUIRE(QTest::qWaitFor([&] { return service.freshness() == LookService::Freshness::Fresh; }, 5000));
  CHECK(failures == 1);
}
