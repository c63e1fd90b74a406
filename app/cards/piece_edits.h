#pragma once
// How the cards change pieces: one change on several pieces, and the words of
// its undo entry.
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::cards {

using PieceChange = std::function<void(plan::Piece&)>;

/// The plan with `change` made on each of `ids` that is a piece; twins follow.
plan::Plan withPieces(const plan::Plan& plan, const std::vector<plan::ItemId>& ids,
                      const PieceChange& change);
/// Its own label, or "piece 7" by its place in the order.
QString pieceName(const plan::ItemId& id, const plan::Piece& piece);
/// The pieces moved to `place` (1 = first) in the working order of their choice,
/// several as one run in the order they had; the others make room.
plan::Plan withPiecesAt(const plan::Plan& plan, const std::vector<plan::ItemId>& ids, int place);
/// Names of the other pieces in the same foil as one of `ids`, in working order.
QStringList foilSharers(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);
/// A foil name that no piece has: "F1", "F2", ...
std::string freeFoil(const plan::Plan& plan);
/// "piece 7" or "3 pieces".
QString piecesName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);
/// Only those of `ids` that are pieces of the plan.
std::vector<plan::ItemId> piecesOf(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);

}  // namespace combdraft::cards
