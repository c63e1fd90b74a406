#pragma once
// The still pictures of one view: line art and look are drawn once and kept,
// the diagram again where an edit changes it. Moving the pointer draws none of them.
#include <QPixmap>
#include <memory>

#include "app/paint/diagram.h"
#include "app/paint/ink.h"
#include "app/paint/scene.h"
#include "app/sheet/view_layout.h"
#include "engine/look/look.h"

namespace combdraft::sheet {

class ViewLayers {
 public:
  /// What the pictures are made from; a changed part redraws its layer.
  struct Source {
    std::shared_ptr<const paint::Scene> scene;
    std::shared_ptr<const look::Picture> picture;  ///< null = none yet
    ViewPlace place;
    double pixelRatio = 1;
    paint::Palette palette = {};  ///< of the diagram; a look keeps the light one
  };
  void update(const Source& source);

  const QPixmap& diagramArt() const { return diagramArt_; }
  const QPixmap& diagram() const { return diagram_; }
  const QPixmap& look() const { return look_; }
  /// The diagram's items, for hit tests on numbers.
  const paint::Items& items() const { return items_; }
  /// How often each layer was drawn (for tests).
  struct Drawn {
    int art = 0, diagram = 0, look = 0;
    int parts = 0;  ///< of `diagram`, those that drew only a part
  };
  const Drawn& drawn() const { return drawn_; }

 private:
  QPixmap blank() const;
  void drawDiagram(const paint::Items& next);
  void draw(QPixmap& pixmap, const paint::Items& items, const QRegion& within = {}) const;

  Source source_;
  paint::Items items_;
  paint::KeptPieces kept_;
  QPixmap diagramArt_, diagram_, look_;
  Drawn drawn_;
};

/// Paper mm per view mm at a screen scale: a screen is taken as 96 dots per
/// inch, so that lines and letters look as on paper.
double paperScale(double pixelsPerMm);

}  // namespace combdraft::sheet
