#include "app/sheet/view_layers.h"

#include <QPainter>
#include <cmath>

#include "app/paint/diagram.h"
#include "app/paint/look_layer.h"
#include "app/paint/painter_backend.h"

namespace combdraft::sheet {
namespace {
constexpr double kReadableScale = 0.17;  // smaller drawings show no numbers
}

double paperScale(double pixelsPerMm) { return pixelsPerMm * 25.4 / 96; }

QPixmap ViewLayers::blank() const {
  const QSizeF size = source_.place.rect.size() * source_.pixelRatio;
  QPixmap pixmap(std::max(1, static_cast<int>(std::ceil(size.width()))),
                 std::max(1, static_cast<int>(std::ceil(size.height()))));
  pixmap.setDevicePixelRatio(source_.pixelRatio);
  pixmap.fill(Qt::transparent);
  return pixmap;
}

void ViewLayers::update(const Source& next) {
  const bool sized = !(next.place == source_.place) || next.pixelRatio != source_.pixelRatio ||
                     diagramArt_.isNull();
  const bool sameHead = source_.scene && &source_.scene->head() == &next.scene->head() &&
                        source_.scene->plan().head().skin == next.scene->plan().head().skin;
  const bool coloured = !(next.palette == source_.palette);
  const bool art = sized || !sameHead || coloured;
  const bool diagram = art || source_.scene != next.scene;
  const bool look = sized || !sameHead || source_.picture != next.picture;
  source_ = next;
  const ViewPlace& place = source_.place;
  const paint::Scene& scene = *source_.scene;
  const paint::Palette& palette = source_.palette;
  const paint::Palette paper;
  const double scale = paperScale(place.scale);
  const auto draw = [&](QPixmap& pixmap, const paint::Items& items) {
    QPainter painter(&pixmap);
    painter.translate(place.origin - place.rect.topLeft());
    painter.scale(place.scale, place.scale);
    paint::paintItems(painter, items);
  };
  const auto ring = [&](paint::Items& items, const paint::Palette& inks) {
    if (place.view == head::ViewName::Crown)
      items.push_back(paint::viewRing(place.view, inks, paint::Ink(scale)));
  };
  if (art) {
    diagramArt_ = blank();
    paint::Items items = paint::headArt(scene.head(), place.view, plan::SkinTone::Paper, palette,
                                        paint::Ink(scale), paint::Guides::Shown);
    ring(items, palette);
    draw(diagramArt_, items);
    ++drawn_.art;
  }
  if (diagram) {
    diagram_ = blank();
    const auto labels = scale < kReadableScale ? paint::DiagramStyle::Labels::Omitted
                                               : paint::DiagramStyle::Labels::Shown;
    items_ = paint::diagramItems(scene, place.view, {palette, scale, labels});
    draw(diagram_, items_);
    ++drawn_.diagram;
  }
  if (look) {
    look_ = blank();
    paint::Items items = paint::lookItems(scene.head(), place.view, scene.plan().head().skin, paper,
                                          paint::Ink(scale), source_.picture.get());
    paint::clipToView(items, place.view);
    ring(items, paper);
    draw(look_, items);
    ++drawn_.look;
  }
}

}  // namespace combdraft::sheet
