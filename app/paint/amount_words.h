#pragma once
// The sentences of a work list about what it reckons with: grams and how far they may be
// off, what it looks for, and the usual cautions. The same on screen and on paper.
#include <QString>

#include "engine/work/work_list.h"

namespace combdraft::paint {

/// "About 34 g mixed, somewhere from 11 to 136 g by the assumption's range: ...": what stands behind the
/// grams of all bowls together, and how many heads.
QString mixedText(const work::Amounts& amounts);
/// What the grams leave out.
QString thinWeavesText();
/// Where no note was found: no all-clear.
QString nothingFound();
/// Above the changes that would save time.
QString changesLook();
QString estimatesOnly();
QString glovesAndAir();

}  // namespace combdraft::paint
