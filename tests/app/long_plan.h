#pragma once
// A plan with many pieces in two laid-out-like sections and some drawn free.
#include "tests/app/demo_plans.h"

namespace combdraft::tests {

/// `pieces` pieces; a third in a back section, a third in its twin on the other side of
/// the top, the rest free pairs at the sides.
inline plan::Plan longPlan(int pieces) {
  plan::Plan plan = plan::Plan::fresh(11);
  plan::PlanInfo info = plan.info();
  info.title = "Long lesson";
  plan.put(plan::kPlanId, info);
  plan::Formula formula;
  formula.letter = "A", formula.kind = "lightener";
  plan.put("formula-1", formula);
  plan::Section back;
  back.choice = "choice-1";
  back.label = "Back";
  back.outline = {{150, 60}, {180, 58}, {-150, 60}, {-140, 104}, {180, 112}, {140, 104}};
  back.order = 1;
  back.layout = plan::Layout{};
  plan.put("section-1", back);
  plan::Section top = back;
  top.label = "Top";
  top.outline = {{-60, 30}, {60, 30}, {40, 55}, {-40, 55}};
  top.order = 2;
  top.layout.reset();
  plan.put("section-2", top);
  for (int i = 0; i < pieces; ++i) {
    plan::Piece piece;
    const int third = i * 3 / pieces;
    const double at = static_cast<double>(i % std::max(1, pieces / 3)) / std::max(1, pieces / 3);
    if (third == 0) {
      piece = pieceAlong({{160, 66 + 34 * at}, {180, 65 + 36 * at}, {-160, 66 + 34 * at}}, i + 1);
      piece.section = "section-1";
    } else if (third == 1) {
      piece = pieceAlong({{-30, 34 + 18 * at}, {0, 33 + 18 * at}, {30, 34 + 18 * at}}, i + 1);
      piece.section = "section-2";
    } else {
      piece = pieceAlong({{80, 55 + 20 * at}, {100, 56 + 20 * at}}, i + 1);
    }
    piece.thickness_mm = 4;
    piece.root.formula = "formula-1";
    plan.put("piece-" + std::to_string(i + 1), piece);
  }
  return plan;
}

}  // namespace combdraft::tests
