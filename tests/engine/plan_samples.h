#pragma once
// Plans for tests: one that uses every field, and random ones.
#include "engine/base/random.h"
#include "engine/plan/plan.h"
#include "engine/plan/twins.h"

namespace combdraft::plan::samples {

inline Plan fullPlan() {
  Plan plan = Plan::fresh(123456789);
  PlanInfo info = plan.info();
  info.title = "Every field \xE2\x80\x94 \"quoted\" \\ back";
  info.notes = "First line\nsecond\tline";
  info.assumptions = {{"fall.partReach_mm", 44.5}};
  info.agreedJson = "{\"choice\": \"choice-1\"}";
  info.visitsJson = "[1, 2]";
  info.logJson = "[]";
  info.extra = {{"later", "{\"a\": [1, 2.50]}"}};
  plan.put(kPlanId, info);

  Head head = plan.head();
  head.measures = {head::HeadSet::Men, head::HeadSize::Large, 580, 200, 155, 350};
  head.hairline = {1, -2, 3, -4};
  head.whorls = {{{170, 38}, Turn::Clockwise, {}},
                 {{-165, 40}, Turn::Counterclockwise, {{"w", "1"}}}};
  head.skin = SkinTone::Tan;
  plan.put(kHeadId, head);

  Hair hair;
  hair.density_per_cm2 = 180;
  hair.fibre_um = 88;
  hair.curl = CurlClass::LooseCurl;
  hair.length_mm = {100, 110, 120, 130, 140, 150};
  hair.layering_frac = 0.4;
  hair.cutLine_mm = 210;
  hair.level = {{{4, 5, 6}, {4, 4.5, 6}, {4, 5, 6.5}, {4, 5, 6}, {4, 5, 6}, {3, 5, 6}}};
  hair.toneWarmth = -0.25;
  hair.white_frac = 0.1;
  hair.bands = {{HairZone::Back, 60, 120, 7, {}}, {std::nullopt, 150, 160, 6, {}}};
  hair.scattered = {{HairZone::Top, 0.2, 40, 300, 8.5, {}}};
  hair.condition = {Condition::Good, Condition::Fair, Condition::Poor,
                    Condition::Good, Condition::Good, Condition::NotChecked};
  hair.porosity = {Porosity::Usual, Porosity::Porous, Porosity::Resistant,
                   Porosity::Usual, Porosity::Usual, Porosity::NotChecked};
  hair.conditionDate = "2024-02-29";
  plan.put(kHairId, hair);

  Formula formula;
  formula.letter = "A";
  formula.kind = "lightener";
  formula.text = "as the leaflet says";
  formula.leaflet.origin = "leaflet";
  formula.leaflet.read = "2024-03-01";
  formula.leaflet.scalpContact = ScalpContact::No;
  formula.leaflet.workingLife_min = 22;
  formula.leaflet.longestTime_min = 41;
  formula.leaflet.directions = "two lines\nof directions";
  formula.products = {{"powder", 1, {{"later", "1"}}}, {"cream", std::nullopt, {}}};
  formula.developers = {{"weak", 3, StrengthUnit::Percent, 1, {}}, {"strong", 40, StrengthUnit::Volume, 2.5, {}}};
  formula.additives = {{"bond", 0.25, {}}};
  plan.put("formula-1", formula);

  Handout handout;
  handout.aim = "see where the shadow stays";
  handout.kit = "clips";
  handout.checks = "before the crown";
  handout.faults = "a line shows: look at the start";
  handout.selfCheck = "both sides alike?";
  handout.paper = PaperSize::Letter;
  handout.turn = PageTurn::Landscape;
  handout.parts = {{HandoutPart::Steps, false, {}}, {HandoutPart::Title, true, {{"later", "2"}}}};
  handout.steps = {{"piece-1", "take it", "with a pin comb", "it opens first", {}}, {"gone", "", "", "kept", {}}};
  plan.put(kHandoutId, handout);

  Choice choice;
  choice.name = "B";
  choice.targets["top"] = {8.5, ContrastAim::Soft, 10, 6, {{"later", "[1]"}}};
  choice.targets["whole"].level = 7;
  plan.put("choice-2", choice);

  Section section;
  section.choice = "choice-1";
  section.label = "side";
  section.outline = {{40, 50}, {80, 50}, {80, 75}, {40, 75}};
  Layout layout;
  layout.run = LayoutRun::DiagonalBack;
  layout.pivot = ScalpPoint{60, 45};
  layout.thickness_mm = {4, 6};
  layout.leftOut_mm = {9, 12};
  layout.start_mm = {12, 30};
  layout.backcomb_mm = {40, 80};
  layout.pushed_frac = {0.3, 0.6};
  layout.taking = Taking::Paint;
  layout.taken_frac = {0.9, 0.8};
  layout.tooth_mm = 3;
  layout.gap_mm = 2;
  layout.foil_mm = 80;
  layout.columns = Columns::Staggered;
  layout.zigzag_mm = 4;
  layout.lastThickness_mm = 2;
  layout.dropMiddle_mm = 30;
  layout.empty = {{2, 1, {}}};
  section.layout = layout;
  section.order = 1;
  RetiredPiece retired;
  retired.id = "piece-9";
  retired.choice = "choice-1";
  retired.section = "section-1";
  retired.line = {{45, 55}, {75, 58}};
  retired.root.lifts.level = retired.end.lifts.level = 7;
  retired.laidOut = LaidOut{9, 1, {}, {}};
  section.retired = {retired};
  plan.put("section-1", section);
  Section other = mirroredSection("section-1", section);
  other.order = 2;
  plan.put("section-2", other);

  Piece piece;
  piece.choice = "choice-1";
  piece.section = "section-1";
  piece.label = "first";
  piece.note = "two\nlines";
  piece.action = Action::Lighten;
  piece.taking = Taking::Weave;
  piece.line = {{45, 60}, {60, 61.5}, {75, 63}};
  piece.thickness_mm = 3.2;
  piece.taken_frac = 0.95;
  piece.tooth_mm = 3;
  piece.gap_mm = 4;
  piece.dropOuts = {{10, 20}, {30, 35.5}};
  piece.start_mm = 25;
  piece.blend_mm = 10;
  piece.backcomb = {60, 0.4, 30};
  piece.outer_frac = 0.6;
  piece.under = Side::Painted;
  piece.handover_mm = 120;
  piece.stop_mm = 400;
  piece.root = {{9, 8, 10}, FinishesAt{8.5, Tone::Beige}, "formula-1"};
  piece.end = {{8, 7.5, 9}, std::nullopt, "formula-1"};
  piece.keptIn = KeptIn::Film;
  piece.foil = "3";
  piece.order = 1;
  piece.held = true;
  piece.laidOut = LaidOut{3, 1, {RunField::Line, RunField::Start}, {}};
  plan.put("piece-1", piece);
  Piece twin = mirroredPiece(plan, "piece-1", piece);
  twin.order = 2;
  plan.put("piece-2", twin);

  Treatment treatment;
  treatment.choice = "choice-1";
  treatment.kind = Treatment::Kind::RootShadow;
  treatment.zone = HairZone::Crown;
  treatment.to_mm = 30;
  treatment.blend_mm = 20;
  treatment.colour = {6, Tone::Ash};
  treatment.strength_frac = 0.5;
  treatment.formula = "formula-1";
  plan.put("treatment-1", treatment);

  Note note;
  note.choice = "choice-1";
  note.at = {10, 45};
  note.text = "watch the swirl";
  plan.put("note-1", note);
  return plan;
}

/// Numbers drawn in order from a seed.
class Draws {
 public:
  explicit Draws(std::uint64_t seed) : seed_(seed) {}
  double uniform(double low, double high) {
    return low + (high - low) * randomUniform(seed_, index_++, 99);
  }
  int whole(int low, int high) {
    return low + static_cast<int>(uniform(0, 1) * (high - low + 1));
  }
  template <class E>
  E oneOf(int count) {
    return static_cast<E>(whole(0, count - 1));
  }

