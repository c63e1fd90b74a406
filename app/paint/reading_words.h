#pragma once
// Readings in words, for tiles, cards and the command line alike.
#include <QColor>
#include <QString>

#include "engine/look/look.h"

namespace combdraft::paint {

/// Grey (white among dark, or ash): its lightness has a level, its colour none.
bool isGrey(const look::Reading& reading);
/// "Level 7.3", "Level 10+", "Light as 9.7"
QString levelText(const look::Reading& reading);
/// The colour of a reading under its light, for the screen.
QColor swatchColour(const look::Reading& reading, colour::Light light);
/// "54", "54 (51 to 58)" when the range is known
QString lightnessText(const look::Reading& reading);
/// The verdict with its distance, as a sentence.
QString contrastSentence(const look::Contrast& contrast);
/// What L* is, for people who have not met it.
QString lightnessMeaning();

}  // namespace combdraft::paint
