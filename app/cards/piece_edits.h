#pragma once
// How the cards change pieces: one change on several pieces, and the words of
// its undo entry.
#include <QString>
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
/// "piece 7" or "3 pieces".
QString piecesName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);
/// Only those of `ids` that are pieces of the plan.
std::vector<plan::ItemId> piecesOf(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);

}  // namespace combdraft::cards
