#include "app/sheet/changed_area.h"

#include <QHash>
#include <algorithm>

namespace combdraft::sheet {
namespace {

using ItemsOf = QHash<QString, std::vector<const paint::DrawingItem*>>;

ItemsOf byId(const paint::Items& items) {
  ItemsOf found;
  for (const paint::DrawingItem& item : items) found[item.id].push_back(&item);
  return found;
}

bool same(const std::vector<const paint::DrawingItem*>& one, const std::vector<const paint::DrawingItem*>& other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                    [](const paint::DrawingItem* a, const paint::DrawingItem* b) { return *a == *b; });
}

}  // namespace

std::optional<std::vector<QRectF>> changedArea(const paint::Items& before, const paint::Items& after) {
  const ItemsOf old = byId(before), now = byId(after);
  const auto stays = [&](const paint::DrawingItem& item) {
    const auto a = old.constFind(item.id), b = now.constFind(item.id);
    return a != old.cend() && b != now.cend() && same(*a, *b);
  };
  std::vector<QRectF> changed;
  std::vector<QString> oldOrder, newOrder;
  for (const paint::DrawingItem& item : before) stays(item) ? oldOrder.push_back(item.id) : changed.push_back(item.extent());
  for (const paint::DrawingItem& item : after) stays(item) ? newOrder.push_back(item.id) : changed.push_back(item.extent());
  if (oldOrder != newOrder) return std::nullopt;
  return changed;
}

}  // namespace combdraft::sheet
