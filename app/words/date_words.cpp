#include "app/words/date_words.h"

#include <QLocale>

namespace combdraft::words {

QString dateText(const QDate& date) {
  if (!date.isValid()) return {};
  const QLocale locale;
  QString format = locale.dateFormat(QLocale::ShortFormat);
  // 02/03/04 could be any of three years.
  if (!format.contains(QStringLiteral("yyyy"))) format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
  return locale.toString(date, format);
}

QString dateText(const std::string& iso) {
  const QString text = QString::fromStdString(iso);
  const QDate date = QDate::fromString(text, Qt::ISODate);
  return date.isValid() ? dateText(date) : text;
}

}  // namespace combdraft::words
