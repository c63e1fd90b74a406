#pragma once
// Lay out: a section's rule turned into a run of pieces with left-outs between.
//
// From the first edge of the section (section_rows.h) on: piece, left-out,
// piece, left-out ... Thicknesses are kept exactly (steps of a ramp in tenths); as many pieces as fit; what
// remains of the room widens the left-outs evenly. The last left-out lies
// between the last piece and the opening. Ramps run in equal steps from the
// first piece, farthest from the opening, to the last.
#include "engine/plan/plan.h"

namespace combdraft::plan {

/// What the rule says of one piece.
struct RunPiece {
  int row = 1, column = 1;  ///< as LaidOut counts them
  std::vector<ScalpPoint> line;
  double thickness_mm = 0, start_mm = 0, backcomb_mm = 0, pushed_frac = 0, taken_frac = 0;
  std::vector<Stretch> dropOuts;
};

enum class RunTrouble {
  None,
  OutlineCrosses,  ///< the section's outline crosses itself
  NoRoom,          ///< not even half a piece fits
  TooMany,         ///< over limits::kRunPieces
};

struct Run {
  std::vector<RunPiece> pieces;  ///< in placing order, first piece first
  RunTrouble trouble = RunTrouble::None;
  double room_mm = 0;            ///< across the rows
  int rows = 0;
};

/// The run of a section with a layout on this head; `thickness_mm` holds the
/// rows that keep a thickness of their own. Empty with a trouble when it cannot be.
Run runOf(const head::HeadShape& shape, const Section& section,
          const std::map<int, double>& ownThickness_mm = {});

/// The same for a section of a plan: its head, and the thicknesses its pieces keep.
Run runIn(const Plan& plan, const ItemId& sectionId);

/// `after` with the run of one section brought up to its rule: pieces keep their
/// id by row and column, surplus ones retire, retired ones come back, twins come
/// and go with their source. Unchanged when the section has no layout, follows
/// another section, or its rule cannot be met. Used by the edits.
Plan reflowed(Plan after, const ItemId& sectionId);

/// The fields by which two pieces differ that a rule would govern.
std::vector<RunField> governedDifferences(const Piece& a, const Piece& b);

}  // namespace combdraft::plan
