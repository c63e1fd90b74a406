#include "app/handout/piece_measures.h"

#include <algorithm>
#include <cmath>

#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

constexpr double kWholeFrom_mm = 10;  // no hand works a tenth of a millimetre there

enum class Given { Typed, Step };

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }
QString whole(double value) { return paint::figure(numberText(std::round(value))); }

QString mm(double value_mm, Given given) { return given == Given::Step || value_mm >= kWholeFrom_mm ? whole(value_mm) : number(value_mm); }
QString percent(double frac, Given given) { return given == Given::Step ? whole(100 * frac) : number(100 * frac); }

// The rule that a value of a piece follows; null where the piece keeps its own.
const plan::Layout* ruleOf(const plan::Plan& plan, const plan::Piece& piece, plan::RunField field) {
  const auto* section = plan.find<plan::Section>(piece.section);
  if (!piece.laidOut || !section || !section->layout) return nullptr;
  const std::vector<plan::RunField>& own = piece.laidOut->own;
  return std::find(own.begin(), own.end(), field) == own.end() ? &*section->layout : nullptr;
}

Given givenBy(const plan::Layout* rule, plan::Ramp plan::Layout::*ramp, double value) {
  if (!rule) return Given::Typed;
  const plan::Ramp& ends = rule->*ramp;
  return value == ends.from || value == ends.to ? Given::Typed : Given::Step;
}

}  // namespace

QString measureFigure(double value_mm) { return mm(value_mm, Given::Typed); }
QString shareFigure(double frac) { return percent(frac, Given::Typed); }

QString thickFigure(const plan::Plan& plan, const plan::Piece& piece) {
  const plan::Layout* rule = ruleOf(plan, piece, plan::RunField::Thickness);
  const bool isLast = rule && rule->lastThickness_mm == piece.thickness_mm;
  return mm(piece.thickness_mm, isLast ? Given::Typed : givenBy(rule, &plan::Layout::thickness_mm, piece.thickness_mm));
}

QString startFigure(const plan::Plan& plan, const plan::Piece& piece) {
  return mm(piece.start_mm, givenBy(ruleOf(plan, piece, plan::RunField::Start), &plan::Layout::start_mm, piece.start_mm));
}

QString depthFigure(const plan::Plan& plan, const plan::Piece& piece) {
  const double depth_mm = piece.backcomb.depth_mm;
  return mm(depth_mm, givenBy(ruleOf(plan, piece, plan::RunField::Backcomb), &plan::Layout::backcomb_mm, depth_mm));
}

QString pushedFigure(const plan::Plan& plan, const plan::Piece& piece) {
  const double pushed_frac = piece.backcomb.pushed_frac;
  return percent(pushed_frac, givenBy(ruleOf(plan, piece, plan::RunField::Backcomb), &plan::Layout::pushed_frac, pushed_frac));
}

QString takenFigure(const plan::Plan& plan, const plan::Piece& piece) {
  return percent(piece.taken_frac, givenBy(ruleOf(plan, piece, plan::RunField::Taking), &plan::Layout::taken_frac, piece.taken_frac));
}

QString dropOutFigure(const plan::Plan& plan, const plan::Piece& piece, double end_mm) {
  return mm(end_mm, ruleOf(plan, piece, plan::RunField::DropOuts) ? Given::Step : Given::Typed);
}

}  // namespace combdraft::handout
