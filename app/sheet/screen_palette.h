#pragma once
// The drawing's colours on the screen: by the theme of the window. A look keeps
// the light palette, so that hair is always judged on paper or mid grey (in a
// dark window on mid grey).
#include "app/controls/theme.h"
#include "app/paint/ink.h"

namespace combdraft::sheet {

inline paint::Palette screenPalette() {
  return controls::currentTheme().name == controls::ThemeName::Dark ? paint::darkPalette()
                                                                    : paint::Palette();
}

}  // namespace combdraft::sheet
