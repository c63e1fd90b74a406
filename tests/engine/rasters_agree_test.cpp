// The measuring raster, the picture raster and the drawn picture tell the same
// lightness, region by region.
#include <catch2/catch.hpp>

#include "engine/colour/screen.h"
#include "engine/look/picture_maker.h"
#include "engine/visibility/body_depth.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

struct Sums {
  double area[visibility::kRegions] = {}, y[visibility::kRegions] = {};
  double lightness(std::size_t r) const { return colour::lightnessFromY(y[r] / area[r]); }
};

/// Of one view, from the entries that the readings are made of.
Sums measured(const ColouredHair& head, int view) {
  Sums sums;
  for (std::uint32_t lock = 0; lock < head.hair().seen().locks(); ++lock)
    for (const visibility::SeenEntry& e : head.hair().seen().entriesOf(lock)) {
      if (e.view != view) continue;
      sums.area[e.region] += static_cast<double>(e.area_mm2);
      sums.y[e.region] += static_cast<double>(e.area_mm2 * head.colours().at(lock, e.bin).y);
    }
  return sums;
}

Vec3 placeOf(const visibility::ViewSamples& view, std::size_t slot) {
  const std::size_t pixel = slot / visibility::kSamples, width = static_cast<std::size_t>(view.width);
  return view.spec.view.place({view.spec.frame.left_mm + (static_cast<double>(pixel % width) + 0.5) * view.spec.pixel_mm,
                               view.spec.frame.top_mm + (static_cast<double>(pixel / width) + 0.5) * view.spec.pixel_mm,
                               static_cast<double>(view.depth_mm[slot])});
}

}  // namespace

TEST_CASE("picture rasters and drawn pictures are as light as the readings", "[look][raster]") {
  // At the live number: with fewer locks the chance of where a lock's lines lie
  // inside it is itself 0.3 L*.
  const ColouredHair head(mixedPlan(81), 30000);
  int compared = 0, otherCover = 0;
  double worstRaster = 0, worstPicture = 0;
  for (int v = 0; v < visibility::SeenHair::kViews; ++v) {
    const Sums reading = measured(head, v);
    const look::PictureRequest request{head::kAllViews[static_cast<std::size_t>(v)], 0.5};
    const visibility::ViewSamples fine = head.hair().pictureRaster(request, {});
    look::PictureMaker maker(fine, head.hair().shape(), head.hair().locks().size(), head.hair().seed());
    const auto picture = maker.update(head.colours(), colour::Light::Daylight, {});
    REQUIRE(picture->width == fine.width);
    Sums raster, drawn;
    for (std::size_t pixel = 0; pixel < fine.pixels(); ++pixel) {
      if (fine.hairCover[pixel] <= 0) continue;
      const std::uint8_t* rgba = picture->rgba.data() + pixel * 4;
      // sRGB's own luminance weights [IEC61966].
      const double shown = 0.2126 * colour::decodeSrgb(rgba[0]) + 0.7152 * colour::decodeSrgb(rgba[1]) +
                           0.0722 * colour::decodeSrgb(rgba[2]);
      for (std::size_t slot = pixel * visibility::kSamples; slot < (pixel + 1) * visibility::kSamples; ++slot) {
        const auto r = static_cast<std::size_t>(visibility::regionAt(head.hair().shape(), placeOf(fine, slot)));
        const double area = static_cast<double>(fine.hairCover[pixel]) / visibility::kSamples;
        raster.area[r] += area;
        raster.y[r] += area * static_cast<double>(head.colours().at(fine.sample[slot].lock(), fine.sample[slot].bin()).y);
        drawn.area[r] += area;
        drawn.y[r] += area * shown;
      }
      // As much hair as there is, but for lengths that hang far below a view from above.
      const double cover = static_cast<double>(fine.hairCover[pixel]) * 255;
      if (request.view != head::ViewName::Top || fine.depth_mm[pixel * visibility::kSamples] > 0) {
        if (std::abs(rgba[3] - cover) > 0.51) ++otherCover;
      } else if (rgba[3] > cover + 0.51) {
        ++otherCover;
      }
    }
    for (std::size_t r = 0; r < visibility::kRegions; ++r) {
      if (reading.area[r] < kLargeRegion_mm2) continue;
      INFO(head::viewWord(request.view) << ", " << visibility::regionWord(static_cast<visibility::Region>(r)) << ": read "
           << reading.lightness(r) << ", picture raster " << raster.lightness(r) << ", drawn " << drawn.lightness(r));
      CHECK(std::abs(raster.lightness(r) - reading.lightness(r)) < 0.3);
      CHECK(std::abs(drawn.lightness(r) - reading.lightness(r)) < 1);
      worstRaster = std::max(worstRaster, std::abs(raster.lightness(r) - reading.lightness(r)));
      worstPicture = std::max(worstPicture, std::abs(drawn.lightness(r) - reading.lightness(r)));
      ++compared;
    }
  }
  WARN(compared << " regions of views: picture raster within " << worstRaster << ", drawn picture within " << worstPicture);
  CHECK(compared >= 12);
  CHECK(otherCover == 0);
}

TEST_CASE("a body's depth is read between the pixels of a picture, also of one that is a pixel high or wide") {
  using combdraft::visibility::BodyDepth;
  const BodyDepth row{1, 3, 1, {1, 2, 4}, {0, 0, 0}}, column{1, 1, 3, {1, 2, 4}, {0, 0, 0}}, one{1, 1, 1, {5}, {0}};
  CHECK(row.at(1.5, 0.5) == 2);
  CHECK(row.at(2, 0.9) == 3);
  CHECK(column.at(0.5, 2) == 3);
  CHECK(column.at(9, -9) == 1);
  CHECK(one.at(0, 7) == 5);
}
