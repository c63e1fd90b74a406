#include "app/desk/pattern_drawing.h"

#include <QPainter>

#include "app/paint/painter_backend.h"
#include "app/paint/sheet_page.h"
#include "engine/plan/pattern.h"

namespace combdraft::desk {
namespace {

constexpr double kAround_mm = 14;          // of the face and neck round the hair
constexpr double kPaperPixel_mm = 0.4;  // finer lines than on the sheet

}  // namespace

std::shared_ptr<const paint::Scene> patternScene(const plan::Plan& head, const plan::Parts& pattern) {
  plan::Plan bare = plan::Plan::fresh(1);
  bare.put(plan::kHeadId, head.head());
  const Result<plan::UsedPattern> used = plan::usePattern(bare, pattern);
  if (!used) return nullptr;
  return std::make_shared<const paint::Scene>(plan::applied(bare, used->edit), plan::ItemId(), nullptr);
}

namespace {

QRectF shownOf(const paint::Scene& scene, head::ViewName view) {
  return scene.head().lines(view).scalp.boundingRect().adjusted(-kAround_mm, -kAround_mm, kAround_mm, kAround_mm);
}

double scaleOf(const QRectF& shown, const QSize& size) {
  return std::min(size.width() / shown.width(), size.height() / shown.height());
}

}  // namespace

QTransform patternTransform(const paint::Scene& scene, head::ViewName view, const QSize& size) {
  const QRectF shown = shownOf(scene, view);
  const double scale = scaleOf(shown, size);
  QTransform transform;
  transform.translate(size.width() / 2.0, size.height() / 2.0);
  transform.scale(scale, scale);
  transform.translate(-shown.center().x(), -shown.center().y());
  return transform;
}

QImage patternDrawing(const paint::Scene& scene, head::ViewName view, const QSize& size, double pixelRatio,
                       const paint::Palette& palette) {
  QImage image(size * pixelRatio, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(pixelRatio);
  image.fill(Qt::transparent);
  const QRectF shown = shownOf(scene, view);
  const double scale = scaleOf(shown, size);
  const paint::Figure figure =
      paint::diagramFigure(scene, view, {palette, scale * kPaperPixel_mm, paint::DiagramStyle::Labels::Omitted});
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setTransform(patternTransform(scene, view, size), true);
  painter.setClipRect(shown);
  paint::paintItems(painter, figure.items);
  return image;
}

}  // namespace combdraft::desk
