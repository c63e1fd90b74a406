#include "app/cards/drop_out_text.h"

#include <QStringList>

#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

QString shown(double value_mm, controls::LengthUnit unit) { return controls::lengthNumber(value_mm, unit, 3); }

}  // namespace

QString dropOutText(const std::vector<plan::Stretch>& dropOuts, controls::LengthUnit unit) {
  QStringList parts;
  for (const plan::Stretch& stretch : dropOuts)
    parts << QStringLiteral("%1\u2013%2").arg(shown(stretch.from_mm, unit), shown(stretch.to_mm, unit));
  return parts.join(QStringLiteral("; "));
}

std::optional<std::vector<plan::Stretch>> dropOutsFrom(const QString& text, controls::LengthUnit unit,
                                                       const std::vector<plan::Stretch>& before) {
  std::vector<plan::Stretch> dropOuts;
  if (text.trimmed().isEmpty()) return dropOuts;
  // Stretches end with ";" or with a comma that is followed by a space, so that
  // a decimal comma stays one.
  QString list = text;
  list.replace(QStringLiteral(", "), QStringLiteral(";"));
  const plan::FieldInfo& info = plan::fieldInfo("piece.dropOuts");
  const auto number = [&](const QString& part) -> std::optional<double> {
    const QString typed = part.trimmed();
    for (const plan::Stretch& stretch : before)
      for (const double value_mm : {stretch.from_mm, stretch.to_mm})
        if (typed == shown(value_mm, unit)) return value_mm;
    return controls::lengthFrom(typed, unit);
  };
  for (const QString& part : list.split(u';', Qt::SkipEmptyParts)) {
    QString ends = part.trimmed();
    ends.replace(QStringLiteral("\u2013"), QStringLiteral("-")).replace(QStringLiteral("to"), QStringLiteral("-"));
    const QStringList numbers = ends.split(u'-');
    if (numbers.size() != 2) return std::nullopt;
    const std::optional<double> from = number(numbers[0]), to = number(numbers[1]);
    if (!from || !to || *from >= *to || *from < info.low || *to > info.high) return std::nullopt;
    dropOuts.push_back({*from, *to});
  }
  if (dropOuts.size() > plan::limits::kSmallList) return std::nullopt;
  return dropOuts;
}

}  // namespace combdraft::cards
