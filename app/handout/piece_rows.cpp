#include "app/handout/piece_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/handout/piece_measures.h"
#include "app/handout/piece_places.h"
#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString whole(double value) { return paint::figure(numberText(std::round(value))); }
QString percent(const QString& figure) { return Words::tr("%1 %").arg(figure); }

QString takenAs(const plan::Plan& plan, const plan::Piece& piece) {
  QStringList parts{takingName(piece)};
  if (piece.action != plan::Action::LeaveOut) {
    if (piece.taking == plan::Taking::Weave && piece.tooth_mm > 0)
      parts << Words::tr("teeth %1, gaps %2 mm").arg(measureFigure(piece.tooth_mm), measureFigure(piece.gap_mm));
    if (piece.taken_frac < 1) parts << Words::tr("%1 taken").arg(percent(takenFigure(plan, piece)));
    if (piece.taking == plan::Taking::Paint) {
      parts << (piece.under == plan::Side::Painted ? Words::tr("under side painted") : Words::tr("under side bare"));
      parts << Words::tr("%1 of the thickness").arg(percent(shareFigure(piece.outer_frac)));
    }
    for (const plan::Stretch& out : piece.dropOuts)
      parts << Words::tr("out from %1 to %2 mm").arg(dropOutFigure(plan, piece, out.from_mm), dropOutFigure(plan, piece, out.to_mm));
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
    parts << Words::tr("from %1 mm: %2").arg(measureFigure(*piece.handover_mm), colourWords(piece, piece.end));
  parts.removeAll(QString());
  return parts.join(QStringLiteral("; "));
}

PieceRow rowOf(const plan::Plan& plan, const paint::PieceShape& shape) {
  const plan::Piece& piece = *shape.piece;
  PieceRow row;
  row.pieces = {&shape};
  row.takenAs = takenAs(plan, piece);
  row.thick = thickFigure(plan, piece);
  if (piece.action == plan::Action::LeaveOut) return row;
  row.start = startFigure(plan, piece);
  if (piece.stop_mm) row.start += Words::tr(" to %1").arg(measureFigure(*piece.stop_mm));
  row.start = Words::tr("%1, blend %2").arg(row.start, measureFigure(piece.blend_mm));
  if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0)
    row.backcomb = Words::tr("%1, %2, blend %3").arg(depthFigure(plan, piece), percent(pushedFigure(plan, piece)), measureFigure(piece.backcomb.blend_mm));
  row.colour = colourOf(plan, piece);
  row.keptIn = keptInName(piece.keptIn);
  if (!piece.foil.empty()) row.keptIn += u' ' + QString::fromStdString(piece.foil);
  return row;
}

// Where they lie and how long they are may differ: places are told as runs, lengths as spans.
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

QString whereOf(const paint::Scene& scene, const PlaceRun& run) {
  double shortest = 1e9, longest = 0;
  for (const paint::PieceShape* shape : run.pieces) {
    const double length = paint::stripLength_mm(shape->strip);
    shortest = std::min(shortest, length), longest = std::max(longest, length);
  }
  QStringList parts{placeText(scene.head(), run)};
  if (const auto* section = scene.plan().find<plan::Section>(run.pieces.front()->piece->section)) {
    const QString name = QString::fromStdString(section->label);
    if (!name.isEmpty() && name != run.pieces.front()->place) parts.prepend(name);
  }
  const QString from = whole(shortest), to = whole(longest);
  parts << Words::tr("%1 mm long").arg(from == to ? from : Words::tr("%1 to %2").arg(from, to));
  return parts.join(QStringLiteral("; "));
}

}  // namespace

std::vector<PieceRow> pieceRows(const paint::Scene& scene) {
  std::vector<PieceRow> alike;
  for (const auto& shape : scene.pieces()) {
    PieceRow row = rowOf(scene.plan(), *shape);
    if (!alike.empty() && goesOn(alike.back(), row))
      alike.back().pieces.push_back(shape.get());
    else
      alike.push_back(std::move(row));
  }
  std::vector<PieceRow> rows;
  for (const PieceRow& of : alike)
    for (const PlaceRun& run : placeRuns(scene.head(), of.pieces)) {
      PieceRow row = of;
      row.pieces = run.pieces;
      row.numbers = numbersIn(row.pieces);
      row.where = whereOf(scene, run);
      rows.push_back(std::move(row));
    }
  return rows;
}

}  // namespace combdraft::handout
