#include "engine/look/regrowth.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "engine/base/assumptions.h"
#include "engine/colour/xyz.h"
#include "engine/head/part_line.h"
#include "engine/look/blur.h"
#include "engine/look/head_hair.h"
#include "engine/look/local_picture.h"
#include "engine/look/lock_colours.h"
#include "engine/look/look_range.h"

namespace combdraft::look {
namespace {

using hair::WornWay;
using visibility::kSamples;
using visibility::LockBin;
using visibility::SeenHair;

constexpr double kPixel_mm = 2, kStep_mm = 6;
constexpr double kApart_mm = 3;      // between points of an opening line
constexpr double kFarthest = 4;      // in units of regrowth.near_mm; beyond it nothing counts
constexpr double kStretch_mm = 60;   // own: a line of regrowth this long is noticed
constexpr double kLeastOfStretch = 0.25;  // seen hair of a stretch, against the best seen one
constexpr double kNearly_mm = 0.5;   // of growth: how exactly the week is found
constexpr std::array<const char*, 2> kScatters{"start.scatter_mm", "start.pushedScatter_mm"};

/// A place where new growth comes to light, and the stretch of opening it is on.
struct OpenPoint {
  Vec3 at;
  int stretch;
};

/// Points along the opening, cut into stretches of about kStretch_mm.
std::vector<OpenPoint> openingLine(const plan::Plan& plan, const hair::Worn& worn, const HeadHair& hair) {
  std::vector<plan::ScalpPoint> part = plan.head().part;
  if (worn.partShift_mm != 0 && part.size() >= 2)
    part = head::partMoved(hair.shape(), hair.hairline(), part, worn.partShift_mm).line;
  std::vector<Vec3> line;
  if (worn.way == WornWay::TiedBack) line = hair.hairline().outline(240);
  else for (const plan::ScalpPoint& p : part) line.push_back(hair.shape().pointAt(p));
  std::vector<OpenPoint> points;
  double along = 0;
  for (std::size_t k = 0; k < line.size(); ++k) {
    const Vec3 next = k + 1 < line.size() ? line[k + 1] : line[k];
    const double length = (next - line[k]).norm();
    const int steps = std::max(1, static_cast<int>(length / kApart_mm));
    for (int s = 0; s < steps; ++s)
      points.push_back({hair.shape().project(line[k] + (next - line[k]) * s / steps),
                        static_cast<int>((along + length * s / steps) / kStretch_mm)});
    along += length;
  }
  if (worn.way != WornWay::TiedBack)
    for (const plan::Whorl& whorl : plan.head().whorls)
      points.push_back({hair.shape().pointAt(whorl.at), points.empty() ? 0 : points.back().stretch + 1});
  return points;
}

/// The seen hair near an opening and how much each cell counts.
struct Near {
  struct View {
    std::vector<std::uint32_t> cells;  ///< pixels
    std::vector<float> distance_mm;    ///< from the nearest place of the opening
    std::vector<int> stretch;          ///< of that place
    std::vector<float> cover;          ///< of all pixels, blurred as the eye does
    double sigma = 0;
  };
  std::array<View, SeenHair::kViews> views;
};

Near nearTo(const HeadHair& hair, const std::vector<OpenPoint>& line, double reach_mm, double distance_m) {
  Near near;
  for (int v = 0; v < SeenHair::kViews; ++v) {
    const visibility::ViewSamples& raster = hair.seen().view(v);
    Near::View& view = near.views[static_cast<std::size_t>(v)];
    view.sigma = sigmaOfFwhm(eyeBlur_mm(distance_m)) / raster.spec.pixel_mm;
    view.cover = raster.hairCover;
    blur(view.cover, raster.width, raster.height, view.sigma);
    for (std::uint32_t p = 0; p < raster.pixels(); ++p) {
      if (raster.hairCover[p] < 0.5f) continue;
      const auto width = static_cast<std::uint32_t>(raster.width);
      const Vec3 at = raster.spec.view.place(
          {raster.spec.frame.left_mm + (p % width + 0.5) * raster.spec.pixel_mm,
           raster.spec.frame.top_mm + (p / width + 0.5) * raster.spec.pixel_mm,
           static_cast<double>(raster.depth_mm[p * kSamples + kSamples / 2])});
      double nearest2 = reach_mm * reach_mm;
      int stretch = -1;
      for (const OpenPoint& point : line) {
        const double d2 = (point.at - at).squaredNorm();
        if (d2 < nearest2) nearest2 = d2, stretch = point.stretch;
      }
      if (stretch < 0) continue;
      view.cells.push_back(p);
      view.stretch.push_back(stretch);
      view.distance_mm.push_back(static_cast<float>(std::sqrt(nearest2)));
    }
  }
  return near;
}

/// L* of every near cell as the eye at the distance sees it.
std::vector<float> seenLightness(const HeadHair& hair, const Near& near, const LockColours& colours) {
  std::vector<float> all;
  for (int v = 0; v < SeenHair::kViews; ++v) {
    const visibility::ViewSamples& raster = hair.seen().view(v);
    const Near::View& view = near.views[static_cast<std::size_t>(v)];
    if (view.cells.empty()) continue;
    std::vector<float> light(raster.pixels(), 0);
    for (std::size_t p = 0; p < light.size(); ++p) {
      if (raster.hairCover[p] <= 0) continue;
      float y = 0;
      for (std::size_t k = 0; k < kSamples; ++k) {
        const LockBin who = raster.sample[p * kSamples + k];
        y += colours.at(who.lock(), who.bin()).y / kSamples;
      }
      light[p] = raster.hairCover[p] * y;
    }
    blur(light, raster.width, raster.height, view.sigma);
    for (const std::uint32_t cell : view.cells)
      all.push_back(static_cast<float>(colour::lightnessFromY(light[cell] / view.cover[cell])));
  }
  return all;
}

}  // namespace

struct RegrowthSearch::State {
  int locks;
  std::map<std::uint64_t, std::shared_ptr<const HeadHair>> traced;

