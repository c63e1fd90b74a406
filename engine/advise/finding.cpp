// The words of findings.
#include "engine/advise/finding.h"

#include <cmath>

#include "engine/base/expect.h"
#include "engine/base/number_text.h"

namespace combdraft::advise {
namespace {

struct FindingWords {
  FindingKind kind;
  std::string_view name, sentence;  // %w how worn, %r region, %s size, %l limit, %d detail
};

using F = FindingKind;
constexpr FindingWords kWords[] = {
    {F::LightBlock, "light-block", "A light block of about %s shows %w"},
    {F::DarkBlock, "dark-block", "A dark block of about %s shows %w"},
    {F::RunAtOpening, "run-at-opening",
     "An unbroken %d line of %s shows along the opening %w"},
    {F::OneTone, "one-tone",
     "%s of the hair looks like one middle tone, neither light nor dark"},
    {F::Stripes, "stripes", "Stripes show at %r, %d"},
    {F::BareUnderneath, "bare-underneath",
     "The hair underneath stays dark at %r %w: %s of it is light"},
    {F::HardEdgeUnderneath, "hard-edge-underneath",
     "A hard edge shows %w: %r differs by %s from the hair beside it"},
    {F::FaceFrameWeak, "face-frame-weak",
     "The face frame hardly stands out: %r is %d the whole look"},
    {F::NapeBare, "nape-bare", "The nape stays dark %w: %s of it is light"},
    {F::TooLittleLeftOut, "too-little-left-out",
     "Little shadow is left: %s of the hair stays dark"},
    {F::GreyMix, "grey-mix",
     "Very light, cool pieces over darker hair may look grey at %r"},
    {F::RegrowthEarly, "regrowth-early", "Regrowth shows after about %s %w"},
    {F::TargetMissed, "target-missed", "%r misses its aim: %d"},
    {F::SlowHairLast, "slow-hair-last",
     "Hair that has farther to lift is placed last: %s more than the first pieces"},
};

const FindingWords& wordsOf(FindingKind kind) {
  for (const FindingWords& entry : kWords)
    if (entry.kind == kind) return entry;
  COMBDRAFT_EXPECT(false && "every finding has words", static_cast<int>(kind));
  return kWords[0];
}

}  // namespace

bool isSame(const Finding& a, const Finding& b) {
  return a.kind == b.kind && a.region == b.region && a.worn.way == b.worn.way &&
         std::abs(a.worn.partShift_mm - b.worn.partShift_mm) <= kSameBlock_mm;
}

std::string codeName(FindingKind kind) { return std::string(wordsOf(kind).name); }

std::string wornPhrase(const hair::Worn& worn) {
  switch (worn.way) {
    case hair::WornWay::Down:
      if (worn.partShift_mm == 0) return "worn down";
      return "with the part " + numberText(std::abs(worn.partShift_mm), 0) + " mm to the client's " +
             (worn.partShift_mm > 0 ? "right" : "left");
    case hair::WornWay::HalfUp: return "worn half up";
    case hair::WornWay::TiedBack: return "tied back";
    case hair::WornWay::CrownOpened: return "with the crown opened";
    case hair::WornWay::Blown: return "blown by wind";
    case hair::WornWay::LayerRaised: return "with a layer raised";
  }
  return "";
}

std::string sentenceOf(const Finding& finding) {
  std::string text;
  const std::string_view sentence = wordsOf(finding.kind).sentence;
  for (std::size_t i = 0; i < sentence.size(); ++i) {
    if (sentence[i] != '%' || i + 1 == sentence.size()) {
      text += sentence[i];
      continue;
    }
    switch (sentence[++i]) {
      case 'w': text += wornPhrase(finding.worn); break;
      case 'r':
        text += finding.region ? std::string(look::regionWord(*finding.region)) : "the whole look";
        break;
      case 's': text += sizeText(finding.size, finding.unit); break;
      case 'd': text += finding.detail; break;
      default: break;
    }
  }
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

}  // namespace combdraft::advise
