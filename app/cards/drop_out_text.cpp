#include "app/cards/drop_out_text.h"

#include <QStringList>

#include "app/controls/number_input.h"
#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {

QString dropOutText(const std::vector<plan::Stretch>& dropOuts) {
  QStringList parts;
  for (const plan::Stretch& stretch : dropOuts)
    parts << QStringLiteral("%1\u2013%2").arg(controls::shownNumber(stretch.from_mm, 3),
                                              controls::shownNumber(stretch.to_mm, 3));
  return parts.join(QStringLiteral("; "));
}

std::optional<std::vector<plan::Stretch>> dropOutsFrom(const QString& text) {
  std::vector<plan::Stretch> dropOuts;
  if (text.trimmed().isEmpty()) return dropOuts;
  // Stretches end with ";" or with a comma that is followed by a space, so that
  // a decimal comma stays one.
  QString list = text;
  list.replace(QStringLiteral(", "), QStringLiteral(";"));
  const plan::FieldInfo& info = plan::fieldInfo("piece.dropOuts");
  for (const QString& part : list.split(u';', Qt::SkipEmptyParts)) {
    QString ends = part.trimmed();
    ends.replace(QStringLiteral("\u2013"), QStringLiteral("-")).replace(QStringLiteral("to"), QStringLiteral("-"));
    const QStringList numbers = ends.split(u'-');
    if (numbers.size() != 2) return std::nullopt;
    const auto number = [](QString n) {
      return parseNumber(n.trimmed().replace(u',', u'.').toStdString());
    };
    const std::optional<double> from = number(numbers[0]), to = number(numbers[1]);
    if (!from || !to || *from >= *to || *from < info.low || *to > info.high) return std::nullopt;
    dropOuts.push_back({*from, *to});
  }
  return dropOuts;
}

}  // namespace combdraft::cards
