#include "app/desk/compare_picture.h"

#include <QPainter>
#include <algorithm>
#include <array>

#include "app/controls/theme.h"
#include "app/paint/painter_backend.h"
#include "app/sheet/view_layers.h"

namespace combdraft::desk {
namespace {

// Few resolutions, so that pulling an edge asks seldom.
constexpr std::array kPixels_mm{0.35, 0.5, 0.7, 1.0, 1.4, 2.0};
constexpr int kLeast_px = 150;

}  // namespace

ComparePicture::ComparePicture(QWidget* parent) : QWidget(parent) {
  setMinimumSize(kLeast_px, kLeast_px);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

double ComparePicture::scaleFor(head::ViewName view) const {
  const QRectF frame = paint::frameOf(view);
  return std::min(width() / frame.width(), height() / frame.height());
}

look::PictureRequest ComparePicture::wanted(head::ViewName view) const {
  const double exact = 1 / (scaleFor(view) * devicePixelRatioF());
  double pixel_mm = kPixels_mm.front();
  for (const double step : kPixels_mm)
    if (step <= exact * 1.15) pixel_mm = step;
  return {view, pixel_mm};
}

void ComparePicture::show(std::shared_ptr<const paint::Scene> scene,
                          std::shared_ptr<const live::LookResult> look, head::ViewName view,
                          paint::Ground ground) {
  if (scene == scene_ && look == look_ && view == view_ && ground == ground_) return;
  scene_ = std::move(scene);
  look_ = std::move(look);
  view_ = view;
  ground_ = ground;
  picture_ = {};
  update();
}

void ComparePicture::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  picture_ = {};
  Q_EMIT resized();
}

void ComparePicture::paintEvent(QPaintEvent*) {
  if (!scene_) return;
  const double ratio = devicePixelRatioF();
  if (picture_.isNull() || picture_.devicePixelRatio() != ratio) {
    picture_ = QPixmap(size() * ratio);
    picture_.setDevicePixelRatio(ratio);
    // Hair is judged on paper or mid grey, also in a dark window.
    const paint::Palette palette;
    picture_.fill(ground_ == paint::Ground::MidGrey ? palette.midGrey
                                                    : controls::theme(controls::ThemeName::Light).card);
    const double scale = scaleFor(view_);
    const QRectF frame = paint::frameOf(view_);
    QPainter painter(&picture_);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(width() / 2.0, height() / 2.0);
    painter.scale(scale, scale);
    painter.translate(-frame.center());
    const paint::Figure figure = paint::lookFigure(*scene_, view_, look_ ? &look_->frame : nullptr, palette,
                                                   sheet::paperScale(scale), paint::Ground::Paper);
    paint::paintItems(painter, figure.items);
    ++drawn_;
  }
  QPainter(this).drawPixmap(0, 0, picture_);
}

}  // namespace combdraft::desk
