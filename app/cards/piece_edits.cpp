#include "app/cards/piece_edits.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

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

plan::Plan withPiecesAt(const plan::Plan& plan, const std::vector<plan::ItemId>& ids, int place) {
  const std::set<plan::ItemId> moved(ids.begin(), ids.end());
  const plan::Piece* first = ids.empty() ? nullptr : plan.find<plan::Piece>(ids.front());
  if (!first) return plan;
  std::vector<plan::ItemId> run, order;
  for (const auto& [id, piece] : plan.pieces(first->choice)) {
    // A twin that follows a moved piece comes along by itself (renumber).
    if (moved.count(id))
      run.push_back(id);
    else if (!moved.count(piece->twinOf))
      order.push_back(id);
  }
  const std::ptrdiff_t at = std::clamp<std::ptrdiff_t>(place - 1, 0, static_cast<std::ptrdiff_t>(order.size()));
  order.insert(order.begin() + at, run.begin(), run.end());
  return plan::applied(plan, plan::renumber(plan, first->choice, order));
}

QStringList foilSharers(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  const std::set<plan::ItemId> about(ids.begin(), ids.end());
  QStringList names;
  const plan::Piece* first = ids.empty() ? nullptr : plan.find<plan::Piece>(ids.front());
  if (!first) return names;
  std::set<std::string> foils;
  for (const plan::ItemId& id : ids)
    if (const auto* piece = plan.find<plan::Piece>(id); piece && !piece->foil.empty()) foils.insert(piece->foil);
  for (const auto& [id, piece] : plan.pieces(first->choice))
    if (!about.count(id) && foils.count(piece->foil)) names << pieceName(id, *piece);
  return names;
}

std::string freeFoil(const plan::Plan& plan) {
  std::set<std::string> taken;
  for (const auto& [id, item] : plan.items())
    if (const auto* piece = std::get_if<plan::Piece>(item.get())) taken.insert(piece->foil);
  int number = 1;
  while (taken.count("F" + std::to_string(number))) ++number;
  return "F" + std::to_string(number);
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
