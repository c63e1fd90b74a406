// The words of validate.h.
#include "engine/plan/validate.h"

namespace combdraft::plan {
namespace {

struct IssueWords {
  IssueCode code;
  std::string_view name, sentence;  // %1, %2, %3: the arguments
};

using C = IssueCode;
constexpr IssueWords kWords[] = {
    {C::ValueOutOfRange, "value-out-of-range", "%1 is %2, allowed is %3"},
    {C::ChoiceMissing, "choice-missing", "the plan has no choice; it needs at least one"},
    {C::ActiveChoiceUnknown, "active-choice-unknown",
     "the active choice \"%1\" is not among the choices"},
    {C::ChoiceUnknown, "choice-unknown", "belongs to the choice \"%1\", which does not exist"},
    {C::SectionUnknown, "section-unknown", "belongs to the section \"%1\", which does not exist"},
    {C::SectionOfOtherChoice, "section-of-other-choice",
     "belongs to the section \"%1\" of another choice"},
    {C::FormulaUnknown, "formula-unknown", "names the formula \"%1\", which does not exist"},
    {C::TwinUnknown, "twin-unknown", "is the twin of \"%1\", which does not exist"},
    {C::TwinOfTwin, "twin-of-twin",
     "is the twin of \"%1\", which is a twin itself; name the one that stands on its own"},
    {C::PointOffHair, "point-off-hair",
     "reaches %1 mm outside the hairline; at most 15 mm is allowed"},
    {C::LineWithoutLength, "line-without-length",
     "its line has no length; draw it between two places"},
    {C::MeasuresRefused, "measures-refused", "head measures: %2"},
    {C::AssumptionOutOfRange, "assumption-out-of-range", "%1 is %2, allowed is %3"},
    {C::StartNearScalp, "start-near-scalp",
     "starts at or near the scalp; does the leaflet allow scalp contact? (%1) Check the leaflet"},
    {C::TreatmentNearScalp, "treatment-near-scalp",
     "reaches the scalp; does the leaflet allow scalp contact? (%1) Check the leaflet"},
    {C::BackcombCondition, "backcomb-condition",
     "backcombing where the hair's condition is %1: check elasticity"},
    {C::LightOverLight, "light-over-light",
     "lightener over hair that is already light: check the strength of the hair, test a strand"},
    {C::LightOverPoor, "light-over-poor",
     "lightener over hair in poor condition: check the strength of the hair, test a strand"},
    {C::MeasuresContradict, "measures-contradict",
     "circumference, length and breadth do not fit one head; measure again"},
    {C::MeasureUnusual, "measure-unusual", "%1 %2 is unusual (most heads: %3)"},
    {C::AssumptionUnknown, "assumption-unknown", "unknown assumption \"%1\"; it is kept, not used"},
    {C::TwinDiffers, "twin-differs", "is no longer the mirror of its source"},
    {C::OrderTwice, "order-twice", "more than one piece is number %1"},
    {C::BackcombBeforeStart, "backcomb-before-start",
     "the backcomb depth lies nearer the scalp than the start"},
    {C::HandoverBeforeStart, "handover-before-start",
     "the end formula takes over before the start"},
    {C::StopBeforeStart, "stop-before-start", "stops before it starts"},
    {C::HairShorterThanStart, "hair-shorter-than-start",
     "the hair there is at most %1 mm long and ends before the start"},
    {C::HairShorterThanBackcomb, "hair-shorter-than-backcomb",
     "the hair there is at most %1 mm long and ends before the backcomb depth"},
    {C::DropOutBeyondLine, "drop-out-beyond-line",
     "a drop-out lies beyond the end of the line (%1 mm)"},
    {C::GapWithoutTeeth, "gap-without-teeth", "has gaps but no teeth"},
    {C::WeaveWithoutTeeth, "weave-without-teeth",
     "is woven, but its teeth and gaps are not given; the taken share stands for them"},
    {C::SpanBackwards, "span-backwards",
     "the level it lifts to does not lie between its low and high"},
    {C::PiecesOverlap, "pieces-overlap",
     "want the same hair (up to %1 mm): the first of them in the order has it"},
    {C::OutlineCrosses, "outline-crosses",
     "its outline crosses itself; move a corner so that it does not"},
    {C::SectionWithoutRoom, "section-without-room",
     "has no room for half a piece (%1 mm across its rows); make it larger or its pieces thinner"},
    {C::TooManyInSection, "too-many-in-section",
     "would hold more pieces than a section may have; make them thicker or leave more out"},
    {C::TooCrowdedToCheck, "too-crowded-to-check",
     "holds so much that how it lies was not checked whole"},
    {C::TargetContradicts, "target-contradicts",
     "the target for \"%1\" contradicts itself: the level must lie between darkest and brightest"},
    {C::TargetUnknown, "target-unknown",
     "has a target for the unknown region \"%1\"; it is kept, not used"},
    {C::StretchBackwards, "stretch-backwards", "%1, entry %2, ends before it begins"},
};

const IssueWords& wordsOf(IssueCode code) {
  for (const IssueWords& entry : kWords)
    if (entry.code == code) return entry;
  COMBDRAFT_EXPECT(false && "every issue has words", static_cast<int>(code));
  return kWords[0];
}

}  // namespace

std::string codeName(IssueCode code) { return std::string(wordsOf(code).name); }

std::string_view severityWord(Severity severity) {
  switch (severity) {
    case Severity::Error: return "error";
    case Severity::Caution: return "caution";
    case Severity::Note: return "note";
  }
  return "";
}

std::string describe(const Issue& issue) {
  std::string text;
  for (const ItemId& id : issue.items) text += (text.empty() ? "" : ", ") + id;
  return text + ": " + sentenceOf(issue);
}

std::string sentenceOf(const Issue& issue) {
  std::string text;
  const std::string_view sentence = wordsOf(issue.code).sentence;
  for (std::size_t i = 0; i < sentence.size(); ++i) {
    const std::size_t number = i + 1 < sentence.size() && sentence[i] == '%'
                                   ? static_cast<std::size_t>(sentence[i + 1] - '0')
                                   : 0;
    if (number >= 1 && number <= 9) {
      if (number <= issue.args.size()) text += issue.args[number - 1];
      ++i;
    } else {
      text += sentence[i];
    }
  }
  return text;
}

}  // namespace combdraft::plan
