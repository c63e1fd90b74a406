#include "app/paint/price_words.h"

#include <QCoreApplication>

#include "app/paint/figure.h"
#include "app/paint/work_words.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

constexpr double kHour_min = 60;
constexpr int kLocks = 20'000;  // as the work list on the screen

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Price)
};

}  // namespace

WorkedOut workedOut(const work::WorkList& list) {
  WorkedOut worked{list.timeline.total_min, 0};
  for (const work::BowlGrams& bowl : list.bowls) worked.mixed_g += bowl.mixed_g;
  return worked;
}

std::optional<WorkedOut> workedOut(const plan::Plan& plan, const plan::ItemId& choice) {
  work::WorkSettings settings;
  settings.choice = choice;
  settings.locks = kLocks;
  const Result<work::WorkList> list = work::workListOf(plan, settings);
  if (!list || list->order.empty()) return std::nullopt;
  return workedOut(*list);
}

QString sumText(const store::Rates& rates, const WorkedOut& worked) {
  double sum = 0;
  if (rates.perHour) sum += worked.work_min / kHour_min * *rates.perHour;
  if (rates.perGram) sum += worked.mixed_g * *rates.perGram;
  const QString number = figure(numberText(sum, 2));
  return rates.currency.isEmpty() ? number : Words::tr("%1 %2").arg(number, rates.currency);
}

QString workedText(const store::Rates& rates, const WorkedOut& worked) {
  const QString work = minutes(worked.work_min), grams = figure(numberText(worked.mixed_g, 0));
  if (!rates.perGram) return Words::tr("%1 min of work").arg(work);
  if (!rates.perHour) return Words::tr("%1 g mixed").arg(grams);
  return Words::tr("%1 min of work and %2 g mixed").arg(work, grams);
}

}  // namespace combdraft::paint
