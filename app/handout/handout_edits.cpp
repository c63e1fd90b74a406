#include "app/handout/handout_edits.h"

#include <algorithm>

#include "engine/plan/edits.h"

namespace combdraft::handout {

plan::Handout handoutOf(const plan::Plan& plan) {
  const auto* handout = plan.find<plan::Handout>(plan::kHandoutId);
  return handout ? *handout : plan::Handout{};
}

plan::Plan withHandout(const plan::Plan& plan, const plan::Handout& handout) {
  if (handoutOf(plan) == handout) return plan;
  return plan::applied(plan, plan::setItem(plan, plan::kHandoutId, handout));
}

plan::Handout withPart(plan::Handout handout, plan::HandoutPart part, Shown shown) {
  handout.parts = partsOf(handout);
  for (plan::HandoutUse& use : handout.parts)
    if (use.part == part) use.hidden = shown == Shown::No;
  return handout;
}

plan::Handout withPartMoved(plan::Handout handout, plan::HandoutPart part, int places) {
  handout.parts = partsOf(handout);
  const auto it = std::find_if(handout.parts.begin(), handout.parts.end(), [&](const plan::HandoutUse& use) { return use.part == part; });
  const auto from = it - handout.parts.begin();
  const auto to = std::clamp<std::ptrdiff_t>(from + places, 0, static_cast<std::ptrdiff_t>(handout.parts.size()) - 1);
  const plan::HandoutUse use = *it;
  handout.parts.erase(it);
  handout.parts.insert(handout.parts.begin() + to, use);
  return handout;
}

plan::Handout withOrder(plan::Handout handout, const std::vector<plan::HandoutPart>& order) {
  handout.parts = partsOf(handout);
  std::stable_sort(handout.parts.begin(), handout.parts.end(), [&](const plan::HandoutUse& a, const plan::HandoutUse& b) {
    return std::find(order.begin(), order.end(), a.part) < std::find(order.begin(), order.end(), b.part);
  });
  return handout;
}

}  // namespace combdraft::handout