 private:
  std::uint64_t seed_, index_ = 0;
};

inline Piece randomPiece(Draws& draw, const ItemId& choice, int order) {
  Piece piece;
  piece.choice = choice;
  piece.order = order;
  const double drop = draw.uniform(20, 60), bearing = draw.uniform(-180, 180);
  const int points = draw.whole(2, 6);
  for (int i = 0; i < points; ++i)
    piece.line.push_back({bearing + 6.0 * i + draw.uniform(0, 1), drop + draw.uniform(0, 4)});
  piece.action = draw.oneOf<Action>(3);
  piece.taking = draw.oneOf<Taking>(3);
  piece.thickness_mm = draw.uniform(0.5, 20);
  piece.taken_frac = draw.uniform(0, 1);
  piece.tooth_mm = draw.whole(0, 1) * draw.uniform(1, 10);
  piece.gap_mm = piece.tooth_mm;
  if (draw.whole(0, 1)) piece.dropOuts = {{draw.uniform(0, 10), draw.uniform(11, 20)}};
  piece.start_mm = draw.uniform(0, 100);
  piece.blend_mm = draw.uniform(0, 50);
  piece.backcomb = {draw.uniform(100, 200), draw.uniform(0, 1), draw.uniform(5, 60)};
  if (draw.whole(0, 1)) piece.stop_mm = draw.uniform(200, 900);
  if (draw.whole(0, 1)) piece.root.finish = FinishesAt{draw.uniform(1, 12), Tone::Pearl};
  piece.keptIn = draw.oneOf<KeptIn>(3);
  return piece;
}

inline Plan randomPlan(std::uint64_t seed) {
  Draws draw(seed);
  Plan plan = Plan::fresh(mix64(seed));
  Hair hair;
  for (auto& length : hair.length_mm) length = draw.uniform(20, 600);
  for (auto& level : hair.level) level = {draw.uniform(1, 10), draw.uniform(1, 10), 5};
  hair.curl = draw.oneOf<CurlClass>(8);
  plan.put(kHairId, hair);
  const int count = draw.whole(0, 12);
  for (int i = 1; i <= count; ++i) {
    const ItemId id = plan.freeId("piece");
    plan.put(id, randomPiece(draw, "choice-1", 2 * i));
    if (draw.whole(0, 3) == 0) {
      Piece twin = mirroredPiece(plan, id, *plan.find<Piece>(id));
      twin.order = 2 * i + 1;
      plan.put(plan.freeId("piece"), twin);
    }
  }
  return plan;
}

}  // namespace combdraft::plan::samples
