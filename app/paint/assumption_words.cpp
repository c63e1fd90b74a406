#include "app/paint/assumption_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/paint/figure.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Assumption)
};

struct PlainName {
  std::string_view key;
  const char* name;
};

// An entry that is missing here is shown by its sentence; a test lists them.
constexpr PlainName kNames[] = {
    {"fall.partSide_mm", QT_TRANSLATE_NOOP("Assumption", "Part off its planned place")},
    {"fall.partReach_mm", QT_TRANSLATE_NOOP("Assumption", "Reach of the part")},
    {"fall.partWeight", QT_TRANSLATE_NOOP("Assumption", "Pull of the part")},
    {"fall.whorlReach_mm", QT_TRANSLATE_NOOP("Assumption", "Reach of the swirl")},
    {"fall.whorlWeight", QT_TRANSLATE_NOOP("Assumption", "Pull of the swirl")},
    {"fall.combBack", QT_TRANSLATE_NOOP("Assumption", "Combed back at front and top")},
    {"fall.faceAway", QT_TRANSLATE_NOOP("Assumption", "Kept out of the face")},
    {"fall.frizz_rad", QT_TRANSLATE_NOOP("Assumption", "Frizz")},
    {"fall.lean", QT_TRANSLATE_NOOP("Assumption", "Leaning in toward the neck")},
    {"fall.rise", QT_TRANSLATE_NOOP("Assumption", "Fullness near the root")},
    {"fall.bodyHeight_mm", QT_TRANSLATE_NOOP("Assumption", "Fullness of the hair as a whole")},
    {"fall.interleave_mm", QT_TRANSLATE_NOOP("Assumption", "Mixing of neighbouring layers")},
    {"fall.waveScale", QT_TRANSLATE_NOOP("Assumption", "Size of waves and curls")},
    {"fall.tail_mm", QT_TRANSLATE_NOOP("Assumption", "Radius of the tied tail")},
    {"fall.blown", QT_TRANSLATE_NOOP("Assumption", "Strength of the wind at the swirl")},
    {"fall.crownOpened", QT_TRANSLATE_NOOP("Assumption", "How wide the hand opens the crown")},
    {"start.scatter_mm", QT_TRANSLATE_NOOP("Assumption", "Unevenness of the start")},
    {"start.pushedScatter_mm", QT_TRANSLATE_NOOP("Assumption", "Unevenness of a backcombed start")},
    {"growth.mm_per_week", QT_TRANSLATE_NOOP("Assumption", "Growth in a week")},
    {"colour.naturalShift", QT_TRANSLATE_NOOP("Assumption", "All natural levels lighter or darker")},
    {"colour.lightenedShift", QT_TRANSLATE_NOOP("Assumption", "All lightened hair lighter or darker")},
    {"colour.span", QT_TRANSLATE_NOOP("Assumption", "Where in its span the hair lightens")},
    {"block.light_cm2", QT_TRANSLATE_NOOP("Assumption", "Light patch is a block from")},
    {"block.dark_cm2", QT_TRANSLATE_NOOP("Assumption", "Dark patch is a block from")},
    {"block.run_mm", QT_TRANSLATE_NOOP("Assumption", "Unbroken run along the opening from")},
    {"block.difference", QT_TRANSLATE_NOOP("Assumption", "Patch stands out from, of the planned difference")},
    {"block.least_L", QT_TRANSLATE_NOOP("Assumption", "Patch stands out from, at least")},
    {"block.reach_mm", QT_TRANSLATE_NOOP("Assumption", "Patch is at the opening up to")},
    {"block.narrowest_mm", QT_TRANSLATE_NOOP("Assumption", "Patch is at least as wide as")},
    {"contrast.least_cells", QT_TRANSLATE_NOOP("Assumption", "Places needed to judge contrast")},
    {"contrast.clear", QT_TRANSLATE_NOOP("Assumption", "Clear levels apart, of the planned difference")},
    {"contrast.clear_L", QT_TRANSLATE_NOOP("Assumption", "Clear levels apart, at least")},
    {"contrast.soft", QT_TRANSLATE_NOOP("Assumption", "Soft levels apart, of the planned difference")},
    {"contrast.soft_L", QT_TRANSLATE_NOOP("Assumption", "Soft levels apart, at least")},
    {"contrast.even", QT_TRANSLATE_NOOP("Assumption", "One tone below this spread, of the planned difference")},
    {"contrast.even_L", QT_TRANSLATE_NOOP("Assumption", "One tone below this spread, at least")},
    {"contrast.widths", QT_TRANSLATE_NOOP("Assumption", "Clear levels apart, in times their own width")},
    {"contrast.middle", QT_TRANSLATE_NOOP("Assumption", "Most hair between two clear levels")},
    {"contrast.share", QT_TRANSLATE_NOOP("Assumption", "Least share of the smaller level")},
    {"stripes.seen", QT_TRANSLATE_NOOP("Assumption", "Stripes are seen from this contrast")},
    {"regrowth.near_mm", QT_TRANSLATE_NOOP("Assumption", "Regrowth is looked for up to")},
    {"regrowth.tolerance_L", QT_TRANSLATE_NOOP("Assumption", "Regrowth shows from a difference of")},
    {"finding.oneTone_share", QT_TRANSLATE_NOOP("Assumption", "Too much one tone from")},
    {"finding.bare_share", QT_TRANSLATE_NOOP("Assumption", "Underneath looks bare below")},
    {"finding.edge_L", QT_TRANSLATE_NOOP("Assumption", "Hard edge from a step of")},
    {"finding.faceFrame_L", QT_TRANSLATE_NOOP("Assumption", "Face frame lighter by at least")},
    {"finding.leftOut_share", QT_TRANSLATE_NOOP("Assumption", "Least share left dark")},
    {"finding.target_levels", QT_TRANSLATE_NOOP("Assumption", "Target missed from")},
    {"finding.regrowth_weeks", QT_TRANSLATE_NOOP("Assumption", "Early regrowth before")},
    {"finding.stripes_contrast", QT_TRANSLATE_NOOP("Assumption", "Stripes too strong from")},
    {"finding.slow_levels", QT_TRANSLATE_NOOP("Assumption", "Slow pieces come too late from")},
    {"work.slice_min", QT_TRANSLATE_NOOP("Assumption", "Placing a slice")},
    {"work.weave_min", QT_TRANSLATE_NOOP("Assumption", "Placing a woven piece")},
    {"work.paint_min", QT_TRANSLATE_NOOP("Assumption", "Painting a piece")},
    {"work.backcomb_min", QT_TRANSLATE_NOOP("Assumption", "Backcombing a piece")},
    {"work.combOut_min", QT_TRANSLATE_NOOP("Assumption", "Opening a backcombed piece after the rinse")},
    {"work.mix_min", QT_TRANSLATE_NOOP("Assumption", "Mixing a bowl")},
    {"work.look_min", QT_TRANSLATE_NOOP("Assumption", "Looking at one piece")},
    {"work.reserve_share", QT_TRANSLATE_NOOP("Assumption", "Time kept in reserve")},
    {"work.hairline_mm", QT_TRANSLATE_NOOP("Assumption", "Fine hair at the front hairline reaches")},
    {"amount.product_per_hair", QT_TRANSLATE_NOOP("Assumption", "Mixed product for each gram of hair")},
    {"amount.waste_share", QT_TRANSLATE_NOOP("Assumption", "Left in the bowl and on the brush")},
    {"amount.fibre_g_cm3", QT_TRANSLATE_NOOP("Assumption", "Density of hair")},
};

