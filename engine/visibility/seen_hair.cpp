#include "engine/visibility/seen_hair.h"

#include <algorithm>
#include <cmath>

#include "engine/base/parallel.h"

namespace combdraft::visibility {

StrandPart strandPart(double arc_mm, double length_mm) {
  if (arc_mm < 0.25 * length_mm) return StrandPart::Root;
  return arc_mm < 0.65 * length_mm ? StrandPart::Middle : StrandPart::End;
}

SeenHair::SeenHair(std::array<ViewSamples, kViews> views,
                   const std::array<const BodyDepth*, kViews>& bodies, const hair::Locks& locks,
                   const head::HeadShape& shape)
    : views_(std::move(views)) {
  struct Raw {
    std::uint32_t lock;
    SeenEntry entry;
  };
  std::array<std::vector<Raw>, kViews> raw;
  std::array<std::array<double, kRegions>, kViews> scalp{};

  // How deep into the hair of a view a place may lie and still count as seen.
  constexpr float kWithin_mm = 3;
  const auto seenFrom = [&](std::size_t v, const Vec3& place) {
    const ViewSamples& view = views_[v];
    const head::ViewPoint q = view.spec.view.project(place);
    const int x = static_cast<int>(std::floor((q.u_mm - view.spec.frame.left_mm) / view.spec.pixel_mm));
    const int y = static_cast<int>(std::floor((q.v_mm - view.spec.frame.top_mm) / view.spec.pixel_mm));
    if (x < 0 || y < 0 || x >= view.width || y >= view.height) return false;
    const std::size_t pixel = static_cast<std::size_t>(y) * view.width + x;
    const auto depth = static_cast<float>(q.depth_mm);
    if (view.hairCover[pixel] > 0.5f)
      return depth > view.depth_mm[pixel * kSamples + kSamples - 1] - kWithin_mm;
    const float body = bodies[v]->at((x + 0.5) * view.spec.pixel_mm, (y + 0.5) * view.spec.pixel_mm);
    return depth > body - kWithin_mm;
  };

  parallelFor(kViews, [&](std::size_t v) {
    const ViewSamples& view = views_[v];
    regions_[v].assign(view.sample.size(), kNoRegion);
    raw[v].reserve(view.sample.size() / 3);
    const double pixelArea = view.spec.pixel_mm * view.spec.pixel_mm;
    for (std::size_t pixel = 0; pixel < view.pixels(); ++pixel) {
      const float cover = view.hairCover[pixel];
      if (cover <= 0 && view.scalpCover[pixel] <= 0) continue;
      const double u = view.spec.frame.left_mm +
                       (static_cast<double>(pixel % static_cast<std::size_t>(view.width)) + 0.5) * view.spec.pixel_mm;
      const double w = view.spec.frame.top_mm +
                       (static_cast<double>(pixel / static_cast<std::size_t>(view.width)) + 0.5) * view.spec.pixel_mm;
      if (cover <= 0) {  // bare scalp
        const Vec3 place = view.spec.view.place(
            {u, w, bodies[v]->at(u - view.spec.frame.left_mm, w - view.spec.frame.top_mm)});
        int seen = 1;
        for (std::size_t other = 0; other < kViews; ++other)
          if (other != v && seenFrom(other, place)) ++seen;
        scalp[v][static_cast<std::size_t>(regionAt(shape, place))] +=
            view.scalpCover[pixel] * pixelArea / seen;
        continue;
      }
      std::array<int, kRegions> here{};
      double shared = 0;
      for (std::size_t k = 0; k < kSamples; ++k) {
        const std::size_t slot = pixel * kSamples + k;
        const LockBin who = view.sample[slot];
        const Vec3 place = view.spec.view.place({u, w, view.depth_mm[slot]});
        const Region region = regionAt(shape, place);
        regions_[v][slot] = static_cast<std::uint8_t>(region);
        ++here[static_cast<std::size_t>(region)];
        int seen = 1;
        for (std::size_t other = 0; other < kViews; ++other)
          if (other != v && seenFrom(other, place)) ++seen;
        const double area = cover * pixelArea / kSamples;
        shared += 1.0 / seen;
        raw[v].push_back({who.lock(),
                          {static_cast<float>(area), static_cast<float>(area / seen),
                           static_cast<std::uint8_t>(region), static_cast<std::uint8_t>(v),
                           static_cast<std::uint8_t>(who.bin()), 0}});
      }
      const auto most = static_cast<std::size_t>(std::max_element(here.begin(), here.end()) - here.begin());
      scalp[v][most] += view.scalpCover[pixel] * pixelArea * shared / kSamples;
    }
    const auto key = [](const Raw& r) {
      return (static_cast<std::uint64_t>(r.lock) << 16) |
             (static_cast<std::uint64_t>(r.entry.region) << 8) | r.entry.bin;
    };
    std::stable_sort(raw[v].begin(), raw[v].end(),
                     [&](const Raw& a, const Raw& b) { return key(a) < key(b); });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < raw[v].size(); ++i) {
      if (kept && key(raw[v][kept - 1]) == key(raw[v][i])) {
        raw[v][kept - 1].entry.area_mm2 += raw[v][i].entry.area_mm2;
        raw[v][kept - 1].entry.shared_mm2 += raw[v][i].entry.shared_mm2;
      } else {
        raw[v][kept++] = raw[v][i];
      }
    }
    raw[v].resize(kept);
    raw[v].shrink_to_fit();
  });

  for (const auto& view : scalp)
    for (std::size_t r = 0; r < kRegions; ++r) scalp_[r] += view[r];

  first_.assign(locks.size() + 1, 0);
  for (const auto& list : raw)
    for (const Raw& r : list) ++first_[r.lock + 1];
  for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
  entries_.resize(first_.back());
  std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
  for (const auto& list : raw)
    for (const Raw& r : list) entries_[next[r.lock]++] = r.entry;
}

void SeenHair::dropRasters() {
  for (ViewSamples& view : views_) view = ViewSamples{};
  for (auto& regions : regions_) regions = {};
}

}  // namespace combdraft::visibility
