#include "app/cards/target_words.h"

#include <QObject>
#include <QStringList>
#include <cmath>

#include "app/controls/number_input.h"
#include "app/words/engine_words.h"

namespace combdraft::cards {

using controls::shownNumber;

QString regionTitle(std::string_view region) {
  if (region == "whole") return QObject::tr("Whole head");
  QString title = words::inWords(region);
  title[0] = title[0].toUpper();
  return title;
}

QString contrastName(plan::ContrastAim aim) {
  switch (aim) {
    case plan::ContrastAim::TwoClearLevels: return QObject::tr("two clear levels");
    case plan::ContrastAim::Soft: return QObject::tr("soft");
    case plan::ContrastAim::OneTone: return QObject::tr("one tone");
  }
  return {};
}

QString wantedText(const plan::Target& target) {
  QStringList parts;
  if (target.level) parts << shownNumber(*target.level, 1);
  if (target.contrast) parts << contrastName(*target.contrast);
  if (target.brightest) parts << QObject::tr("not lighter than %1").arg(shownNumber(*target.brightest, 1));
  if (target.darkest) parts << QObject::tr("not darker than %1").arg(shownNumber(*target.darkest, 1));
  return parts.join(QStringLiteral(", "));
}

QString aimText(const plan::Target& target) {
  const QString wanted = wantedText(target);
  return wanted.isEmpty() ? QString() : QObject::tr("aim %1").arg(wanted);
}

QString metText(const look::TargetCheck& check) {
  QStringList parts;
  const auto levels = [](double by) { return shownNumber(std::abs(by), 1); };
  if (check.level)
    parts << (*check.level > 0 ? QStringLiteral("\u25B2 ") + QObject::tr("%1 too light").arg(levels(*check.level))
                               : QStringLiteral("\u25BC ") + QObject::tr("%1 too dark").arg(levels(*check.level)));
  if (check.contrast) parts << QStringLiteral("\u2260 ") + QObject::tr("another contrast");
  if (check.brightest)
    parts << QStringLiteral("\u25B2 ") + QObject::tr("lightest %1 over").arg(levels(*check.brightest));
  if (check.darkest)
    parts << QStringLiteral("\u25BC ") + QObject::tr("darkest %1 under").arg(levels(*check.darkest));
  return parts.isEmpty() ? QStringLiteral("\u2713 ") + QObject::tr("met") : parts.join(QStringLiteral(", "));
}

plan::Target targetOf(const plan::Plan& plan, const plan::ItemId& choice, std::string_view region) {
  const auto* found = plan.find<plan::Choice>(choice.empty() ? plan.info().activeChoice : choice);
  if (!found) return {};
  const auto target = found->targets.find(std::string(region));
  return target == found->targets.end() ? plan::Target{} : target->second;
}

}  // namespace combdraft::cards
