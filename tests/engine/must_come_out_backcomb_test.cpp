// Must come out (e): more backcomb darkens the root band and leaves the ends;
// the blend is widest for a pushed share between a half and three quarters.
// Common practice, no source.
#include <catch2/catch.hpp>

#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// First x at which a rising curve, 1 mm apart, passes a value.
double crossing(const std::vector<double>& curve, double value) {
  for (std::size_t i = 1; i < curve.size(); ++i)
    if (curve[i] >= value)
      return static_cast<double>(i - 1) + (value - curve[i - 1]) / (curve[i] - curve[i - 1]);
  return static_cast<double>(curve.size());
}

double blendWidth_mm(const plan::Piece& piece) {
  std::vector<double> xs(260);
  for (std::size_t i = 0; i < xs.size(); ++i) xs[i] = static_cast<double>(i);
  const std::vector<double> curve = placement::lightCurve(piece, xs, {});
  return crossing(curve, 0.9) - crossing(curve, 0.1);
}

}  // namespace

TEST_CASE("more backcomb darkens the roots and leaves the ends (common practice, no source)",
          "[look][must-come-out]") {
  const auto planWith = [](double pushed) {
    plan::Plan plan = plan::Plan::fresh(21);
    for (const double height : {76.0, 62.0, 48.0, 34.0, 20.0, 6.0}) {
      plan::Piece piece = backSlice(head::HeadShape(), height, 100, 6);
      piece.backcomb = {80, pushed, 28};
      addPiece(plan, piece);
    }
    return plan;
  };
  ColouredHair head(planWith(0), 10000, {}, 1.5);
  // Roots: hair seen within 70 mm of its scalp. Ends: beyond 200 mm.
  const auto lightness = [&] {
    double area[2] = {}, y[2] = {};
    for (std::uint32_t lock = 0; lock < head.hair().seen().locks(); ++lock)
      for (const visibility::SeenEntry& e : head.hair().seen().entriesOf(lock)) {
        if (e.view != kBackView || (e.bin >= 7 && e.bin < 20)) continue;
        const std::size_t k = e.bin < 7 ? 0 : 1;
        area[k] += static_cast<double>(e.area_mm2);
        y[k] += static_cast<double>(e.area_mm2 * head.colours().at(lock, e.bin).y);
      }
    return std::pair{colour::lightnessFromY(y[0] / area[0]), colour::lightnessFromY(y[1] / area[1])};
  };
  auto [roots, ends] = lightness();
  const double firstEnds = ends, firstRoots = roots;
  for (const double pushed : {0.25, 0.5, 0.75, 1.0}) {
    CAPTURE(pushed);
    head.update(planWith(pushed));
    const auto [nowRoots, nowEnds] = lightness();
    CHECK(nowRoots < roots - 0.3);
    CHECK(std::abs(nowEnds - firstEnds) < 0.2);
    roots = nowRoots;
  }
  WARN("roots from L* " << firstRoots << " to " << roots << ", ends stay at " << firstEnds);
}

TEST_CASE("the blend is widest for a pushed share between a half and three quarters (common practice, no source)",
          "[placement][must-come-out]") {
  for (const double start : {15.0, 25.0})
    for (const double depth : {90.0, 100.0, 120.0}) {
      plan::Piece piece = slice({}, 5);
      piece.start_mm = start;
      double widest = 0, at = -1;
      for (int k = 0; k <= 100; ++k) {
        piece.backcomb = {depth, k / 100.0, 28};
        const double width = blendWidth_mm(piece);
        if (width > widest) widest = width, at = k / 100.0;
      }
      INFO("start " << start << ", depth " << depth << ": widest " << widest << " mm at " << at);
      CHECK(at >= 0.5);
      CHECK(at <= 0.75);
      piece.backcomb = {depth, 0, 28};
      CHECK(widest > 2 * blendWidth_mm(piece));
    }
}
