#pragma once
// Invented plans for the tests of drawing, command line and sheet.
#include "engine/plan/plan.h"

namespace combdraft::tests {

inline plan::Piece pieceAlong(std::vector<head::ScalpPoint> line, int order) {
  plan::Piece piece;
  piece.choice = "choice-1";
  piece.line = std::move(line);
  piece.order = order;
  return piece;
}

/// Eight pieces: a slice, a weave, a fine weave, a painted one, a left-out, a
/// deepened one, one with a drop-out over the centre back, and one backcombed.
inline plan::Plan demoPlan() {
  plan::Plan plan = plan::Plan::fresh(7);
  plan::PlanInfo info = plan.info();
  info.title = "Soft root, bold ends";
  plan.put(plan::kPlanId, info);
  plan::Head head = plan.head();
  head.part = {{0, 45}, {0, 20}, {180, 5}, {180, 20}};
  head.whorls = {{{-174, 42}, plan::Turn::Clockwise, {}}};
  plan.put(plan::kHeadId, head);
  plan::Formula a, b;
  a.letter = "A", a.kind = "lightener";
  b.letter = "B", b.kind = "deepening colour";
  plan.put("formula-1", a);
  plan.put("formula-2", b);

  plan::Section section;
  section.choice = "choice-1";
  section.label = "back";
  section.outline = {{150, 65}, {180, 62}, {-150, 65}, {-140, 100}, {180, 112}, {140, 100}};
  section.order = 1;
  plan.put("section-1", section);

  plan::Piece slice = pieceAlong({{150, 80}, {165, 79}, {180, 78}}, 1);
  slice.root.formula = "formula-1";
  slice.thickness_mm = 8;
  slice.backcomb = {60, 0.6, 28};
  plan.put("piece-1", slice);
  plan::Piece weave = pieceAlong({{-150, 80}, {-165, 79}, {-178, 78}}, 2);
  weave.taking = plan::Taking::Weave;
  weave.tooth_mm = 6, weave.gap_mm = 5, weave.thickness_mm = 7;
  weave.root.formula = "formula-1";
  plan.put("piece-2", weave);
  plan::Piece fine = pieceAlong({{150, 92}, {180, 90}, {-150, 92}}, 3);
  fine.taking = plan::Taking::Weave;
  fine.tooth_mm = 1.5, fine.gap_mm = 1.5, fine.thickness_mm = 4;
  fine.root.formula = "formula-1";
  plan.put("piece-3", fine);
  plan::Piece brush = pieceAlong({{40, 50}, {60, 58}, {80, 66}}, 4);
  brush.taking = plan::Taking::Paint;
  brush.thickness_mm = 9;
  brush.root.formula = "formula-1";
  plan.put("piece-4", brush);
  plan::Piece leftOut = pieceAlong({{150, 72}, {180, 70}, {-150, 72}}, 5);
  leftOut.action = plan::Action::LeaveOut;
  leftOut.thickness_mm = 10;
  plan.put("piece-5", leftOut);
  plan::Piece deepen = pieceAlong({{-95, 60}, {-75, 58}, {-50, 50}}, 6);
  deepen.action = plan::Action::Deepen;
  deepen.root.formula = "formula-2";
  plan.put("piece-6", deepen);
  plan::Piece drop = pieceAlong({{150, 103}, {180, 102}, {-150, 103}}, 7);
  drop.dropOuts = {{20, 40}};
  drop.start_mm = 60;
  plan.put("piece-7", drop);
  plan::Piece top = pieceAlong({{20, 35}, {90, 12}, {160, 30}}, 8);
  top.thickness_mm = 6;
  top.start_mm = 0;
  plan.put("piece-8", top);
  return plan;
}

/// Sixty fine weaves over the back and the sides.
inline plan::Plan sixtyPlan() {
  plan::Plan plan = plan::Plan::fresh(8);
  plan::PlanInfo info = plan.info();
  info.title = "Fine all over";
  plan.put(plan::kPlanId, info);
  plan::Formula a;
  a.letter = "A", a.kind = "lightener";
  plan.put("formula-1", a);
  int order = 0;
  for (int row = 0; row < 12; ++row)
    for (int column = 0; column < 5; ++column) {
      const double drop = 28 + 5 * row, from = 100 + 33 * column;
      plan::Piece piece = pieceAlong({{from, drop}, {from + 14, drop}, {from + 28, drop}}, ++order);
      piece.taking = plan::Taking::Weave;
      piece.tooth_mm = piece.gap_mm = 2;
      piece.thickness_mm = 3;
      piece.root.formula = "formula-1";
      plan.put("piece-" + std::to_string(order), piece);
    }
  return plan;
}

}  // namespace combdraft::tests
