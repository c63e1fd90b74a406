// Which locks a piece takes and where light starts on them.
#include <catch2/catch.hpp>
#include <set>

#include "tests/engine/plan_samples.h"
#include "engine/head/surface_distance.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::placement;
using plan::samples::Draws;

namespace {

/// Mean over locks of the light at x, each lock by its own numbers.
double meanOverLocks(const plan::Piece& piece, double x_mm, std::uint32_t locks) {
  double sum = 0;
  for (std::uint32_t lock = 0; lock < locks; ++lock) {
    const LockNumbers own = lockNumbers(3, lock);
    sum += lightAt(lockStart(piece, own.startNormal, own.pushed < piece.backcomb.pushed_frac, {}), x_mm);
  }
  return sum / locks;
}

plan::Piece started(double start, double blend, plan::Backcomb backcomb) {
  plan::Piece piece;
  piece.start_mm = start;
  piece.blend_mm = blend;
  piece.backcomb = backcomb;
  return piece;
}

}  // namespace

TEST_CASE("the card's curve is the mean over the locks", "[placement]") {
  const plan::Piece pieces[] = {started(20, 12, {}), started(5, 30, {}), started(0, 0, {}),
                                started(0, 20, {80, 0.5, 28}), started(25, 12, {90, 0.6, 28}),
                                started(40, 0, {60, 1, 0}), started(30, 50, {20, 0.4, 28})};
  for (const plan::Piece& piece : pieces) {
    std::vector<double> xs;
    for (double x = 0.5; x < 200; x += 3.1) xs.push_back(x);
    const std::vector<double> curve = lightCurve(piece, xs, {});
    for (std::size_t k = 0; k < xs.size(); ++k) {
      INFO("start " << piece.start_mm << ", depth " << piece.backcomb.depth_mm << ", x " << xs[k]);
      CHECK(curve[k] == Approx(meanOverLocks(piece, xs[k], 40000)).margin(0.01));
      if (k) CHECK(curve[k] >= curve[k - 1] - 1e-12);
    }
  }
}

TEST_CASE("no light on the scalp, unless it starts there", "[placement]") {
  for (const double start : {0.5, 5.0, 20.0, 80.0})
    for (const double blend : {0.0, 5.0, 60.0, 200.0})
      for (const double z : {-3.0, -1.0, 0.0, 2.0})
        for (const bool pushed : {false, true})
          CHECK(lightAt(lockStart(started(start, blend, {100, 0.5, 30}), z, pushed, {}), 0) == 0);
  for (const double z : {-3.0, 0.0, 3.0}) {
    const LockStart fromScalp = lockStart(started(0, 40, {}), z, false, {});
    CHECK(lightAt(fromScalp, 0) == 1);
    CHECK(meanLight(fromScalp, 0, 10) == 1);
    CHECK(meanLight(fromScalp, -10, 0) == 0);  // grown out: new hair is not light
  }
}

TEST_CASE("an arc bin holds the bin's own average", "[placement]") {
  Draws draw(8);
  for (int k = 0; k < 200; ++k) {
    const LockStart start{draw.uniform(0, 60), draw.uniform(0, 80)};
    const double from = draw.uniform(-20, 80), to = from + draw.uniform(0.5, 20);
    double sum = 0;
    constexpr int kParts = 20000;
    for (int i = 0; i < kParts; ++i) sum += lightAt(start, from + (to - from) * (i + 0.5) / kParts);
    INFO("at " << start.at_mm << ", blend " << start.blend_mm << ", " << from << " to " << to);
    CHECK(meanLight(start, from, to) == Approx(sum / kParts).margin(1e-4));
  }
  // So a change of a tenth of a millimetre is felt.
  CHECK(meanLight({20.0, 12}, 10, 20) > meanLight({20.1, 12}, 10, 20));
}

