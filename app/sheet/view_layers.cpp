#include "app/sheet/view_layers.h"

#include <QPainter>
#include <cmath>

#include "app/paint/diagram.h"
#include "app/paint/look_layer.h"
#include "app/paint/painter_backend.h"
#include "app/sheet/changed_area.h"

namespace combdraft::sheet {
namespace {
constexpr double kReadableScale = 0.17;  // smaller drawings show no numbers
constexpr int kStep_px = 4;              // a whole number of dots at every usual screen scale
constexpr int kRim_px = 2;               // what smoothing may spill over
constexpr std::size_t kMostParts = 200;  // more rectangles cost more than they save
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

void ViewLayers::draw(QPixmap& pixmap, const paint::Items& items, const QRegion& within) const {
  QPainter painter(&pixmap);
  if (!within.isEmpty()) {
    painter.setClipRegion(within);
    painter.setCompositionMode(QPainter::CompositionMode_Source);
    painter.fillRect(QRect(QPoint(0, 0), pixmap.deviceIndependentSize().toSize() + QSize(1, 1)), Qt::transparent);
    painter.setCompositionMode(QPainter::CompositionMode_SourceOver);
  }
  painter.translate(source_.place.origin - source_.place.rect.topLeft());
  painter.scale(source_.place.scale, source_.place.scale);
  paint::paintItems(painter, items);
}

void ViewLayers::drawDiagram(const paint::Items& next) {
  ++drawn_.diagram;
  const double dots = kStep_px * source_.pixelRatio;
  const bool canPart = !items_.empty() && dots == std::round(dots);
  const auto changed = canPart ? changedArea(items_, next) : std::nullopt;
  const auto draws = [&] {
    diagram_ = blank();
    draw(diagram_, next);
  };
  if (!changed || changed->size() > kMostParts) return draws();
  const auto onPixmap = [&](const QRectF& mm) {
    const QPointF corner = source_.place.toWidget(mm.topLeft()) - source_.place.rect.topLeft();
    const QRectF px = QRectF(corner, mm.size() * source_.place.scale).adjusted(-kRim_px, -kRim_px, kRim_px, kRim_px);
    const auto down = [](double at) { return kStep_px * static_cast<int>(std::floor(at / kStep_px)); };
    return QRect(QPoint(down(px.left()), down(px.top())),
                 QPoint(down(px.right()) + kStep_px - 1, down(px.bottom()) + kStep_px - 1));
  };
  QRegion within;
  for (const QRectF& mm : *changed) within += onPixmap(mm);
  within &= QRect(QPoint(0, 0), diagram_.deviceIndependentSize().toSize() + QSize(kStep_px, kStep_px));
  if (within.isEmpty()) return;
  paint::Items met;
  for (const paint::DrawingItem& item : next)
    if (within.intersects(onPixmap(item.extent()))) met.push_back(item);
  draw(diagram_, met, within);
  ++drawn_.parts;
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
  const auto ring = [&](paint::Items& items, const paint::Palette& inks) {
    if (place.view == head::ViewName::Crown)
      items.push_back(paint::viewRing(place.view, inks, paint::Ink(scale)));
  };
  if (art) {
    items_.clear();
    diagramArt_ = blank();
    paint::Items items = paint::headArt(scene.head(), place.view, plan::SkinTone::Paper, palette,
                                        paint::Ink(scale), paint::Guides::Shown);
    ring(items, palette);
    draw(diagramArt_, items);
    ++drawn_.art;
  }
  if (diagram) {
    if (art) {
      kept_.clear();
      diagram_ = blank();
    }
    const auto labels = scale < kReadableScale ? paint::DiagramStyle::Labels::Omitted
                                               : paint::DiagramStyle::Labels::Shown;
    paint::Items items = paint::diagramItems(scene, place.view, {palette, scale, labels, nullptr, {}, &kept_});
    drawDiagram(items);
    items_ = std::move(items);
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
