// What a range keeps between two questions.
#include <catch2/catch.hpp>

#include "engine/look/look.h"
#include "engine/look/look_range.h"

using namespace combdraft;

TEST_CASE("a range that was cancelled keeps nothing of heads that were passed through", "[look][range]") {
  plan::Plan plan = plan::Plan::fresh(11);
  look::LookSettings settings;
  look::LookEngine engine(2000);
  const auto frame = engine.update(plan, settings, {}, {});
  REQUIRE(frame.ok());
  look::LookRange range;
  REQUIRE(range.apply(plan, settings, *frame->readings, {}).ok());
  const std::size_t whole = range.kept();
  CHECK(whole > 1);

  std::stop_source stopped;
  stopped.request_stop();
  // The same head: what is traced is of use for the next question.
  CHECK_FALSE(range.apply(plan, settings, *frame->readings, stopped.get_token()).ok());
  CHECK(range.kept() == whole);
  // Others, one after the other, none to its end.
  for (const hair::WornWay way : {hair::WornWay::TiedBack, hair::WornWay::HalfUp, hair::WornWay::CrownOpened}) {
    settings.worn.way = way;
    CHECK_FALSE(range.apply(plan, settings, *frame->readings, stopped.get_token()).ok());
    CHECK(range.kept() <= 1);
  }
}
