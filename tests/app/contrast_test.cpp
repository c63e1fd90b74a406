// Text and its grounds in both themes.
//
// Source: W3C Recommendation, Web Content Accessibility Guidelines (WCAG) 2.1,
// 5 June 2018: "relative luminance" and "contrast ratio" in its glossary;
// success criteria 1.4.3 (text 4.5:1) and 1.4.11 (parts of controls 3:1).
#include <catch2/catch.hpp>

#include <QColor>
#include <cmath>

#include "app/controls/theme.h"
#include "app/paint/ink.h"

using namespace combdraft;

namespace {

double relativeLuminance(const QColor& colour) {
  const auto linear = [](double s) {
    return s <= 0.03928 ? s / 12.92 : std::pow((s + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
         0.0722 * linear(colour.blueF());
}

double contrastRatio(const QColor& a, const QColor& b) {
  const double la = relativeLuminance(a), lb = relativeLuminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

void checkPair(const char* what, const QColor& text, const QColor& ground, double least) {
  INFO(what << ": " << text.name().toStdString() << " on " << ground.name().toStdString());
  CHECK(contrastRatio(text, ground) >= least);
}

}  // namespace

TEST_CASE("the contrast ratio runs from 1 to 21, as the guideline says", "[theme][published]") {
  CHECK(contrastRatio(Qt::black, Qt::white) == Approx(21));
  CHECK(contrastRatio(Qt::white, Qt::black) == Approx(21));
  CHECK(contrastRatio(Qt::red, Qt::red) == Approx(1));
}

TEST_CASE("text of the window has 4.5 to 1 in both themes, edges of controls 3 to 1", "[theme]") {
  for (const auto name : {controls::ThemeName::Light, controls::ThemeName::Dark}) {
    const controls::Theme& t = controls::theme(name);
    INFO((name == controls::ThemeName::Light ? "light" : "dark"));
    for (const QColor& ground : {t.ground, t.card, t.raised, t.cautionGround}) {
      checkPair("ink", t.ink, ground, 4.5);
      checkPair("caution", t.caution, ground, 4.5);
    }
    for (const QColor& ground : {t.ground, t.card, t.raised}) {
      checkPair("soft ink", t.softInk, ground, 4.5);
      checkPair("edge", t.edge, ground, 3);
      checkPair("focus", t.accent, ground, 3);
    }
    checkPair("on accent", t.onAccent, t.accent, 4.5);
    checkPair("tool tip", t.ink, t.card, 4.5);
    checkPair("pressed button", t.ink, t.line, 4.5);
  }
}

TEST_CASE("words on the head sheet have 4.5 to 1 in both themes", "[theme][paint]") {
  const paint::Palette light, dark = paint::darkPalette();
  for (const paint::Palette& p : {light, dark}) {
    INFO((p == light ? "light" : "dark"));
    for (const QColor& ground : {p.ground, p.skin, p.scalp}) {
      checkPair("ink", p.ink, ground, 4.5);
      checkPair("soft ink", p.softInk, ground, 4.5);
    }
    checkPair("number", p.onTaken, p.taken, 4.5);
    checkPair("tag", p.ground, p.ink, 4.5);
    checkPair("hatch on deepened", p.taken, p.deepen, 3);
    checkPair("handles on the sheet", p.accent, p.ground, 3);
    checkPair("handles over a look's paper", p.accent, light.ground, 3);
    checkPair("what is selected over a look's mid grey, in a dark window", dark.ground, light.midGrey, 3);
    // Taken is the lightest, deepened the darkest: it reads as it is meant.
    CHECK(relativeLuminance(p.taken) > relativeLuminance(p.leftOut));
    CHECK(relativeLuminance(p.leftOut) > relativeLuminance(p.deepen));
  }
}
