#include "app/chair/plain_readings.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/controls/number_input.h"
#include "app/paint/figure.h"
#include "app/paint/level_span.h"
#include "engine/base/number_text.h"
#include "engine/colour/levels.h"

namespace combdraft::chair {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Chair)
};

QString number(double value) { return paint::figure(numberText(value, 1)); }
QString weeks(double value) { return controls::shownNumber(std::round(value), 0); }

QString fromTo(double low, double high) {
  const paint::LevelEnds ends = paint::outwards(low, high);
  return Words::tr("%1 to %2").arg(number(ends.low), number(ends.high));
}

// While the ends are not known yet there is no span to be told.
QString about(double level) { return Words::tr("about %1").arg(number(std::round(2 * level) / 2)); }

// L* between two levels of hair as steps of one level, about the look's own lightness.
double steps(const look::Readings& readings) {
  const colour::LevelScale scale;
  const double L = readings.whole.lightness, half = readings.contrast.delta / 2;
  return scale.levelOfLightness(L + half) - scale.levelOfLightness(L - half);
}

bool hasTwoLevels(const look::Contrast& contrast) {
  return contrast.verdict == look::ContrastVerdict::TwoClearLevels || contrast.verdict == look::ContrastVerdict::Soft;
}

}  // namespace

bool isWhole(const LookSpan& span) { return span.less && span.planned && span.more; }

QString promiseLine() {
  return Words::tr("A picture of the plan, not a promise; a test strand shows how far your hair lightens.");
}

QString classLine() {
  return Words::tr("A picture of the plan, not a promise; a test strand shows how far this hair lightens.");
}

QString levelWord(double level) {
  static constexpr std::array<const char*, 10> kWords{
      QT_TRANSLATE_NOOP("Chair", "black"),           QT_TRANSLATE_NOOP("Chair", "very dark brown"),
      QT_TRANSLATE_NOOP("Chair", "dark brown"),      QT_TRANSLATE_NOOP("Chair", "brown"),
      QT_TRANSLATE_NOOP("Chair", "light brown"),     QT_TRANSLATE_NOOP("Chair", "dark blond"),
      QT_TRANSLATE_NOOP("Chair", "blond"),           QT_TRANSLATE_NOOP("Chair", "light blond"),
      QT_TRANSLATE_NOOP("Chair", "very light blond"), QT_TRANSLATE_NOOP("Chair", "lightest blond")};
  const auto index = static_cast<std::size_t>(std::clamp(std::lround(level), 1L, 10L) - 1);
  return Words::tr(kWords[index]);
}

QString levelWords(double level) {
  constexpr double kClose = 0.25;  // farther from a whole level both its neighbours are named
  if (std::abs(level - std::round(level)) <= kClose) return levelWord(level);
  return Words::tr("between %1 and %2").arg(levelWord(std::floor(level)), levelWord(std::ceil(level)));
}

std::optional<LevelSpan> levelSpan(const LookSpan& span) {
  if (!span.planned) return std::nullopt;
  LevelSpan levels{span.planned->whole.level, span.planned->whole.level, span.planned->whole.level};
  for (const auto* one : {&span.less, &span.more}) {
    if (!*one) continue;
    levels.low = std::min(levels.low, (*one)->whole.level);
    levels.high = std::max(levels.high, (*one)->whole.level);
  }
  return levels;
}

LevelSpan asShown(const LevelSpan& levels) {
  const paint::LevelEnds ends = paint::outwards(levels.low, levels.high);
  return {levels.planned, ends.low, ends.high};
}

