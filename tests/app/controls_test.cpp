// What people type and see: sums, ranges, contrast of text, the bundled font.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>
#include <cmath>

#include "app/controls/icon.h"
#include "app/controls/number_field.h"
#include "app/controls/number_input.h"
#include "app/controls/segments.h"
#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"

using namespace combdraft::controls;

TEST_CASE("number fields take sums, either decimal mark and fractions", "[controls]") {
  const std::pair<const char*, double> right[] = {
      {"12", 12},       {"12.5", 12.5},     {"12,5", 12.5},      {" 3 + 4 ", 7},
      {"10-2*3", 4},    {"(10-2)*3", 24},   {"1/8", 0.125},      {"1 1/8", 1.125},
      {"-4", -4},       {"2*(1,5+0.5)", 4}, {"100/4/5", 5},      {"\u22123+5", 2}};
  for (const auto& [text, value] : right) {
    INFO(text);
    const auto typed = evaluate(QString::fromUtf8(text));
    REQUIRE(typed);
    CHECK(*typed == Approx(value));
  }
  for (const char* text : {"", "mm", "12 mm", "1/0", "3+", "(2", "2)", "1..2", "1 2", "1 2 3/4", "nan", "1e400", "0x10"}) {
    INFO(text);
    CHECK_FALSE(evaluate(QString::fromUtf8(text)));
  }
  CHECK_FALSE(evaluate(QString(500, u'(')));
}

TEST_CASE("a number field keeps its value when what is typed is outside its range", "[controls]") {
  NumberFieldSpec spec;
  spec.label = QStringLiteral("Thickness");
  spec.unit = QStringLiteral("mm");
  spec.low = 0.2;
  spec.high = 40;
  NumberField field(spec);
  field.setValue(5);
  std::vector<std::optional<double>> edits;
  QObject::connect(&field, &NumberField::edited, &field,
                   [&](const std::optional<double>& value, bool) { edits.push_back(value); });
  const auto type = [&](const char* text) {
    field.edit()->setFocus();
    field.edit()->selectAll();
    QTest::keyClicks(field.edit(), QString::fromLatin1(text));
    QTest::keyClick(field.edit(), Qt::Key_Return);
  };
  type("50");
  CHECK(edits.empty());
  CHECK(field.value() == 5);
  type("abc");
  CHECK(edits.empty());
  type("3,5+2");
  REQUIRE(edits.size() == 1);
  CHECK(edits.back() == 5.5);
  type("5.5");  // the same value is no edit
  CHECK(edits.size() == 1);
  type("");     // this field must not be empty
  CHECK(edits.size() == 1);
  CHECK(field.edit()->text() == QStringLiteral("5.5"));
}

TEST_CASE("arrow keys step by one, ten and a tenth, and come back exactly", "[controls]") {
  NumberFieldSpec spec;
  spec.label = QStringLiteral("Start");
  spec.high = 100;
  NumberField field(spec);
  field.setValue(20);
  QTest::keyClick(field.edit(), Qt::Key_Up);
  CHECK(field.value() == 21);
  QTest::keyClick(field.edit(), Qt::Key_Up, Qt::ShiftModifier);
  CHECK(field.value() == 31);
  for (int i = 0; i < 7; ++i) QTest::keyClick(field.edit(), Qt::Key_Down, Qt::AltModifier);
  CHECK(field.value() == 30.3);
  for (int i = 0; i < 7; ++i) QTest::keyClick(field.edit(), Qt::Key_Up, Qt::AltModifier);
  CHECK(field.value() == 31);
  for (int i = 0; i < 20; ++i) QTest::keyClick(field.edit(), Qt::Key_Up, Qt::ShiftModifier);
  CHECK(field.value() == 100);
}

namespace {
// WCAG 2.1, definition of relative luminance and contrast ratio.
double luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}
double contrast(const QColor& a, const QColor& b) {
  const double p = luminance(a), q = luminance(b);
  return (std::max(p, q) + 0.05) / (std::min(p, q) + 0.05);
}
}  // namespace

