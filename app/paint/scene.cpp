#include "app/paint/scene.h"

#include <algorithm>

#include <cmath>

#include "app/paint/describe_piece.h"

namespace combdraft::paint {
namespace {

head::ViewName mostSeenIn(const HeadScene& head, const Strip& strip) {
  using head::ViewName;
  ViewName best = ViewName::Top;
  double longest_mm = 0;
  for (const ViewName name : {ViewName::Front, ViewName::Back, ViewName::Left, ViewName::Right, ViewName::Top}) {
    const head::SheetView view = head.view(name);
    for (const StripRun& run : splitBySight(view, strip)) {
      if (run.sight != Sight::Seen) continue;
      double length_mm = 0;
      for (std::size_t i = 1; i < run.strip.size(); ++i) {
        const head::ViewPoint a = view.project(run.strip[i - 1].centre), b = view.project(run.strip[i].centre);
        length_mm += std::hypot(b.u_mm - a.u_mm, b.v_mm - a.v_mm);
      }
      if (length_mm <= longest_mm) continue;
      longest_mm = length_mm;
      best = name;
    }
  }
  return best;
}

}  // namespace

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
    pieces_.push_back(std::make_shared<const PieceShape>(
        shapeOf(id, *piece, old != known.end() ? old->second.get() : nullptr)));
  }
  for (const auto& shape : pieces_) byId_[shape->id] = shape.get();
  for (const auto& [id, section] : plan_.sections(choice)) {
    SectionShape shape{id, plan_.item(id), section, {}};
    std::vector<head::ScalpPoint> closed = section->outline;
    if (!closed.empty()) closed.push_back(closed.front());
    shape.outline = surfaceLine(head_->shape, closed);
    sections_.push_back(std::move(shape));
  }
  const plan::ItemId of = choice.empty() ? plan_.info().activeChoice : choice;
  for (const auto& [id, item] : plan_.items())
    if (const auto* note = std::get_if<plan::Note>(item.get()); note && (note->choice.empty() || note->choice == of)) notes_.emplace_back(id, note);
  std::sort(notes_.begin(), notes_.end(), [](const auto& a, const auto& b) { return plan::idLess(a.first, b.first); });
}

PieceShape Scene::shapeOf(const plan::ItemId& id, const plan::Piece& piece, const PieceShape* before) const {
  PieceShape shape;
  if (before && before->piece->line == piece.line && before->piece->thickness_mm == piece.thickness_mm) {
    shape = *before;
  } else {
    shape.strip = makeStrip(head_->shape, piece.line, piece.thickness_mm);
    shape.place = placeWords(*head_, piece);
    shape.mostSeenIn = mostSeenIn(*head_, shape.strip);
    shape.sights = std::make_shared<StripSights>();
  }
  shape.id = id;
  shape.item = plan_.item(id);
  shape.piece = &piece;
  return shape;
}

const PieceShape* Scene::find(const plan::ItemId& id) const {
  const auto found = byId_.find(id);
  return found != byId_.end() ? found->second : nullptr;
}

}  // namespace combdraft::paint
