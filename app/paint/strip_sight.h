#pragma once
// A strip as the views show it. Every painting and every move of a hand over the sheet asks.
#include <QPainterPath>
#include <array>
#include <optional>

#include "app/paint/strip.h"

namespace combdraft::paint {

/// In mm of the view.
struct StripSight {
  QPainterPath seen;    ///< closed outlines; empty when all of it is hidden
  QPainterPath hidden;  ///< middle lines of what lies behind the head
};
StripSight sightOf(const head::SheetView& view, const Strip& strip);

/// Round both edges of a strip, closed.
QPainterPath outlineOf(const head::SheetView& view, const Strip& strip);

/// The sights of one strip, worked out when first asked for. One thread at a time.
class StripSights {
 public:
  const StripSight& in(const head::SheetView& view, const Strip& strip);

 private:
  struct Known {
    head::SheetView view;  // the close-up moves with the crown
    StripSight sight;
  };
  std::array<std::optional<Known>, head::kAllViews.size()> known_;
};

}  // namespace combdraft::paint
