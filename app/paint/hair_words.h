#pragma once
// Names that several rooms say of hair: tones, zones of the head, and what colour is
// left in bare hair.
#include <QString>
#include <QStringList>

#include "engine/plan/plan.h"

namespace combdraft::paint {

/// "natural", "ash", ...
QString toneName(plan::Tone tone);
/// All tones in the order of their values, for a choice.
QStringList toneNames();
/// "Front", "Top", ...
QString zoneName(plan::HairZone zone);
/// The colour left in bare hair of a level (work::pigmentWord) in the window's words.
QString pigmentName(double level);

}  // namespace combdraft::paint
