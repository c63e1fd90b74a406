// Must come out (h): tracing steps of 2, 3, 4 and 6 mm agree within 0.15 L* in
// the mean and 0.6 at worst, straight and waved.
#include <catch2/catch.hpp>

#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

TEST_CASE("tracing steps of 2, 3, 4 and 6 mm agree, straight and waved", "[look][must-come-out]") {
  for (const plan::CurlClass curl : {plan::CurlClass::Straight, plan::CurlClass::Wave}) {
    plan::Plan plan = mixedPlan(41);
    plan::Hair hair;
    hair.curl = curl;
    plan.put(plan::kHairId, hair);
    const look::Readings usual = ColouredHair(plan, 10000, {}, 1.5, 4).readings();
    double sum = 0, worst = 0;
    int count = 0;
    for (const double step : {2.0, 3.0, 6.0}) {
      const look::Readings other = ColouredHair(plan, 10000, {}, 1.5, step).readings();
      for (std::size_t r = 0; r < usual.regions.size(); ++r) {
        if (!isLarge(usual.regions[r]) || !isLarge(other.regions[r])) continue;
        const double d = std::abs(usual.regions[r].whole->lightness - other.regions[r].whole->lightness);
        INFO("curl class " << static_cast<int>(curl) << ", step " << step << " against 4, "
             << visibility::regionWord(usual.regions[r].region) << ": " << d);
        CHECK(d < 0.6);
        sum += d, worst = std::max(worst, d), ++count;
      }
    }
    REQUIRE(count >= 18);
    WARN("curl class " << static_cast<int>(curl) << ": mean " << sum / count << ", worst " << worst);
    CHECK(sum / count < 0.15);
  }
}
