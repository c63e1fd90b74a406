// After an edit only what it touches is computed again; a full computation
// gives the same: readings to 1e-9, pictures byte for byte.
#include <catch2/catch.hpp>

#include "engine/look/look.h"
#include "tests/engine/plan_samples.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using plan::samples::Draws;

namespace {

const std::vector<look::PictureRequest> kPictures{{head::ViewName::Front, 1.0},
                                                  {head::ViewName::Back, 1.5}};

bool near(double a, double b) { return std::abs(a - b) <= 1e-9; }

bool same(const look::Reading& a, const look::Reading& b) {
  // Areas are hundreds of cm2: 1e-9 is meant of the value.
  return std::abs(a.seen_mm2 - b.seen_mm2) <= 1e-9 * std::max(1.0, b.seen_mm2) && near(a.skin_share, b.skin_share) &&
         near(a.lightness, b.lightness) && near(a.a, b.a) && near(a.b, b.b) && near(a.level, b.level) &&
         near(a.light_share, b.light_share) && near(a.sampling_error, b.sampling_error) &&
         near(a.low, b.low) && near(a.high, b.high) && a.rangeKnown == b.rangeKnown;
}

void checkSame(const look::LookFrame& kept, const look::LookFrame& fresh) {
  REQUIRE(kept.readings);
  REQUIRE(kept.readings->regions.size() == visibility::kRegions);
  CHECK(same(kept.readings->whole, fresh.readings->whole));
  for (std::size_t r = 0; r < visibility::kRegions; ++r) {
    const look::RegionReading &a = kept.readings->regions[r], &b = fresh.readings->regions[r];
    CAPTURE(visibility::regionWord(a.region));
    REQUIRE(a.whole.has_value() == b.whole.has_value());
    if (a.whole) {
      INFO(a.whole->lightness << " against " << b.whole->lightness);
      CHECK(same(*a.whole, *b.whole));
    }
    for (std::size_t p = 0; p < 3; ++p) {
      REQUIRE(a.rootMiddleEnd[p].has_value() == b.rootMiddleEnd[p].has_value());
      if (a.rootMiddleEnd[p]) CHECK(same(*a.rootMiddleEnd[p], *b.rootMiddleEnd[p]));
    }
    CHECK(a.warmth == b.warmth);
    CHECK(a.contrast.verdict == b.contrast.verdict);
    CHECK(near(a.contrast.spread, b.contrast.spread));
    CHECK(near(a.contrast.delta, b.contrast.delta));
  }
  REQUIRE(kept.pictures.size() == fresh.pictures.size());
  for (std::size_t k = 0; k < kept.pictures.size(); ++k)
    CHECK(kept.pictures[k]->rgba == fresh.pictures[k]->rgba);
}

/// One edit of any kind that a hand can make. Slow kinds (head, hair's shape,
/// way of wearing) come seldom.
std::string edit(plan::Plan& plan, look::LookSettings& settings, Draws& draw) {
  const auto pieces = plan.pieces();
  const auto any = [&] { return pieces[static_cast<std::size_t>(draw.whole(0, static_cast<int>(pieces.size()) - 1))].first; };
  const auto change = [&](auto make) {
    const plan::ItemId id = any();
    plan::Piece piece = *plan.find<plan::Piece>(id);
    make(piece);
    plan.put(id, piece);
  };
  switch (pieces.size() < 4 ? 0 : draw.whole(0, 16)) {
    case 0:
    case 1: plan.put(plan.freeId("piece"), plan::samples::randomPiece(draw, "choice-1", draw.whole(1, 40))); return "add";
    case 2: plan.put(any(), plan::ItemPtr{}); return "remove";
    case 3: change([&](plan::Piece& p) { for (auto& q : p.line) q.drop_deg += 3, q.bearing_deg += 2; }); return "move";
    case 4: change([&](plan::Piece& p) { p.thickness_mm = draw.uniform(1, 12); }); return "thickness";
    case 5: change([&](plan::Piece& p) { p.taken_frac = draw.uniform(0, 1); }); return "share";
    case 6: change([&](plan::Piece& p) { p.start_mm = draw.uniform(0, 80); }); return "start";
    case 7: change([&](plan::Piece& p) { p.backcomb = {draw.uniform(20, 150), draw.uniform(0, 1), draw.uniform(5, 50)}; }); return "backcomb";
    case 8: change([&](plan::Piece& p) { p.order = draw.whole(1, 40); }); return "order";
    case 9: change([&](plan::Piece& p) { p.action = draw.oneOf<plan::Action>(3); }); return "action";
    case 10: change([&](plan::Piece& p) { p.root.lifts = {draw.uniform(7, 9), 7, 10}; p.handover_mm = draw.uniform(40, 160); p.end.lifts = {10, 9, 10}; }); return "lifts";
    case 11: change([&](plan::Piece& p) { p.root.finish = plan::FinishesAt{draw.uniform(6, 10), draw.oneOf<plan::Tone>(7)}; }); return "finish";
    case 12: change([&](plan::Piece& p) { p.label += "x"; p.keptIn = draw.oneOf<plan::KeptIn>(3); }); return "label";
    case 13: {
      plan::Treatment t;
      t.choice = "choice-1";
      t.kind = draw.oneOf<plan::Treatment::Kind>(2);
      t.to_mm = draw.uniform(20, 80);
      t.colour.level = draw.uniform(4, 8);
      plan.put("treatment-1", t);
      return "treatment";
    }
    case 14: {
      plan::Hair hair = plan.hair();
      hair.level[static_cast<std::size_t>(draw.whole(0, 5))].root = draw.uniform(3, 8);
      plan.put(plan::kHairId, hair);
      return "levels";
    }
    case 15:
      settings.light = draw.oneOf<colour::Light>(5);
      settings.toner = draw.oneOf<look::Toner>(2);
      settings.lift = draw.oneOf<look::Lift>(3);
      settings.weeks = draw.whole(0, 1) * draw.uniform(0, 12);
      return "settings";
    default:
      settings.worn.way = draw.whole(0, 2) ? hair::WornWay::Down : hair::WornWay::TiedBack;
      settings.distance_m = draw.uniform(0.6, 3);
      return "worn";
  }
}

}  // namespace

