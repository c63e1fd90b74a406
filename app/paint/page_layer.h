#pragma once
// What a page of the sheet shows and on what ground; apart from the painting, so
// that a command line needs no painter to name them.

namespace combdraft::paint {

enum class PageLayer { Diagram, Look, Both };
enum class Ground { Paper, MidGrey };

}  // namespace combdraft::paint