TEST_CASE("earlier, shallower and less pushed is never less light on any lock", "[placement]") {
  Draws draw(9);
  for (int k = 0; k < 4000; ++k) {
    const plan::Piece base = started(draw.uniform(0, 90), draw.uniform(0, 60),
                                     {draw.uniform(0, 150), draw.uniform(0, 1), draw.uniform(0, 60)});
    plan::Piece earlier = base, shallower = base;
    earlier.start_mm *= draw.uniform(0, 1);
    shallower.backcomb.depth_mm *= draw.uniform(0, 1);
    const double z = draw.uniform(-4, 4), x = draw.uniform(0, 200);
    for (const bool pushed : {false, true}) {
      const double now = lightAt(lockStart(base, z, pushed, {}), x);
      INFO("start " << base.start_mm << " to " << earlier.start_mm << ", depth " << base.backcomb.depth_mm
           << " to " << shallower.backcomb.depth_mm << ", pushed " << pushed << ", x " << x);
      REQUIRE(lightAt(lockStart(earlier, z, pushed, {}), x) >= now);
      // Combing back less far cannot start later (nothing pushed is the shallowest).
      if (shallower.backcomb.depth_mm > 0) REQUIRE(lightAt(lockStart(shallower, z, pushed, {}), x) >= now);
    }
    REQUIRE(lightAt(lockStart(base, z, false, {}), base.start_mm + 20) >=
            lightAt(lockStart(base, z, true, {}), base.start_mm + 20) - (base.backcomb.blend_mm < base.blend_mm ? 1 : 0));
  }
}

TEST_CASE("members are the roots inside the strip, found without the grid", "[placement]") {
  const head::HeadShape shape;
  const head::Hairline hairline(shape);
  const hair::Roots roots = hair::spreadRoots(shape, hairline, 226, 12000, 5);
  const hair::RootGrid grid(roots);
  Draws draw(10);
  std::size_t members = 0;
  for (int k = 0; k < 60; ++k) {
    plan::Piece piece = plan::samples::randomPiece(draw, "choice-1", 1);
    piece.taking = k % 3 ? plan::Taking::Weave : plan::Taking::Slice;
    if (k % 3) piece.tooth_mm = draw.uniform(0.5, 6), piece.gap_mm = draw.uniform(0.5, 6);
    const bool fine = std::min(piece.tooth_mm, piece.gap_mm) < kFinestTooth_mm;
    std::set<std::uint32_t> found;
    for (const Member& m : membersOf(piece, shape, roots, grid, 5)) {
      found.insert(m.lock);
      CHECK(static_cast<double>(m.share) == Approx(k % 3 && fine ? piece.tooth_mm / (piece.tooth_mm + piece.gap_mm) : 1.0));
      CHECK(m.depth >= 0);
      CHECK(m.depth <= 1);
    }
    members += found.size();

    // By brute force: every root against every half millimetre of the line.
    std::vector<Vec3> ends;
    for (const auto& p : piece.line) ends.push_back(shape.pointAt(p));
    const std::vector<Vec3> line = head::resampledOnSurface(shape, ends, 0.5);
    std::vector<double> along{0};
    for (std::size_t i = 1; i < line.size(); ++i) along.push_back(along.back() + (line[i] - line[i - 1]).norm());
    for (std::uint32_t lock = 0; lock < roots.roots.size(); ++lock) {
      const Vec3& at = roots.roots[lock].at;
      std::size_t best = 0;
      double distance = 1e9;
      for (std::size_t i = 0; i < line.size(); ++i)
        if (const double d = (line[i] - at).norm(); d < distance) best = i, distance = d;
      const double half = piece.thickness_mm / 2, s = along[best];
      const bool taken = lockNumbers(5, lock).taken < piece.taken_frac;
      // Edges of the strip, of teeth and of drop-outs: half a millimetre either way is open.
      bool edge = std::abs(distance - half) < 0.5 || best < 2 || best + 2 >= line.size();
      bool inside = distance < half && taken;
      for (const plan::Stretch& out : piece.dropOuts) {
        if (s >= out.from_mm && s < out.to_mm) inside = false;
        edge = edge || std::abs(s - out.from_mm) < 0.7 || std::abs(s - out.to_mm) < 0.7;
      }
      if (piece.taking == plan::Taking::Weave && !fine) {
        const double t = std::fmod(s, piece.tooth_mm + piece.gap_mm);
        if (t >= piece.tooth_mm) inside = false;
        edge = edge || t < 0.7 || std::abs(t - piece.tooth_mm) < 0.7 || piece.tooth_mm + piece.gap_mm - t < 0.7;
      }
      if (edge && distance < half + 1) continue;
      INFO("piece " << k << ", lock " << lock << ", across " << distance << " of " << half << ", along " << s);
      REQUIRE((found.count(lock) == 1) == inside);
    }
  }
  CHECK(members > 500);
}

