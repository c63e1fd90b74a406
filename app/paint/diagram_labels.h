#pragma once
// Labels of pieces (circled order number with the formula's letter), backcomb
// depths, section names and notes of one view, placed so that they do not
// cover each other.
#include "app/paint/diagram.h"

namespace combdraft::paint {

/// Appends items of layer Labels for what `shape`, the cut of the view, shows. A piece
/// has its label where it is seen for a quarter of its length or more, and always room
/// sought far and wide in the view that shows most of it. Number and letter never part: a label
/// for which there is no room is left out whole. First come the pieces that this view
/// shows best, among them and then among the others the first, the last and each fifth.
void addLabels(Items& items, const Scene& scene, const head::SheetView& view, const QPainterPath& shape,
               const DiagramStyle& style);

/// A circle with a number in it.
void addCircledNumber(Items& items, const QString& id, const QString& words, const QPointF& centre,
                      double radius_mm, const Palette& palette);

/// What a label of a piece takes: the circled number and behind it, on the same plate,
/// the formula's letters.
QSizeF numberLabelSize(const QString& letters, double radius_mm);
/// Appends such a label: the plate with the letters (role Letter; none without letters), then
/// the circled number (role Number). `centre` is the middle of the whole.
void addNumberLabel(Items& items, const QString& id, const QString& number, const QString& letters,
                    const QPointF& centre, double radius_mm, const Palette& palette);

}  // namespace combdraft::paint
