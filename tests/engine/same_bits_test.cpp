// One thread and two give the same bits: locks, samples, colours, pictures.
#include <catch2/catch.hpp>
#include <cstring>

#include "engine/base/parallel.h"
#include "engine/look/picture_maker.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

template <class T>
bool sameBits(const std::vector<T>& a, const std::vector<T>& b) {
  return a.size() == b.size() && (a.empty() || std::memcmp(a.data(), b.data(), a.size() * sizeof(T)) == 0);
}

/// Puts the limit back when the test ends, however it ends.
struct ThreadLimit {
  explicit ThreadLimit(int threads) : before(setThreadLimit(threads)) {}
  ~ThreadLimit() { setThreadLimit(before); }
  int before;
};

}  // namespace

TEST_CASE("one thread and two give the same bits", "[look][determinism]") {
  plan::Plan plan = mixedPlan(71);
  plan::Hair hair;
  hair.curl = plan::CurlClass::LooseCurl;
  plan.put(plan::kHairId, hair);
  struct Made {
    std::unique_ptr<ColouredHair> head;
    std::shared_ptr<const look::Picture> picture;
    look::Readings readings;
  } made[2];
  for (int k = 0; k < 2; ++k) {
    const ThreadLimit limit(k + 1);
    made[k].head = std::make_unique<ColouredHair>(plan, 4000, look::LookSettings{}, 2);
    look::PictureMaker maker(made[k].head->hair().pictureRaster({head::ViewName::Crown, 0.5}, {}), made[k].head->hair().shape(), 4000, 1);
    made[k].picture = maker.update(made[k].head->colours(), colour::Light::Daylight, {});
    made[k].readings = made[k].head->readings();
  }
  const look::HeadHair &one = made[0].head->hair(), &two = made[1].head->hair();
  CHECK(sameBits(one.locks().points, two.locks().points));
  CHECK(sameBits(one.locks().first, two.locks().first));
  CHECK(sameBits(one.locks().length_mm, two.locks().length_mm));
  for (int v = 0; v < visibility::SeenHair::kViews; ++v) {
    CAPTURE(v);
    CHECK(sameBits(one.seen().view(v).sample, two.seen().view(v).sample));
    CHECK(sameBits(one.seen().view(v).depth_mm, two.seen().view(v).depth_mm));
    CHECK(sameBits(one.seen().view(v).hairCover, two.seen().view(v).hairCover));
    CHECK(sameBits(one.seen().view(v).scalpCover, two.seen().view(v).scalpCover));
  }
  std::size_t entries = 0;
  for (std::uint32_t lock = 0; lock < 4000; ++lock) {
    const auto a = one.seen().entriesOf(lock), b = two.seen().entriesOf(lock);
    REQUIRE(a.size() == b.size());
    entries += a.size();
    REQUIRE(std::memcmp(a.data(), b.data(), a.size_bytes()) == 0);
    for (int bin = 0; bin < made[0].head->colours().bins(); ++bin)
      REQUIRE(made[0].head->colours().of(lock)[bin] == made[1].head->colours().of(lock)[bin]);
  }
  CHECK(entries > 20000);
  CHECK(sameBits(made[0].picture->rgba, made[1].picture->rgba));
  for (std::size_t r = 0; r < visibility::kRegions; ++r) {
    const auto &a = made[0].readings.regions[r].whole, &b = made[1].readings.regions[r].whole;
    REQUIRE(a.has_value() == b.has_value());
    if (a) CHECK(a->lightness == b->lightness);
  }
}
