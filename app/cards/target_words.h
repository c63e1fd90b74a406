#pragma once
// What is wanted of the look, and how far a reading is from it, in words.
#include <QString>

#include "engine/look/target_check.h"

namespace combdraft::cards {

/// "Whole head", "Crown": a word of plan::targetRegions() as a title.
QString regionTitle(std::string_view region);
/// "two clear levels", "soft", "one tone"
QString contrastName(plan::ContrastAim aim);
/// "8.5, soft, not lighter than 10"; "" for an empty target.
QString wantedText(const plan::Target& target);
/// "aim 8.5"; "" for an empty target.
QString aimText(const plan::Target& target);
/// Shape and words: "✓ met", "▼ 1.2 too dark", "≠ contrast".
QString metText(const look::TargetCheck& check);

/// What a choice ("" = the active one) wants in a region; empty when nothing.
plan::Target targetOf(const plan::Plan& plan, const plan::ItemId& choice, std::string_view region);
}  // namespace combdraft::cards
