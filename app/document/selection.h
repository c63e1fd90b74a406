#pragma once
// Which items are selected. A value: sorted ids, no doubles, and the one that
// was picked last (the cards show it first).
#include <algorithm>
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace combdraft::document {

class Selection {
 public:
  Selection() = default;
  explicit Selection(std::vector<plan::ItemId> ids) : ids_(std::move(ids)) {
    if (!ids_.empty()) lead_ = ids_.back();
    std::sort(ids_.begin(), ids_.end());
    ids_.erase(std::unique(ids_.begin(), ids_.end()), ids_.end());
  }
  static Selection one(const plan::ItemId& id) { return Selection({id}); }

  const std::vector<plan::ItemId>& ids() const { return ids_; }
  /// The item picked last; "" when nothing is selected.
  const plan::ItemId& lead() const { return lead_; }
  bool isEmpty() const { return ids_.empty(); }
  std::size_t size() const { return ids_.size(); }
  bool contains(const plan::ItemId& id) const {
    return std::binary_search(ids_.begin(), ids_.end(), id);
  }
  /// With `id` added and leading.
  Selection with(const plan::ItemId& id) const {
    std::vector<plan::ItemId> ids = ids_;
    ids.push_back(id);
    return Selection(std::move(ids));
  }
  /// Without `id`.
  Selection without(const plan::ItemId& id) const {
    std::vector<plan::ItemId> ids;
    for (const plan::ItemId& other : ids_)
      if (other != id) ids.push_back(other);
    if (lead_ != id && std::find(ids.begin(), ids.end(), lead_) != ids.end()) {
      std::erase(ids, lead_);
      ids.push_back(lead_);
    }
    return Selection(std::move(ids));
  }
  /// Adds it when it is not selected, takes it out when it is.
  Selection toggled(const plan::ItemId& id) const { return contains(id) ? without(id) : with(id); }
  /// Only what is still in the plan.
  Selection within(const plan::Plan& plan) const {
    Selection kept = *this;
    for (const plan::ItemId& id : ids_)
      if (!plan.item(id)) kept = kept.without(id);
    return kept;
  }

  bool operator==(const Selection&) const = default;

 private:
  std::vector<plan::ItemId> ids_;
  plan::ItemId lead_;
};

}  // namespace combdraft::document
