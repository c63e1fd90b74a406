#pragma once
// The engine without a window: `combdraft look|check|draw PLAN…`. Never opens
// a window and works with no display (docs/command-line.md).

namespace combdraft::command {

/// Whether the arguments ask for a command (or for help or the version).
bool isCommand(int argc, char** argv);

/// Runs the command and returns the exit code: 0 fine, 1 a document is wrong,
/// 2 wrong usage, 3 reading or writing failed, 4 our own fault. With several
/// plans every one is tried and the largest code is returned.
int runCommand(int argc, char** argv);

}  // namespace combdraft::command
