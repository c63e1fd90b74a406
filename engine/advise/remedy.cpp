// The words of remedies.
#include "engine/advise/remedy.h"

#include <cmath>

#include "engine/base/expect.h"
#include "engine/base/number_text.h"

namespace combdraft::advise {
namespace {

struct RemedyWords {
  RemedyKind kind;
  std::string_view name, unit, sentence;  // %1: the amount
};

using R = RemedyKind;
constexpr RemedyWords kWords[] = {
    {R::Thinner, "thinner", "mm", "Make it thinner: %1 mm"},
    {R::SplitWidth, "split-width", "mm",
     "Split the width: strips of %1 mm with left-outs between"},
    {R::DropMiddleOfLength, "drop-middle-of-length", "mm",
     "Drop the middle of its length: leave %1 mm dark"},
    {R::DropMiddleOfWidth, "drop-middle-of-width", "mm",
     "Drop the middle of its width: a left-out of %1 mm along it"},
    {R::StartLower, "start-lower", "mm", "Start lower: %1 mm off the scalp"},
    {R::MoreBackcomb, "more-backcomb", "mm", "Backcomb deeper, and push more of it back: pushed hair ends %1 mm off the scalp"},
    {R::BreakWithLeftOut, "break-with-left-out", "mm",
     "Break it with a left-out of %1 mm straight across"},
    {R::AddLightPiece, "add-light-piece", "mm", "Add a light piece of %1 mm"},
    {R::TakeLess, "take-less", "of the hair", "Take less: %1 of the hair in it"},
    {R::FewerPieces, "fewer-pieces", "pieces", "Take %1 away; their hair stays dark"},
    {R::MorePieces, "more-pieces", "pieces", "Use more: add %1"},
};

const RemedyWords& wordsOf(RemedyKind kind) {
  for (const RemedyWords& entry : kWords)
    if (entry.kind == kind) return entry;
  COMBDRAFT_EXPECT(false && "every remedy has words", static_cast<int>(kind));
  return kWords[0];
}

std::string amountText(const Remedy& remedy) {
  if (remedy.kind == R::TakeLess) return numberText(remedy.amount * 100, 0) + " %";
  const bool countsPieces = remedy.kind == R::FewerPieces || remedy.kind == R::MorePieces;
  const std::string number = numberText(remedy.amount, remedy.amount < 10 && !countsPieces ? 1 : 0);
  if (!countsPieces) return number.ends_with(".0") ? number.substr(0, number.size() - 2) : number;
  return number + (remedy.amount == 1 ? " piece" : " pieces");
}

}  // namespace

std::string codeName(RemedyKind kind) { return std::string(wordsOf(kind).name); }
std::string_view unitOf(RemedyKind kind) { return wordsOf(kind).unit; }

std::string sizeText(double size, std::string_view unit) {
  if (unit == "of the hair") return numberText(size * 100, 0) + " %";
  const std::string number = numberText(size, std::abs(size) < 10 ? 1 : 0);
  if (unit == "cm2") return number + " cm²";
  if (unit == "L*") return number + " steps of lightness (L*)";
  return number + " " + std::string(unit);
}

std::string sentenceOf(const Remedy& remedy) {
  std::string text(wordsOf(remedy.kind).sentence);
  if (const auto at = text.find("%1"); at != std::string::npos)
    text.replace(at, 2, amountText(remedy));
  if (!remedy.effect) return text;
  const Effect& effect = *remedy.effect;
  const std::string before = sizeText(effect.before, effect.unit),
                    after = sizeText(effect.after, effect.unit);
  switch (effect.leaves) {
    case Effect::Leaves::Nothing: return text + ". Not in the picture any more (" + before + " before)";
    case Effect::Leaves::UnderTheLine: return text + ". It shows less: " + after + " instead of " + before;
    case Effect::Leaves::Smaller:
      if (remedy.kind == R::DropMiddleOfLength || remedy.kind == R::BreakWithLeftOut)
        return text + ". It leaves smaller ones: the largest " + after + " instead of " + before;
      return text + ". It still shows: " + after + " instead of " + before;
  }
  return text;
}

}  // namespace combdraft::advise
