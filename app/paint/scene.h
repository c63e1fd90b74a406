#pragma once
// What every view of one plan shares: the head and each piece's strip. Built
// anew for each plan; strips of untouched pieces are taken over.
#include <map>
#include <memory>

#include "app/paint/head_art.h"
#include "app/paint/strip.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

struct PieceShape {
  plan::ItemId id;
  plan::ItemPtr item;  ///< keeps `piece` alive
  const plan::Piece* piece = nullptr;
  Strip strip;
  QString place;  ///< "back left"
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

  const plan::Plan& plan() const { return plan_; }
  const HeadScene& head() const { return *head_; }
  const std::vector<std::shared_ptr<const PieceShape>>& pieces() const { return pieces_; }
  const std::vector<SectionShape>& sections() const { return sections_; }
  const PieceShape* find(const plan::ItemId& id) const;

 private:
  plan::Plan plan_;
  std::shared_ptr<const HeadScene> head_;
  plan::ItemPtr headItem_;
  std::vector<std::shared_ptr<const PieceShape>> pieces_;  ///< by order
  std::vector<SectionShape> sections_;
};

}  // namespace combdraft::paint
