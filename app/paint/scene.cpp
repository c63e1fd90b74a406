#include "app/paint/scene.h"

#include "app/paint/describe_piece.h"

namespace combdraft::paint {
Scene::Scene(const plan::Plan& plan, const plan::ItemId& choice, const Scene* before)
    : plan_(plan), headItem_(plan.item(plan::kHeadId)) {
  const bool sameHead = before && (before->headItem_ == headItem_ || isSameShape(before->plan_.head(), plan_.head()));
  if (!sameHead)
    head_ = std::make_shared<const HeadScene>(plan_.head());
  else if (before->plan_.head().whorls == plan_.head().whorls)
    head_ = before->head_;
  else
    head_ = std::make_shared<const HeadScene>(before->head_->withWhorlsOf(plan_.head()));
  std::map<plan::ItemId, std::shared_ptr<const PieceShape>> known;
  if (sameHead)
    for (const auto& shape : before->pieces_) known[shape->id] = shape;
  for (const auto& [id, piece] : plan_.pieces(choice)) {
    const plan::ItemPtr item = plan_.item(id);
    const auto old = known.find(id);
    if (old != known.end() && old->second->item == item) {
      pieces_.push_back(old->second);
      continue;
    }
    auto shape = std::make_shared<PieceShape>();
    shape->id = id;
    shape->item = item;
    shape->piece = piece;
    const bool sameStrip = old != known.end() && old->second->piece->line == piece->line &&
                           old->second->piece->thickness_mm == piece->thickness_mm;
    shape->strip = sameStrip ? old->second->strip
                             : makeStrip(head_->shape, piece->line, piece->thickness_mm);
    shape->place = sameStrip ? old->second->place : placeWords(*head_, *piece);
    pieces_.push_back(std::move(shape));
  }
  for (const auto& [id, section] : plan_.sections(choice)) {
    SectionShape shape{id, plan_.item(id), section, {}};
    std::vector<head::ScalpPoint> closed = section->outline;
    if (!closed.empty()) closed.push_back(closed.front());
    shape.outline = surfaceLine(head_->shape, closed);
    sections_.push_back(std::move(shape));
  }
}

const PieceShape* Scene::find(const plan::ItemId& id) const {
  for (const auto& shape : pieces_)
    if (shape->id == id) return shape.get();
  return nullptr;
}

}  // namespace combdraft::paint
