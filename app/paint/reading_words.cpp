#include "app/paint/reading_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/paint/figure.h"
#include "engine/base/number_text.h"
#include "engine/colour/screen.h"

namespace combdraft::paint {
namespace {

// Own choice: natural and bare hair of such lightness has a chroma of 15 and more.
constexpr double kGrey_chroma = 8, kGreyFrom_level = 5.5, kHighest_level = 10.05;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Reading)
};
QString number(double value, int decimals) { return figure(numberText(value, decimals)); }

}  // namespace

bool isGrey(const look::Reading& reading) {
  return reading.level > kGreyFrom_level && std::hypot(reading.a, reading.b) < kGrey_chroma;
}

QString levelText(const look::Reading& reading) {
  const QString level = reading.level > kHighest_level ? QStringLiteral("10+") : number(reading.level, 1);
  return isGrey(reading) ? Words::tr("Light as %1").arg(level) : Words::tr("Level %1").arg(level);
}

QString lightnessText(const look::Reading& reading) {
  const QString value = number(reading.lightness, 0);
  if (!reading.rangeKnown) return value;
  return Words::tr("%1 (%2 to %3)").arg(value, number(reading.low, 0), number(reading.high, 0));
}

QColor swatchColour(const look::Reading& reading, colour::Light light) {
  const colour::Xyz xyz =
      colour::xyzFrom({reading.lightness, reading.a, reading.b}, colour::whitePoint(light));
  const std::array<double, 3> rgb = colour::linearSrgb(xyz, light);
  return QColor(colour::encodeSrgb(rgb[0]), colour::encodeSrgb(rgb[1]), colour::encodeSrgb(rgb[2]));
}

QString contrastSentence(const look::Contrast& contrast) {
  const double rounded = std::round(contrast.distance_m * 100) / 100;
  const QString from = figure(numberText(rounded));
  switch (contrast.verdict) {
    case look::ContrastVerdict::TwoClearLevels:
      return Words::tr("Seen from %1 m it is two clear levels: light and dark stand %2 L* apart.")
          .arg(from, number(contrast.delta, 0));
    case look::ContrastVerdict::Soft:
      return Words::tr("Seen from %1 m it is soft: light and dark can be told apart (%2 L*), but run into each other.")
          .arg(from, number(contrast.delta, 0));
    case look::ContrastVerdict::OneTone:
      return Words::tr("Seen from %1 m it is one tone: neighbouring hair differs by %2 L* on average, without two levels.")
          .arg(from, number(contrast.spread, 1));
    case look::ContrastVerdict::TooLittleHair:
      return Words::tr("Too little of this hair is seen to judge its contrast (from %1 m).").arg(from);
  }
  return {};
}

QString lightnessMeaning() {
  return Words::tr("L* is lightness as the eye sees it: 0 is black, 100 is white.");
}

}  // namespace combdraft::paint
