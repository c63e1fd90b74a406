#include "app/words/date_words.h"

#include <QLocale>
#include <QRegularExpression>

namespace combdraft::words {

QString dateText(const QDate& date) {
  if (!date.isValid()) return {};
  const QLocale locale;
  QString format = locale.dateFormat(QLocale::ShortFormat);
  // 02/03/04 could be any of three years.
  if (!format.contains(QStringLiteral("yyyy"))) format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
  return locale.toString(date, format);
}

QString momentText(const QDateTime& when) {
  if (!when.isValid()) return {};
  static const QRegularExpression weekday(QStringLiteral("^dddd[^dMy]*|[^dMy]*dddd$"));
  const QLocale locale;
  return locale.toString(when.date(), locale.dateFormat(QLocale::LongFormat).remove(weekday)) + QStringLiteral(", ") +
         locale.toString(when.time(), QLocale::ShortFormat);
}

QString dateText(const std::string& iso) {
  const QString text = QString::fromStdString(iso);
  const QDate date = QDate::fromString(text, Qt::ISODate);
  return date.isValid() ? dateText(date) : text;
}

}  // namespace combdraft::words
