#pragma once
// Searches thickness, taken share, start and backcomb of chosen pieces for what
// comes nearest to the aims with no block at the openings, few pieces and few
// minutes. Proposes; the user keeps or drops. Rules as for remedies (rules.h).
#include <functional>

#include "engine/advise/aims.h"
#include "engine/advise/effort.h"
#include "engine/look/openings.h"
#include "engine/plan/change_set.h"

namespace combdraft::advise {

struct Wish {
  Aims aims;                         ///< none: the choice's targets, or else the levels as they look
  std::vector<plan::ItemId> pieces;  ///< that may change; empty = all that are not held
};

/// How a proposal goes about it; each is at most once among the proposals.
enum class Manner {
  AsDrawn,      ///< all of thickness, share, start and backcomb, as little as will do
  Starts,       ///< start and backcomb only
  FewerPieces,  ///< takes out pieces that hardly show, then the rest
};
/// Stable short name: "as-drawn".
std::string codeName(Manner manner);
std::string sentenceOf(Manner manner);

/// How a plan stands to the aims.
struct Standing {
  /// Search: by the coarse engine of the search, to be seen at once.
  enum class Size { Search, Full } size = Size::Search;
  look::Readings readings;      ///< worn down
  double lightBlock_cm2 = 0, darkBlock_cm2 = 0;  ///< largest at any opening
  double miss_levels = 0;       ///< missOf (aims.h)
  Effort effort;
};

struct Proposal {
  Manner manner{};
  plan::ChangeSet edit;               ///< all of it: one undo
  std::vector<std::string> changed;   ///< plain sentences, most important first
  Standing before, after;
};

struct Progress {
  double done_frac = 0;
  const std::vector<Proposal>* found = nullptr;  ///< so far, perhaps of search size
};

/// Used by one thread at a time; keeps what it traced.
class Suggester {
 public:
  /// `locks` for the readings of the result; the search itself uses fewer.
  explicit Suggester(int locks);
  ~Suggester();
  Suggester(Suggester&&) noexcept;
  Suggester& operator=(Suggester&&) noexcept;

  /// Up to three proposals, nearest to the aims first; fewer when manners come
  /// to the same, none when nothing may change or nothing comes nearer.
  /// Errors: Cancelled, OutOfRange (measures).
  Result<std::vector<Proposal>> search(const plan::Plan& plan, const look::LookSettings& settings,
                                       const Wish& wish, std::stop_token stop,
                                       const std::function<void(const Progress&)>& progress = {});

  /// Traces all that a search of this head will need, so that it can begin at
  /// once. Ends early when stopped; what was traced is kept.
  void prepare(const plan::Plan& plan, look::LookSettings settings, std::stop_token stop);

  /// Locks and pixel of the search.
  static constexpr int kSearchLocks = 7000, kOpeningLocks = 6000;
  static constexpr double kSearchPixel_mm = 2;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::advise
