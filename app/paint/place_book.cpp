#include "app/paint/place_book.h"

#include <utility>

#include "app/paint/describe_piece.h"

namespace combdraft::paint {

void PlaceBook::take(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  if (!scene_ || !head_ || !(*head_ == plan.head())) {
    head_ = plan.head();
    scene_.emplace(plan.head());
    known_.clear();
  }
  std::map<plan::ItemId, Known> taken;
  for (const plan::ItemId& id : pieces) {
    const auto* piece = plan.find<plan::Piece>(id);
    if (!piece) continue;
    const auto before = known_.find(id);
    if (before != known_.end() && before->second.line == piece->line)
      taken[id] = std::move(before->second);
    else
      taken[id] = Known{piece->line, placeWords(*scene_, *piece)};
  }
  known_ = std::move(taken);
}

QString PlaceBook::of(const plan::ItemId& piece) const {
  const auto it = known_.find(piece);
  return it == known_.end() ? QString() : it->second.words;
}

}  // namespace combdraft::paint
