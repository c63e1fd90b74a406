// Lengths in the units of the user: shown, typed, followed live.
#include <catch2/catch.hpp>

#include "app/cards/drop_out_text.h"
#include "app/controls/text_box.h"
#include "app/controls/units.h"
#include "app/words/typed_text.h"
#include "tests/app/card_helpers.h"

using namespace combdraft;
using namespace combdraft::controls;
using tests::typeInto;

namespace {

// Puts the unit back for the tests after this one.
struct InUnit {
  explicit InUnit(LengthUnit unit) { Units::current().setLength(unit); }
  ~InUnit() { Units::current().setLength(LengthUnit::Millimetres); }
};

NumberFieldSpec thickness() {
  NumberFieldSpec spec;
  spec.label = QStringLiteral("Thickness");
  spec.unit = QStringLiteral("mm");
  spec.low = 0.2;
  spec.high = 40;
  return spec;
}

}  // namespace

// The inch is 25.4 mm: the international yard and pound agreement of 1959.
TEST_CASE("lengths are typed in the unit in force or in one that stands with them", "[controls][units]") {
  const struct {
    const char* text;
    LengthUnit unit;
    double mm;
  } right[] = {{"30+12", LengthUnit::Millimetres, 42},   {"3,5", LengthUnit::Millimetres, 3.5},
               {"3.5", LengthUnit::Centimetres, 35},     {"0,3", LengthUnit::Centimetres, 3},
               {"1/8", LengthUnit::Inches, 3.175},       {"1/4", LengthUnit::Inches, 6.35},
               {"1 1/8", LengthUnit::Inches, 28.575},    {"2", LengthUnit::Inches, 50.8},
               {"12 mm", LengthUnit::Inches, 12},        {"3 cm", LengthUnit::Millimetres, 30},
               {"1/4\"", LengthUnit::Millimetres, 6.35}, {"1/2 in", LengthUnit::Centimetres, 12.7},
               {"30+12 mm", LengthUnit::Inches, 42},     {"\u2248 13/16", LengthUnit::Inches, 20.6375}};
  for (const auto& row : right) {
    INFO(row.text);
    const auto typed = lengthFrom(QString::fromUtf8(row.text), row.unit);
    REQUIRE(typed);
    CHECK(*typed == Approx(row.mm).margin(1e-9));
  }
  for (const char* text : {"", "mm", "inch", "3 ft", "1/0 in", "3 cm mm"}) {
    INFO(text);
    CHECK_FALSE(lengthFrom(QString::fromUtf8(text), LengthUnit::Millimetres));
  }
}

TEST_CASE("inches are shown as fractions, and one that is not the whole truth says so", "[controls][units]") {
  const auto inches = [](double mm) { return lengthNumber(mm, LengthUnit::Inches); };
  CHECK(inches(3.175) == QStringLiteral("1/8"));
  CHECK(inches(6.35) == QStringLiteral("1/4"));
  CHECK(inches(28.575) == QStringLiteral("1 1/8"));
  CHECK(inches(50.8) == QStringLiteral("2"));
  CHECK(inches(0) == QStringLiteral("0"));
  CHECK(inches(20) == QString::fromUtf8("\u2248 13/16"));
  CHECK(inches(-6.35) == QStringLiteral("-1/4"));
  CHECK(lengthText(23.5, LengthUnit::Centimetres) == QStringLiteral("2.35 cm"));
  // What is shown reads back as what it says, at most half a step away.
  for (double mm = -90; mm < 900; mm += 0.7) {
    const auto back = lengthFrom(inches(mm), LengthUnit::Inches);
    REQUIRE(back);
    CHECK(std::abs(*back - mm) <= 25.4 / 32 + 1e-6);
  }
  // Ranges are shown inward: both shown ends are allowed.
  for (const double mm : {0.2, 1500.0, 33.3}) {
    CHECK(*lengthFrom(lengthNumber(mm, LengthUnit::Inches, 1, Rounding::Up), LengthUnit::Inches) >= mm);
    CHECK(*lengthFrom(lengthNumber(mm, LengthUnit::Inches, 1, Rounding::Down), LengthUnit::Inches) <= mm);
  }
}

TEST_CASE("a length field follows the unit at once and keeps its value", "[controls][units]") {
  NumberField field(thickness());
  field.setValue(20);
  CHECK(field.edit()->text() == QStringLiteral("20"));
  {
    const InUnit centimetres(LengthUnit::Centimetres);
    CHECK(field.edit()->text() == QStringLiteral("2"));
    CHECK(field.rangeText() == QStringLiteral("0.02 to 4 cm"));
    CHECK(field.edit()->accessibleName() == QStringLiteral("Thickness, cm"));
    Units::current().setLength(LengthUnit::Inches);
    CHECK(field.edit()->text() == QString::fromUtf8("\u2248 13/16"));
    CHECK(field.edit()->toolTip().contains(QStringLiteral("Exactly 20 mm")));
    // Going through it without typing changes nothing.
    QTest::keyClick(field.edit(), Qt::Key_Return);
    CHECK(field.value() == 20);
    typeInto(field.edit(), QStringLiteral("1/8"));
    CHECK(field.value() == 3.175);
    QTest::keyClick(field.edit(), Qt::Key_Up);
    CHECK(field.edit()->text() == QStringLiteral("3/16"));
    QTest::keyClick(field.edit(), Qt::Key_Down);
    CHECK(field.value() == 3.175);
    typeInto(field.edit(), QStringLiteral("2"));  // 50.8 mm
    CHECK(field.value() == 3.175);
    CHECK(field.problem().contains(field.rangeText()));
  }
  // What was refused is still there, and still means inches.
  CHECK(field.edit()->text() == QStringLiteral("2 in"));
  QTest::keyClick(field.edit(), Qt::Key_Escape);
  CHECK(field.edit()->text() == QStringLiteral("3.175"));
}

