#pragma once
// What every view of one plan shares: the head and each piece's strip. Built
// anew for each plan; strips of untouched pieces are taken over.
#include <map>
#include <memory>

#include "app/paint/head_art.h"
#include "app/paint/strip_sight.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

struct PieceShape {
  plan::ItemId id;
  plan::ItemPtr item;  ///< keeps `piece` alive
  const plan::Piece* piece = nullptr;
  Strip strip;
  QString place;  ///< "back left"
  head::ViewName mostSeenIn = head::ViewName::Top;  ///< the fixed view that shows the longest stretch
  /// What a view shows of the strip; kept. One thread at a time.
  const StripSight& in(const head::SheetView& view) const { return sights->in(view, strip); }

  std::shared_ptr<StripSights> sights;  ///< shared while the strip stays
};
struct SectionShape {
  plan::ItemId id;
  plan::ItemPtr item;
  const plan::Section* section = nullptr;
  std::vector<Vec3> outline;  ///< closed
};

class Scene {
 public:
  /// `before` may be null; its strips are reused for the same items on the
  /// same head. `choice` "" = the active one.
  Scene(const plan::Plan& plan, const plan::ItemId& choice, const Scene* before);
  /// Notes of the choice, by id.
  const std::vector<std::pair<plan::ItemId, const plan::Note*>>& notes() const { return notes_; }

  const plan::Plan& plan() const { return plan_; }
  const HeadScene& head() const { return *head_; }
  const std::vector<std::shared_ptr<const PieceShape>>& pieces() const { return pieces_; }
  const std::vector<SectionShape>& sections() const { return sections_; }
  const PieceShape* find(const plan::ItemId& id) const;

 private:
  PieceShape shapeOf(const plan::ItemId& id, const plan::Piece& piece, const PieceShape* before) const;

  plan::Plan plan_;
  std::shared_ptr<const HeadScene> head_;
  plan::ItemPtr headItem_;
  std::vector<std::shared_ptr<const PieceShape>> pieces_;  ///< by order
  std::map<plan::ItemId, const PieceShape*> byId_;
  std::vector<SectionShape> sections_;
  std::vector<std::pair<plan::ItemId, const plan::Note*>> notes_;  ///< in `plan_`
};

}  // namespace combdraft::paint
