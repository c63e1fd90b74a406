// Hair colour: exact lightness, order, what dyes and glazes may and may not do.
#include <catch2/catch.hpp>
#include <cmath>
#include <stdexcept>

#include "engine/base/expect.h"
#include "engine/colour/fibre.h"
#include "engine/colour/hair_colour.h"
#include "engine/colour/tone_aims.h"

using namespace combdraft;
using namespace combdraft::colour;

namespace {

Lab daylightLab(const Spectrum& s) { return labOf(s, Light::Daylight); }

bool neverLighter(const Spectrum& after, const Spectrum& before) {
  for (std::size_t i = 0; i < kSamples; ++i)
    if (!(after[i] <= before[i] + 1e-12)) return false;
  return true;
}
bool possible(const Spectrum& s) {
  for (const double r : s)
    if (!(r >= kSurfaceShare_frac && r <= 1)) return false;
  return true;
}
double worst(const Spectrum& p, const Spectrum& q) {
  double most = 0;
  for (std::size_t i = 0; i < kSamples; ++i) most = std::max(most, std::abs(p[i] - q[i]));
  return most;
}

}  // namespace

TEST_CASE("absorption and reflectance undo each other", "[colour]") {
  for (double level = 1; level <= 10; ++level) {
    const Spectrum hair = naturalHair(level);
    CHECK(worst(reflectanceOf(absorptionOf(hair)), hair) < 1e-12);
  }
  Spectrum none{};
  CHECK(worst(reflectanceOf(none), [] {
          Spectrum s;
          s.fill(1);
          return s;
        }()) < 1e-15);
}

TEST_CASE("natural and bare hair have exactly the lightness of their scale", "[colour]") {
  LevelScale own;
  own.natural = {19, 20, 22, 25, 29, 34, 40, 47, 54, 61};
  for (const LevelScale& scale : {LevelScale{}, own})
    for (double level = 1; level <= 12; level += 0.25) {
      for (const double warmth : {-1.0, -0.3, 0.0, 0.5, 1.0})
        CHECK(daylightLab(naturalHair(level, warmth, scale)).L ==
              Approx(scale.lightnessOfNatural(level)).margin(1e-6));
      CHECK(daylightLab(lightenedHair(level, scale)).L ==
            Approx(scale.lightnessOfLightened(level)).margin(1e-6));
    }
}

TEST_CASE("all hair sends back between its surface share and everything", "[colour]") {
  for (double level = 1; level <= 12; level += 0.5) {
    CHECK(possible(naturalHair(level, 1)));
    CHECK(possible(lightenedHair(level)));
    for (const Tone tone : kAllTones) {
      CHECK(possible(finishedHair(level, level, tone)));
      CHECK(possible(deepenedHair(level, tone)));
    }
  }
  CHECK(possible(whiteHair()));
  CHECK(possible(wet(whiteHair())));
}

TEST_CASE("warmth makes natural hair more colourful and turns it to red", "[colour]") {
  for (int level = 3; level <= 10; ++level) {
    Lab before = daylightLab(naturalHair(level, -1));
    for (double warmth = -0.75; warmth <= 1; warmth += 0.25) {
      const Lab lab = daylightLab(naturalHair(level, warmth));
      CHECK(lab.a > before.a);
      CHECK(chroma(lab) > chroma(before));
      before = lab;
    }
  }
}

TEST_CASE("bare hair is lighter and more colourful than natural hair of its level",
          "[colour]") {
  for (int level = 1; level <= 10; ++level) {
    const Lab natural = daylightLab(naturalHair(level)),
              bare = daylightLab(lightenedHair(level));
    CHECK(bare.L > natural.L);
    CHECK(chroma(bare) > chroma(natural));
  }
}

TEST_CASE("bare levels 7 to 10 land on their aims", "[colour]") {
  // Own aims, seen on mid grey; held so that a change is noticed.
  const Lab aims[] = {{50, 9, 33}, {58, 6, 32}, {66, 4, 28}, {73, 2, 22}};
  for (int i = 0; i < 4; ++i) CHECK(ciede2000(daylightLab(lightenedHair(7 + i)), aims[i]) < 2);
}

TEST_CASE("levels run on without a jump", "[colour]") {
  const double step = 1.0 / 64;
  for (double level = 1; level < 12 - step; level += step) {
    CHECK(ciede2000(daylightLab(lightenedHair(level)),
                    daylightLab(lightenedHair(level + step))) < 0.2);
    CHECK(ciede2000(daylightLab(naturalHair(level)), daylightLab(naturalHair(level + step))) <
          0.2);
    CHECK(ciede2000(daylightLab(finishedHair(10, level, Tone::Beige)),
                    daylightLab(finishedHair(10, level + step, Tone::Beige))) < 0.3);
  }
}

