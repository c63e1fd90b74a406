#pragma once
// Which looks a view for clients or a class wants, which of them are known, and
// what to ask the window's one engine for next. Known looks are kept, so that
// going back to one shows it at once.
#include <deque>
#include <optional>
#include <vector>

#include "app/live/look_result.h"

namespace combdraft::chair {

/// One look. `ticket` is what the answer's `revision` will say: the plan it is of.
struct LookWish {
  plan::Plan plan;
  std::uint64_t ticket = 0;
  look::LookSettings settings;
  look::PictureRequest picture;

  bool isAnsweredBy(const live::LookResult& result) const {
    return result.revision == ticket && result.settings == settings;
  }
  bool isSame(const LookWish& other) const {
    return ticket == other.ticket && settings == other.settings && picture.view == other.picture.view &&
           picture.pixel_mm == other.picture.pixel_mm;
  }
};

class LookShelf {
 public:
  /// What is wanted, the most urgent first. The first `shown` of them are on the
  /// screen: they take turns, and the others wait for them.
  void want(std::vector<LookWish> wishes, std::size_t shown);
  /// What to ask for now; nothing when all is known.
  std::optional<LookWish> next();
  /// Takes what came.
  void set(const std::shared_ptr<const live::LookResult>& result);
  void clear();

  enum class State { Missing, Estimate, Known };
  State state(const LookWish& wish) const;
  /// The best look there is for a wish; null while it is missing.
  std::shared_ptr<const live::LookResult> find(const LookWish& wish) const;
  bool isComplete() const;

 private:
  struct Kept {
    LookWish wish;
    std::shared_ptr<const live::LookResult> result;
  };
  const Kept* keptOf(const LookWish& wish) const;

  static constexpr std::size_t kMostKept = 20;  // some 2 MB each
  static constexpr std::size_t kMostAsked = 8;
  std::vector<LookWish> wishes_;
  std::size_t shown_ = 0;
  std::deque<LookWish> asked_;  ///< newest first; answers to earlier ones still come
  std::size_t lastShown_ = 0;  ///< whose turn it was
  std::deque<Kept> kept_;      ///< newest first
};

}  // namespace combdraft::chair
