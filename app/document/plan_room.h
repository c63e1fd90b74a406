#pragma once
// Whether a plan can still be kept in its file. A file has limits (engine/plan/
// field_info.h), and what the reader would refuse must not come about in the
// first place: it could not be saved.
#include <cstddef>
#include <optional>

#include "engine/plan/change_set.h"
#include "engine/plan/field_check.h"

namespace combdraft::document {

struct NoRoom {
  enum class For {
    Pieces, Sections, Formulas, Treatments, Notes, Choices, Points,
    LinePoints, OutlinePoints,  ///< of one line, of one outline
    Text, Name,                 ///< bytes of one text, of one name or label
    FileBytes, FileValues
  };
  For what = For::Pieces;
  std::size_t found = 0, most = 0;
  bool operator==(const NoRoom&) const = default;
};

/// The first limit that `plan` goes beyond, or nothing. Counting takes well
/// under a millisecond; a plan that comes near the size of a file is written in
/// memory to know.
std::optional<NoRoom> roomMissing(const plan::Plan& plan);

/// The first value that `edit` brings in and that the reader would refuse, or nothing. What
/// was as wrong before does not count, so that everything else of its item can be edited.
std::optional<plan::FieldProblem> wrongValue(const plan::ChangeSet& edit);

/// An item that `next` could not be read back with, because a point of it lies too far off
/// the head that `edit` brings; nothing where the head stays.
std::optional<plan::ItemId> itemOffHead(const plan::ChangeSet& edit, const plan::Plan& next);

}  // namespace combdraft::document