TEST_CASE("sixty random edits: what is kept equals what is computed afresh", "[look][incremental]") {
  constexpr int kLocks = 3000;
  Draws draw(77);
  plan::Plan plan = mixedPlan(61);
  look::LookSettings settings;
  look::LookEngine kept(kLocks, 2);
  REQUIRE(kept.update(plan, settings, kPictures, {}).ok());
  int small = 0;
  std::string edits;
  for (int k = 1; k <= 60; ++k) {
    edits += " " + edit(plan, settings, draw);
    const auto frame = kept.update(plan, settings, kPictures, {});
    REQUIRE(frame.ok());
    if (frame->locksRecoloured < kLocks / 2) ++small;
    if (k % 6 != 0) continue;
    look::LookEngine fresh(kLocks, 2);
    const auto again = fresh.update(plan, settings, kPictures, {});
    REQUIRE(again.ok());
    INFO("after " << k << " edits:" << edits);
    checkSame(*frame, *again);
  }
  CHECK(small > 20);  // most edits did keep most of the work
}

TEST_CASE("an edit of one piece recolours its own locks and nothing else", "[look][incremental]") {
  plan::Plan plan = mixedPlan(62);
  look::LookEngine engine(3000, 2);
  REQUIRE(engine.update(plan, {}, {}, {}).ok());
  const auto pieces = plan.pieces();
  plan::Piece piece = *pieces[3].second;
  piece.start_mm += 7;
  plan.put(pieces[3].first, piece);
  const auto frame = engine.update(plan, {}, {}, {});
  REQUIRE(frame.ok());
  CHECK_FALSE(frame->shapeRecomputed);
  CHECK(frame->locksRecoloured > 0);
  CHECK(frame->locksRecoloured < 200);
  const auto again = engine.update(plan, {}, {}, {});
  REQUIRE(again.ok());
  CHECK(again->locksRecoloured == 0);
  piece.label = "renamed";
  plan.put(pieces[3].first, piece);
  CHECK(engine.update(plan, {}, {}, {})->locksRecoloured == 0);
}