TEST_CASE("a toner takes light away at every wavelength", "[colour]") {
  for (double bare = 4; bare <= 11; bare += 1)
    for (double level = 3; level <= 12; level += 1)
      for (const Tone tone : kAllTones) {
        const Spectrum base = lightenedHair(bare);
        const Spectrum finished = finishedHair(bare, level, tone);
        CHECK(neverLighter(finished, base));
        if (level > bare) CHECK(worst(finished, finishedHair(bare, bare, tone)) == 0);
      }
}

TEST_CASE("finished tones land where they aim", "[colour]") {
  const LevelScale scale;
  for (double level = 7; level <= 10; level += 0.5)
    for (const Tone tone : kAllTones) {
      INFO(toneWord(tone) << " " << level);
      const Lab lab = daylightLab(finishedHair(level, level, tone));
      CHECK(ciede2000(lab, toneAim(tone, scale.lightnessOfFinished(level))) < 1.5);
      // From hair that was lifted further the same finish is the same colour.
      CHECK(ciede2000(lab, daylightLab(finishedHair(level + 1, level, tone))) < 1.8);
    }
}

TEST_CASE("finished hair gets lighter with its level", "[colour]") {
  for (const Tone tone : kAllTones) {
    double before = 0;
    for (double level = 2; level <= 11; level += 0.25) {
      INFO(toneWord(tone) << " " << level);
      const double L = daylightLab(finishedHair(level, level, tone)).L;
      CHECK(L > before);
      before = L;
    }
  }
}

TEST_CASE("no hair that is not ash reads khaki, green or grey", "[colour]") {
  for (double level = 6; level <= 11; level += 0.25) {
    for (const Tone tone : kAllTones) {
      INFO(toneWord(tone) << " " << level);
      const Lab lab = daylightLab(finishedHair(level, level, tone));
      CHECK(lab.a > 0);
      if (tone == Tone::Ash) continue;
      CHECK(!readsKhaki(lab));
      CHECK(chroma(lab) > 10);
      if (tone == Tone::Beige) CHECK(lab.a >= lab.b / 4);
    }
    if (level <= 10) CHECK(!readsKhaki(daylightLab(naturalHair(level))));
    CHECK(!readsKhaki(daylightLab(lightenedHair(level))));
  }
}

TEST_CASE("tones keep their places among each other", "[colour]") {
  // Common practice, no source: cool tones look deeper than warm ones of the
  // same level, ash deepest of the cool; copper and red are redder than gold.
  for (double level = 7; level <= 10; ++level) {
    const auto of = [&](Tone tone) { return daylightLab(finishedHair(level, level, tone)); };
    CHECK(of(Tone::Ash).L < of(Tone::Pearl).L);
    CHECK(of(Tone::Pearl).L < of(Tone::Beige).L);
    CHECK(of(Tone::Beige).L < of(Tone::Gold).L);
    CHECK(chroma(of(Tone::Ash)) < chroma(of(Tone::Pearl)));
    CHECK(chroma(of(Tone::Pearl)) < chroma(of(Tone::Beige)));
    CHECK(chroma(of(Tone::Beige)) < chroma(of(Tone::Natural)));
    CHECK(chroma(of(Tone::Natural)) < chroma(of(Tone::Gold)));
    CHECK(hue_deg(of(Tone::Red)) < hue_deg(of(Tone::Copper)));
    CHECK(hue_deg(of(Tone::Copper)) < hue_deg(of(Tone::Gold)));
    CHECK(warmthWord(of(Tone::Ash)) == "cool");
    CHECK(warmthWord(of(Tone::Pearl)) == "cool");
    CHECK(warmthWord(of(Tone::Beige)) == "neutral");
    CHECK(warmthWord(of(Tone::Natural)) == "neutral");
    CHECK(warmthWord(of(Tone::Copper)) == "coppery");
    if (level >= 8) CHECK(warmthWord(of(Tone::Gold)) == "golden");
    CHECK(warmthWord(daylightLab(lightenedHair(level))) == (level < 10 ? "golden" : "warm"));
  }
}

TEST_CASE("dyed darker keeps the natural scale's lightness", "[colour]") {
  const LevelScale scale;
  for (int level = 3; level <= 9; ++level)
    for (const Tone tone : kAllTones) {
      INFO(toneWord(tone) << " " << level);
      CHECK(daylightLab(deepenedHair(level, tone)).L ==
            Approx(scale.lightnessOfNatural(level)).margin(0.5));
    }
  CHECK(worst(deepenedHair(5, Tone::Natural), naturalHair(5)) == 0);
}

TEST_CASE("a glaze never lightens, and more of it takes more away", "[colour]") {
  for (const double base : {2.0, 5.0, 8.0}) {
    for (const Spectrum& hair : {naturalHair(base), lightenedHair(base), whiteHair()}) {
      CHECK(worst(glazed(hair, 6, Tone::Beige, 0), hair) < 1e-12);
      Spectrum before = hair;
      for (double strength = 0.2; strength <= 1; strength += 0.2) {
        const Spectrum after = glazed(hair, 6, Tone::Beige, strength);
        CHECK(neverLighter(after, before));
        before = after;
      }
      CHECK(worst(glazed(hair, 6, Tone::Beige, 7), glazed(hair, 6, Tone::Beige, 1)) == 0);
    }
  }
  // At full strength, light hair takes the typed colour; dark hair stays.
  CHECK(ciede2000(daylightLab(glazed(lightenedHair(10), 6, Tone::Natural, 1)),
                  daylightLab(finishedHair(12, 6, Tone::Natural))) < 0.5);
  CHECK(worst(glazed(naturalHair(3), 8, Tone::Natural, 1), naturalHair(3)) < 1e-12);
}

