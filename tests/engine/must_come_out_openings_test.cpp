// What must come out where the part moves; common practice, no source.
#include <catch2/catch.hpp>

#include "engine/look/head_hair.h"
#include "engine/look/opening_blocks.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::look;

namespace {

/// One head whose openings are traced once and then looked at with many plans.
class Opened {
 public:
  Opened(std::uint64_t seed, int locks) : plan_(plan::Plan::fresh(seed)) {
    ground_ = HeadGround::build(plan_, locks, 2).value();
    grown_ = fallOf(plan_, {}, *ground_, {4}, {});
  }
  Opening at(const std::vector<plan::Piece>& pieces, double shift_mm) {
    plan::Plan plan = plan_;
    for (const plan::Piece& piece : pieces) test::addPiece(plan, piece);
    LockColours colours;
    colours.update(plan, {}, {ground_->shape(), ground_->roots(), ground_->grid(), grown_, ground_->seed()});
    const Assumptions assumptions;
    const PlannedColours planned = plannedColours(colours, ground_->roots(), grown_);
    OpeningView& rest = viewAt(0);
    rest.colour(colours, {});
    const Ground ground = groundOf(rest, colours, planned, 1, ground_->shape(), assumptions);
    OpeningView& view = viewAt(shift_mm);
    view.colour(colours, {});
    return blocksOf(view, colours, planned, ground, 1, ground_->shape(), assumptions);
  }
  const head::HeadShape& shape() const { return ground_->shape(); }

 private:
  OpeningView& viewAt(double shift_mm) {
    auto& view = views_[shift_mm];
    if (!view) view = OpeningView::build(plan_, *ground_, OpeningWay::Part, shift_mm, {});
    return *view;
  }
  plan::Plan plan_;
  std::shared_ptr<const HeadGround> ground_;
  hair::Locks grown_;
  std::map<double, std::unique_ptr<OpeningView>> views_;
};

/// Nearest edge 16 mm from the part, 12 mm thick, 90 mm long, light from the root.
plan::Piece thick(const head::HeadShape& shape) {
  plan::Piece piece = test::topSlice(shape, 22, 60, -30, 12);
  piece.start_mm = 0;
  return piece;
}

void thickPieceBesideThePart(std::uint64_t seed, int locks) {
  CAPTURE(seed, locks);
  Opened head(seed, locks);
  const plan::Piece piece = thick(head.shape());
  constexpr double kBefore = 13, kBehind = 31;  // the part just beside the piece, on either side

  CHECK(head.at({piece}, 0).light.area_cm2 < 0.5);
  for (const double shift : {kBefore, kBehind}) {
    CAPTURE(shift);
    const Opening full = head.at({piece}, shift);
    CHECK(full.light.area_cm2 > 15);
    CHECK(full.light.run_mm > 15);
    CHECK(full.light.lightness > full.light.surround + 10);
    CHECK(full.light.pieces == std::vector<plan::ItemId>{"piece-1"});

    // The middle of its length left dark: a block on either side of the gap, each smaller.
    plan::Piece dropped = piece, front = piece, behind = piece;
    dropped.dropOuts = {{30, 60}}, front.dropOuts = {{30, 200}}, behind.dropOuts = {{0, 60}};
    CHECK(head.at({dropped}, shift).light.area_cm2 < 0.65 * full.light.area_cm2);
    CHECK(head.at({front}, shift).light.area_cm2 > 1);
    CHECK(head.at({behind}, shift).light.area_cm2 > 1);

    plan::Piece thin = piece, low = piece, nearer = piece, farther = piece;
    thin.thickness_mm = 3;
    low.start_mm = 70;
    CHECK(head.at({thin}, shift).light.area_cm2 < 0.5);
    CHECK(head.at({low}, shift).light.area_cm2 < 0.5);
    // Split in its width: two of 3 mm with 6 mm left dark between them.
    nearer = test::topSlice(head.shape(), 17.5, 60, -30, 3), farther = test::topSlice(head.shape(), 26.5, 60, -30, 3);
    nearer.start_mm = farther.start_mm = 0;
    CHECK(head.at({nearer, farther}, shift).light.area_cm2 < 0.3 * full.light.area_cm2);
  }
}

}  // namespace

TEST_CASE("A thick light piece beside the part is hidden at rest and a block once the part lands beside it",
          "[must-come-out]") {
  for (const std::uint64_t seed : {11, 12, 13, 14, 15}) thickPieceBesideThePart(seed, 30000);
}

TEST_CASE("The same with 100,000 locks", "[must-come-out]") { thickPieceBesideThePart(11, 100000); }

