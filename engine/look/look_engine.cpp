#include <algorithm>
#include <list>
#include <map>

#include "engine/base/content_hash.h"
#include "engine/look/contrast.h"
#include "engine/look/head_hair.h"
#include "engine/look/picture_maker.h"
#include "engine/look/region_sums.h"

namespace combdraft::look {
namespace {
constexpr double kStep_mm = 4;
/// Ways of wearing kept ready; each holds its locks and rasters.
constexpr std::size_t kKept = 4;
}  // namespace

struct LookEngine::State {
  int locks;
  double measuringPixel_mm;

  /// One head, hair and way of wearing with everything coloured on it.
  struct Worn {
    std::uint64_t key = 0;
    std::shared_ptr<const HeadHair> hair;
    LockColours colours;
    RegionSums sums;
    std::unique_ptr<LocalPicture> local;
    std::map<std::pair<head::ViewName, double>, PictureMaker> pictures;
    std::shared_ptr<const Readings> readings;
    std::optional<colour::Light> light;
    double distance_m = 0;
    std::uint64_t judgedBy = 0;
  };
  std::list<Worn> kept;  // most recent first
  std::shared_ptr<const HeadGround> ground;

  Result<Worn*> wornFor(const plan::Plan& plan, const hair::Worn& worn, bool& rebuilt,
                        std::stop_token stop) {
    const std::uint64_t key = HeadHair::keyOf(plan, worn, locks, measuringPixel_mm, kStep_mm);
    const auto found = std::find_if(kept.begin(), kept.end(), [&](const Worn& w) { return w.key == key; });
    if (found != kept.end()) {
      kept.splice(kept.begin(), kept, found);
      return &kept.front();
    }
    auto built = HeadHair::build(plan, worn, locks, measuringPixel_mm, kStep_mm, stop, ground);
    if (!built) return built.error();
    ground = (*built)->ground();
    rebuilt = true;
    const std::size_t limit = locks > 50000 ? 1 : kKept;
    while (kept.size() >= limit) kept.pop_back();
    kept.emplace_front();
    kept.front().key = key;
    kept.front().hair = std::move(built).value();
    return &kept.front();
  }
};

LookEngine::LookEngine(int locks, double measuringPixel_mm)
    : state_(std::make_unique<State>(State{std::clamp(locks, 2000, 200000), measuringPixel_mm, {}, {}})) {}
LookEngine::~LookEngine() = default;
LookEngine::LookEngine(LookEngine&&) noexcept = default;
LookEngine& LookEngine::operator=(LookEngine&&) noexcept = default;

Result<LookFrame> LookEngine::update(const plan::Plan& plan, const LookSettings& settings,
                                     const std::vector<PictureRequest>& pictures,
                                     std::stop_token stop) {
  LookFrame frame;
  const auto found = state_->wornFor(plan, settings.worn, frame.shapeRecomputed, stop);
  if (!found) return found.error();
  State::Worn& worn = **found;
  // Pictures are the bulk of the memory: only the way shown now keeps its own.
  for (State::Worn& other : state_->kept)
    if (&other != &worn) other.pictures.clear();
  const HeadHair& hair = *worn.hair;

  // New picture rasters first: cancelling here leaves the colours untouched.
  for (const PictureRequest& request : pictures) {
    const std::pair key{request.view, request.pixel_mm};
    if (worn.pictures.contains(key)) continue;
    visibility::ViewSamples samples = hair.pictureRaster(request, stop);
    if (stop.stop_requested()) return Error{ErrorCode::Cancelled, "", {}, ""};
    // Of a view only the resolutions wanted now are kept.
    std::erase_if(worn.pictures, [&](const auto& entry) {
      return entry.first.first == request.view &&
             std::none_of(pictures.begin(), pictures.end(), [&](const PictureRequest& wanted) {
               return std::pair{wanted.view, wanted.pixel_mm} == entry.first;
             });
    });
    worn.pictures.emplace(key, PictureMaker(std::move(samples), hair.shape(), hair.locks().size(), hair.seed()));
  }

  const bool first = !worn.readings;
  const ColouredHead head{hair.shape(), hair.roots(), hair.grid(), hair.locks(), hair.seed()};
  bool afresh = first;
  const std::vector<std::uint32_t> changed = worn.colours.update(
      plan, settings, head, [&](const std::vector<std::uint32_t>& about) {
        afresh = afresh || about.size() * 2 > hair.locks().size();
        if (!afresh) worn.sums.add(hair.seen(), hair.locks(), worn.colours, about, -1);
      });
  if (afresh) {
    worn.sums.clear();
    std::vector<std::uint32_t> all(hair.locks().size());
    for (std::uint32_t i = 0; i < all.size(); ++i) all[i] = i;
    worn.sums.add(hair.seen(), hair.locks(), worn.colours, all, 1);
  } else {
    worn.sums.add(hair.seen(), hair.locks(), worn.colours, changed, 1);
  }
  frame.locksRecoloured = static_cast<int>(changed.size());

  const Assumptions assumptions(plan.info().assumptions);
  ContentHash judgedBy;
  for (const Assumption& a : assumptionTable())
    if (a.moves == Moves::Judgement) judgedBy.add(assumptions[a.name]);
  if (first || !changed.empty() || worn.light != settings.light ||
      worn.distance_m != settings.distance_m || worn.judgedBy != judgedBy.key()) {
    auto readings = std::make_shared<Readings>(
        readingsFrom(worn.sums, hair.seen(), hair.locks(), settings.light, levelScaleOf(assumptions)));
    if (!worn.local) worn.local = std::make_unique<LocalPicture>(hair.seen());
    worn.local->update(hair.seen(), worn.colours, changed);
    const auto contrast = contrastOf(*worn.local, settings.distance_m, assumptions);
    for (std::size_t r = 0; r < kRegions; ++r) readings->regions[r].contrast = contrast[r];
    readings->contrast = contrast[kRegions];
    worn.readings = std::move(readings);
    worn.light = settings.light;
    worn.distance_m = settings.distance_m;
    worn.judgedBy = judgedBy.key();
  }
  frame.readings = worn.readings;

  // Every kept picture follows, wanted now or not, so that none goes stale.
  for (auto& [key, maker] : worn.pictures) maker.update(worn.colours, settings.light, changed);
  for (const PictureRequest& request : pictures)
    frame.pictures.push_back(worn.pictures.at({request.view, request.pixel_mm}).picture());
  return frame;
}

}  // namespace combdraft::look