PlainReading howLight(const LookSpan& span, const look::Readings* today) {
  PlainReading plain{Words::tr("How light, if it lightens less or more"), {}, Words::tr("Being worked out.")};
  const auto levels = levelSpan(span);
  if (!levels) return plain;
  const bool whole = isWhole(span);
  plain.value = whole ? fromTo(levels->low, levels->high) : about(levels->planned);
  const LevelSpan shown = whole ? asShown(*levels) : *levels;
  const QString low = levelWord(std::floor(shown.low)), high = levelWord(std::floor(shown.high));  // a colour that is not reached is not named
  const QString words = low == high ? low : Words::tr("%1 to %2").arg(low, high);
  plain.sentence = today ? Words::tr("Looks like %1 as a whole; today it is %2 (%3). 1 is black, 10 lightest blond.")
                               .arg(words, levelWords(today->whole.level), number(today->whole.level))
                         : Words::tr("Looks like %1 as a whole. 1 is black, 10 lightest blond.").arg(words);
  return plain;
}

PlainReading howMuchDifference(const LookSpan& span) {
  PlainReading plain{Words::tr("How much difference"), {}, Words::tr("Being worked out.")};
  if (!span.planned) return plain;
  const look::Contrast& contrast = span.planned->contrast;
  if (contrast.verdict == look::ContrastVerdict::TooLittleHair) {
    plain.value = Words::tr("not seen");
    plain.sentence = Words::tr("Too little hair is seen this way to compare light and dark.");
    return plain;
  }
  // The three cases agree or not: an end at which light and dark run together is said too.
  std::optional<double> low, high;
  bool blends = false;
  for (const auto* one : {&span.less, &span.planned, &span.more}) {
    if (!*one) continue;
    blends = blends || (*one)->contrast.verdict == look::ContrastVerdict::OneTone;
    if (!hasTwoLevels((*one)->contrast)) continue;
    const double step = steps(**one);
    low = std::min(low.value_or(step), step);
    high = std::max(high.value_or(step), step);
  }
  if (!low) {
    plain.value = Words::tr("almost none");
    plain.sentence = Words::tr("Light and dark strands run together and look like one colour.");
    return plain;
  }
  plain.value = !isWhole(span) && !blends ? Words::tr("%1 steps").arg(about(*low))
                : blends                  ? Words::tr("almost none to %1 steps").arg(number(paint::outwards(*low, *high).high))
                                          : Words::tr("%1 steps").arg(fromTo(*low, *high));
  switch (contrast.verdict) {
    case look::ContrastVerdict::TwoClearLevels: plain.sentence = Words::tr("As planned, light and dark stand clearly apart."); break;
    case look::ContrastVerdict::Soft: plain.sentence = Words::tr("As planned, light and dark run softly into each other."); break;
    default: plain.sentence = Words::tr("As planned, light and dark run together and look like one colour; if it lightens less or more, they may stand apart."); break;
  }
  if (blends && hasTwoLevels(contrast)) plain.sentence += u' ' + Words::tr("If it lightens less or more, they may run together and look like one colour.");
  plain.sentence += u' ' + Words::tr("A step is one number of that scale.");
  return plain;
}

PlainReading weeksUntilRegrowth(const std::optional<look::Regrowth>& regrowth) {
  PlainReading plain{Words::tr("Weeks until the regrowth shows"), {}, Words::tr("Being worked out; it takes a little longer.")};
  if (!regrowth) return plain;
  if (!regrowth->week && !regrowth->earliest) {
    plain.value = Words::tr("no week is given");
    plain.sentence = Words::tr("This is not a sign that new growth will not show; ask at the next visit.");
    return plain;
  }
  const QString most = controls::shownNumber(look::Regrowth::kWeeks, 0);
  const double from = regrowth->earliest.value_or(*regrowth->week);
  const QString one = weeks(from) == weeks(1) ? Words::tr("about 1 week") : Words::tr("about %1 weeks").arg(weeks(from));
  plain.value = regrowth->latest ? (weeks(from) == weeks(*regrowth->latest)
                                        ? one
                                        : Words::tr("%1 to %2 weeks").arg(weeks(from), weeks(*regrowth->latest)))
                                 : Words::tr("%1 to more than %2 weeks").arg(weeks(from), most);
  plain.sentence = Words::tr("Until new growth begins to show at the parting as drawn, with the hair worn down; yours may show it sooner or later.");
  return plain;
}

}  // namespace combdraft::chair
