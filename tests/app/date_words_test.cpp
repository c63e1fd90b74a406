// Days and moments in the words of several languages.
#include "app/words/date_words.h"

#include <catch2/catch.hpp>

#include <QLocale>

using namespace combdraft;

TEST_CASE("a moment has its month as a word and no weekday", "[words]") {
  const QLocale before;
  const QDateTime when(QDate(2026, 11, 3), QTime(8, 6));
  const auto inLanguage = [&](const char* name) {
    QLocale::setDefault(QLocale(QString::fromLatin1(name)));
    return words::momentText(when);
  };
  CHECK(inLanguage("de_DE") == QStringLiteral("3. November 2026, 08:06"));
  CHECK(inLanguage("en_GB") == QStringLiteral("3 November 2026, 08:06"));
  const QString american = inLanguage("en_US");
  CHECK(american.startsWith(QStringLiteral("November 3, 2026, 8:06")));
  for (const char* name : {"fr_FR", "es_ES", "sv_SE", "pl_PL", "ja_JP", "hu_HU"}) {
    INFO(name);
    const QString text = inLanguage(name);
    CHECK(text.contains(QStringLiteral("2026")));
    CHECK_FALSE(text.contains(QLocale(QString::fromLatin1(name)).dayName(when.date().dayOfWeek())));
  }
  CHECK(words::momentText(QDateTime()).isEmpty());
  QLocale::setDefault(before);
}
