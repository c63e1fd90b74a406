#include "engine/work/work_order.h"

#include <algorithm>
#include <cmath>

#include "engine/base/assumptions.h"
#include "engine/plan/edits.h"
#include "engine/plan/hair_zone.h"
#include "engine/work/speeds.h"

namespace combdraft::work {

using plan::HairZone;

namespace {

// Measures that no head has were reported when they were typed; the mean head then.
head::HeadShape shapeOf(const plan::Plan& plan) {
  const auto fitted = head::fitHead(plan.head().measures);
  return head::HeadShape(fitted ? fitted->axes : head::HeadAxes{});
}

}  // namespace

PiecePlaces::PiecePlaces(const plan::Plan& plan)
    : shape_(shapeOf(plan)),
      porosity_(plan.hair().porosity),
      hairline_mm_(Assumptions(plan.info().assumptions)["work.hairline_mm"]) {
  // Forehead and temples; behind the ears hair at the hairline is no faster.
  constexpr int kFarthest_deg = 100;
  const head::Hairline hairline(shape_, plan.head().hairline);
  for (int azimuth = -kFarthest_deg; azimuth <= kFarthest_deg; ++azimuth) frontHairline_.push_back(hairline.pointAt(azimuth));
}

PiecePlace PiecePlaces::of(const plan::Piece& piece) const {
  const Vec3 middle = shape_.pointAt(piece.line[piece.line.size() / 2]);
  PiecePlace place;
  place.zone = plan::zoneAt(shape_, middle);
  place.top = place.zone == HairZone::Front || place.zone == HairZone::Top || place.zone == HairZone::Crown;
  const bool near = std::any_of(frontHairline_.begin(), frontHairline_.end(),
                                [&](const Vec3& p) { return (p - middle).norm() <= hairline_mm_; });
  if (near)
    place.pace = Pace::Hairline;
  else if (porosity_[static_cast<std::size_t>(place.zone)] == plan::Porosity::Resistant)
    place.pace = Pace::Slow;
  return place;
}

std::vector<plan::ItemId> workOrder(const plan::Plan& plan, const plan::ItemId& choice, OrderUse use) {
  std::vector<plan::ItemId> order;
  const auto take = [&](const plan::ItemId& id, const plan::Piece* piece) {
    if (piece && isWorked(*piece) && !piece->line.empty()) order.push_back(id);
  };
  if (use == OrderUse::AsPlanned) {
    for (const auto& [id, piece] : plan.pieces(choice)) take(id, piece);
    return order;
  }
  for (const plan::ItemId& id : plan::orderByRule(plan, choice)) take(id, plan.find<plan::Piece>(id));
  const PiecePlaces places(plan);
  std::stable_sort(order.begin(), order.end(), [&](const plan::ItemId& a, const plan::ItemId& b) {
    return places.of(*plan.find<plan::Piece>(a)).pace < places.of(*plan.find<plan::Piece>(b)).pace;
  });
  return order;
}

}  // namespace combdraft::work
