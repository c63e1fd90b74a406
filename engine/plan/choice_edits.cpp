#include "engine/plan/choice_edits.h"

#include <algorithm>

#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/parts.h"
#include "engine/plan/plan_words.h"

namespace combdraft::plan {
namespace {

Plan withActive(Plan plan, const ItemId& choice) {
  PlanInfo info = plan.info();
  info.activeChoice = choice;
  plan.put(kPlanId, std::move(info));
  return plan;
}

// Sections, pieces and notes of a choice.
std::vector<ItemId> placedIn(const Plan& plan, const ItemId& choice) {
  std::vector<ItemId> ids;
  for (const auto& [id, item] : plan.items()) {
    const ItemId* owner = nullptr;
    if (const auto* section = std::get_if<Section>(item.get())) owner = &section->choice;
    if (const auto* piece = std::get_if<Piece>(item.get())) owner = &piece->choice;
    if (const auto* note = std::get_if<Note>(item.get())) owner = &note->choice;
    if (owner && *owner == choice) ids.push_back(id);
  }
  return ids;
}

Error tooMany(std::size_t count, const char* what, std::size_t most) {
  return {ErrorCode::TooManyItems, "", {std::to_string(count) + " " + what, std::to_string(most)}, {}};
}

ChangeSet changed(const Plan& plan, const ItemId& id, const Choice& choice) {
  Plan after = plan;
  after.put(id, choice);
  return difference(plan, after, EditKind::ChangeChoice, {id});
}

}  // namespace

std::vector<std::pair<ItemId, const Choice*>> choicesOf(const Plan& plan) {
  std::vector<std::pair<ItemId, const Choice*>> found;
  for (const auto& [id, item] : plan.items())
    if (const auto* choice = std::get_if<Choice>(item.get())) found.emplace_back(id, choice);
  std::sort(found.begin(), found.end(),
            [](const auto& a, const auto& b) { return idLess(a.first, b.first); });
  return found;
}

ItemId choiceNamed(const Plan& plan, const std::string& name) {
  for (const auto& [id, choice] : choicesOf(plan))
    if (choice->name == name) return id;
  return {};
}

std::string freeChoiceName(const Plan& plan) {
  for (char letter = 'A'; letter <= 'Z'; ++letter)
    if (choiceNamed(plan, {letter}).empty()) return {letter};
  return "A2";  // a plan has no room for one more anyway
}

Result<ChangeSet> addChoice(const Plan& plan, const std::string& name, const ItemId& model) {
  const std::size_t count = choicesOf(plan).size() + 1;
  if (count > limits::kChoices) return tooMany(count, "choices", limits::kChoices);
  const Choice* source = plan.find<Choice>(model);
  const ItemId id = plan.freeId("choice");
  Choice choice = source ? *source : Choice{};
  choice.name = name;
  Plan after = withActive(plan, id);
  after.put(id, std::move(choice));
  if (source) {
    const auto added =
        addParts(after, partsOf(plan, placedIn(plan, model)), EditKind::AddChoice, Runs::AsTheyAre);
    if (!added) return added.error();
    after = applied(std::move(after), *added);
    for (const auto& [treatmentId, treatment] : plan.treatments(model)) {
      Treatment copy = *treatment;
      copy.choice = id;
      after.put(after.freeId("treatment"), std::move(copy));
    }
    std::size_t treatments = 0;
    for (const auto& entry : after.items())
      treatments += std::holds_alternative<Treatment>(*entry.second);
    if (treatments > limits::kTreatments)
      return tooMany(treatments, "treatments", limits::kTreatments);
  }
  return difference(plan, after, EditKind::AddChoice, {id});
}

ChangeSet renameChoice(const Plan& plan, const ItemId& choice, const std::string& name) {
  const Choice* found = plan.find<Choice>(choice);
  const ItemId taken = choiceNamed(plan, name);
  if (!found || name.empty() || (!taken.empty() && taken != choice)) return {EditKind::ChangeChoice, {choice}, {}};
  Choice renamed = *found;
  renamed.name = name;
  return changed(plan, choice, renamed);
}

ChangeSet removeChoice(const Plan& plan, const ItemId& choice) {
  if (!plan.find<Choice>(choice)) return {EditKind::Remove, {choice}, {}};
  return removeItems(plan, {choice});
}

ChangeSet activateChoice(const Plan& plan, const ItemId& choice) {
  if (!plan.find<Choice>(choice)) return {EditKind::ChangePlan, {choice}, {}};
  return difference(plan, withActive(plan, choice), EditKind::ChangePlan, {choice});
}

ChangeSet setTarget(const Plan& plan, const ItemId& choice, const std::string& region,
                    const Target& target) {
  const auto regions = targetRegions();
  COMBDRAFT_EXPECT(std::find(regions.begin(), regions.end(), region) != regions.end(), region);
  const Choice* found = plan.find<Choice>(choice);
  if (!found) return {EditKind::ChangeChoice, {choice, region}, {}};
  Choice aimed = *found;
  if (target == Target{})
    aimed.targets.erase(region);
  else
    aimed.targets[region] = target;
  return changed(plan, choice, aimed);
}

Result<ChangeSet> takeInto(const Plan& plan, const std::vector<ItemId>& ids, const ItemId& choice) {
  if (!plan.find<Choice>(choice)) {
    std::string known;
    for (const auto& entry : choicesOf(plan)) known += (known.empty() ? "" : ", ") + entry.first;
    return Error{ErrorCode::UnknownName, "choice", {choice, known}, {}};
  }
  const std::vector<ItemId> there = placedIn(plan, choice);
  std::vector<ItemId> coming;
  for (const ItemId& id : ids)
    if (std::find(there.begin(), there.end(), id) == there.end()) coming.push_back(id);
  const Plan target = withActive(plan, choice);
  const auto added = addParts(target, partsOf(plan, coming), EditKind::TakeInto, Runs::AsTheyAre);
  if (!added) return added.error();
  Plan after = withActive(applied(target, *added), plan.info().activeChoice);
  return difference(plan, after, EditKind::TakeInto, added->args);
}

}  // namespace combdraft::plan
