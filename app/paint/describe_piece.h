#pragma once
// Sentences about items of a plan, in the words of the salon.
#include <QString>

#include "app/paint/head_art.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

/// "7", or the label when one was typed.
QString pieceNumber(const plan::Piece& piece);
/// "Piece 7".
QString pieceName(const plan::Piece& piece);
/// "back left": where the middle of a piece lies; "" for a piece without a line.
/// About a millisecond, so a scene keeps it (PieceShape::place).
QString placeWords(const HeadScene& scene, const plan::Piece& piece);
/// "Piece 7, back left, 8 mm, starts 60 mm off the scalp". `place`: placeWords.
QString describePiece(const plan::Piece& piece, const QString& place);
/// "Section back left, 12 pieces, horizontal rows".
QString describeSection(const HeadScene& scene, const plan::Plan& plan, const plan::ItemId& id,
                        const plan::Section& section);
/// "horizontal rows", "a fan": how a section is laid out.
QString runWords(plan::LayoutRun run);
/// "crown", "back left": where the middle of a line lies.
QString placeWords(const HeadScene& scene, const Vec3& surfacePoint);
/// "back, 38 mm below the crown, 22 mm left of centre, 61 mm from the hairline".
QString describePlace(const HeadScene& scene, const Vec3& surfacePoint);
/// "38 mm below the crown, 22 mm left of centre": what a hand measures to find it again; beside
/// the ear the way to the hairline as well, for there the two do not tell front from back.
QString placeMeasures(const HeadScene& scene, const Vec3& surfacePoint);
/// "8 mm", "0.5 mm": up to one decimal, no trailing zero.
QString millimetres(double value_mm);
/// The same without the unit.
QString millimetresFigure(double value_mm);
/// "A", "A to B": formula letters of root and end zone; empty when none is named.
QString formulaLetters(const plan::Plan& plan, const plan::Piece& piece);

}  // namespace combdraft::paint
