// Must come out (c) and (d): how much a piece at the back counts by its height,
// and nape pieces worn down and tied back. Common practice, no source.
#include <catch2/catch.hpp>

#include "engine/base/number_text.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Light seen over hair taken, 1 = counts as its share.
double counts(ColouredHair& head, double height_mm, int view, const look::LookSettings& settings) {
  plan::Plan plan = plan::Plan::fresh(head.hair().seed());
  plan::Piece piece = backSlice(head.hair().shape(), height_mm, 76, 8);
  piece.start_mm = 15;
  addPiece(plan, piece);
  head.update(plan, settings);
  REQUIRE(head.taken() > 0.003);
  return head.lightSeen(view) / head.taken();
}

}  // namespace

TEST_CASE("the lower a piece at the back, the less of it is seen (common practice, no source)",
          "[look][must-come-out]") {
  constexpr double kHeights_mm[] = {70, 52, 31, 8, -16};
  for (const std::uint64_t seed : {1, 2}) {
    ColouredHair head(plan::Plan::fresh(seed), 12000, {}, 1.5);
    double before = 1e9;
    std::string row;
    for (const double height : kHeights_mm) {
      const double now = counts(head, height, kBackView, {});
      row += " " + numberText(now, 3);
      INFO("seed " << seed << ", height " << height << ", seen over taken so far:" << row);
      CHECK(now < before);
      before = now;
    }
    WARN("seen over taken in the back view at 70, 52, 31, 8, -16 mm:" << row);
  }
}

TEST_CASE("nape pieces hardly count worn down and fully count tied back (common practice, no source)",
          "[look][must-come-out]") {
  look::LookSettings tied;
  tied.worn.way = hair::WornWay::TiedBack;
  ColouredHair down(plan::Plan::fresh(3), 12000, {}, 1.5);
  ColouredHair back(plan::Plan::fresh(3), 12000, tied, 1.5);
  // The hair of the nape proper: tied back, what is rooted higher than this is
  // covered by nape hair that is brushed up over it.
  for (const double height : {-58.0, -62.0, -66.0}) {
    CAPTURE(height);
    const double seenDown = counts(down, height, -1, {});
    const double seenDownBehind = counts(down, height, kBackView, {});
    const double seenTied = counts(back, height, kBackView, tied);
    WARN("height " << height << ": down " << seenDown << " over all views, " << seenDownBehind
                   << " behind; tied " << seenTied << " behind");
    CHECK(seenDown < 0.05);
    CHECK(seenDownBehind < 0.05);
    CHECK(seenTied > 1);
  }
}