const PlainName* plainName(std::string_view key) {
  const auto it = std::find_if(std::begin(kNames), std::end(kNames), [&](const PlainName& n) { return n.key == key; });
  return it == std::end(kNames) ? nullptr : it;
}

QString fromView(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

}  // namespace

AssumptionGroup groupOf(const Assumption& assumption) {
  switch (assumption.moves) {
    case Moves::Fall: return AssumptionGroup::Fall;
    case Moves::Colour:
      return assumption.name.substr(0, 6) == "start." ? AssumptionGroup::Start : AssumptionGroup::Colour;
    case Moves::Judgement: break;
  }
  if (assumption.name.substr(0, 7) == "amount.") return AssumptionGroup::Amount;
  return assumption.name.substr(0, 5) == "work." ? AssumptionGroup::Speed : AssumptionGroup::Line;
}

QString groupTitle(AssumptionGroup group) {
  switch (group) {
    case AssumptionGroup::Fall: return Words::tr("How hair falls");
    case AssumptionGroup::Start: return Words::tr("Where light starts");
    case AssumptionGroup::Colour: return Words::tr("Colour and growth");
    case AssumptionGroup::Line: return Words::tr("Where a line is drawn");
    case AssumptionGroup::Speed: return Words::tr("How long the work takes");
    case AssumptionGroup::Amount: return Words::tr("How much is mixed");
  }
  return {};
}

