#include "app/handout/piece_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

constexpr double kWholeFrom_mm = 10;  // no hand works a tenth of a millimetre there

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }
QString whole(double value) { return paint::figure(numberText(std::round(value))); }

// A step between the two ends of a section's rule is no more exact than a hand; the rule
// stands on the card with its own figures.
enum class Given { Typed, Step };

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

QString measure(double value_mm, Given given = Given::Typed) {
  return given == Given::Step || value_mm >= kWholeFrom_mm ? whole(value_mm) : number(value_mm);
}
QString percent(double frac, Given given = Given::Typed) {
  return Words::tr("%1 %").arg(given == Given::Step ? whole(100 * frac) : number(100 * frac));
}

QString thickOf(const plan::Plan& plan, const plan::Piece& piece) {
  const plan::Layout* rule = ruleOf(plan, piece, plan::RunField::Thickness);
  const bool isLast = rule && rule->lastThickness_mm == piece.thickness_mm;
  return measure(piece.thickness_mm, isLast ? Given::Typed : givenBy(rule, &plan::Layout::thickness_mm, piece.thickness_mm));
}

QString takenAs(const plan::Plan& plan, const plan::Piece& piece) {
  QStringList parts{takingName(piece)};
  if (piece.action != plan::Action::LeaveOut) {
    if (piece.taking == plan::Taking::Weave && piece.tooth_mm > 0)
      parts << Words::tr("teeth %1, gaps %2 mm").arg(measure(piece.tooth_mm), measure(piece.gap_mm));
    if (piece.taken_frac < 1) {
      const plan::Layout* rule = ruleOf(plan, piece, plan::RunField::Taking);
      parts << Words::tr("%1 taken").arg(percent(piece.taken_frac, givenBy(rule, &plan::Layout::taken_frac, piece.taken_frac)));
    }
    if (piece.taking == plan::Taking::Paint) {
      parts << (piece.under == plan::Side::Painted ? Words::tr("under side painted") : Words::tr("under side bare"));
      parts << Words::tr("%1 of the thickness").arg(percent(piece.outer_frac));
    }
    const Given drops = ruleOf(plan, piece, plan::RunField::DropOuts) ? Given::Step : Given::Typed;
    for (const plan::Stretch& out : piece.dropOuts)
      parts << Words::tr("out from %1 to %2 mm").arg(measure(out.from_mm, drops), measure(out.to_mm, drops));
  }
  if (!piece.label.empty()) parts << QString::fromStdString(piece.label);
  if (!piece.note.empty()) parts << QString::fromStdString(piece.note);
  return parts.join(QStringLiteral("; "));
}

QString colourOf(const plan::Plan& plan, const plan::Piece& piece) {
  if (piece.action == plan::Action::LeaveOut) return {};
  QStringList parts;
  const QString letters = paint::formulaLetters(plan, piece);
  if (!letters.isEmpty()) parts << letters;
  parts << colourWords(piece, piece.root);
  if (piece.handover_mm)
    parts << Words::tr("from %1 mm: %2").arg(measure(*piece.handover_mm), colourWords(piece, piece.end));
  parts.removeAll(QString());
  return parts.join(QStringLiteral("; "));
}

PieceRow rowOf(const plan::Plan& plan, const paint::PieceShape& shape) {
  const plan::Piece& piece = *shape.piece;
  PieceRow row;
  row.pieces = {&shape};
  row.takenAs = takenAs(plan, piece);
  row.thick = thickOf(plan, piece);
  if (piece.action == plan::Action::LeaveOut) return row;
  row.start = measure(piece.start_mm, givenBy(ruleOf(plan, piece, plan::RunField::Start), &plan::Layout::start_mm, piece.start_mm));
  if (piece.stop_mm) row.start += Words::tr(" to %1").arg(measure(*piece.stop_mm));
  row.start = Words::tr("%1, blend %2").arg(row.start, measure(piece.blend_mm));
  if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0) {
    const plan::Layout* rule = ruleOf(plan, piece, plan::RunField::Backcomb);
    const plan::Backcomb& comb = piece.backcomb;
    row.backcomb = Words::tr("%1, %2, blend %3").arg(measure(comb.depth_mm, givenBy(rule, &plan::Layout::backcomb_mm, comb.depth_mm)),
                                           percent(comb.pushed_frac, givenBy(rule, &plan::Layout::pushed_frac, comb.pushed_frac)),
                                                     measure(comb.blend_mm));
  }
  row.colour = colourOf(plan, piece);
  row.keptIn = keptInName(piece.keptIn);
  if (!piece.foil.empty()) row.keptIn += u' ' + QString::fromStdString(piece.foil);
  return row;
}

// Where they lie and how long they are may differ; both are told as spans.
bool goesOn(const PieceRow& row, const PieceRow& next) {
  const plan::Piece &last = *row.pieces.back()->piece, &piece = *next.pieces.front()->piece;
  return last.order > 0 && piece.order == last.order + 1 && piece.section == last.section && next.takenAs == row.takenAs &&
         next.thick == row.thick && next.start == row.start && next.backcomb == row.backcomb && next.colour == row.colour &&
         next.keptIn == row.keptIn;
}

QString numbersIn(const Pieces& pieces) {
  const QString first = paint::pieceNumber(*pieces.front()->piece), last = paint::pieceNumber(*pieces.back()->piece);
  return pieces.size() == 1 ? first : first + QStringLiteral("–") + last;
}

QString whereOf(const plan::Plan& plan, const Pieces& pieces) {
  QStringList parts;
  double shortest = 1e9, longest = 0;
  for (const paint::PieceShape* shape : pieces) {
    if (!shape->place.isEmpty() && !parts.contains(shape->place)) parts << shape->place;
    const double length = paint::stripLength_mm(shape->strip);
    shortest = std::min(shortest, length), longest = std::max(longest, length);
  }
  if (const auto* section = plan.find<plan::Section>(pieces.front()->piece->section)) {
    const QString name = QString::fromStdString(section->label);
    if (!name.isEmpty() && !parts.contains(name)) parts.prepend(name);
  }
  const QString from = whole(shortest), to = whole(longest);
  parts << Words::tr("%1 mm long").arg(from == to ? from : Words::tr("%1 to %2").arg(from, to));
  return parts.join(QStringLiteral(", "));
}

}  // namespace

std::vector<PieceRow> pieceRows(const paint::Scene& scene) {
  std::vector<PieceRow> rows;
  for (const auto& shape : scene.pieces()) {
    PieceRow row = rowOf(scene.plan(), *shape);
    if (!rows.empty() && goesOn(rows.back(), row))
      rows.back().pieces.push_back(shape.get());
    else
      rows.push_back(std::move(row));
  }
  for (PieceRow& row : rows) {
    row.numbers = numbersIn(row.pieces);
    row.where = whereOf(scene.plan(), row.pieces);
  }
  return rows;
}

}  // namespace combdraft::handout
