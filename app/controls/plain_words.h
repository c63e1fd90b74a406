#pragma once
// What was typed, or stands in a file, is shown letter by letter: Qt left to itself reads
// words that look like markup, opens the pictures they name, and underlines after an &.
#include <QString>

class QApplication;

namespace combdraft::controls {

/// From now on every label and tooltip of the program shows its text as it is. Call it
/// before there are widgets (applyTheme does); a second call changes nothing.
void showWordsAsTheyAre(QApplication& app);

/// Typed words for a button or a command, where a single & makes a key of the next letter.
QString buttonText(const QString& typed);
/// What a button's or a command's text says: without the marks of its key.
QString wordsOfButton(const QString& text);

}  // namespace combdraft::controls
