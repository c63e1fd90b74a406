#include "app/chair/look_shelf.h"

#include <algorithm>
#include <cmath>

namespace combdraft::chair {
namespace {

// A quick picture is coarser than what was asked for; a full one is exact.
bool isPictureOf(const look::PictureRequest& asked, const live::LookResult& result) {
  if (result.frame.pictures.empty() || !result.frame.pictures.front()) return true;
  const look::Picture& picture = *result.frame.pictures.front();
  return picture.view == asked.view && (result.pass == live::Pass::Quick || std::abs(picture.pixel_mm - asked.pixel_mm) < 1e-9);
}

}  // namespace

void LookShelf::want(std::vector<LookWish> wishes, std::size_t shown) {
  wishes_ = std::move(wishes);
  shown_ = std::min(shown, wishes_.size());
}

std::optional<LookWish> LookShelf::next() {
  const auto ask = [this](const LookWish& wish) {
    asked_.push_front(wish);
    if (asked_.size() > kMostAsked) asked_.pop_back();
    return wish;
  };
  for (std::size_t i = 1; i <= shown_; ++i) {  // after the last one's turn comes the other's
    const std::size_t turn = (lastShown_ + i) % shown_;
    if (state(wishes_[turn]) == State::Known) continue;
    lastShown_ = turn;
    return ask(wishes_[turn]);
  }
  for (std::size_t i = shown_; i < wishes_.size(); ++i)
    if (state(wishes_[i]) != State::Known) return ask(wishes_[i]);
  return std::nullopt;
}

void LookShelf::set(const std::shared_ptr<const live::LookResult>& result) {
  const auto asked = std::find_if(asked_.begin(), asked_.end(), [&](const LookWish& one) {
    return one.isAnsweredBy(*result) && isPictureOf(one.picture, *result);
  });
  if (asked == asked_.end()) return;
  const Kept* before = keptOf(*asked);
  if (before && before->result->pass == live::Pass::Full && result->pass == live::Pass::Quick) return;
  const LookWish wish = *asked;
  std::erase_if(kept_, [&](const Kept& one) { return one.wish.isSame(wish); });
  kept_.push_front({wish, result});
  if (kept_.size() > kMostKept) kept_.pop_back();
}

void LookShelf::clear() {
  wishes_.clear();
  kept_.clear();
  asked_.clear();
  shown_ = 0;
}

const LookShelf::Kept* LookShelf::keptOf(const LookWish& wish) const {
  for (const Kept& one : kept_)
    if (one.wish.isSame(wish)) return &one;
  return nullptr;
}

LookShelf::State LookShelf::state(const LookWish& wish) const {
  const Kept* kept = keptOf(wish);
  if (!kept) return State::Missing;
  return kept->result->pass == live::Pass::Full ? State::Known : State::Estimate;
}

std::shared_ptr<const live::LookResult> LookShelf::find(const LookWish& wish) const {
  const Kept* kept = keptOf(wish);
  return kept ? kept->result : nullptr;
}

bool LookShelf::isComplete() const {
  return std::all_of(wishes_.begin(), wishes_.end(), [this](const LookWish& wish) { return state(wish) == State::Known; });
}

}  // namespace combdraft::chair
