#include "app/cards/piece_edits.h"

#include <QCoreApplication>

namespace combdraft::cards {

std::vector<plan::ItemId> piecesOf(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  std::vector<plan::ItemId> pieces;
  for (const plan::ItemId& id : ids)
    if (plan.find<plan::Piece>(id)) pieces.push_back(id);
  return pieces;
}

plan::Plan withPieces(const plan::Plan& plan, const std::vector<plan::ItemId>& ids,
                      const PieceChange& change) {
  plan::Plan next = plan;
  for (const plan::ItemId& id : piecesOf(plan, ids)) {
    plan::Piece piece = *next.find<plan::Piece>(id);
    change(piece);
    next.put(id, std::move(piece));
  }
  return next;
}

QString pieceName(const plan::ItemId& id, const plan::Piece& piece) {
  if (!piece.label.empty()) return QString::fromStdString(piece.label);
  QString name = QString::fromStdString(id);
  return name.replace(u'-', u' ');
}

QString piecesName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  if (ids.size() == 1)
    if (const auto* piece = plan.find<plan::Piece>(ids.front())) return pieceName(ids.front(), *piece);
  return QCoreApplication::translate("pieces", "%1 pieces").arg(ids.size());
}

}  // namespace combdraft::cards
