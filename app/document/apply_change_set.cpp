#include "app/document/apply_change_set.h"

#include <algorithm>

namespace combdraft::document {
namespace {

bool isSame(const plan::ItemPtr& a, const plan::ItemPtr& b) {
  return a == b || (a && b && *a == *b);
}

std::vector<std::pair<plan::ItemId, plan::ItemPtr>> items(const std::vector<ItemChange>& changes,
                                                          plan::ItemPtr ItemChange::*which) {
  std::vector<std::pair<plan::ItemId, plan::ItemPtr>> list;
  for (const ItemChange& change : changes) list.emplace_back(change.id, change.*which);
  return list;
}

}  // namespace

std::vector<ItemChange> difference(const plan::Plan& before, const plan::Plan& after) {
  std::vector<ItemChange> changes;
  auto b = before.items().begin();
  auto a = after.items().begin();
  while (b != before.items().end() || a != after.items().end()) {
    if (a == after.items().end() || (b != before.items().end() && b->first < a->first)) {
      changes.push_back({b->first, b->second, nullptr});
      ++b;
    } else if (b == before.items().end() || a->first < b->first) {
      changes.push_back({a->first, nullptr, a->second});
      ++a;
    } else {
      if (!isSame(b->second, a->second)) changes.push_back({b->first, b->second, a->second});
      ++a;
      ++b;
    }
  }
  return changes;
}

ApplyChangeSet::ApplyChangeSet(DocumentController& controller, std::vector<ItemChange> changes,
                               Selection before, Selection after, Gesture gesture,
                               const QString& name)
    : QUndoCommand(name),
      controller_(controller),
      changes_(std::move(changes)),
      before_(std::move(before)),
      after_(std::move(after)),
      gesture_(gesture) {}

void ApplyChangeSet::undo() {
  controller_.applyItems(items(changes_, &ItemChange::before), before_);
}

void ApplyChangeSet::redo() {
  controller_.applyItems(items(changes_, &ItemChange::after), after_);
}

bool ApplyChangeSet::mergeWith(const QUndoCommand* other) {
  const auto* next = dynamic_cast<const ApplyChangeSet*>(other);
  if (!next || gesture_.serial() == 0 || next->gesture_.serial() != gesture_.serial()) return false;
  for (const ItemChange& change : next->changes_) {
    const auto same = std::find_if(changes_.begin(), changes_.end(),
                                   [&](const ItemChange& c) { return c.id == change.id; });
    if (same == changes_.end()) {
      changes_.push_back(change);
    } else {
      same->after = change.after;
    }
  }
  std::erase_if(changes_, [](const ItemChange& c) { return isSame(c.before, c.after); });
  after_ = next->after_;
  setText(next->text());
  setObsolete(changes_.empty());
  return true;
}

}  // namespace combdraft::document
