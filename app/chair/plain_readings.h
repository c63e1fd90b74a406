#pragma once
// What a client is told about a look: three readings, each from ... to ... with
// one sentence, and what stays dark. No words of technique, no promise.
//
// From where to where: the same look with every piece at the lower, at the planned and at
// the upper end of its typed lift; not the ranges of the assumptions. Levels are told in
// halves, rounded outwards (app/paint/level_span.h).
#include <QString>
#include <optional>

#include "app/paint/dark_words.h"
#include "engine/look/look.h"
#include "engine/look/regrowth.h"

namespace combdraft::chair {

struct PlainReading {
  QString title;     ///< "How light, if it lightens less or more"
  QString value;     ///< "6.0 to 7.0"; "about 6.5" while the ends are not known, "" while nothing is
  QString sentence;
};

/// The same look if the hair lightens less, as planned and more. The ends may
/// be missing; they come later.
struct LookSpan {
  std::shared_ptr<const look::Readings> less, planned, more;
};
struct LevelSpan {
  double planned = 0, low = 0, high = 0;  ///< levels
};
/// How light the whole look is, to the last digit; nothing without the planned reading.
std::optional<LevelSpan> levelSpan(const LookSpan& span);
/// The ends as the client sees them.
LevelSpan asShown(const LevelSpan& levels);

/// `today` may be null.
PlainReading howLight(const LookSpan& span, const look::Readings* today);
/// Between light and dark hair, in steps of one level.
PlainReading howMuchDifference(const LookSpan& span);
/// Nothing: not yet worked out.
PlainReading weeksUntilRegrowth(const std::optional<look::Regrowth>& regrowth);
using paint::whatStaysDark;

/// All three ends are there.
bool isWhole(const LookSpan& span);
/// "dark blond": what a level is called, from "black" to "lightest blond" [common practice].
QString levelWord(double level);
/// "blond"; halfway "between blond and light blond".
QString levelWords(double level);
/// "not a promise", as it stands under every picture.
QString promiseLine();
/// The same before a class: of nobody's hair in the room.
QString classLine();

}  // namespace combdraft::chair
