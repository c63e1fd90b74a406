#pragma once
// What a suggestion may turn: groups of pieces, four numbers each, within bounds
// that keep every rule (rules.h) by themselves.
#include <string>
#include <vector>

#include "engine/advise/bounded_search.h"
#include "engine/plan/change_set.h"

namespace combdraft::advise {

/// The numbers of a group, in this order. 0 = as drawn.
enum class Turn {
  Thickness,  ///< -1 thinnest allowed .. 1 thickest allowed
  Share,      ///< -1 least taken .. 1 all that is allowed
  Start,      ///< 0 as drawn .. 1 farthest from the scalp
  Backcomb,   ///< -1 none .. 1 most
};
inline constexpr std::size_t kTurns = 4;

/// Pieces that a search may change, a pair by its owner. `wanted`: only these;
/// empty = all of the choice. Held pieces, pairs with a held side and what does
/// not lighten are left out.
std::vector<plan::ItemId> mayChange(const plan::Plan& plan, const plan::ItemId& choice,
                                    const std::vector<plan::ItemId>& wanted);

class SearchSpace {
 public:
  /// `pieces`: those that may change, see mayChange.
  SearchSpace(const plan::Plan& plan, const plan::ItemId& choice,
              const std::vector<plan::ItemId>& pieces);

  bool isEmpty() const { return pieces_.empty(); }
  std::size_t numbers() const { return groups_.size() * kTurns; }
  /// Bounds of all numbers; those of turns that are not `allowed` stay at 0.
  std::vector<Bounds> bounds(const std::vector<Turn>& allowed) const;
  std::vector<double> asDrawn() const { return std::vector<double>(numbers(), 0); }

  /// Owners of pairs and single pieces that may go.
  std::vector<plan::ItemId> owners() const;
  /// Pieces at an opening give way by a third, whatever their group says.
  enum class Quiet { ThinnerAndLower, ByStart };
  void quieten(const std::vector<plan::ItemId>& makers, Quiet how);

  /// The plan with the numbers in force and some pieces gone: for trying only
  /// (runs and hand-work marks do not follow).
  plan::Plan tried(const std::vector<double>& numbers, const std::vector<plan::ItemId>& gone) const;
  /// The same as an edit, with values a hand can set.
  plan::ChangeSet edit(const std::vector<double>& numbers, const std::vector<plan::ItemId>& gone) const;
  /// What an edit changed, in plain words, most important first.
  std::vector<std::string> sayings(const plan::ChangeSet& edit) const;

 private:
  struct Member {
    plan::ItemId id;
    std::vector<plan::ItemId> twins;
    std::size_t group = 0;
    double thinnest_mm = 0, thickest_mm = 0;
    double mostTaken_frac = 1;
    double latestStart_mm = 0;
    double leastComb_mm = 0, mostComb_mm = 0;  ///< as drawn when it may not change
    double leastPushed_frac = 0, mostPushed_frac = 0;
    double quiet = 0;  ///< 0 .. 1, see quieten
  };
  struct Group {
    std::string name;  ///< "top, beside the part"
  };
  plan::Piece turned(const plan::Piece& piece, const Member& member, const std::vector<double>& numbers) const;

  plan::Plan plan_;
  plan::ItemId choice_;
  std::vector<Member> pieces_;
  std::vector<Group> groups_;
  Quiet quiet_ = Quiet::ThinnerAndLower;
};

}  // namespace combdraft::advise
