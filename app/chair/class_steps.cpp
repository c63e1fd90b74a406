#include "app/chair/class_steps.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace combdraft::chair {
namespace {

constexpr double kTop_deg = 38, kFront_deg = 48, kSide_deg = 128;  // where a view sees a place best [own]

}  // namespace

std::vector<ClassStep> classSteps(const plan::Plan& plan, const plan::ItemId& choice) {
  std::vector<ClassStep> steps{{ClassStep::Kind::Today, {}}};
  std::map<std::string, std::size_t> named;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    const bool shares = !piece->foil.empty() && piece->action != plan::Action::LeaveOut;
    if (const auto known = named.find(piece->foil); shares && known != named.end()) {
      steps[known->second].pieces.push_back(id);
      continue;
    }
    if (shares) named[piece->foil] = steps.size();
    steps.push_back({ClassStep::Kind::Foil, {id}});
  }
  if (steps.size() == 1) return steps;  // nothing planned: today is all there is
  steps.push_back({ClassStep::Kind::Predict, {}});
  steps.push_back({ClassStep::Kind::Opened, {}});
  return steps;
}

plan::Plan planAfter(const plan::Plan& plan, const std::vector<ClassStep>& steps, std::size_t index) {
  std::set<plan::ItemId> later;
  std::size_t lastFoil = 0;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (steps[i].kind == ClassStep::Kind::Foil) lastFoil = i;
    if (i > index) later.insert(steps[i].pieces.begin(), steps[i].pieces.end());
  }
  plan::Plan now = plan;
  for (const plan::ItemId& id : later) now.put(id, plan::ItemPtr());
  for (const auto& [id, piece] : now.pieces())
    if (!piece->twinOf.empty() && later.contains(piece->twinOf)) {  // its source comes later
      plan::Piece alone = *piece;
      alone.twinOf.clear();
      now.put(id, std::move(alone));
    }
  if (index <= lastFoil)
    for (const auto& [id, item] : plan.items())
      if (std::get_if<plan::Treatment>(item.get())) now.put(id, plan::ItemPtr());
  return now;
}

head::ViewName viewOf(const plan::Plan& plan, const ClassStep& step) {
  using head::ViewName;
  if (step.kind == ClassStep::Kind::Opened || step.kind == ClassStep::Kind::Predict || step.pieces.empty()) return ViewName::Back;
  const auto* piece = plan.find<plan::Piece>(step.pieces.front());
  if (!piece || piece->line.empty()) return ViewName::Back;
  const plan::ScalpPoint& middle = piece->line[piece->line.size() / 2];
  if (middle.drop_deg < kTop_deg) return ViewName::Top;
  const double bearing = std::remainder(middle.bearing_deg, 360.0);
  if (std::abs(bearing) <= kFront_deg) return ViewName::Front;
  if (std::abs(bearing) > kSide_deg) return ViewName::Back;
  return bearing > 0 ? ViewName::Right : ViewName::Left;
}

FoilCount foilCount(const std::vector<ClassStep>& steps, std::size_t index) {
  FoilCount count;
  for (std::size_t i = 0; i < steps.size(); ++i)
    if (steps[i].kind == ClassStep::Kind::Foil) {
      ++count.all;
      if (i <= index) ++count.now;
    }
  return count;
}

}  // namespace combdraft::chair