TEST_CASE("a lock's numbers hang on the head's seed and its own index only", "[placement]") {
  CHECK(lockNumbers(1, 7).taken == lockNumbers(1, 7).taken);
  CHECK(lockNumbers(1, 7).taken != lockNumbers(2, 7).taken);
  double mean = 0, square = 0;
  for (std::uint32_t i = 0; i < 50000; ++i) {
    const LockNumbers n = lockNumbers(4, i);
    mean += (n.taken + n.pushed + n.white + n.scattered) / 4 / 50000;
    square += n.startNormal * n.startNormal / 50000;
  }
  CHECK(mean == Approx(0.5).margin(0.004));
  CHECK(square == Approx(1).margin(0.03));

  // Same placement under other ids and labels: the same bits.
  plan::Plan one = plan::Plan::fresh(6), other = plan::Plan::fresh(6);
  plan::Piece a = backSlice(head::HeadShape(), 40, 80, 6), b = backSlice(head::HeadShape(), 20, 80, 6);
  a.taken_frac = b.taken_frac = 0.6;
  a.order = 1, b.order = 2;
  one.put("piece-1", a), one.put("piece-2", b);
  a.label = "first", b.note = "second";
  other.put("piece-31", a), other.put("piece-30", b);
  const ColouredHair p(one, 3000, {}, 2), q(other, 3000, {}, 2);
  for (std::uint32_t lock = 0; lock < 3000; ++lock)
    for (int bin = 0; bin < p.colours().bins(); ++bin)
      REQUIRE(p.colours().of(lock)[bin] == q.colours().of(lock)[bin]);
}

TEST_CASE("a left-out keeps its hair, and the earlier piece has it", "[placement]") {
  plan::Plan plan = plan::Plan::fresh(8);
  const head::HeadShape shape;
  plan::Piece light = backSlice(shape, 30, 80, 10), dark = light, leave = backSlice(shape, 30, 80, 4);
  light.order = 1;
  dark.order = 2;
  dark.action = plan::Action::Deepen;
  leave.order = 3;
  leave.action = plan::Action::LeaveOut;
  plan.put("piece-1", light), plan.put("piece-2", dark), plan.put("piece-3", leave);
  ColouredHair head(plan, 6000, {}, 2);
  std::size_t lightLocks = 0, darkLocks = 0, leftLocks = 0;
  const auto count = [&] {
    lightLocks = darkLocks = leftLocks = 0;
    for (std::uint32_t lock = 0; lock < 6000; ++lock)
      if (const plan::Piece* p = head.colours().pieceOf(lock))
        ++(p->action == plan::Action::Lighten ? lightLocks : p->action == plan::Action::Deepen ? darkLocks : leftLocks);
  };
  count();
  CHECK(lightLocks > 20);
  CHECK(darkLocks == 0);
  CHECK(leftLocks > 15);
  dark.order = 0;
  plan.put("piece-2", dark);
  head.update(plan);
  const std::size_t left = leftLocks;
  count();
  CHECK(lightLocks == 0);
  CHECK(darkLocks > 20);
  CHECK(leftLocks == left);
}
