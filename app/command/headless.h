#pragma once
// Letters need an application; this one asks for no display.
#include <QGuiApplication>
#include <memory>

namespace combdraft::command {

/// An application with the bundled font; null when there is one already. Keep it
/// while pages are drawn.
std::unique_ptr<QGuiApplication> lettersWithoutDisplay(int& argc, char** argv);

}  // namespace combdraft::command
