#include "engine/plan/change_set.h"

namespace combdraft::plan {
namespace {

bool same(const ItemPtr& a, const ItemPtr& b) { return a == b || (a && b && *a == *b); }

}  // namespace

Plan applied(Plan plan, const ChangeSet& edit) {
  for (const ItemChange& change : edit.changes) {
    COMBDRAFT_EXPECT(same(plan.item(change.id), change.before), change.id);
    plan.put(change.id, change.after);
  }
  return plan;
}

ChangeSet inverse(const ChangeSet& edit) {
  ChangeSet back = edit;
  for (ItemChange& change : back.changes) std::swap(change.before, change.after);
  return back;
}

ChangeSet merged(const ChangeSet& first, const ChangeSet& second) {
  std::map<ItemId, ItemChange> joined;
  for (const ItemChange& change : first.changes) joined[change.id] = change;
  for (const ItemChange& change : second.changes) {
    const auto [it, isNew] = joined.emplace(change.id, change);
    if (isNew) continue;
    COMBDRAFT_EXPECT(same(it->second.after, change.before), change.id);
    it->second.after = change.after;
  }
  ChangeSet both{first.kind, first.args, {}};
  for (auto& [id, change] : joined)
    if (!same(change.before, change.after)) both.changes.push_back(std::move(change));
  return both;
}

ChangeSet difference(const Plan& before, const Plan& after, EditKind kind,
                     std::vector<std::string> args) {
  ChangeSet edit{kind, std::move(args), {}};
  auto a = before.items().begin(), b = after.items().begin();
  const auto aEnd = before.items().end(), bEnd = after.items().end();
  while (a != aEnd || b != bEnd) {
    if (b == bEnd || (a != aEnd && a->first < b->first)) {
      edit.changes.push_back({a->first, a->second, nullptr});
      ++a;
    } else if (a == aEnd || b->first < a->first) {
      edit.changes.push_back({b->first, nullptr, b->second});
      ++b;
    } else {
      if (!same(a->second, b->second)) edit.changes.push_back({a->first, a->second, b->second});
      ++a;
      ++b;
    }
  }
  return edit;
}

}  // namespace combdraft::plan
