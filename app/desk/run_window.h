#pragma once
// The program with its window.
namespace combdraft::desk {

/// Opens the window, with the plan named in the arguments if there is one, and
/// returns the exit code: 0 fine, 2 wrong usage, 3 no display.
int runWindow(int argc, char** argv);

}  // namespace combdraft::desk
