#pragma once
// The line art of a head in one view, following the head's measures. Face,
// ears, neck come from resources/outlines (drawn for a = 73.9, b = 94.9,
// c = 90 mm, p = 2.4) scaled per axis; scalp, hairline and guides are drawn
// from the head model itself, so that moved hairlines follow.
#include <memory>
#include <vector>

#include "app/paint/drawing.h"
#include "app/paint/ink.h"
#include "engine/head/hairline.h"
#include "engine/head/place_name.h"
#include "engine/head/sheet_view.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

/// What a view shows of a bare head's own lines, in mm of the view.
struct HeadLines {
  QPainterPath scalp;                 ///< closed outline of the hair-bearing skin
  std::vector<QPainterPath> hairline; ///< its seen stretches
  struct Guide {
    const char* id;
    QPainterPath path;
  };
  std::vector<Guide> guides;          ///< those that are seen and drawn in this view
};

/// One head, ready to be drawn in any view.
struct HeadScene {
  head::HeadShape shape;
  head::Hairline hairline;
  Vec3 crown = Vec3::Zero();  ///< centre of the close-up, on the surface

  explicit HeadScene(const plan::Head& head);
  /// The same head with the whorls of `head`, which is else alike (isSameShape): what does not
  /// hang on them is kept.
  HeadScene withWhorlsOf(const plan::Head& head) const;
  const head::PlaceNamer& places() const { return *places_; }
  head::SheetView view(head::ViewName name) const;
  /// Worked out when first asked for and kept: they take thousands of steps onto the
  /// surface, and every view is drawn far more often than its head changes. One thread at a time.
  const HeadLines& lines(head::ViewName name) const;

 private:
  struct Kept;
  std::shared_ptr<const head::PlaceNamer> places_;
  std::shared_ptr<Kept> kept_, crownKept_;
};

/// Whether two heads have one surface and one hairline.
bool isSameShape(const plan::Head& a, const plan::Head& b);

/// Skin and scalp fills for a tone; Paper = uncoloured line art.
QColor skinColour(plan::SkinTone tone, const Palette& palette);
QColor scalpColour(plan::SkinTone tone, const Palette& palette);

/// Which lines to draw over the bare head.
enum class Guides { Shown, Omitted };

Items headArt(const HeadScene& scene, head::ViewName view, plan::SkinTone tone,
              const Palette& palette, const Ink& ink, Guides guides);

/// What a drawing of the view shows.
QRectF frameOf(head::ViewName view);
/// The shape a view is cut to: its frame, or the circle of the close-up.
QPainterPath viewClip(head::ViewName view);
void clipToView(Items& items, head::ViewName view);
/// Cuts items to a shape; what lies wholly outside goes.
void clipItems(Items& items, const QPainterPath& shape);
/// The rim of the close-up.
DrawingItem viewRing(head::ViewName view, const Palette& palette, const Ink& ink);
/// "Front", "Back", "Client's left", "Client's right", "Top", "Crown".
QString viewTitle(head::ViewName view);

}  // namespace combdraft::paint
