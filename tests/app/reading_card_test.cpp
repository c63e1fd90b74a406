// How a reading came about: opened from its tile, by mouse and by key.
#include <catch2/catch.hpp>

#include "app/cards/assumptions_card.h"
#include "app/cards/histogram_drawing.h"
#include "app/cards/reading_card.h"
#include "app/desk/card_column.h"
#include "app/desk/readings_strip.h"
#include "app/paint/assumption_words.h"
#include "app/paint/reading_words.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;

namespace {

look::Contrast contrastOf(look::ContrastVerdict verdict, double spread, double delta, double distance_m) {
  look::Contrast contrast;
  contrast.verdict = verdict;
  contrast.spread = spread, contrast.delta = delta, contrast.distance_m = distance_m;
  return contrast;
}

live::LookResult sample() {
  look::Readings readings;
  readings.whole.seen_mm2 = 90000;
  readings.whole.level = 6.2;
  readings.whole.lightness = 33;
  readings.whole.b = 20;  // brown
  for (int i = 0; i < look::kRegions; ++i) {
    look::RegionReading region;
    region.region = static_cast<look::Region>(i);
    if (i == 1) {
      look::Reading r;
      r.seen_mm2 = 5230, r.skin_share = 0.04, r.lightness = 54.2, r.a = 6.5, r.b = 24.4, r.level = 7.8;
      r.light_share = 0.42, r.sampling_error = 0.31, r.low = 50.6, r.high = 58.4, r.rangeKnown = true;
      r.movesMost = {"fall.partSide_mm", "fall.combBack"};
      region.whole = r;
      r.level = 6.1;
      region.rootMiddleEnd[0] = r;
      region.warmth = "golden";
      region.contrast = contrastOf(look::ContrastVerdict::TwoClearLevels, 9, 23.6, 2);
      region.contrast.local = {-20, 10, {10, 30, 30, 10}};
      region.grey_mix = true;
    }
    readings.regions.push_back(region);
  }
  live::LookResult result;
  result.frame.readings = std::make_shared<const look::Readings>(readings);
  return result;
}

}  // namespace

TEST_CASE("a reading opens to all that it rests on", "[cards][readings]") {
  cards::ReadingCard card;
  card.set(sample());
  card.turnTo(2);
  const QString text = card.text();
  for (const char* part : {"Level 7.8", "golden", "Lightness, L* 54.2", "Range, L* 51 to 58", "Sampling error 0.31", "a* 6.5",
                           "b* 24.4", "Share lightened 42 %", "Share left dark 58 %", "Seen from 2 m it is two clear levels",
                           "24 L* apart", "Root Level 6.1", "End not seen", "Hair 52 cm", "Scalp showing through 4 %",
                           "Half of the hair lies between -7 and 7 L*", "reads grey",
                           "Part off its planned place", "Combed back at front and top", "prediction"}) {
    INFO(part);
    CHECK(text.contains(QString::fromUtf8(part)));
  }
  std::string wanted;
  QObject::connect(&card, &cards::ReadingCard::assumptionWanted, [&](const std::string& key) { wanted = key; });
  card.mover(1)->click();
  CHECK(wanted == "fall.combBack");
}

TEST_CASE("a histogram says where half and nine tenths of the hair lie", "[cards][readings]") {
  // Closed form: 100 values spread evenly over -10 to 10.
  const std::vector<int> even(20, 5);
  CHECK(cards::quantileOf(-10, 1, even, 0.25) == Approx(-5));
  CHECK(cards::quantileOf(-10, 1, even, 0.95) == Approx(9));
  CHECK(cards::quantileOf(-10, 1, {0, 4, 0, 0}, 1) == Approx(-8));
  cards::HistogramDrawing drawing;
  drawing.resize(200, 80);
  drawing.set(-10, 1, even);
  CHECK(drawing.isVisibleTo(nullptr));
  const QImage full = drawing.grab().toImage();
  std::vector<int> oneHump(20, 0);
  oneHump[10] = 100;
  drawing.set(-10, 1, oneHump);
  CHECK_FALSE(drawing.grab().toImage() == full);
  drawing.set(0, 1, {});
  CHECK(drawing.isHidden());
  CHECK(drawing.text().isEmpty());
}

TEST_CASE("a reading says when it is not seen, not known yet, or of the plan before", "[cards][readings]") {
  cards::ReadingCard card;
  CHECK(card.text().contains(QStringLiteral("Being worked out")));
  card.set(sample());
  card.turnTo(1);
  CHECK(card.text().contains(QStringLiteral("Not seen")));
  CHECK_FALSE(card.text().contains(QStringLiteral("L*")));
  card.setAge(cards::ReadingCard::Age::OfThePlanBefore);
  CHECK(card.text().contains(QStringLiteral("before the last change")));
  card.setAge(cards::ReadingCard::Age::OfThisPlan);
  card.turnTo(0);  // its range is not worked out
  CHECK(card.text().contains(QStringLiteral("Range, L* not known yet")));
  CHECK(card.text().contains(QStringLiteral("Level 6.2")));
  card.clear();
  CHECK(card.text().contains(QStringLiteral("Being worked out")));
}

TEST_CASE("each verdict on contrast is a sentence with its distance", "[paint][readings]") {
  using V = look::ContrastVerdict;
  for (const V verdict : {V::TwoClearLevels, V::Soft, V::OneTone, V::TooLittleHair}) {
    const QString sentence = paint::contrastSentence(contrastOf(verdict, 3.2, 21, 0.6));
    INFO(sentence.toStdString());
    CHECK(sentence.contains(QStringLiteral("0.6 m")));
    CHECK(sentence.endsWith(u'.'));
  }
}

TEST_CASE("a tile opens its reading by mouse, Enter and Space, and the card follows the look", "[desk][readings]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("open"));
  REQUIRE(desk.isFresh());
  const auto& tiles = desk.window->readings().tiles();
  cards::ReadingCard* card = desk.window->cards().readingCard();
  QTest::mouseClick(tiles[3], Qt::LeftButton);
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Reading);
  CHECK(card->reading() == 3);
  CHECK(card->text().contains(QStringLiteral("Level 6.2")));
  desk.window->cards().turnTo(desk::CardColumn::Card::Hair);
  tiles[5]->setFocus();
  QTest::keyClick(tiles[5], Qt::Key_Return);
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Reading);
  CHECK(card->reading() == 5);
  tiles[0]->setFocus();
  QTest::keyClick(tiles[0], Qt::Key_Space);
  CHECK(card->reading() == 0);
  // Selecting a piece leaves it open: it follows the hand.
  desk.window->controller().select(document::Selection::one("piece-1"));
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Reading);
  desk.edit();
  CHECK(card->text().contains(QStringLiteral("before the last change")));
  REQUIRE(desk.isFresh());
  CHECK_FALSE(card->text().contains(QStringLiteral("before the last change")));
}

TEST_CASE("a tile names contrast and explains lightness", "[desk][readings]") {
  look::Reading reading;
  reading.level = 7, reading.lightness = 50, reading.b = 25;
  const look::Contrast contrast = contrastOf(look::ContrastVerdict::OneTone, 3, 0, 1);
  CHECK(desk::readingText(reading, &contrast).contrast == QStringLiteral("contrast:\none tone"));
  desk::ReadingTile tile(QStringLiteral("front"), nullptr);
  tile.set(reading, &contrast, colour::Light::Daylight);
  CHECK(tile.sentence().contains(QStringLiteral("contrast: one tone")));
  CHECK(tile.toolTip().contains(QStringLiteral("0 is black, 100 is white")));
}
