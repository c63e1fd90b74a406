#pragma once
// The head sheet for screen readers: each piece, section and note is a child with role, name,
// place and state.

namespace combdraft::sheet {

class HeadSheet;

/// Makes the accessible interfaces known to Qt, once.
void installSheetAccessibility();
/// Tells assistive programs which piece is selected now.
void announceSelectedItem(HeadSheet& sheet);

}  // namespace combdraft::sheet
