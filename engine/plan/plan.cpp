#include "engine/plan/plan.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/head/landmarks.h"
#include "engine/head/part_line.h"


namespace combdraft::plan {
namespace {

template <class T>
std::vector<std::pair<ItemId, const T*>> ofChoice(const Plan& plan, const ItemId& choice) {
  const ItemId wanted = choice.empty() ? plan.info().activeChoice : choice;
  std::vector<std::pair<ItemId, const T*>> found;
  for (const auto& [id, item] : plan.items()) {
    const T* value = std::get_if<T>(item.get());
    if (value && value->choice == wanted) found.emplace_back(id, value);
  }
  return found;
}

template <class T>
void sortByOrder(std::vector<std::pair<ItemId, const T*>>& items) {
  std::sort(items.begin(), items.end(), [](const auto& a, const auto& b) {
    return a.second->order != b.second->order ? a.second->order < b.second->order
                                              : idLess(a.first, b.first);
  });
}

// A place as a person would type it; 0.1 degree is at most 0.2 mm.
ScalpPoint toTenths(const ScalpPoint& point) {
  const auto rounded = [](double deg) { return std::round(deg * 10) / 10; };
  return {rounded(point.bearing_deg), rounded(point.drop_deg)};
}

Head usualHead() {
  Head head;
  const head::HeadShape mean;
  for (const ScalpPoint& point : head::defaultPart(mean, head::Hairline(mean)))
    head.part.push_back(toTenths(point));
  head.whorls = {{toTenths(mean.scalpPointAt(head::defaultWhorl(mean))), Turn::Clockwise, {}}};
  return head;
}

}  // namespace

bool idLess(const ItemId& a, const ItemId& b) {
  const auto tail = [](const ItemId& id) {
    const std::size_t end = id.find_last_not_of("0123456789");
    return end == ItemId::npos ? 0 : end + 1;
  };
  const std::size_t ta = tail(a), tb = tail(b);
  if (const int stems = a.compare(0, ta, b, 0, tb); stems != 0) return stems < 0;
  const std::size_t na = a.size() - ta, nb = b.size() - tb;
  return na != nb ? na < nb : a < b;
}

Plan Plan::fresh(std::uint64_t number) {
  Plan plan;
  PlanInfo info;
  info.number = std::max<std::uint64_t>(1, number & kLargestPlanNumber);
  info.activeChoice = "choice-1";
  plan.put(kPlanId, info);
  static const Head kUsualHead = usualHead();
  plan.put(kHeadId, kUsualHead);
  plan.put(kHairId, Hair{});
  plan.put("choice-1", Choice{});
  return plan;
}

std::vector<std::pair<ItemId, const Piece*>> Plan::pieces(const ItemId& choice) const {
  auto found = ofChoice<Piece>(*this, choice);
  sortByOrder(found);
  return found;
}

std::vector<std::pair<ItemId, const Section*>> Plan::sections(const ItemId& choice) const {
  auto found = ofChoice<Section>(*this, choice);
  sortByOrder(found);
  return found;
}

std::vector<std::pair<ItemId, const Treatment*>> Plan::treatments(const ItemId& choice) const {
  auto found = ofChoice<Treatment>(*this, choice);
  std::sort(found.begin(), found.end(),
            [](const auto& a, const auto& b) { return idLess(a.first, b.first); });
  return found;
}

constexpr std::size_t kLongestId = 64;

std::set<ItemId> recordedIds(const PlanInfo& info) {
  std::set<ItemId> ids;
  for (const std::string* json : {&info.logJson, &info.agreedJson, &info.visitsJson})
    for (std::size_t from = json->find('"'); from != std::string::npos;) {
      const std::size_t to = json->find('"', from + 1);
      if (to == std::string::npos) break;
      if (to - from <= kLongestId + 1) {
        const std::string text = json->substr(from + 1, to - from - 1);
        const std::size_t dash = text.rfind('-');
        if (dash != std::string::npos && text.find_first_not_of("0123456789", dash + 1) == std::string::npos) ids.insert(text);
      }
      from = to;  // a quote inside a text shifts no pair
    }
  return ids;
}

ItemId Plan::freeId(const std::string& stem) const {
  std::set<ItemId> retired = recordedIds(info());
  for (const auto& [id, item] : items_)
    if (const Section* section = std::get_if<Section>(item.get()))
      for (const RetiredPiece& piece : section->retired) retired.insert(piece.id);
  std::size_t number = 1;
  const auto taken = [&](const ItemId& id) { return items_.count(id) || retired.count(id); };
  while (taken(stem + "-" + std::to_string(number))) ++number;
  return stem + "-" + std::to_string(number);
}

void Plan::put(const ItemId& id, ItemPtr item) {
  if (item)
    items_[id] = std::move(item);
  else
    items_.erase(id);
}

bool Plan::operator==(const Plan& other) const {
  return std::equal(items_.begin(), items_.end(), other.items_.begin(), other.items_.end(),
                    [](const auto& a, const auto& b) {
                      return a.first == b.first &&
                             (a.second == b.second || *a.second == *b.second);
                    });
}

}  // namespace combdraft::plan
