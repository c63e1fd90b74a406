#pragma once
// The colours and the font of the window. Hair is the only saturated thing on
// the screen, so everything here is paper, graphite and one quiet accent.
#include <QColor>
#include <QString>

class QApplication;
class QPalette;

namespace combdraft::controls {

enum class ThemeName { Light, Dark };

/// Colour tokens. Every text colour has at least 4.5:1 on the grounds it is
/// used on (WCAG 2.1, 1.4.3; tested).
struct Theme {
  ThemeName name;
  QColor ground;      ///< behind everything
  QColor card;        ///< cards, fields, lists
  QColor raised;      ///< buttons at rest
  QColor line;        ///< thin rules; decoration only
  QColor edge;        ///< outlines of controls, 3:1 on ground and card
  QColor ink;         ///< text
  QColor softInk;     ///< second text
  QColor accent;      ///< selection, focus
  QColor onAccent;    ///< text on accent
  QColor caution;     ///< text of a caution, always with its sign
  QColor cautionGround;
};

const Theme& theme(ThemeName name);
/// The theme now in force.
const Theme& currentTheme();

/// Registers the bundled font; returns its family, or "" when it does not load.
QString loadBundledFont();
/// Style, palette, font and style sheet of the whole program; its words are shown as they are
/// typed (plain_words.h). 100 % = 10 points.
void applyTheme(QApplication& app, ThemeName name, int textSize_percent = 100);
/// Dark when a palette's windows are darker than their text.
ThemeName themeOf(const QPalette& palette);
/// What the desktop asks for now; light when it does not say.
ThemeName systemTheme();

}  // namespace combdraft::controls
