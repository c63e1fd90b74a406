// What a client is told about a look: three readings from one end to the other, and what
// stays dark.
#include <QAbstractButton>
#include <QLabel>

#include "app/chair/plain_readings.h"
#include "tests/app/chair_fixture.h"

using namespace combdraft;
using chair::ChairView;
using tests::Chair;

TEST_CASE("three plain readings go from one end to the other, without words of technique", "[chair]") {
  Chair chair;
  REQUIRE(chair.settled());
  ChairView& view = chair.view();
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(0).contains(QLatin1String("6.5 to 7.5")); }, 5000));
  CHECK(view.readingText(0).contains(QLatin1String("today it is light brown (5.0)")));
  CHECK(view.readingText(1).contains(QLatin1String(" to ")));
  CHECK(view.readingText(1).contains(QLatin1String("steps")));
  REQUIRE(QTest::qWaitFor([&] { return view.readingText(2).contains(QLatin1String("4 to 7 weeks")); }, 8000));
  CHECK(view.darkText().contains(QLatin1String("60 %")));
  CHECK(view.darkText().contains(QLatin1String("nape")));
  QString all;
  for (const QLabel* label : view.findChildren<QLabel*>()) all += label->text() + u' ';
  for (QAbstractButton* button : view.findChildren<QAbstractButton*>()) all += button->text() + u' ';
  for (const char* word : {"piece", "foil", "backcomb", "lightener", "developer", "gram", "L*", "formula", "weave", "ready", "safe", "guarantee"})
    CHECK_FALSE(all.contains(QLatin1String(word), Qt::CaseInsensitive));
}

TEST_CASE("the ends of a reading that is grey or short of hair are told in words", "[chair]") {
  look::Readings planned;
  planned.contrast.verdict = look::ContrastVerdict::TooLittleHair;
  chair::LookSpan span{nullptr, std::make_shared<const look::Readings>(planned), nullptr};
  CHECK(chair::howMuchDifference(span).value == QLatin1String("not seen"));
  CHECK(chair::howLight({}, nullptr).value.isEmpty());
  CHECK(chair::weeksUntilRegrowth(std::nullopt).value.isEmpty());
  look::Regrowth never;
  CHECK(chair::weeksUntilRegrowth(never).value == QLatin1String("no week is given"));
  CHECK(chair::weeksUntilRegrowth(never).sentence.contains(QLatin1String("not a sign that new growth will not show")));
  CHECK(chair::levelWords(7.1) == QLatin1String("blond"));
  CHECK(chair::levelWords(7.6) == QLatin1String("between blond and light blond"));
  look::Regrowth open{hair::WornWay::Down, 12, 9, std::nullopt};
  CHECK(chair::weeksUntilRegrowth(open).value == QLatin1String("9 to more than 26 weeks"));
  look::Regrowth soon{hair::WornWay::Down, 1, 1, 1};
  CHECK(chair::weeksUntilRegrowth(soon).value == QLatin1String("about 1 week"));
  CHECK(chair::whatStaysDark(nullptr).isEmpty());
  planned.whole.light_share = 0.4;
  CHECK(chair::whatStaysDark(&planned).contains(QLatin1String("60 % of the hair that is seen is not lightened")));
}

TEST_CASE("how light is told in halves outwards once both ends are known", "[chair]") {
  const auto at = [](double level) {
    look::Readings readings;
    readings.whole.level = level;
    return std::make_shared<const look::Readings>(readings);
  };
  CHECK(chair::howLight({at(6.6), at(6.8), at(6.9)}, nullptr).value == QLatin1String("6.5 to 7.0"));
  CHECK(chair::howLight({at(7), at(7), at(7)}, nullptr).value == QLatin1String("6.5 to 7.5"));
  CHECK(chair::howLight({at(5.9), at(6.2), at(7.1)}, nullptr).value == QLatin1String("5.5 to 7.5"));
  CHECK(chair::howLight({nullptr, at(6.8), nullptr}, nullptr).value == QLatin1String("about 7.0"));
  CHECK(chair::howLight({at(6.6), at(6.8), at(6.9)}, nullptr).title.contains(QLatin1String("less or more")));
  // What is kept with an agreement is what stood there.
  const auto raw = chair::levelSpan({at(5.9), at(6.2), at(7.1)});
  REQUIRE(raw);
  CHECK(raw->low == 5.9);
  CHECK(chair::asShown(*raw).low == 5.5);
  CHECK(chair::asShown(*raw).high == 7.5);
  CHECK(chair::asShown(*raw).planned == 6.2);
}

TEST_CASE("an end at which light and dark run together is told, whatever is planned", "[chair]") {
  using look::ContrastVerdict;
  const auto at = [](double delta, ContrastVerdict verdict) {
    look::Readings readings;
    readings.whole.lightness = 50;
    readings.contrast.delta = delta;
    readings.contrast.verdict = verdict;
    return std::make_shared<const look::Readings>(readings);
  };
  const auto clear = at(16, ContrastVerdict::TwoClearLevels), soft = at(9, ContrastVerdict::Soft), blend = at(2, ContrastVerdict::OneTone);
  const auto said = [](const std::shared_ptr<const look::Readings>& less, const std::shared_ptr<const look::Readings>& planned, const std::shared_ptr<const look::Readings>& more) {
    const chair::PlainReading plain = chair::howMuchDifference({less, planned, more});
    return plain.value + u'|' + plain.sentence;
  };
  CHECK(said(soft, clear, clear).contains(QLatin1String("As planned, light and dark stand clearly apart.")));
  CHECK_FALSE(said(soft, clear, clear).contains(QLatin1String("run together")));
  CHECK(said(blend, clear, clear).startsWith(QLatin1String("almost none to ")));
  CHECK(said(blend, clear, clear).contains(QLatin1String("If it lightens less or more, they may run together")));
  CHECK(said(blend, blend, clear).startsWith(QLatin1String("almost none to ")));
  CHECK(said(blend, blend, clear).contains(QLatin1String("they may stand apart")));
  CHECK(said(blend, blend, blend).startsWith(QLatin1String("almost none|")));
}
