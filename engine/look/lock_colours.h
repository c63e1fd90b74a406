#pragma once
// The colour of every arc bin of every lock. Changes with every edit, and then
// only for the locks that the edit touches.
#include <functional>
#include <map>
#include <memory>
#include <vector>

#include "engine/hair/locks.h"
#include "engine/look/palette.h"
#include "engine/placement/light_along.h"
#include "engine/placement/members.h"

namespace combdraft::look {

struct BinColour {
  float x = 0, y = 0, z = 0;  ///< XYZ under the chosen light
  float light = 0;            ///< share of the hair that is light, 0..1
  bool operator==(const BinColour&) const = default;
};

/// What colouring needs to know of the head and its hair's shape.
struct ColouredHead {
  const head::HeadShape& shape;
  const hair::Roots& roots;
  const hair::RootGrid& grid;
  const hair::Locks& locks;
  std::uint64_t seed;
};

class LockColours {
 public:
  LockColours();
  ~LockColours();

  /// Recolours what differs from the last call and returns those locks in
  /// ascending order. A new head, hair, light, week or treatment recolours all.
  /// `before` sees the locks that are about to change while they still have
  /// their old colours; it may be empty.
  std::vector<std::uint32_t> update(
      const plan::Plan& plan, const LookSettings& settings, const ColouredHead& head,
      const std::function<void(const std::vector<std::uint32_t>&)>& before = {});
  /// Forgets everything (the locks are new).
  void reset();

  int bins() const { return bins_; }
  const BinColour* of(std::uint32_t lock) const {
    return colours_.data() + static_cast<std::size_t>(lock) * static_cast<std::size_t>(bins_);
  }
  const BinColour& at(std::uint32_t lock, std::uint32_t bin) const {
    return of(lock)[std::min(bin, static_cast<std::uint32_t>(bins_ - 1))];
  }
  /// The piece that has a lock, or null.
  const plan::Piece* pieceOf(std::uint32_t lock) const;
  /// Its id; only where `pieceOf` is not null.
  const plan::ItemId& pieceIdOf(std::uint32_t lock) const { return owners_[lock].state->id; }

 private:
  struct PieceState {
    plan::ItemId id;
    plan::Piece piece;
    std::vector<placement::Member> members;
    int precedence = 0;
    bool wanted = false;
  };
  struct Owner {
    const PieceState* state = nullptr;
    float share = 0, depth = 0;
  };
  struct ZonePaint;
  struct Work;
  void colourLock(std::uint32_t lock, const Work& work);

  int bins_ = 0;
  std::uint64_t paletteKey_ = 0;
  std::unique_ptr<Palette> palette_;
  std::map<plan::ItemId, std::unique_ptr<PieceState>> pieces_;
  std::vector<Owner> owners_;
  std::vector<BinColour> colours_;
};

}  // namespace combdraft::look
