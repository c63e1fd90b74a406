#pragma once
// Something about the look that needs one: what, where, how large, which pieces
// make it, where its line is drawn, and what might be done. What is wrong in
// the plan itself (light over light, start at the scalp ...) is plan/validate.h.
#include "engine/advise/remedy.h"
#include "engine/look/look.h"

namespace combdraft::advise {

enum class FindingKind {
  LightBlock,          ///< cm2 on the hair's surface, at an opening
  DarkBlock,           ///< cm2
  RunAtOpening,        ///< mm along the opening line
  OneTone,             ///< share of the seen hair, where light and dark were planned
  Stripes,             ///< visible contrast, 0..1
  BareUnderneath,      ///< share of light hair there, layer raised or tied back
  HardEdgeUnderneath,  ///< L* between neighbouring regions, layer raised
  FaceFrameWeak,       ///< L* the face frame is lighter than the whole
  NapeBare,            ///< share of light hair at the nape, tied back
  TooLittleLeftOut,    ///< share of the hair that is left dark
  GreyMix,             ///< share of light hair there
  RegrowthEarly,       ///< weeks
  TargetMissed,        ///< levels off the target; 0 = it is the contrast that differs
  SlowHairLast,        ///< levels the last third is to lift more than the first
};
inline constexpr std::array<FindingKind, 14> kFindingKinds{
    FindingKind::LightBlock,         FindingKind::DarkBlock,     FindingKind::RunAtOpening,
    FindingKind::OneTone,            FindingKind::Stripes,       FindingKind::BareUnderneath,
    FindingKind::HardEdgeUnderneath, FindingKind::FaceFrameWeak, FindingKind::NapeBare,
    FindingKind::TooLittleLeftOut,   FindingKind::GreyMix,       FindingKind::RegrowthEarly,
    FindingKind::TargetMissed,       FindingKind::SlowHairLast};

/// How far from its worst position of the part a block is taken for the same [own].
inline constexpr double kSameBlock_mm = 14;

struct Finding {
  FindingKind kind{};
  std::optional<look::Region> region;    ///< nothing: the whole look, or `at`
  std::optional<plan::ScalpPoint> at;    ///< the scalp under its middle
  hair::Worn worn;                       ///< the way of wearing that shows it
  double size = 0;                       ///< what was found ...
  double limit = 0;                      ///< ... and the line it crossed, both in `unit`
  std::string_view unit;                 ///< "cm2", "mm", "L*", "of the hair", "weeks", "levels"
  /// How far over the line, 1 or more: 2 = twice. Findings are sorted by it.
  double times = 1;
  std::vector<plan::ItemId> pieces;      ///< what makes it, most first
  std::string assumption;                ///< whose line it crossed (base/assumptions.h); "" = a target
  std::string detail;                    ///< plain words of its own: "two clear levels"
  std::vector<Remedy> remedies;          ///< best first; may be empty
  bool remediesTried = false;            ///< false: what might be done was not looked for (yet)
};

/// The same matter in two advices: kind, region and way of wearing, the part
/// within kSameBlock_mm.
bool isSame(const Finding& a, const Finding& b);
/// Stable short name: "light-block".
std::string codeName(FindingKind kind);
/// What is the matter, where and how large, as a colourist would say it.
std::string sentenceOf(const Finding& finding);
/// Where and how it is seen: "with the part 20 mm to the right".
std::string wornPhrase(const hair::Worn& worn);

}  // namespace combdraft::advise
