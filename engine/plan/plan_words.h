#pragma once
// The words that stand for choices in a plan file, on the command line and in
// error texts: one table per enum.
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "engine/plan/plan.h"

namespace combdraft::plan {

template <class E>
struct WordEntry {
  E value;
  std::string_view word;
};

/// All words of an enum, in the order of its values.
template <class E>
std::span<const WordEntry<E>> words();

template <> std::span<const WordEntry<head::HeadSet>> words<head::HeadSet>();
template <> std::span<const WordEntry<head::HeadSize>> words<head::HeadSize>();
template <> std::span<const WordEntry<Turn>> words<Turn>();
template <> std::span<const WordEntry<SkinTone>> words<SkinTone>();
template <> std::span<const WordEntry<HairZone>> words<HairZone>();
template <> std::span<const WordEntry<CurlClass>> words<CurlClass>();
template <> std::span<const WordEntry<Condition>> words<Condition>();
template <> std::span<const WordEntry<Porosity>> words<Porosity>();
template <> std::span<const WordEntry<Tone>> words<Tone>();
template <> std::span<const WordEntry<ScalpContact>> words<ScalpContact>();
template <> std::span<const WordEntry<StrengthUnit>> words<StrengthUnit>();
template <> std::span<const WordEntry<Action>> words<Action>();
template <> std::span<const WordEntry<Taking>> words<Taking>();
template <> std::span<const WordEntry<KeptIn>> words<KeptIn>();
template <> std::span<const WordEntry<Side>> words<Side>();
template <> std::span<const WordEntry<LayoutRun>> words<LayoutRun>();
template <> std::span<const WordEntry<Columns>> words<Columns>();
template <> std::span<const WordEntry<RunField>> words<RunField>();
template <> std::span<const WordEntry<Treatment::Kind>> words<Treatment::Kind>();
template <> std::span<const WordEntry<ContrastAim>> words<ContrastAim>();
template <> std::span<const WordEntry<PaperSize>> words<PaperSize>();
template <> std::span<const WordEntry<PageTurn>> words<PageTurn>();
template <> std::span<const WordEntry<HandoutPart>> words<HandoutPart>();

/// What a target can be for: "whole" and the regions where hair is seen
/// (engine/visibility/region.h has the same words; a test holds them together).
std::span<const std::string_view> targetRegions();

/// The word of a value; "" for a value that is not in the enum.
template <class E>
std::string_view wordOf(E value) {
  for (const auto& entry : words<E>())
    if (entry.value == value) return entry.word;
  return {};
}

template <class E>
std::optional<E> fromWord(std::string_view word) {
  for (const auto& entry : words<E>())
    if (entry.word == word) return entry.value;
  return std::nullopt;
}

/// "slice, weave, paint"
template <class E>
std::string allWords() {
  std::string text;
  for (const auto& entry : words<E>()) {
    if (!text.empty()) text += ", ";
    text += entry.word;
  }
  return text;
}

}  // namespace combdraft::plan