  Result<std::shared_ptr<const HeadHair>> hairFor(const plan::Plan& plan, const hair::Worn& worn,
                                                  std::stop_token stop) {
    const std::uint64_t key = HeadHair::keyOf(plan, worn, locks, kPixel_mm, kStep_mm);
    const auto kept = traced.find(key);
    if (kept != traced.end()) return kept->second;
    auto built = HeadHair::build(plan, worn, locks, kPixel_mm, kStep_mm, stop,
                                 traced.empty() ? nullptr : traced.begin()->second->ground());
    if (!built) return built.error();
    std::erase_if(traced, [&](const auto& other) {  // of another head
      return other.second->ground()->key() != (*built)->ground()->key();
    });
    while (traced.size() >= 4) traced.erase(traced.begin());
    return traced[key] = std::move(built).value();
  }

  /// One way of wearing, ready to be asked what a growth has changed.
  struct Judge {
    std::shared_ptr<const HeadHair> hair;
    LookSettings settings;
    Near near;
    double near_mm, tolerance_L, rate_mm;

    std::vector<float> lightnessAt(const plan::Plan& plan, LockColours& colours, double growth_mm) const {
      LookSettings then = settings;
      then.weeks = growth_mm / rate_mm;
      colours.update(plan, then, {hair->shape(), hair->roots(), hair->grid(), hair->locks(), hair->seed()});
      return seenLightness(*hair, near, colours);
    }
    /// How far the hair near the opening looks changed, L*: the mean over the
    /// stretch where it is most, nearer hair counting more.
    double changed(const std::vector<float>& before, const std::vector<float>& now) const {
      std::map<int, std::pair<double, double>> stretches;  // weight, weighted change
      double largest = 0;
      std::size_t k = 0;
      for (const Near::View& view : near.views)
        for (std::size_t c = 0; c < view.cells.size(); ++c, ++k) {
          const double weight = std::exp(-static_cast<double>(view.distance_mm[c]) / near_mm);
          auto& [all, change] = stretches[view.stretch[c]];
          all += weight;
          change += weight * std::abs(static_cast<double>(now[k]) - before[k]);
          largest = std::max(largest, all);
        }
      double most = 0;
      for (const auto& [stretch, sums] : stretches)
        if (sums.first > kLeastOfStretch * largest) most = std::max(most, sums.second / sums.first);
      return most;
    }
    /// Growth, mm, at which it shows; infinite when it does not up to `most_mm`.
    double growthThatShows(const plan::Plan& plan, double most_mm, std::stop_token stop) const {
      LockColours colours;
      const std::vector<float> before = lightnessAt(plan, colours, 0);
      double hidden = 0, shown = most_mm;
      if (changed(before, lightnessAt(plan, colours, shown)) <= tolerance_L) return HUGE_VAL;
      while (shown - hidden > kNearly_mm && !stop.stop_requested()) {
        const double middle = (hidden + shown) / 2;
        (changed(before, lightnessAt(plan, colours, middle)) > tolerance_L ? shown : hidden) = middle;
      }
      return (hidden + shown) / 2;
    }
  };
  Result<Judge> judgeOf(const plan::Plan& plan, LookSettings settings, WornWay way, std::stop_token stop) {
    settings.worn.way = way;
    const auto hair = hairFor(plan, settings.worn, stop);
    if (!hair) return hair.error();
    const Assumptions assumptions(plan.info().assumptions);
    const double near_mm = assumptions["regrowth.near_mm"];
    return Judge{*hair, settings,
                 nearTo(**hair, openingLine(plan, settings.worn, **hair), kFarthest * near_mm, settings.distance_m),
                 near_mm, assumptions["regrowth.tolerance_L"], assumptions["growth.mm_per_week"]};
  }
};

RegrowthSearch::RegrowthSearch(int locks) : state_(std::make_unique<State>()) {
  state_->locks = std::clamp(locks, 2000, 200000);
}
RegrowthSearch::~RegrowthSearch() = default;
RegrowthSearch::RegrowthSearch(RegrowthSearch&&) noexcept = default;
RegrowthSearch& RegrowthSearch::operator=(RegrowthSearch&&) noexcept = default;

Result<std::vector<Regrowth>> RegrowthSearch::update(const plan::Plan& plan, const LookSettings& settings,
                                                     std::stop_token stop) {
  const Error cancelled{ErrorCode::Cancelled, "", {}, ""};
  double slow_mm = 0, fast_mm = 0;
  for (const Assumption& a : assumptionTable())
    if (a.name == "growth.mm_per_week") slow_mm = a.low, fast_mm = a.high;
  std::vector<Regrowth> found;
  for (const WornWay way : {WornWay::Down, WornWay::TiedBack}) {
    const auto judge = state_->judgeOf(plan, settings, way, stop);
    if (!judge) return judge.error();
    const double usual_mm = judge->rate_mm, most_mm = Regrowth::kWeeks * std::max(fast_mm, usual_mm);
    const double growth_mm = judge->growthThatShows(plan, most_mm, stop);
    if (stop.stop_requested()) return cancelled;
    // Deviations add by root of squares, as a reading's do; in growth, as a
    // ratio, so that a week never falls below 0.
    double sooner = 0, later = 0;
    const auto deviates = [&](double ratio) {
      const double d = std::log(ratio);
      (d < 0 ? sooner : later) += d * d;
    };
    deviates(usual_mm / std::max(fast_mm, usual_mm));
    deviates(usual_mm / std::min(slow_mm, usual_mm));
    if (std::isfinite(growth_mm))
      for (const char* name : kScatters)
        for (const Assumption& a : assumptionTable()) {
          if (a.name != name) continue;
          for (const double end : {a.low, a.high}) {
            deviates(judge->growthThatShows(withAssumption(plan, name, end), most_mm, stop) / growth_mm);
            if (stop.stop_requested()) return cancelled;
          }
        }
    const auto withinWeeks = [](double weeks) {
      return weeks <= Regrowth::kWeeks ? std::optional(weeks) : std::nullopt;
    };
    const double week = growth_mm / usual_mm;
    found.push_back({way, withinWeeks(week), withinWeeks(week * std::exp(-std::sqrt(sooner))),
                     withinWeeks(week * std::exp(std::sqrt(later)))});
  }
  return found;
}

Result<double> RegrowthSearch::seenChange(const plan::Plan& plan, const LookSettings& settings, WornWay way,
                                            double weeks, std::stop_token stop) {
  const auto judge = state_->judgeOf(plan, settings, way, stop);
  if (!judge) return judge.error();
  LockColours colours;
  const std::vector<float> before = judge->lightnessAt(plan, colours, 0);
  return judge->changed(before, judge->lightnessAt(plan, colours, weeks * judge->rate_mm));
}

}  // namespace combdraft::look
