#include "app/cards/piece_edits.h"

#include <QCoreApplication>

#include "engine/plan/edits.h"

namespace combdraft::cards {

std::vector<plan::ItemId> piecesOf(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  std::vector<plan::ItemId> pieces;
  for (const plan::ItemId& id : ids)
    if (plan.find<plan::Piece>(id)) pieces.push_back(id);
  return pieces;
}

plan::Plan withPieces(const plan::Plan& plan, const std::vector<plan::ItemId>& ids,
                      const PieceChange& change) {
  return plan::applied(plan, plan::changePieces(plan, piecesOf(plan, ids), change));
}

QString pieceName(const plan::ItemId& id, const plan::Piece& piece) {
  if (!piece.label.empty()) return QString::fromStdString(piece.label);
  if (piece.order > 0) return QCoreApplication::translate("pieces", "piece %1").arg(piece.order);
  return QString::fromStdString(id).replace(u'-', u' ');
}

QString piecesName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  if (ids.size() == 1)
    if (const auto* piece = plan.find<plan::Piece>(ids.front())) return pieceName(ids.front(), *piece);
  return QCoreApplication::translate("pieces", "%1 pieces").arg(ids.size());
}

}  // namespace combdraft::cards