TEST_CASE("text stands out by 4.5 to 1 and control outlines by 3 to 1 in both themes (WCAG 2.1, 1.4.3 and 1.4.11)",
          "[controls]") {
  CHECK(contrast(Qt::black, Qt::white) == Approx(21).epsilon(0.001));  // the standard's own example
  const ThemeName name = GENERATE(ThemeName::Light, ThemeName::Dark);
  const Theme& t = theme(name);
  for (const QColor& ground : {t.ground, t.card, t.raised}) {
    CHECK(contrast(t.ink, ground) >= 4.5);
    CHECK(contrast(t.softInk, ground) >= 4.5);
    CHECK(contrast(t.edge, ground) >= 3);
    CHECK(contrast(t.accent, ground) >= 3);
  }
  CHECK(contrast(t.onAccent, t.accent) >= 4.5);
  CHECK(contrast(t.caution, t.cautionGround) >= 4.5);
}

TEST_CASE("the bundled font and the icons load", "[controls]") {
  CHECK_FALSE(loadBundledFont().isEmpty());
  CHECK_FALSE(icon(QStringLiteral("save")).isNull());
  CHECK_FALSE(icon(QStringLiteral("save")).pixmap(48, 48).toImage().isNull());
  CHECK(icon(QStringLiteral("no such icon")).isNull());
}

TEST_CASE("a row of choices takes a second line rather than cut its words", "[controls]") {
  QWidget host;
  auto* column = new QVBoxLayout(&host);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSizeConstraint(QLayout::SetNoConstraint);  // narrower than it would like
  auto* row = new Segments(QStringLiteral("Card"),
                           {{QStringLiteral("Piece"), {}, {}}, {QStringLiteral("Section"), {}, {}}, {QStringLiteral("Head"), {}, {}},
                            {QStringLiteral("Formula"), {}, {}}, {QStringLiteral("Whatever was changed"), {}, {}}},
                           &host);
  row->setLines(Segments::Lines::AsNeeded);
  column->addWidget(row);
  column->addStretch(1);
  int oneLine = 0;
  for (int i = 0; i < 5; ++i) oneLine += row->button(i)->sizeHint().width();
  const auto widen = [&](int width) {
    host.resize(width, 300);
    QTest::qWait(20);  // a line more asks the column around it for room, which comes a turn later
  };
  host.show();
  REQUIRE(QTest::qWaitForWindowExposed(&host));
  widen(oneLine + 20);
  for (int i = 1; i < 5; ++i) CHECK(row->button(i)->y() == row->button(0)->y());
  const int low = row->height();
  widen(oneLine * 3 / 4);
  CHECK(row->button(4)->y() > row->button(0)->y());
  CHECK(row->height() > low);
  for (int i = 0; i < 5; ++i) {
    QAbstractButton* button = row->button(i);
    INFO(button->text().toStdString());
    CHECK(button->fontMetrics().horizontalAdvance(button->text()) <= button->width() - 4);
    CHECK(row->rect().contains(button->geometry()));
  }
  widen(oneLine + 20);
  CHECK(row->button(4)->y() == row->button(0)->y());
  CHECK(row->height() == low);
}

TEST_CASE("a wrapped label is as high as its words need, whatever changed since", "[controls]") {
  WrappedLabel ours(QStringLiteral("Lightener along a parting starts softly where the hair was backcombed."));
  QLabel plain(ours.text());
  plain.setWordWrap(true);
  const auto alike = [&] {
    for (const int width : {60, 90, 90, 200, 60, 1000}) {
      INFO(width << " px, " << ours.text().toStdString());
      CHECK(ours.heightForWidth(width) == plain.heightForWidth(width));
    }
  };
  alike();
  const int before = ours.heightForWidth(90);
  const auto both = [&](const auto& change) { change(ours), change(plain), alike(); };
  both([](QLabel& label) { label.setText(QStringLiteral("Short.")); });
  CHECK(ours.heightForWidth(90) < before);
  both([](QLabel& label) {
    QFont font = label.font();
    font.setPointSizeF(30);
    label.setFont(font);
  });
  both([](QLabel& label) { label.setContentsMargins(11, 7, 11, 7); });
  both([](QLabel& label) { label.setStyleSheet(QStringLiteral("padding: 20px; font-size: 9pt")); });
}
