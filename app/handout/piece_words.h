#pragma once
// What is done with pieces, in whole sentences: for the steps of a lesson and for
// the record card. Distances are mm along the stretched hair.
#include <QString>
#include <vector>

#include "app/paint/hair_words.h"
#include "app/paint/scene.h"

namespace combdraft::handout {

using paint::toneName;
using paint::zoneName;
using Pieces = std::vector<const paint::PieceShape*>;

/// "1 to 4, 7"
QString numbersOf(const Pieces& pieces);
/// What to take: how many, which way, how thick, where, what is left out between.
QString whatOf(const paint::Scene& scene, const plan::Section* section, const Pieces& pieces);
/// How to work it: kept in, start, backcomb, where lightener stops, formula, lift.
QString howOf(const plan::Plan& plan, const Pieces& pieces);
/// The reasons that its measures give.
QString whyOf(const plan::Section* section, const Pieces& pieces);

/// "5 mm", "4 to 8 mm", as piece_measures.h has them.
QString span_mm(double from, double to);
/// "lifts to 9 (8 to 10), finishes at 8 beige"
QString colourWords(const plan::Piece& piece, const plan::ZoneColour& zone);
QString takingName(const plan::Piece& piece);
QString keptInName(plan::KeptIn keptIn);
QString curlName(plan::CurlClass curl);

}  // namespace combdraft::handout
