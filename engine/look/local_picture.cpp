#include "engine/look/local_picture.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"
#include "engine/colour/xyz.h"
#include "engine/look/blur.h"

namespace combdraft::look {
namespace {

using visibility::kSamples;
using visibility::LockBin;
using visibility::SeenHair;
using visibility::ViewSamples;

constexpr double kCell_mm = 2;      // what is blurred
constexpr double kPlace_mm = 5;     // independent places [own]
constexpr double kLocal_mm = 45;    // FWHM of "around here" [own]

/// Calls visit(pixel) for the raster pixels of a coarse cell.
template <class Visit>
void eachPixel(const ViewSamples& raster, int width, int step, std::uint32_t cell, Visit visit) {
  const int x0 = static_cast<int>(cell) % width * step, y0 = static_cast<int>(cell) / width * step;
  for (int y = y0; y < std::min(raster.height, y0 + step); ++y)
    for (int x = x0; x < std::min(raster.width, x0 + step); ++x)
      visit(static_cast<std::size_t>(y) * raster.width + x);
}

}  // namespace

LocalPicture::LocalPicture(const SeenHair& seen) {
  parallelFor(SeenHair::kViews, [&](std::size_t v) {
    const ViewSamples& raster = seen.view(static_cast<int>(v));
    const std::vector<std::uint8_t>& regions = seen.regionsOf(static_cast<int>(v));
    View& view = views_[v];
    view.step = std::max(1, static_cast<int>(kCell_mm / raster.spec.pixel_mm + 0.5));
    view.cell_mm = raster.spec.pixel_mm * view.step;
    view.width = (raster.width + view.step - 1) / view.step;
    view.height = (raster.height + view.step - 1) / view.step;
    const std::size_t cells = static_cast<std::size_t>(view.width) * view.height;
    view.cover.assign(cells, 0);
    view.light.assign(cells, 0);
    view.region.assign(cells, SeenHair::kNoRegion);
    std::vector<std::pair<std::uint32_t, std::uint32_t>> pairs;  // lock, cell
    for (std::uint32_t cell = 0; cell < cells; ++cell)
      eachPixel(raster, view.width, view.step, cell, [&](std::size_t pixel) {
        if (raster.hairCover[pixel] <= 0) return;
        view.cover[cell] += raster.hairCover[pixel];
        view.region[cell] = regions[pixel * kSamples + kSamples / 2];
        for (std::size_t k = 0; k < kSamples; ++k)
          pairs.emplace_back(raster.sample[pixel * kSamples + k].lock(), cell);
      });
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
    view.first.assign(seen.locks() + 1, 0);
    for (const auto& [lock, cell] : pairs) ++view.first[lock + 1];
    for (std::size_t i = 1; i < view.first.size(); ++i) view.first[i] += view.first[i - 1];
    view.cells.reserve(pairs.size());
    for (const auto& [lock, cell] : pairs) view.cells.push_back(cell);
  });
}

void LocalPicture::workOut(const ViewSamples& raster, View& view, std::uint32_t cell,
                           const LockColours& colours) const {
  float sum = 0;
  eachPixel(raster, view.width, view.step, cell, [&](std::size_t pixel) {
    const float cover = raster.hairCover[pixel];
    if (cover <= 0) return;
    float y = 0;
    for (std::size_t k = 0; k < kSamples; ++k) {
      const LockBin who = raster.sample[pixel * kSamples + k];
      y += colours.at(who.lock(), who.bin()).y / kSamples;
    }
    sum += cover * y;
  });
  view.light[cell] = sum;
}

void LocalPicture::update(const SeenHair& seen, const LockColours& colours,
                          std::span<const std::uint32_t> changed) {
  const bool all = !filled_ || changed.size() * 3 > seen.locks();
  filled_ = true;
  parallelFor(SeenHair::kViews, [&](std::size_t v) {
    const ViewSamples& raster = seen.view(static_cast<int>(v));
    View& view = views_[v];
    if (all) {
      for (std::uint32_t cell = 0; cell < view.light.size(); ++cell)
        if (view.cover[cell] > 0) workOut(raster, view, cell, colours);
      return;
    }
    std::vector<std::uint8_t> done(view.light.size(), 0);
    for (const std::uint32_t lock : changed)
      for (std::uint32_t k = view.first[lock]; k < view.first[lock + 1]; ++k)
        if (!done[view.cells[k]]) {
          done[view.cells[k]] = 1;
          workOut(raster, view, view.cells[k], colours);
        }
  });
}

double LocalPicture::fineSigma(const View& view, double distance_m) const {
  const double sigma = sigmaOfFwhm(eyeBlur_mm(distance_m));
  // A cell already blurs like a box of its own width.
  return std::sqrt(std::max(0.0, sigma * sigma - view.cell_mm * view.cell_mm / 12)) / view.cell_mm;
}

LocalPicture::Values LocalPicture::at(double distance_m) {
  const bool moved = distance_m != distance_m_;
  distance_m_ = distance_m;
  struct Found {
    Values values;
    std::vector<float> single;
  };
  std::array<Found, SeenHair::kViews> found;
  parallelFor(SeenHair::kViews, [&](std::size_t v) {
    View& view = views_[v];
    const double fine = fineSigma(view, distance_m), wide = sigmaOfFwhm(kLocal_mm) / view.cell_mm;
    if (moved) {
      view.fineCover = view.cover, view.wideCover = view.cover;
      blur(view.fineCover, view.width, view.height, fine);
      blur(view.wideCover, view.width, view.height, wide);
    }
    std::vector<float> fineLight = view.light, wideLight = view.light;
    blur(fineLight, view.width, view.height, fine);
    blur(wideLight, view.width, view.height, wide);
    // Places are independent only as far apart as the eye's blur.
    const double apart = std::max(kPlace_mm, eyeBlur_mm(distance_m));
    const int every = std::max(1, static_cast<int>(apart / view.cell_mm + 0.5));
    const auto full = static_cast<float>(view.step * view.step);
    for (int y = every / 2; y < view.height; y += every)
      for (int x = every / 2; x < view.width; x += every) {
        const std::size_t at = static_cast<std::size_t>(y) * view.width + x;
        if (view.region[at] == SeenHair::kNoRegion || view.cover[at] < 0.5f * full) continue;
        const double here = colour::lightnessFromY(fineLight[at] / view.fineCover[at]);
        const double around = colour::lightnessFromY(wideLight[at] / view.wideCover[at]);
        found[v].values.of[view.region[at]].push_back(here - around);
        found[v].single.push_back(view.light[at] / view.cover[at]);
      }
  });
  Values values;
  std::vector<float> single;
  for (const Found& f : found) {
    for (std::size_t r = 0; r < values.of.size(); ++r)
      values.of[r].insert(values.of[r].end(), f.values.of[r].begin(), f.values.of[r].end());
    single.insert(single.end(), f.single.begin(), f.single.end());
  }
  if (single.size() > 50) {
    const auto at = [&](double frac) {
      const auto k = static_cast<std::ptrdiff_t>(frac * static_cast<double>(single.size() - 1));
      std::nth_element(single.begin(), single.begin() + k, single.end());
      return colour::lightnessFromY(single[static_cast<std::size_t>(k)]);
    };
    values.plannedDifference = std::max(5.0, at(0.98) - at(0.02));
  }
  return values;
}

}  // namespace combdraft::look
