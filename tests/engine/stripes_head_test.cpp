// Stripes of whole heads: none without pieces, those of thick pieces where they
// hang, none of fine ones there, and nothing breaks where hardly any hair is seen.
#include <catch2/catch.hpp>

#include "engine/look/stripes.h"
#include "tests/support/fall_slices.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

double strongest(const look::Stripes& s) {
  double most = 0;
  for (const look::SeenStripe& at : s.at) most = std::max(most, at.contrast);
  return most;
}

}  // namespace

TEST_CASE("hair without pieces has no stripes, thick pieces have their own width, fine ones none", "[look][stripes]") {
  look::StripeSearch search(30000);
  const plan::Plan fresh = plan::Plan::fresh(1);
  const auto stripesOf = [&](const plan::Plan& plan) { return search.update(plan, {}, {}).value(); };
  const auto none = stripesOf(fresh), thick = stripesOf(alternating(fresh, 9, 12)), fine = stripesOf(alternating(fresh, 1.5, 10));
  REQUIRE(none.size() == look::kRegions);
  int judged = 0;
  for (std::size_t r = 0; r < none.size(); ++r) {
    CHECK(none[r].region == static_cast<look::Region>(r));
    CHECK(none[r].judged == thick[r].judged);
    if (!none[r].judged) continue;
    ++judged;
    CHECK(strongest(none[r]) < 0.005);
    for (std::size_t d = 0; d < look::kStripeDistances_m.size(); ++d) {
      CHECK(thick[r].at[d].distance_m == look::kStripeDistances_m[d]);
      CHECK(thick[r].at[d].contrast <= 1);
      CHECK(!none[r].at[d].seen);
    }
  }
  CHECK(judged >= 8);
  // Where the ribbons hang, from across the room: about as wide as the pieces.
  const auto tested = static_cast<std::size_t>(look::Region::BackUpper);
  CHECK(thick[tested].at[3].seen);
  CHECK(thick[tested].at[3].width_mm == Approx(9).margin(2.5));
  CHECK(!fine[tested].at[3].seen);
  // The same plan again gives the same, whatever was looked at between.
  const auto again = stripesOf(alternating(fresh, 9, 12));
  for (std::size_t r = 0; r < again.size(); ++r)
    for (std::size_t d = 0; d < again[r].at.size(); ++d) CHECK(again[r].at[d].contrast == thick[r].at[d].contrast);
}

TEST_CASE("stripes of cropped hair, and a search that was stopped, break nothing", "[look][stripes]") {
  look::StripeSearch search(2000);
  plan::Plan cropped = alternating(plan::Plan::fresh(2), 9, 12);
  plan::Hair hair = cropped.hair();
  for (double& length : hair.length_mm) length = 10;
  cropped.put(plan::kHairId, hair);
  std::stop_source stopped;
  stopped.request_stop();
  const auto none = search.update(cropped, {}, stopped.get_token());
  REQUIRE(!none);
  CHECK(none.error().code == ErrorCode::Cancelled);
  const auto found = search.update(cropped, {}, {}).value();
  for (const look::Stripes& s : found)
    for (const look::SeenStripe& at : s.at) {
      CHECK(std::isfinite(at.contrast));
      CHECK(at.contrast <= 1);
    }
}
