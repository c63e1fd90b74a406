#include "app/paint/look_layer.h"

#include <cstring>

#include "app/paint/head_art.h"
#include "engine/base/expect.h"

namespace combdraft::paint {

QImage lookImage(const look::Picture& picture) {
  QImage image(picture.width, picture.height, QImage::Format_RGBA8888);
  const std::size_t row = static_cast<std::size_t>(picture.width) * 4;
  COMBDRAFT_EXPECT(picture.rgba.size() == row * static_cast<std::size_t>(picture.height),
                   picture.width, picture.height);
  for (int y = 0; y < picture.height; ++y)
    std::memcpy(image.scanLine(y), picture.rgba.data() + row * static_cast<std::size_t>(y), row);
  return image;
}

DrawingItem lookItem(const look::Picture& picture) {
  DrawingItem item;
  item.id = QStringLiteral("look");
  item.role = Role::Look;
  item.layer = Layer::Look;
  item.name = QObject::tr("Predicted look, %1").arg(viewTitle(picture.view));
  item.image = lookImage(picture);
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