TEST_CASE("what was typed and refused stays, through changes elsewhere, until it is dropped", "[controls]") {
  NumberField field(thickness());
  field.setValue(5);
  typeInto(field.edit(), QStringLiteral("50"));
  CHECK(field.problem().contains(QStringLiteral("0.2 to 40 mm")));
  field.clearFocus();
  field.setValue(6);  // an undo, say
  CHECK(field.edit()->text() == QStringLiteral("50"));
  CHECK(field.value() == 6);
  field.abandonTyping();
  CHECK(field.edit()->text() == QStringLiteral("6"));
  CHECK(field.problem().isEmpty());

  TextField date({QStringLiteral("Date"), {}, {}});
  date.setCheck(dateProblem);
  date.setText(QStringLiteral("2026-01-05"));
  int edits = 0;
  QObject::connect(&date, &TextField::edited, &date, [&](const QString&) { ++edits; });
  for (const char* wrong : {"5.1.2026", "2026-02-30", "soon"}) {
    typeInto(date.edit(), QString::fromLatin1(wrong));
    CHECK(date.edit()->text() == QLatin1String(wrong));
    CHECK(date.problem().contains(QStringLiteral("2026-03-14")));
    CHECK(edits == 0);
  }
  QTest::keyClick(date.edit(), Qt::Key_Escape);
  CHECK(date.edit()->text() == QStringLiteral("2026-01-05"));
  typeInto(date.edit(), QStringLiteral("2026-02-28"));
  CHECK(edits == 1);
}

TEST_CASE("a day typed with other marks becomes the day as it is kept", "[controls]") {
  TextField date({QStringLiteral("Date"), {}, {}});
  date.setCheck(dateProblem);
  QStringList edits;
  QObject::connect(&date, &TextField::edited, &date, [&](const QString& text) { edits << text; });
  typeInto(date.edit(), QStringLiteral("2026/03/14"));
  CHECK(edits == QStringList{QStringLiteral("2026-03-14")});
  CHECK(date.edit()->text() == QStringLiteral("2026-03-14"));
  typeInto(date.edit(), QStringLiteral("2026.03.14"));  // the same day
  CHECK(edits.size() == 1);
  CHECK(date.edit()->text() == QStringLiteral("2026-03-14"));
  for (const char* wrong : {"2026/02/30", "2026-3-14", "14.03.2026", "2026-03-14T10:00", "2026 03 14"}) {
    typeInto(date.edit(), QString::fromLatin1(wrong));
    CHECK_FALSE(date.problem().isEmpty());
    CHECK(date.edit()->text() == QLatin1String(wrong));
  }
  typeInto(date.edit(), QString());
  CHECK(edits.back().isEmpty());
  CHECK(edits.size() == 2);
}

TEST_CASE("pasted text becomes text that a file can hold", "[controls]") {
  const QString halves = QString(QChar(char16_t(0xD83D))) + u'a' + QChar(char16_t(0xDE00));
  const QString pair = QStringLiteral("\U0001F600");
  const QChar unknown(char16_t(0xFFFD));
  CHECK(words::oneLine(QStringLiteral("a\u2028b\u2029c\td\ne\x85" "f")) == QStringLiteral("a b c d e f"));
  CHECK(words::oneLine(QString(QChar(u'\0')) + QChar(char16_t(0xFFFE)) + u'x') == QString(u' ') + unknown + u'x');
  CHECK(words::oneLine(halves) == QString(unknown) + u'a' + unknown);
  CHECK(words::oneLine(pair) == pair);
  CHECK(words::severalLines(QStringLiteral("a\r\nb\rc\u2028d\u2029e\tf\x07" "g")) == QStringLiteral("a\nb\nc\nd\ne\tf g"));

  TextField name({QStringLiteral("Name"), {}, {}});
  typeInto(name.edit(), QStringLiteral("soft\u2028root"));
  CHECK(name.text() == QStringLiteral("soft root"));
  TextBox box(QStringLiteral("Notes"), {}, 3, 1000);
  QString taken;
  QObject::connect(&box, &TextBox::edited, &box, [&](const QString& text, bool) { taken = text; });
  box.edit()->setPlainText(QStringLiteral("a\u2028b\u2029c\x07" "d"));
  CHECK(taken == QStringLiteral("a\nb\nc d"));
}

TEST_CASE("a value typed finer than its field is shown as typed", "[controls]") {
  NumberField field(thickness());
  typeInto(field.edit(), QStringLiteral("4,75"));
  CHECK(field.value() == 4.75);
  CHECK(field.edit()->text() == QStringLiteral("4.75"));
}

TEST_CASE("drop-outs in inches keep what was not touched", "[cards][units]") {
  const std::vector<plan::Stretch> before{{20, 40}, {60, 75}};
  const QString shown = cards::dropOutText(before, LengthUnit::Inches);
  const auto same = cards::dropOutsFrom(shown, LengthUnit::Inches, before);
  REQUIRE(same);
  CHECK(*same == before);
  const auto more = cards::dropOutsFrom(shown + QStringLiteral("; 4 1/4-5"), LengthUnit::Inches, before);
  REQUIRE(more);
  REQUIRE(more->size() == 3);
  CHECK((*more)[0] == before[0]);
  CHECK((*more)[2].from_mm == Approx(107.95));
  CHECK((*more)[2].to_mm == Approx(127));
}