TEST_CASE("wet hair is darker, by up to three levels", "[colour]") {
  // Common practice, no source: wet hair looks two to three shades darker.
  const LevelScale scale;
  for (int level = 4; level <= 10; ++level) {
    const Spectrum dry = naturalHair(level);
    CHECK(neverLighter(wet(dry), dry));
    const double reads = scale.levelOfLightness(daylightLab(wet(dry)).L);
    CHECK(level - reads > 1);
    CHECK(level - reads < 3);
  }
}

TEST_CASE("white hair is light, nearly grey and not khaki", "[colour]") {
  const Lab lab = daylightLab(whiteHair());
  CHECK(lab.L > daylightLab(lightenedHair(10)).L);
  CHECK(chroma(lab) < 10);
  CHECK(!readsKhaki(lab));
}

TEST_CASE("the grey-mix flag speaks for pale pieces over brown only", "[colour]") {
  const Lab brown = daylightLab(naturalHair(5));
  const Lab ash = daylightLab(finishedHair(10, 10, Tone::Ash));
  CHECK(readsGreyOverBrown(ash, brown, 0.5));
  CHECK(readsGreyOverBrown(daylightLab(whiteHair()), brown, 0.5));
  CHECK(!readsGreyOverBrown(daylightLab(finishedHair(10, 10, Tone::Beige)), brown, 0.5));
  CHECK(!readsGreyOverBrown(daylightLab(lightenedHair(10)), brown, 0.5));
  CHECK(!readsGreyOverBrown(ash, daylightLab(naturalHair(9)), 0.5));
  // A few strands of either are no mix.
  CHECK(!readsGreyOverBrown(ash, brown, 0.03));
  CHECK(!readsGreyOverBrown(ash, brown, 0.97));
}

TEST_CASE("khaki is a little yellow with hardly any red", "[colour]") {
  CHECK(readsKhaki({50, 1, 18}));
  CHECK(readsKhaki({60, -3, 15}));
  CHECK(!readsKhaki({60, 6, 18}));
  CHECK(!readsKhaki({60, 3, 35}));  // yellow
  CHECK(!readsKhaki({60, 0, 2}));   // grey
  CHECK(!readsKhaki({80, 0, 15}));  // cream
}

TEST_CASE("black hair is neutral whatever its hue", "[colour]") {
  CHECK(warmthWord(daylightLab(naturalHair(1))) == "neutral");
  CHECK(warmthWord({18, 0, 0}) == "neutral");
  CHECK(warmthWord({40, 12, -1}) == "cool");
}

TEST_CASE("each tone has its own word", "[colour]") {
  for (const Tone tone : kAllTones) CHECK(toneFromWord(toneWord(tone)) == tone);
  CHECK(!toneFromWord("Ash"));
  CHECK(!toneFromWord(""));
}

TEST_CASE("levels outside the range are taken to its ends", "[colour]") {
  CHECK(worst(naturalHair(-4), naturalHair(1)) == 0);
  CHECK(worst(naturalHair(50), naturalHair(12)) == 0);
  CHECK(worst(naturalHair(5, 9), naturalHair(5, 1)) == 0);
  CHECK(worst(lightenedHair(0), lightenedHair(1)) == 0);
  CHECK(possible(finishedHair(-3, 40, Tone::Red)));
  CHECK(possible(finishedHair(40, -3, Tone::Ash)));
  CHECK(possible(deepenedHair(40, Tone::Red)));
}

TEST_CASE("a level that is no number is a broken promise, not a colour", "[colour]") {
  // The hook throws, so that the test goes on where the program would stop.
  const ExpectHook before =
      setExpectHook([](const std::string& message) { throw std::runtime_error(message); });
  const double nan = std::nan("");
  CHECK_THROWS(naturalHair(nan));
  CHECK_THROWS(naturalHair(5, nan));
  CHECK_THROWS(lightenedHair(nan));
  CHECK_THROWS(finishedHair(nan, 8, Tone::Ash));
  CHECK_THROWS(finishedHair(8, nan, Tone::Ash));
  CHECK_THROWS(deepenedHair(nan, Tone::Red));
  CHECK_THROWS(glazed(whiteHair(), nan, Tone::Red, 0.5));
  CHECK_THROWS(glazed(whiteHair(), 6, Tone::Red, nan));
  CHECK_THROWS(LevelScale{}.levelOfLightness(nan));
  setExpectHook(before);
}
