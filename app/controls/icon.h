#pragma once
// Icons drawn for this program: SVG files in resources/icons that take the ink
// of the theme at the moment they are painted.
#include <QIcon>
#include <QString>

namespace combdraft::controls {

/// The icon of that file name without ".svg". Sharp at every scale.
QIcon icon(const QString& name);

}  // namespace combdraft::controls
