#pragma once
// What the window speaks. Texts are translated by Qt: ours from
// resources/translations, Qt's own (buttons of dialogs) from Qt's folder.
#include <QLocale>
#include <QStringList>

#include "app/store/settings.h"

class QApplication;

namespace combdraft::desk {

/// The languages that the window speaks, as in the names of the .ts files; the
/// first is the one the sources are written in.
inline const QStringList kSpoken{QStringLiteral("en"), QStringLiteral("de")};

/// Numbers, dates and words for a choice: `System` takes the first of
/// `systemLanguages` (as QLocale::uiLanguages names them) that the window speaks,
/// else English; it keeps the system's own country where it can.
QLocale localeFor(store::Language choice, const QStringList& systemLanguages);

/// Names a .qm file that is asked before the program's own: a translation that is not
/// built in yet, or the lengthened texts of tests/translations/pseudo.
inline constexpr char kTrialVariable[] = "COMBDRAFT_TRANSLATION";

/// Installs translations, decimal sign and the direction of the layout. Once,
/// before the first window; files never depend on it.
void speak(QApplication& app, store::Language choice);

}  // namespace combdraft::desk
