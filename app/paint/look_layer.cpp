#include "app/paint/look_layer.h"

#include <algorithm>
#include <cstring>

#include "app/paint/head_art.h"
#include "engine/base/expect.h"

namespace combdraft::paint {
namespace {
constexpr double kEdge_mm = 14;  // long hair runs out of the picture over this width
}

QImage lookImage(const look::Picture& picture) {
  QImage image(picture.width, picture.height, QImage::Format_RGBA8888);
  const std::size_t row = static_cast<std::size_t>(picture.width) * 4;
  COMBDRAFT_EXPECT(picture.rgba.size() == row * static_cast<std::size_t>(picture.height),
                   picture.width, picture.height);
  for (int y = 0; y < picture.height; ++y)
    std::memcpy(image.scanLine(y), picture.rgba.data() + row * static_cast<std::size_t>(y), row);
  return image;
}

QImage withSoftEdge(QImage image, double edge_px) {
  const int width = image.width(), height = image.height();
  for (int y = 0; y < height; ++y) {
    uchar* row = image.scanLine(y);
    for (int x = 0; x < width; ++x) {
      const double from = std::min({x + 0.5, width - x - 0.5, height - y - 0.5});
      if (from >= edge_px) continue;
      uchar& alpha = row[4 * x + 3];
      alpha = static_cast<uchar>(alpha * smoothstep(from / edge_px) + 0.5);
    }
  }
  return image;
}

DrawingItem lookItem(const look::Picture& picture) {
  DrawingItem item;
  item.id = QStringLiteral("look");
  item.role = Role::Look;
  item.layer = Layer::Look;
  item.name = QObject::tr("Predicted look, %1").arg(viewTitle(picture.view));
  item.image = lookImage(picture);
  if (picture.view != head::ViewName::Crown)  // the close-up is cut to a circle instead
    item.image = withSoftEdge(std::move(item.image), kEdge_mm / picture.pixel_mm);
  item.imageRect = QRectF(picture.frame.left_mm, picture.frame.top_mm, picture.frame.width_mm,
                          picture.frame.height_mm);
  return item;
}

const look::Picture* pictureOf(const look::LookFrame& frame, head::ViewName view) {
  for (const auto& picture : frame.pictures)
    if (picture && picture->view == view) return picture.get();
  return nullptr;
}

}  // namespace combdraft::paint
