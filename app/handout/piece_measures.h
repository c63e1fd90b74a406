#pragma once
// The figures of a piece as every page prints them: mm whole from 10 mm on, otherwise to
// one decimal; whole as well where a figure is a step between the two ends of its section's
// rule, for no hand is more exact. What was typed for a piece stays to one decimal.
#include <QString>

#include "engine/plan/plan.h"

namespace combdraft::handout {

/// "10", "4.5": no unit.
QString measureFigure(double value_mm);
/// "62.5" of 0.625: no sign.
QString shareFigure(double frac);

// Of one piece, without a unit.
QString thickFigure(const plan::Plan& plan, const plan::Piece& piece);
QString startFigure(const plan::Plan& plan, const plan::Piece& piece);
QString depthFigure(const plan::Plan& plan, const plan::Piece& piece);
QString pushedFigure(const plan::Plan& plan, const plan::Piece& piece);
QString takenFigure(const plan::Plan& plan, const plan::Piece& piece);
/// `end_mm`: an end of one of the piece's drop-outs.
QString dropOutFigure(const plan::Plan& plan, const plan::Piece& piece, double end_mm);

}  // namespace combdraft::handout
