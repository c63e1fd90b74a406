#pragma once
// Twins: a piece or section that is the mirror of another across the centre
// line. In memory a twin holds its own values, kept equal by the edits
// (edits.h); a file stores only whose twin it is.
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// What a twin of `sourceId` must hold: mirrored points, the section's own twin
/// if it has one, a foil of its own side, no extra fields; order 0.
Piece mirroredPiece(const Plan& plan, const ItemId& sourceId, const Piece& source);
Section mirroredSection(const ItemId& sourceId, const Section& source);

/// Whether the twin holds just what its source says, but for order and extra
/// fields. False for an item that stands on its own or whose source is missing.
bool followsSource(const Plan& plan, const Piece& twin);
bool followsSource(const Plan& plan, const Section& twin);

/// Whose twin a piece or section is; "" = it stands on its own.
ItemId twinOwner(const Plan& plan, const ItemId& id);

/// Ids of the twins of an item.
std::vector<ItemId> twinsOf(const Plan& plan, const ItemId& sourceId);

}  // namespace combdraft::plan