TEST_CASE("A wide left-out beside the part makes a dark block where a thin one does not", "[must-come-out]") {
  Opened head(11, 30000);
  // Light all over but for a strip left dark from 16 mm beside the part on.
  plan::Piece kind = test::slice({}, 5);
  kind.start_mm = 0;
  const std::vector<plan::Piece> all = test::ringsOverAll(head.shape(), kind);
  const plan::ItemId strip = "piece-" + std::to_string(all.size() + 1);
  const auto light = [&](double width_mm) {
    std::vector<plan::Piece> pieces = all;
    pieces.push_back(test::topSlice(head.shape(), 16 + width_mm / 2, 60, -30, width_mm));
    pieces.back().action = plan::Action::LeaveOut;
    return pieces;
  };
  const Opening rest = head.at(light(14), 0), wide = head.at(light(14), 16), thin = head.at(light(3), 16);
  CHECK(rest.dark.area_cm2 < 0.5);
  CHECK(wide.dark.area_cm2 > 6);
  CHECK(wide.dark.surround > wide.dark.lightness + 5);
  REQUIRE_FALSE(wide.dark.pieces.empty());
  CHECK(wide.dark.pieces.front() == strip);
  CHECK(thin.dark.area_cm2 < 0.5);
}

TEST_CASE("The sweep finds the block between its steps and says which positions have no hair", "[must-come-out]") {
  plan::Plan plan = plan::Plan::fresh(11);
  test::addPiece(plan, thick(head::HeadShape()));
  OpeningSweep sweep(8000);
  int coarse = 0;
  CHECK_FALSE(sweep.isTraced(plan));
  const Openings found = sweep.update(plan, {}, {}, [&](const Openings& first) {
    ++coarse;
    CHECK(first.all.size() == 20);  // 17 part positions, crown opened, blown, tied back
  }).value();
  CHECK(coarse == 1);
  CHECK(sweep.isTraced(plan));
  REQUIRE(found.worstLight());
  CHECK(found.worstLight()->way == OpeningWay::Part);
  CHECK(found.worstLight()->shift_mm > 8);
  CHECK(found.worstLight()->shift_mm < 36);
  CHECK(found.worstDark() == nullptr);
  CHECK(found.offHair_mm.empty());
  for (std::size_t i = 0; i + 1 < found.all.size(); ++i)
    if (found.all[i + 1].way == OpeningWay::Part) CHECK(found.all[i].shift_mm < found.all[i + 1].shift_mm);

  SECTION("an edit gives what a fresh sweep gives") {
    plan::Piece piece = *plan.pieces().front().second;
    piece.thickness_mm = 8;
    plan.put("piece-1", piece);
    const Openings edited = sweep.update(plan, {}, {}).value();
    OpeningSweep other(8000);
    const Openings fresh = other.update(plan, {}, {}).value();
    REQUIRE(edited.all.size() == fresh.all.size());
    for (std::size_t i = 0; i < fresh.all.size(); ++i) {
      CHECK(edited.all[i].shift_mm == fresh.all[i].shift_mm);
      CHECK(edited.all[i].light.area_cm2 == fresh.all[i].light.area_cm2);
      CHECK(edited.all[i].run_mm == fresh.all[i].run_mm);
    }
  }
  SECTION("a plan without pieces has no block") {
    const Openings none = sweep.update(plan::Plan::fresh(11), {}, {}).value();
    CHECK(none.worstLight() == nullptr);
    CHECK(none.worstDark() == nullptr);
    CHECK(none.all.size() == 20);
  }
  SECTION("stopped") {
    std::stop_source stop;
    stop.request_stop();
    CHECK(sweep.update(plan::Plan::fresh(12), {}, stop.get_token()).error().code == ErrorCode::Cancelled);
    CHECK(sweep.update(plan, {}, {}).value().worstLight());
  }
}

TEST_CASE("Openings of unusual heads", "[openings]") {
  plan::Plan plan = plan::Plan::fresh(11);
  test::addPiece(plan, thick(head::HeadShape()));
  plan::Head head = plan.head();
  plan::Hair hair = plan.hair();
  SECTION("no part") { head.part.clear(); }
  SECTION("whorl at the hairline") { head.whorls = {{{0, 35}, plan::Turn::Clockwise}}; }
  SECTION("hair 10 mm long") { hair.length_mm.fill(10); }
  SECTION("no hair in front and on top") { head.hairline.front_mm = 60; }
  plan.put(plan::kHeadId, head);
  plan.put(plan::kHairId, hair);
  OpeningSweep sweep(4000);
  const Openings found = sweep.update(plan, {}, {}).value();
  for (const Opening& o : found.all)
    for (const Patch* p : {&o.light, &o.dark}) {
      CHECK(p->area_cm2 >= 0);
      CHECK(p->area_cm2 < 900);
      CHECK(std::isfinite(p->lightness + p->surround + p->run_mm + p->at.bearing_deg + p->at.drop_deg));
      CHECK((p->area_cm2 > 0) == !p->places.empty());
    }
  if (head.part.empty()) CHECK(found.all.size() == 3);
}
