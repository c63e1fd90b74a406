#pragma once
// Part and whorls by everyday words, for a head of given measures.
#include "engine/plan/plan.h"

namespace combdraft::cards {

enum class PartPlace { None, Left, Middle, Right };    ///< the client's left and right
enum class WhorlPlace { Left, Middle, Right, Two };

/// A part at its usual place for that word, points to a tenth of a degree.
std::vector<head::ScalpPoint> partLine(const plan::Head& head, PartPlace place);
std::vector<plan::Whorl> whorlsAt(const plan::Head& head, WhorlPlace place);
/// The word that fits a head best.
PartPlace partPlace(const plan::Head& head);
WhorlPlace whorlPlace(const plan::Head& head);

}  // namespace combdraft::cards
