#include "app/paint/amount_words.h"

#include <QCoreApplication>

#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Amounts)
};

// A small list has its tenths, or its span would be "0 to 5 g".
QString grams(double value) {
  constexpr double kTenthsBelow_g = 10;
  return figure(numberText(value, value < kTenthsBelow_g ? 1 : 0));
}

}  // namespace

QString mixedText(const work::Amounts& amounts) {
  using From = work::ProductRange::From;
  const work::GramsSpan mixed = amounts.mixed_g();
  const QString about = grams(mixed.about), low = grams(mixed.low), high = grams(mixed.high);
  switch (amounts.product.from) {
    case From::Assumption:
      return Words::tr("From %2 to %3 g mixed by the assumption's range; bowls here go by %1 g. None of your own heads is weighed yet: have more at hand, weigh what is left and take it over.").arg(about, low, high);
    case From::Heads:
      if (amounts.product.heads == 1)
        return Words::tr("About %1 g mixed, by what you weighed on 1 head: how far heads lie apart is not known from one. Weigh what is left.").arg(about);
      return Words::tr("About %1 g mixed, by what you weighed on %2 heads; the least and the most of them would be %3 and %4 g. Weigh what is left.")
          .arg(about).arg(amounts.product.heads).arg(low, high);
    case From::Typed:
      return Words::tr("About %1 g mixed, by the product for hair that is typed under Assumptions of this plan; how far off it may be is not known: weigh what is left.")
          .arg(about);
  }
  return {};
}

QString thinWeavesText() { return Words::tr("Thin weaves take more product for their hair than this estimates."); }

QString nothingFound() { return Words::tr("Nothing of what this list looks for was found; that says nothing about this hair."); }

QString changesLook() { return Words::tr("Each of these but a second pair of hands changes the look too: see it first."); }

QString estimatesOnly() { return Words::tr("Minutes and grams are estimates: this head may take more or less of both."); }

QString glovesAndAir() { return Words::tr("Wear gloves and keep the air moving."); }

}  // namespace combdraft::paint