bool hasPlainName(std::string_view key) { return plainName(key) != nullptr; }

QString assumptionName(std::string_view key) {
  if (const PlainName* known = plainName(key)) return Words::tr(known->name);
  for (const Assumption& assumption : assumptionTable())
    if (assumption.name == key) return fromView(assumption.what);
  return fromView(key);
}

QString assumptionOrigin(const Assumption& assumption) {
  switch (assumption.from) {
    case Provenance::Published: {
      const QString what = fromView(assumption.what);
      const qsizetype open = what.indexOf(u'['), close = what.indexOf(u']', open);
      if (open < 0 || close < 0) return Words::tr("published");
      return Words::tr("published %1").arg(what.mid(open, close - open + 1));
    }
    case Provenance::CommonPractice: return Words::tr("common practice, no source");
    case Provenance::OwnAssumption: return Words::tr("own assumption");
    case Provenance::Typed: return Words::tr("typed");
  }
  return {};
}

AssumptionUnit assumptionUnit(const Assumption& assumption) {
  const std::string_view unit = assumption.unit;
  if (unit.substr(0, 3) == "of ") return {QStringLiteral("%"), 100};
  if (unit == "cm2") return {QStringLiteral("cm²")};
  if (unit == "mm/mm" || unit == "places" || unit == "widths") return {};  // the name says it
  if (unit == "mm" || unit == "rad") return {fromView(unit)};  // signs; a field knows a length by its mm
  return {words::inWords(unit)};
}

QString assumptionValue(const Assumption& assumption, double value) {
  const AssumptionUnit unit = assumptionUnit(assumption);
  const QString number = figure(numberText(std::round(value * unit.shownPerValue * 1000) / 1000));
  return unit.text.isEmpty() ? number : number + u' ' + unit.text;
}

std::vector<ChangedAssumption> changedAssumptions(const std::map<std::string, double>& overrides) {
  std::vector<ChangedAssumption> changed;
  for (const Assumption& assumption : assumptionTable())
    if (const auto it = overrides.find(std::string(assumption.name));
        it != overrides.end() && it->second != assumption.value)
      changed.push_back({&assumption, it->second});
  return changed;
}

QString changedText(const ChangedAssumption& changed) {
  return Words::tr("%1 %2 (default %3)")
      .arg(assumptionName(changed.assumption->name), assumptionValue(*changed.assumption, changed.value),
           assumptionValue(*changed.assumption, changed.assumption->value));
}

QString changedText(const std::map<std::string, double>& overrides) {
  QStringList all;
  for (const ChangedAssumption& changed : changedAssumptions(overrides)) all << changedText(changed);
  return all.isEmpty() ? QString() : Words::tr("Assumptions changed: %1").arg(all.join(QStringLiteral("; "))) + u'.';
}

}  // namespace combdraft::paint
