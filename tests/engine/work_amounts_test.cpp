// Hairs, grams and foils of pieces.
#include <catch2/catch.hpp>

#include "engine/work/amounts.h"
#include "engine/work/outcome.h"
#include "engine/work/work_list.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;
using namespace combdraft::work;

namespace {

/// Level slices at the back, 60 mm wide, 200 hairs to the square centimetre, all
/// hair 300 mm and of one length.
plan::Plan backPlan(int pieces, double thickness_mm) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::Hair hair = plan.hair();
  hair.density_per_cm2 = 200;
  hair.fibre_um = 70;
  hair.length_mm.fill(300);
  hair.layering_frac = 0;
  plan.put(plan::kHairId, hair);
  const head::HeadShape shape(head::fitHead(plan.head().measures)->axes);
  for (int i = 0; i < pieces; ++i) {
    plan::Piece piece = backSlice(shape, 40 - 12 * i, 60, thickness_mm);
    piece.order = i + 1;
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  return plan;
}

Amounts amountsIn(const plan::Plan& plan) { return amountsOf(plan, {{}, {}, 200'000}).value(); }

}  // namespace

TEST_CASE("a fibre weighs what its area and density say", "[work][amounts]") {
  // 72.1 um across: 4083 um2, times 1.32 g/cm3: 5.39 mg for a metre.
  CHECK(gramsPerMm(72.1, {}) * 1e6 == Approx(5.39).margin(0.005));
  CHECK(gramsPerMm(100, {}) == Approx(4 * gramsPerMm(50, {})));
}

TEST_CASE("hairs are area times density and grams follow by hand", "[work][amounts]") {
  const plan::Plan plan = backPlan(1, 5);
  const Amounts amounts = amountsIn(plan);
  const PieceAmount& piece = amounts.pieces.at(0);
  const double hairs = piece.line_mm / 10 * 0.5 * 200;
  CHECK(piece.line_mm == Approx(63).margin(4));  // 60 mm in the picture, longer round the head
  CHECK(piece.hairs == Approx(hairs).epsilon(0.04));
  // Mean length 300 mm less 2.79 % of unevenness.
  const double perMm = 3.14159265 / 4 * 0.007 * 0.007 * 1.32 / 10;
  CHECK(piece.hair_g == Approx(piece.hairs * 291.63 * perMm).epsilon(1e-3));
  CHECK(piece.root_g == Approx(piece.hairs * (291.63 - 20) * perMm).epsilon(1e-3));
  CHECK(piece.end_g == 0);
  CHECK(amounts.formulas.at(0).product_g == Approx(3 * piece.root_g));
  CHECK(amounts.formulas.at(0).waste_g == Approx(0.36 * piece.root_g));
}

TEST_CASE("twice the thickness is twice the hair and pushed hair takes less product", "[work][amounts]") {
  plan::Plan thin = backPlan(1, 4), thick = backPlan(1, 8);
  CHECK(amountsIn(thick).pieces.at(0).hairs == Approx(2 * amountsIn(thin).pieces.at(0).hairs).epsilon(0.06));
  plan::Piece piece = *thin.find<plan::Piece>("piece-1");
  const double plain = amountsIn(thin).pieces.at(0).covered_g();
  piece.backcomb = {100, 0.5, 28};
  thin.put("piece-1", piece);
  // Half of the hair is covered from 100 mm on instead of 20.
  CHECK(amountsIn(thin).pieces.at(0).covered_g() == Approx(plain * (1 - 0.5 * 80 / 271.63)).epsilon(1e-3));
  piece.handover_mm = 120;
  piece.stop_mm = 200;
  piece.end.formula = "formula-2";
  thin.put("piece-1", piece);
  const PieceAmount split = amountsIn(thin).pieces.at(0);
  CHECK(split.root_g / split.end_g == Approx((0.5 * 100 + 0.5 * 20) / 80).epsilon(1e-6));
}

TEST_CASE("hair is counted once and left-outs have it first", "[work][amounts]") {
  plan::Plan plan = backPlan(1, 8);
  const double alone = amountsIn(plan).hairs;
  plan::Piece same = *plan.find<plan::Piece>("piece-1");
  same.order = 2;
  plan.put("piece-2", same);
  const Amounts twice = amountsIn(plan);
  CHECK(twice.hairs == Approx(alone));
  CHECK(twice.of("piece-2")->hairs == 0);
  same.action = plan::Action::LeaveOut;
  same.order = 3;
  plan.put("piece-2", same);
  const Amounts left = amountsIn(plan);
  CHECK(left.pieces.size() == 1);
  CHECK(left.hairs == Approx(0).margin(1e-6));
}

TEST_CASE("pieces that share a foil need one and sizes are the user's", "[work][amounts]") {
  plan::Plan plan = backPlan(4, 5);
  for (const auto& [id, foil, kept] : {std::tuple("piece-1", "a", plan::KeptIn::Foil), std::tuple("piece-2", "a", plan::KeptIn::Foil),
                                       std::tuple("piece-3", "", plan::KeptIn::Film), std::tuple("piece-4", "", plan::KeptIn::OpenAir)}) {
    plan::Piece piece = *plan.find<plan::Piece>(id);
    piece.foil = foil;
    piece.keptIn = kept;
    plan.put(id, piece);
  }
  const Amounts none = amountsOf(plan, {{}, {}, 5000}).value();
  CHECK(none.foils.size() == 1);
  CHECK(none.foils[0].pieces.size() == 2);
  CHECK_FALSE(none.foils[0].width_mm);
  CHECK(none.films.size() == 1);
  CHECK(none.openAir == 1);
  CHECK(amountsOf(plan, {{}, {120, 90, 50}, 5000})->foils[0].width_mm == 90);
  CHECK_FALSE(amountsOf(plan, {{}, {50}, 5000})->foils[0].width_mm);
  for (const double bad : {0.0, -5.0}) CHECK_FALSE(amountsOf(plan, {{}, {90, bad}, 5000}));
}

TEST_CASE("the zones hold all hair and the light share of a head", "[work][amounts]") {
  plan::Plan plan = backPlan(3, 6);
  const Amounts amounts = amountsIn(plan);
  double all = 0, light = 0;
  for (const ZoneHairs& zone : amounts.zones) all += zone.hairs, light += zone.lightened;
  CHECK(light == Approx(amounts.hairs));
  CHECK(all > 80'000);  // about 100,000 on a head
  CHECK(all < 150'000);
}

TEST_CASE("the grams are told with the range of the assumption", "[work][amounts]") {
  const plan::Plan plan = backPlan(2, 5);
  const Amounts amounts = amountsOf(plan, {{}, {}, 5000}).value();
  CHECK(amounts.product.from == ProductRange::From::Assumption);
  // 3 g for 1 g of hair, and the range goes from 1 to 12.
  const GramsSpan mixed = amounts.mixed_g();
  CHECK(mixed.about > 0);
  CHECK(mixed.low == Approx(mixed.about / 3));
  CHECK(mixed.high == Approx(mixed.about * 4));
  const FormulaAmount& formula = amounts.formulas.at(0);
  CHECK(formula.mixedLow_g == Approx(formula.hair_g * 1.12));
  CHECK(formula.mixedHigh_g == Approx(formula.hair_g * 12 * 1.12));
}

TEST_CASE("of the user's own heads the least and the most stand and of a typed value nothing", "[work][amounts]") {
  const plan::Plan typed = backPlan(2, 5);
  OwnFactors factors;
  for (const double perHair : {4.0, 5.0, 9.0}) {
    MeasuredHead head;
    head.got[static_cast<std::size_t>(Factor::ProductPerHair)] = perHair;
    factors.heads.push_back(head);
  }
  MeasuredHead speedOnly;
  speedOnly.got[static_cast<std::size_t>(Factor::Speed)] = 2;
  factors.heads.push_back(speedOnly);
  const auto used = [&](const plan::Plan& plan) {
    plan::Plan made = plan;
    plan::PlanInfo info = made.info();
    info.assumptions = withFactors(factors, info.assumptions);
    made.put(plan::kPlanId, info);
    return amountsOf(made, {{}, {}, 5000, weighedHeads(factors, plan)}).value();
  };
  const Amounts heads = used(typed);
  CHECK(heads.product.from == ProductRange::From::Heads);
  CHECK(heads.product.heads == 3);
  CHECK(heads.mixed_g().low == Approx(heads.mixed_g().about * 4 / 6));  // the mean is 6
  CHECK(heads.mixed_g().high == Approx(heads.mixed_g().about * 9 / 6));
  // A value of the plan comes first, and nobody knows its span.
  plan::Plan own = typed;
  plan::PlanInfo info = own.info();
  info.assumptions["amount.product_per_hair"] = 3;
  own.put(plan::kPlanId, info);
  CHECK(weighedHeads(factors, own).empty());
  const Amounts plain = used(own);
  CHECK(plain.product.from == ProductRange::From::Typed);
  CHECK(plain.mixed_g().low == Approx(plain.mixed_g().about));
  CHECK(plain.mixed_g().high == Approx(plain.mixed_g().about));
}
