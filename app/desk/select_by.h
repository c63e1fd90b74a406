#pragma once
// More of the same: selections that grow from what is selected.
#include "app/document/selection.h"

namespace combdraft::desk {

/// Everything of the kind of the leading item: pieces that do the same and are
/// taken the same way, sections, or notes.
document::Selection sameKind(const plan::Plan& plan, const document::Selection& from);
/// All pieces of the sections that the selected things are or lie in; of pieces
/// drawn free, the others drawn free.
document::Selection sameSection(const plan::Plan& plan, const document::Selection& from);
/// All pieces whose middle is on the side of the head where the leading item's is: the
/// client's left, right, or the centre line (within 0.5 mm).
document::Selection sameSide(const plan::Plan& plan, const document::Selection& from);
/// The sections that are selected, and those that selected pieces lie in.
std::vector<plan::ItemId> sectionsIn(const plan::Plan& plan, const document::Selection& from);

}  // namespace combdraft::desk
