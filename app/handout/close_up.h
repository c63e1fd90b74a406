#pragma once
// Sections, and pieces that are drawn free, seen squarely at a stated scale.
#include <set>

#include "app/paint/scene.h"

namespace combdraft::handout {

/// What a close-up is of: a section with its pieces, or pieces that are drawn free.
struct CloseUpOf {
  const paint::SectionShape* section = nullptr;
  std::set<plan::ItemId> pieces;
  QString name;           ///< "Back left"; "Back, drawn free"
  bool mirrored = false;  ///< the other side is the same
};
/// Sections in their order, then free pieces by where they are seen. Of two sides that
/// follow each other only one.
std::vector<CloseUpOf> closeUpsOf(const paint::Scene& scene);
/// Seen squarely: its parting, pieces and numbers; of hairline, usual part and, round free
/// pieces, other partings only stretches of 25 mm on paper or a quarter of the frame's longer
/// side. Nothing of other sections, no note that lies outside.
paint::Figure closeUp(const paint::Scene& scene, const CloseUpOf& of, double scale);
/// Paper mm for each mm on the head: 1 where it fits in the width and height, else 0.5, 0.25.
double closeUpScale(const paint::Scene& scene, const CloseUpOf& of, const QSizeF& room_mm);

}  // namespace combdraft::handout
