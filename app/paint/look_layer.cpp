#include "app/paint/look_layer.h"

#include <algorithm>
#include <cstring>

#include "engine/base/expect.h"

namespace combdraft::paint {
namespace {
constexpr double kEdge_mm = 14;  // long hair runs out of the picture over this width

DrawingItem imageItem(const char* id, Role role, QImage image, const QRectF& over) {
  DrawingItem item;
  item.id = QLatin1String(id);
  item.role = role;
  item.image = std::move(image);
  item.imageRect = over;
  return item;
}

// The smallest rectangle with everything that is not 0.
QRect boundsOf(const std::vector<std::uint8_t>& plane, int width) {
  QRect bounds;
  for (auto row = plane.begin(); row != plane.end(); row += width) {
    const auto end = row + width, first = std::find_if(row, end, [](std::uint8_t v) { return v != 0; });
    if (first == end) continue;
    const auto last = std::find_if(std::make_reverse_iterator(end), std::make_reverse_iterator(first), [](std::uint8_t v) { return v != 0; }).base();
    bounds |= QRect(static_cast<int>(first - row), static_cast<int>((row - plane.begin()) / width), static_cast<int>(last - first), 1);
  }
  return bounds;
}

DrawingItem skinItem(const look::Picture& picture, const QRect& bounds, const QColor& colour) {
  QImage image(bounds.size(), QImage::Format_RGBA8888);
  for (int y = 0; y < bounds.height(); ++y) {
    const std::uint8_t* from = picture.skin->data() + static_cast<std::size_t>(bounds.y() + y) * static_cast<std::size_t>(picture.width) + bounds.x();
    uchar* row = image.scanLine(y);
    for (int x = 0; x < bounds.width(); ++x, row += 4) {
      row[0] = static_cast<uchar>(colour.red());
      row[1] = static_cast<uchar>(colour.green());
      row[2] = static_cast<uchar>(colour.blue());
      row[3] = from[x];
    }
  }
  const double mm = picture.pixel_mm;
  return imageItem("skin-among-hair", Role::Skin, std::move(image),
                   QRectF(picture.frame.left_mm + bounds.x() * mm, picture.frame.top_mm + bounds.y() * mm, bounds.width() * mm, bounds.height() * mm));
}

DrawingItem hairItem(const look::Picture& picture) {
  QImage image = lookImage(picture);
  if (picture.view != head::ViewName::Crown)  // the close-up is cut to a circle instead
    image = withSoftEdge(std::move(image), kEdge_mm / picture.pixel_mm);
  DrawingItem item = imageItem("look", Role::Look, std::move(image),
                               QRectF(picture.frame.left_mm, picture.frame.top_mm, picture.frame.width_mm, picture.frame.height_mm));
  item.layer = Layer::Look;
  item.name = QObject::tr("Predicted look, %1").arg(viewTitle(picture.view));
  return item;
}

}  // namespace

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

Items lookItems(const HeadScene& scene, head::ViewName view, plan::SkinTone tone, const Palette& palette,
                const Ink& ink, const look::Picture* picture) {
  Items items;
  if (picture && picture->skin)
    if (const QRect bounds = boundsOf(*picture->skin, picture->width); !bounds.isEmpty())
      items.push_back(skinItem(*picture, bounds, skinColour(tone, palette).darker(130)));  // it lies in the shade of hair
  Items art = headArt(scene, view, tone, palette, ink, Guides::Omitted);
  std::move(art.begin(), art.end(), std::back_inserter(items));
  if (picture) items.push_back(hairItem(*picture));
  return items;
}

const look::Picture* pictureOf(const look::LookFrame& frame, head::ViewName view) {
  for (const auto& picture : frame.pictures)
    if (picture && picture->view == view) return picture.get();
  return nullptr;
}

}  // namespace combdraft::paint
