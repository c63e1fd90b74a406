#pragma once
// Takes widgets away that may still be in somebody's hands.
class QLayout;
class QWidget;

namespace combdraft::controls {

/// Takes a widget out of its layout and out of sight now, and deletes it once the event
/// that is being handled is over. Never null.
///
/// A widget that the user can reach must not be deleted at once. Tab out of a field takes
/// what was typed, the edit rebuilds the card, and Qt, still inside the same key press,
/// goes on with the widget that it had chosen to get the focus; a button that was clicked
/// is in the same place. Hiding hands the focus on to what is in sight. Until then the
/// widget keeps its parent: as a window of its own it could not take the rest of the event.
/// What waits here says nothing any more (no signals), and it and all inside it have lost
/// their names, so that who looks for a name finds what stands there now.
void dropWidget(QWidget* widget);

/// Drops every widget of a layout, those of the layouts inside it too; it is empty then.
void dropContents(QLayout& layout);

}  // namespace combdraft::controls
