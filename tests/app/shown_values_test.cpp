// Days and spans of levels as they are shown.
#include <catch2/catch.hpp>

#include <QLocale>

#include "app/paint/level_span.h"
#include "app/words/date_words.h"

using namespace combdraft;

namespace {

struct SpokenIn {
  const QLocale before;
  explicit SpokenIn(const QLocale& locale) { QLocale::setDefault(locale); }
  ~SpokenIn() { QLocale::setDefault(before); }
};

}  // namespace

TEST_CASE("a day is written as the reader's language writes it with all digits of the year", "[words]") {
  const QDate day(2026, 11, 28);
  {
    const SpokenIn german(QLocale(QLocale::German, QLocale::Germany));  // Unicode CLDR: dd.MM.yy
    CHECK(words::dateText(day) == QStringLiteral("28.11.2026"));
    CHECK(words::dateText(std::string("2026-11-28")) == QStringLiteral("28.11.2026"));
  }
  {
    const SpokenIn english(QLocale(QLocale::English, QLocale::UnitedStates));  // Unicode CLDR: M/d/yy
    CHECK(words::dateText(day) == QStringLiteral("11/28/2026"));
  }
  CHECK(words::dateText(day).contains(QStringLiteral("2026")));
  CHECK(words::dateText(QDate()).isEmpty());
  CHECK(words::dateText(std::string("soon")) == QStringLiteral("soon"));
  CHECK(words::dateText(std::string()).isEmpty());
}

TEST_CASE("a span of levels is moved outwards to halves and is never narrower than one", "[chair][words]") {
  const auto is = [](double low, double high, double from, double to) {
    const paint::LevelEnds ends = paint::outwards(low, high);
    INFO(low << " to " << high << " became " << ends.low << " to " << ends.high);
    CHECK(ends.low == from);
    CHECK(ends.high == to);
  };
  is(6.6, 6.9, 6.5, 7);
  is(6.5, 7.5, 6.5, 7.5);  // halves stay
  is(6.1, 7.0, 6, 7);
  is(6.9, 7.1, 6.5, 7.5);
  is(7, 7, 6.5, 7.5);
  is(6.7, 6.7, 6.5, 7);
  is(6.4999999999, 7.5000000001, 6.5, 7.5);  // the last digits of a sum
  is(0, 0, 0, 0.5);
  for (double low = 1; low < 11; low += 0.137)
    for (double width = 0; width < 2; width += 0.21) {
      const paint::LevelEnds ends = paint::outwards(low, low + width);
      CHECK(ends.low <= low + 1e-6);
      CHECK(ends.high >= low + width - 1e-6);
      CHECK(ends.high - ends.low >= 0.5);
    }
}
