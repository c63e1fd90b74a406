#pragma once
// What is wrong in a plan, and what needs a look before work starts. A plan
// that was read or edited is always well formed; this asks what its items mean
// together. Placement and leaflet questions only: no strength, time or ratio.
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::plan {

enum class Severity {
  Error,    ///< the plan cannot mean what it says
  Caution,  ///< hair, skin or product: check before work
  Note,     ///< worth a look
};

enum class IssueCode {
  // errors
  ValueOutOfRange,     ///< args: field, found, allowed
  ChoiceMissing,
  ActiveChoiceUnknown, ///< args: id
  ChoiceUnknown,       ///< args: id
  SectionUnknown,      ///< args: id
  SectionOfOtherChoice,  ///< args: section
  FormulaUnknown,      ///< args: id
  TwinUnknown,         ///< args: id
  TwinOfTwin,          ///< args: id; also circles
  PointOffHair,        ///< args: mm below the hairline
  LineWithoutLength,
  MeasuresRefused,     ///< args: measure, what fitHead says
  AssumptionOutOfRange,  ///< args: name, found, allowed
  // cautions
  StartNearScalp,      ///< args: "no" or "not stated", formula or ""
  TreatmentNearScalp,  ///< args: "no" or "not stated", formula or ""
  BackcombCondition,   ///< args: "poor" or "not checked"
  LightOverLight,      ///< lightener over hair that is already light
  LightOverPoor,       ///< lightener where condition is poor
  // notes
  MeasuresContradict,
  MeasureUnusual,      ///< args: measure, found, usual range
  AssumptionUnknown,   ///< args: name
  TwinDiffers,
  OrderTwice,          ///< args: number, choice
  BackcombBeforeStart,
  HandoverBeforeStart,
  StopBeforeStart,
  HairShorterThanStart,  ///< args: longest hair there, mm
  HairShorterThanBackcomb,  ///< args: longest hair there, mm
  DropOutBeyondLine,   ///< args: length of the line, mm
  GapWithoutTeeth,
  WeaveWithoutTeeth,
  SpanBackwards,       ///< low, level and high of a lift are out of order
  StretchBackwards,    ///< args: "bands" or "scattered", number
  TargetContradicts,   ///< args: region; darkest, level and brightest do not rise
  TargetUnknown,       ///< args: region
  // notes on how things lie (placement_check.h)
  PiecesOverlap,       ///< args: how far, mm; the first of the items has the hair
  OutlineCrosses,
  SectionWithoutRoom,  ///< args: room, mm
  TooManyInSection,
  TooCrowdedToCheck,
};

struct Issue {
  IssueCode code{};
  Severity severity{};
  std::vector<ItemId> items;      ///< what it is about, in working order
  std::vector<std::string> args;

  bool operator==(const Issue&) const = default;
};

/// Stable short name: "start-near-scalp".
std::string codeName(IssueCode code);
std::string_view severityWord(Severity severity);

/// What is the matter, without the items: "starts at or near the scalp; …".
std::string sentenceOf(const Issue& issue);
/// One English line for the command line and tests: items, then the sentence.
std::string describe(const Issue& issue);

/// Errors first, then cautions, then notes. Pieces with the same trouble share
/// one issue. An empty list: nothing found, which is no promise.
std::vector<Issue> validate(const Plan& plan);

bool hasErrors(const std::vector<Issue>& issues);

}  // namespace combdraft::plan
